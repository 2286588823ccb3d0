/** What is read off a block: numbers of the whole, of boxes, and differences between two boxes or to the air. */
import type { FreeCell, FreeSheet } from "../contract.js";
import { at, headers, lines } from "../report/free.js";
import type { SheetUnits } from "../route/sheet-units.js";
import type { BlockSize } from "./block.js";
import { DIFFERENCES, type Difference, differenceCells } from "./differences.js";
import { box, BOX_RESULTS, BOXES, columnOf, rowOf, whole } from "./statistics.js";

const WIDTHS = [230, 92, 150, 92, 92, 84, 92, 84, 84, 92, 92, 92, 110, 250] as const;
/** Each box's results as one spill, right of what is printed; the cells of the table show one of them each. */
const WORKING_AT = WIDTHS.length + 1;
const WHOLE_AT = 1;
const BOXES_AT = 15;
const DIFFERENCES_AT = BOXES_AT + BOXES + 3;
const NOTES_AT = DIFFERENCES_AT + DIFFERENCES + 2;

export interface Box {
  readonly name: string;
  readonly corners: readonly [top: number, left: number, bottom: number, right: number];
}

export function boxesSheet(
  heading: readonly string[],
  size: BlockSize,
  units: SheetUnits,
  boxes: readonly Box[],
  differences: readonly Difference[],
): FreeSheet {
  const notes = lines(
    NOTES_AT,
    [
      "Row and column are those numbered beside the block. The mean is over temperatures, cell by cell, since criteria and limits are temperatures. The mean in radiance is what one large pixel would read: hot cells weigh more in it, so it is a little higher, the more the wider the temperatures lie apart.",
      "The maximum of a box is one cell and takes its noise and its dead pixels along; a part that is smaller than three pixels shows less than its temperature.",
    ],
    WIDTHS.slice(0, 9),
  );
  return {
    kind: "free",
    name: "Boxes",
    heading,
    widths: WIDTHS,
    heights: { [BOXES_AT - 1]: 40, [DIFFERENCES_AT - 1]: 40, ...notes.heights },
    cells: [
      ...wholeCells(size, units),
      ...boxCells(size, units, boxes),
      ...differenceCells(DIFFERENCES_AT, units, differences),
      ...notes.cells,
      at(1, WORKING_AT, `=${NOTES_AT + 2}`, "muted", { name: "grid_printed_rows", format: ";;;" }),
    ],
    print: { landscape: true, repeatHeading: true, rowsNamed: "grid_printed_rows" },
  };
}

function wholeCells(size: BlockSize, units: SheetUnits): FreeCell[] {
  const of = whole(size, units);
  const degrees = units.label("temperature");
  const row = (place: number, label: string, name: string, value: string, format: string): FreeCell[] => [
    at(WHOLE_AT + place, 0, label, "label"),
    at(WHOLE_AT + place, 1, value, "computed", { format, align: "right", name: `grid_${name}` }),
  ];
  const where = (place: number, name: string): FreeCell[] => [
    at(WHOLE_AT + place, WORKING_AT, of.placeOf(`grid_${name}`), "muted", {
      name: `grid_${name}_place`,
      format: ";;;",
    }),
    at(
      WHOLE_AT + place,
      2,
      `=IF(ISNUMBER(grid_${name}_place),"row "&${rowOf(`grid_${name}_place`)}&", column "&${columnOf(`grid_${name}_place`)},"")`,
      "label",
    ),
  ];
  return [
    at(WHOLE_AT - 1, 0, "The whole block", "subheading"),
    at(WHOLE_AT, 0, '=IF(grid_needs="","","Nothing is corrected yet. Settings still need: "&grid_needs)', "strong", {
      name: "grid_told",
    }),
    ...row(1, "readings", "count_readings", of.readings, "0"),
    ...row(2, "corrected", "count", of.answered, "0"),
    at(
      WHOLE_AT + 2,
      2,
      '=IF((grid_needs="")*(grid_count<grid_count_readings),grid_count_readings-grid_count&" readings have no answer: the surroundings alone give more than was read","")',
      "label",
    ),
    ...row(3, "cells that hold no number", "no_number", of.noNumber, "0"),
    ...row(4, `maximum, ${degrees}`, "maximum", of.maximum, "0.0"),
    ...where(4, "maximum"),
    ...row(5, `minimum, ${degrees}`, "minimum", of.minimum, "0.0"),
    ...where(5, "minimum"),
    ...row(6, `mean, ${degrees}`, "mean", of.mean, "0.0"),
    ...row(7, `mean in radiance, ${degrees}`, "mean_radiance", of.radianceMean, "0.0"),
    ...row(8, `standard deviation, ${units.label("difference")}`, "deviation", of.deviation, "0.00"),
    ...row(9, "share above the limit of Settings", "share", of.share, "0.0 %"),
  ];
}

