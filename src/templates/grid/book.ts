/** The grid as a workbook: a pasted block of readings, the same corrected, and what is read off it. */
import type { Units } from "../../functions/units.js";
import type { BookDescription, NotesSheet } from "../contract.js";
import { sheetUnits } from "../route/sheet-units.js";
import { REPAIR } from "../common/repair.js";
import { ARITHMETIC, cautionsSheet } from "../route/sheets.js";
import { type BlockSize, correctedSheet, readingsSheet } from "./block.js";
import { type Box, boxesSheet } from "./boxes.js";
import type { Difference } from "./differences.js";
import { gridForm, type GridValues } from "./form.js";

export interface GridOfReadings {
  readonly title: string;
  readonly about: readonly string[];
  readonly values: GridValues;
  readonly size: BlockSize;
  /** A formula that draws the readings of a demo. */
  readonly fill?: string;
  readonly boxes?: readonly Box[];
  readonly differences?: readonly Difference[];
  readonly units: Units;
}

const IMAGE_LINE =
  '="Image "&grid_image&IF(grid_subject="","",", "&grid_subject)&IF(grid_date="","",", "&TEXT(grid_date,"yyyy-mm-dd"))&IF(grid_needs="",". Emissivity "&grid_emissivity&", reflected "&grid_reflected&", transmission of the air "&TEXT(grid_transmission_used,"0.000"),". Settings still need: "&grid_needs)';

export function gridBook({
  title,
  about,
  values,
  size,
  fill,
  boxes = [],
  differences = [],
  units: system,
}: GridOfReadings): BookDescription {
  const units = sheetUnits(system);
  const head = (name: string, ...more: string[]): string[] => [name, IMAGE_LINE, ...about, ...more];
  const paste = `Readings as the camera gives them, in ${units.label("temperature")}, up to ${size.rows} rows of ${size.columns}: paste them as values, the first into row 1, column 1 of the block.`;
  return {
    title,
    template: { name: "grid", units: system },
    sheets: [
      readingsSheet(head(title, ARITHMETIC, ...REPAIR, paste), size, units, fill),
      boxesSheet(head("Boxes", ARITHMETIC), size, units, boxes, differences),
      correctedSheet(head("Corrected", "Empty where the block is, and where a reading has no answer."), size, units),
      gridForm(
        ["Settings", ...about, "One number for the whole block: all that is read off it is as good as they are."],
        values,
        units,
      ),
      HOW_TO_READ,
      cautionsSheet,
    ],
  };
}

const HOW_TO_READ: NotesSheet = {
  kind: "notes",
  name: "How to read it",
  heading: ["How to read it"],
  lines: [
    "One emissivity. The whole block is corrected with one emissivity and one reflected temperature. Cells that show another surface, bare metal above all, are wrong by what these differ: draw boxes over one surface only.",
    "Boxes. By their rows and columns, as numbered beside the block, both ends included. A box that reaches over the end of the block is cut there.",
    "Differences. Maximum or mean of one box less that of another, or less the surrounding air. Over another box the criteria for similar components count, over air those for ambient. Both parts must carry the same load for that, which no image shows.",
    "Uncertainty. ± U is that of one reading against another of the same image; of a mean it is rather too much, since noise averages out and the camera's offset does not.",
    "In bands. A spill corrects 64 rows, since Excel on the web lets no call be larger than 5 MB.",
    "How long. After a change the page works out the whole block: seconds for 120 × 160, a good part of a minute for 480 × 640 on two cores. Excel was not measured. Make the block as small as the image: greybody new grid --rows 240 makes one of 240 × 320.",
  ],
};
