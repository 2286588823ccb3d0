/** What is due when: the order that Assets works out, on a sheet to print. */
import type { FreeSheet } from "../contract.js";
import { at, headers, spill } from "./free.js";
import { heading, type ReportHead } from "./head.js";
import { named, type ReportKind } from "./kind.js";
import { inOrder } from "./ranked.js";

const WIDTHS = [92, 140, 230, 120, 72, 330, 100, 180, 90] as const;
const LIST = 4;

export function dueSheet(kind: ReportKind, head: ReportHead): FreeSheet {
  const component = named(kind, (key) => `[${key}]`);
  const order = { table: "AssetList", rankKey: "due_rank" };
  const DATE = "yyyy-mm-dd";
  const counted = (condition: string): string => `SUM(${condition})`;
  return {
    kind: "free",
    name: "Due",
    heading: heading("Due", head),
    widths: WIDTHS,
    heights: { [LIST - 1]: 40 },
    cells: [
      at(
        0,
        0,
        `="On the survey date "&IF(job_date="","(none in Job)",TEXT(job_date,"${DATE}"))&": "&${counted("ISNUMBER(AssetList[overdue])*1")}&" overdue, "&` +
          `${counted('(AssetList[due]="no survey known")*1')}&" without a known survey, "&${counted('(LEFT(AssetList[due],5)="needs")*1')}&" lacking a condition (1 to 3, 3 = worst)"`,
        "label",
      ),
      at(
        1,
        0,
        "NFPA 70B-2023: 12, 12 or 6 months for condition 1, 2 and 3; the worst of the three governs. What was seen only in part counts as not surveyed.",
        "muted",
      ),
      ...headers(LIST - 1, [
        "asset_id",
        "location",
        "component",
        "next due",
        "overdue, d",
        "by",
        "surveyed last",
        "on this route",
        "last grade",
      ]),
      spill(
        LIST,
        0,
        inOrder(["[asset_id]", "[location]", component], { ...order, none: '{"","No asset yet.",""}' }),
        3,
      ),
      spill(LIST, 3, inOrder(["[due]"], order), 1, { format: DATE, align: "right" }),
      spill(LIST, 4, inOrder(["[overdue]", "[due_by]"], order), 2),
      spill(LIST, 6, inOrder(["[survey]"], order), 1, { format: DATE, align: "right" }),
      spill(LIST, 7, inOrder(["[seen]", '[last_grade]&""'], order), 2),
      at(0, WIDTHS.length + 1, `=${LIST}+MAX(1,SUM((AssetList[asset_id]<>"")*1))`, "muted", {
        name: "due_rows",
        format: ";;;",
      }),
    ],
    print: { landscape: true, repeatHeading: true, rowsNamed: "due_rows" },
  };
}