/** Of BOX_RESULTS, in their order. */
const FORMATS = ["0", "0.0", "0", "0", "0.0", "0.0", "0.00", "0.0 %"] as const;

function boxRemark(
  number: number,
  { top, left, bottom, right }: Readonly<Record<"top" | "left" | "bottom" | "right", string>>,
): string {
  const typed = [`grid_box_${number}_name`, top, left, bottom, right].map((name) => `(${name}<>"")`).join("+");
  const all = [top, left, bottom, right].map((name) => `ISNUMBER(${name})`).join("*");
  return (
    `=IF(${typed}=0,"",IF(${all}=0,"needs its four corners",IF((${top}>${bottom})+(${left}>${right})>0,"first row or column lies behind the last",` +
    `IF(INDEX(grid_box_${number},1,1)="","no corrected cell in it",IF(grid_box_${number}_name="","needs a name to be compared","")))))`
  );
}

function boxCells(size: BlockSize, units: SheetUnits, boxes: readonly Box[]): FreeCell[] {
  const degrees = units.label("temperature");
  const corners = [
    ["first row", "row_from", size.rows],
    ["first column", "column_from", size.columns],
    ["last row", "row_to", size.rows],
    ["last column", "column_to", size.columns],
  ] as const;
  const typed = Array.from({ length: BOXES }, (_, i): FreeCell[] => {
    const given = boxes[i];
    const row = BOXES_AT + i;
    const [top, left, bottom, right] = corners.map(([, name]) => `grid_box_${i + 1}_${name}`);
    return [
      at(row, 0, given?.name, "typed", { name: `grid_box_${i + 1}_name` }),
      ...corners.map(([label, name, most], place) =>
        at(row, place + 1, given?.corners[place], "typed", {
          name: `grid_box_${i + 1}_${name}`,
          label,
          range: [1, most],
          format: "0",
          align: "right",
        }),
      ),
      at(row, WORKING_AT, box(size, { top: top!, left: left!, bottom: bottom!, right: right! }), "muted", {
        size: { rows: 1, columns: BOX_RESULTS.length },
        name: `grid_box_${i + 1}`,
        format: ";;;",
      }),
      ...FORMATS.map((format, place) =>
        at(row, 5 + place, `=INDEX(grid_box_${i + 1},1,${place + 1})`, "computed", { format, align: "right" }),
      ),
      at(
        row,
        5 + FORMATS.length,
        boxRemark(i + 1, { top: top!, left: left!, bottom: bottom!, right: right! }),
        "muted",
      ),
    ];
  });
  return [
    at(BOXES_AT - 2, 0, "Boxes", "subheading"),
    ...["box", ...corners.map(([label]) => label)].map((label, column) =>
      at(BOXES_AT - 1, column, label, "typedHeader"),
    ),
    ...headers(
      BOXES_AT - 1,
      [
        "cells",
        `maximum, ${degrees}`,
        "row",
        "column",
        `minimum, ${degrees}`,
        `mean, ${degrees}`,
        "deviation",
        "share above",
      ],
      5,
    ),
    ...typed.flat(),
  ];
}
