/** The what-if as a workbook: readings, the settings they are corrected with, and one of these that runs from … to. */
import type { Units } from "../../functions/units.js";
import type { BookDescription, NotesSheet } from "../contract.js";
import { sheetUnits } from "../route/sheet-units.js";
import { REPAIR } from "../common/repair.js";
import { ARITHMETIC, cautionsSheet, tableSheet } from "../route/sheets.js";
import { computedColumns } from "./computed.js";
import { whatIfForm, type WhatIfValues } from "./form.js";
import { spanSheet } from "./span.js";
import { READING_COLUMNS, type WhatIfRow } from "./typed.js";

export interface WhatIf {
  readonly title: string;
  readonly about: readonly string[];
  readonly values: WhatIfValues;
  readonly rows: readonly WhatIfRow[];
  readonly units: Units;
}

const SPAN_LINE =
  '=IF(whatif_varied="","Settings name no setting to vary yet: results are at the given ones.",' +
  '"Varied: "&whatif_varied&IF(ISNUMBER(whatif_from)*ISNUMBER(whatif_to)," from "&whatif_from&" to "&whatif_to&" ("&whatif_span_unit&")",", but from and to are missing")&". Criteria: "&whatif_criteria)';

export function whatIfBook({ title, about, values, rows, units: system }: WhatIf): BookDescription {
  const units = sheetUnits(system);
  const head = (name: string, ...more: string[]): string[] => [name, SPAN_LINE, ...about, ...more];
  return {
    title,
    template: { name: "what-if", units: system },
    sheets: [
      tableSheet("Readings", "WhatIf", head(title, ARITHMETIC, ...REPAIR), READING_COLUMNS, rows, units, {
        computed: computedColumns(units),
        frozenColumns: 1,
      }),
      spanSheet(["Span", ...about, ARITHMETIC], units),
      whatIfForm(
        [
          "Settings",
          ...about,
          "One number for all rows, or a formula that points at a cell. A row may have its own: unfold the columns at the right of Readings.",
        ],
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
    "Given. Each row is corrected with the settings of the sheet Settings, or with its own where its folded columns hold some. The uncertainty and the grade are those of the given settings.",
    "Over the span. The varied setting runs from … to in eleven steps, everything else as given; lowest and highest are taken of these steps. A rise may be highest in the middle of a span, and between two steps it may be a little more: the sheet Span takes finer steps.",
    "Reference. A similar component is corrected with the same settings as the part, the varied one too, so that what both share moves both. The surrounding air is not corrected and stays.",
    "Where the grade flips. The value of the varied setting at which the rise is exactly on the edge of its grade. There may be two such values: the one nearest to the given value is told. At no value: no possible setting makes that rise.",
    "A setting that flips the grade within what it may well be leaves the grade undecided: measure that setting first.",
    "At the reference load. What the rise may be at the reference load, by the exponents of Settings. Advice beside the grade as found, never instead of it; below the least load nothing is projected.",
  ],
};
