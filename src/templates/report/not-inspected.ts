/** What was not looked at, or only in part, and what no row names: so that nobody thinks all was seen. */
import type { FreeCell, FreeSheet } from "../contract.js";
import { at, headers, spill } from "./free.js";
import { heading, type ReportHead } from "./head.js";
import { named, type ReportKind } from "./kind.js";

const WIDTHS = [92, 108, 140, 230, 290, 20, 92, 140, 230] as const;
const LIST = 12;

export function notInspectedSheet(kind: ReportKind, head: ReportHead): FreeSheet {
  const unseen = '(Readings[status]="not inspected")+(Readings[status]="partly seen")';
  const noRow = '(AssetList[seen]="no row")';
  const given = (reference: string): string => `IF(${reference}="","",${reference})`;
  const assets = named(kind, (key) => `AssetList[${key}]`);
  const listed = (where: string, columns: readonly string[], none: string): string =>
    `=IF(SUM((${where})*1)=0,${none},FILTER(HSTACK(${columns.join(",")}),${where}))`;
  return {
    kind: "free",
    name: "Not inspected",
    heading: heading("Not inspected, and how much was", head),
    widths: WIDTHS,
    cells: [
      ...coverage(kind.item),
      at(LIST - 2, 0, "Rows not inspected, or seen in part", "subheading"),
      at(LIST - 2, 6, "In Assets, without a row", "subheading"),
      ...headers(LIST - 1, ["asset_id", "status", "location", "component", "reason"]),
      ...headers(LIST - 1, ["asset_id", "location", "component"], 6),
      spill(
        LIST,
        0,
        listed(
          unseen,
          [
            'Readings[asset_id]&""',
            "Readings[status]",
            "Readings[location]",
            "Readings[component]",
            'IF(Readings[reason]="","no reason given",Readings[reason])',
          ],
          '{"none","","","",""}',
        ),
        5,
      ),
      spill(
        LIST,
        6,
        listed(noRow, [given("AssetList[asset_id]"), given("AssetList[location]"), assets], '{"none","",""}'),
        3,
      ),
      at(0, WIDTHS.length + 1, `=${LIST}+MAX(1,SUM((${unseen})*1),SUM(${noRow}*1))`, "muted", {
        name: "not_inspected_rows",
        format: ";;;",
      }),
    ],
    print: { landscape: true, repeatHeading: true, rowsNamed: "not_inspected_rows" },
  };
}

/** Each asset counts once, so that the shares add up to all of them. */
function coverage(item: string): FreeCell[] {
  const kinds: readonly [label: string, condition: string, name: string][] = [
    [`${item} in Assets`, 'AssetList[asset_id]<>""', "coverage_all"],
    ["inspected", 'LEFT(AssetList[seen],9)="inspected"', "coverage_inspected"],
    ["of those, with complete rows", 'AssetList[seen]="inspected"', "coverage_complete"],
    ["seen in part", 'AssetList[seen]="partly seen"', "coverage_partly"],
    ["not inspected", 'AssetList[seen]="not inspected"', "coverage_not"],
    ["row without a status", 'AssetList[seen]="row without status"', "coverage_open"],
    ["without a row", 'AssetList[seen]="no row"', "coverage_none"],
  ];
  const lines = kinds.flatMap(([label, condition, name], row): FreeCell[] => {
    const whole = name === "coverage_complete" ? "coverage_inspected" : "coverage_all";
    return [
      at(row, 0, label, row === 1 ? "strong" : "label", { across: 3 }),
      at(row, 3, `=SUM((${condition})*1)`, "computed", { name, format: "0", align: "right" }),
      ...(row === 0
        ? []
        : [at(row, 4, `=IF(${whole}=0,"",${name}/${whole})`, "label", { format: "0 %", align: "left" })]),
    ];
  });
  const stray = 'SUM((Readings[location]="not in Assets")*1)';
  return [
    ...lines,
    at(
      kinds.length,
      0,
      `=IF(${stray}=0,"",${stray}&" rows name an asset that is not in Assets: they count for none.")`,
      "label",
    ),
  ];
}
