/** The trend as a workbook: one point over years, each visit brought to a common load. */
import type { Units } from "../../functions/units.js";
import type { BookDescription, NotesSheet } from "../contract.js";
import { sheetUnits } from "../route/sheet-units.js";
import { REPAIR } from "../common/repair.js";
import { ARITHMETIC, cautionsSheet, tableSheet } from "../route/sheets.js";
import { computedColumns } from "./computed.js";
import { pointForm, type PointValues } from "./form.js";
import { summarySheet } from "./summary.js";
import { type Visit, VISIT_COLUMNS } from "./typed.js";

export interface TrendOfPoint {
  readonly title: string;
  readonly about: readonly string[];
  readonly point: PointValues;
  readonly visits: readonly Visit[];
  readonly units: Units;
}

const POINT_LINE =
  '="Point "&trend_asset_id&" "&trend_point&IF(trend_site="","",", "&trend_site)&". Rise over "&IF(trend_over="","(to be said in Point)",trend_over)&IF(trend_load_used="",", no common load yet",", at "&trend_load_used&" A")';

export function trendBook({ title, about, point, visits, units: system }: TrendOfPoint): BookDescription {
  const units = sheetUnits(system);
  const head = (name: string, ...more: string[]): string[] => [name, POINT_LINE, ...about, ...more];
  return {
    title,
    template: { name: "trend", units: system },
    sheets: [
      tableSheet("Visits", "Visits", head(title, ARITHMETIC, ...REPAIR), VISIT_COLUMNS, visits, units, {
        computed: computedColumns(units),
        frozenColumns: 1,
      }),
      summarySheet(head("Trend", ARITHMETIC), units),
      pointForm(["Point", ...about, "What holds for every visit."], point, units),
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
    "What is compared. Rises at one load, never temperatures: these follow the seasons and the load of the day. A visit needs rise, load, date, emissivity and camera, or it says nothing about change.",
    "Which visits are used. Those whose rise is over what Point says, with a reading that is no limit, at a load of at least the least share of the common one. Why another is not used stands beside it.",
    "With care. Another camera than before brings another offset; another emissivity moves every rise. The visit is used, and the change may come from that alone.",
    "Change. It counts only beyond the root of the sum of both squared uncertainties: in practice 4 to 5 K. Smaller changes are no change.",
    "Slope. The straight line through the visits used. Where the slope does not exceed its uncertainty there is no trend and no date. What is reached on a date holds if the line goes on: a joint that fails does not keep to a line.",
    "Baseline. The first visit used. The built-in criteria that know a baseline are our own (house): 5, 10 and 20 K.",
  ],
};
