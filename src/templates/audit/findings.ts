/** The page that goes to the client: how many rows, what of the whole report, which rows and why. */
import type { FreeCell, FreeSheet } from "../contract.js";
import { at, headers, lines } from "../report/free.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { auditCall } from "./computed.js";

const WIDTHS = [44, 170, 84, 360, 190, 210, 250] as const;
const FINDINGS = 11;
/** Findings of the whole report that the page shows. */
const MOST = 10;
/** Rows of the list that have room for three lines from the beginning. */
const LISTED = 120;
const THREE_LINES = 56;
const ROWS = FINDINGS + MOST + 4;

const COUNTS: readonly (readonly [label: string, condition: string, name: string])[] = [
  ["Rows audited", 'ClaimList[verdict]<>""', "audit_rows"],
  ["reproduced", 'ClaimList[verdict]="reproduced"', "audit_reproduced"],
  ["cannot be reproduced: an input is missing", 'ClaimList[verdict]="cannot be reproduced"', "audit_open"],
  ["not reproduced, or a grade that does not follow", 'ClaimList[verdict]="not reproduced"', "audit_not"],
  [
    "of these with a usual slip that would give the number",
    '(ClaimList[verdict]="not reproduced")*(ClaimList[slips]<>"")',
    "audit_slips",
  ],
  ["methods with a defect", '(ClaimList[method]<>"")*(ClaimList[method]<>"sound")', "audit_methods"],
  ["grades that the recomputed rise changes", 'LEFT(ClaimList[consequence],13)="grade changed"', "audit_changed"],
  [
    "grades undecided: an edge lies within the uncertainty",
    'LEFT(ClaimList[consequence],9)="undecided"',
    "audit_undecided",
  ],
];

export function findingsSheet(heading: readonly string[], units: SheetUnits): FreeSheet {
  const shown =
    '(ClaimList[verdict]="not reproduced")+(ClaimList[verdict]="cannot be reproduced")+(LEFT(ClaimList[consequence],13)="grade changed")+(ClaimList[method]<>"")*(ClaimList[method]<>"sound")';
  const given = (key: string): string => `IF(ClaimList[${key}]="","",ClaimList[${key}])`;
  const counts = COUNTS.flatMap(([label, condition, name], row): FreeCell[] => [
    at(row, 0, `=SUM((${condition})*1)`, "computed", { name, format: "0", align: "right" }),
    at(row, 1, label, row === 0 ? "strong" : "label", { across: 3 }),
  ]);
  const notes = lines(
    ROWS - 2,
    [
      "A slip is a possibility: it would give the stated number. Numbers are held to the digits that are printed; ± is the expanded uncertainty (95 %) and counts for the consequence alone.",
    ],
    WIDTHS,
  );
  return {
    kind: "free",
    name: "Findings",
    heading,
    widths: WIDTHS,
    heights: {
      ...notes.heights,
      ...Object.fromEntries(Array.from({ length: LISTED }, (_, row) => [ROWS + 1 + row, THREE_LINES])),
    },
    cells: [
      ...counts,
      at(FINDINGS - 2, 0, "The whole report", "subheading"),
      at(
        FINDINGS - 1,
        1,
        `=LET(found,${auditCall("findings", units, "ClaimList")},count,ROWS(found),IF(count=1,"nothing over all rows",LET(known,FILTER(found,(SEQUENCE(count)>1)*(SEQUENCE(count)<=${MOST + 1})),CHOOSECOLS(known,1)&". "&CHOOSECOLS(known,2)&" "&CHOOSECOLS(known,3))))`,
        "label",
        { size: { rows: MOST, columns: 1 } },
      ),
      at(
        FINDINGS + MOST,
        1,
        `=LET(count,ROWS(${auditCall("findings", units, "ClaimList")})-1,IF(count>${MOST},count-${MOST}&" more: the function AUDIT lists them all.",""))`,
        "muted",
      ),
      ...notes.cells,
      ...headers(ROWS, ["row", "item", "image", "what it states", "method", "grade", "consequence"]),
      at(
        ROWS + 1,
        0,
        `=IF(SUM((${shown})*1)=0,{"","none","","","","",""},FILTER(HSTACK(SEQUENCE(ROWS(ClaimList[item])),${["item", "image"].map(given).join(",")},` +
          `IF(ClaimList[values]="","reproduced",ClaimList[values]),ClaimList[method],ClaimList[grade],ClaimList[consequence]),(${shown})>0))`,
        "words",
        { size: { rows: LISTED, columns: WIDTHS.length } },
      ),
      at(0, 6, `=${ROWS + 2}+MAX(1,SUM((${shown})*1))`, "muted", { name: "audit_printed_rows", format: ";;;" }),
    ],
    print: { landscape: true, repeatHeading: true, rowsNamed: "audit_printed_rows" },
  };
}
