/** What the visits show together: the slope with its uncertainty, when the limit is reached, which visits differ. */
import type { FreeCell, FreeSheet } from "../contract.js";
import { given } from "../route/formula.js";
import { at, headers, lines, spill } from "../report/free.js";
import type { SheetUnits } from "../route/sheet-units.js";

const WIDTHS = [250, 130, 130, 130, 110, 250] as const;
const WAYS = [
  ["low", "at_load_low"],
  ["central", "at_load"],
  ["high", "at_load_high"],
] as const;
const VISITS = 17;
const USED = '(Visits[used]="yes")';
const COUNT = `SUM(${USED}*1)`;
const LIMIT = 'IF(trend_limit="","",trend_limit)';

const trend = (column: string, show: string): string =>
  `GREY.TREND(IF(${USED},Visits[date],""),IF(${USED},Visits[${column}],""),${LIMIT},"${show}",trend_coverage)`;
/** Where a slope can be told at all. */
const enough = (rest: string, otherwise = '""'): string => `IF(${COUNT}<3,${otherwise},${rest})`;

export function summarySheet(heading: readonly string[], units: SheetUnits): FreeSheet {
  const kelvin = units.label("difference");
  const notes = lines(
    VISITS - 4,
    [
      "± U of the slope comes from the scatter of the visits about their line, not from the uncertainty of a single visit: what all visits share, such as a wrong emissivity, shows in neither. A rise follows its load by an exponent between the low and the high one; where the verdicts differ, measure at a load nearer to the common one.",
    ],
    WIDTHS,
  );
  return {
    kind: "free",
    name: "Trend",
    heading,
    widths: WIDTHS,
    heights: { 0: 26, [VISITS - 1]: 40, ...notes.heights },
    cells: [
      at(0, 0, sentence(kelvin), "strong", { across: WIDTHS.length, name: "trend_sentence" }),
      at(1, 0, "visits used", "label"),
      at(1, 1, `=${COUNT}`, "computed", { format: "0", align: "right", name: "trend_used" }),
      at(1, 2, "of", "muted", { align: "right" }),
      at(1, 3, "=SUM(Visits[typed])", "computed", { format: "0", align: "right", name: "trend_typed" }),
      ...WAYS.map(([which], column) =>
        at(
          3,
          column + 1,
          which === "central" ? '="exponent "&trend_exponent' : `="exponent "&trend_exponent_${which}`,
          "header",
          { align: "right" },
        ),
      ),
      ...rows(kelvin),
      ...notes.cells,
      at(VISITS - 2, 0, "Visits that are used, the first at the top", "subheading"),
      ...headers(VISITS - 1, [
        "date",
        `rise at the common load, ${kelvin}`,
        `± U, ${kelvin}`,
        `change, ${kelvin}`,
        `± U, ${kelvin}`,
        "since the visit before",
      ]),
      spill(VISITS, 0, `=${list(["Visits[date]"], '"none"')}`, 1, { format: "yyyy-mm-dd", align: "left" }),
      spill(
        VISITS,
        1,
        `=${list([...["at_load", "u", "change", "change_u"].map((key) => `Visits[${key}]`), "Visits[step]"].map(given), '""')}`,
        5,
        { format: "0.0" },
      ),
    ],
    print: { landscape: true, repeatHeading: true },
  };
}

/** Visits used, by their date: a block has one format, so dates are a spill of their own. */
function list(columns: readonly string[], none: string): string {
  const sorted = `SORT(FILTER(HSTACK(Visits[date],${columns.join(",")}),${USED}),1,1)`;
  const places = columns.map((_, place) => place + 2);
  return `IF(${COUNT}=0,${none},CHOOSECOLS(${sorted},${places.join(",")}))`;
}

function rows(kelvin: string): FreeCell[] {
  const line = (
    row: number,
    label: string,
    value: (column: string) => string,
    rest: { format?: string; name?: string } = {},
  ): FreeCell[] => [
    at(row, 0, label, "label"),
    ...WAYS.map(([which, column], place) =>
      at(row, place + 1, `=${value(column)}`, "computed", {
        align: "right",
        ...(rest.format === undefined ? {} : { format: rest.format }),
        ...(rest.name === undefined ? {} : { name: `trend_${rest.name}_${which}` }),
      }),
    ),
  ];
  const date = "yyyy-mm-dd";
  return [
    ...line(4, `slope, ${kelvin} a year`, (column) => enough(`IFERROR(${trend(column, "slope")},"")`), {
      format: "0.00",
      name: "slope",
    }),
    ...line(5, "± U of the slope", (column) => enough(`IFERROR(${trend(column, "uncertainty")},"")`), {
      format: "0.00",
      name: "slope_u",
    }),
    ...line(6, `the line at the first visit, ${kelvin}`, (column) => enough(`IFERROR(${trend(column, "start")},"")`), {
      format: "0.0",
      name: "start",
    }),
    ...line(7, "verdict", (column) => enough(verdict(column), 'IF(trend_typed=0,"","needs three visits")'), {
      name: "verdict",
    }),
    ...line(8, "limit reached on", (column) => enough(crossing(column)), { format: date, name: "crossing" }),
    ...line(9, "earliest", (column) => enough(end(column, "crossing_low")), { format: date, name: "crossing_low" }),
    ...line(10, "latest", (column) => enough(end(column, "crossing_high")), { format: date, name: "crossing_high" }),
  ];
}

function verdict(column: string): string {
  return `LET(found,IFERROR(${trend(column, "verdict")},"visits of one date"),IF(found="no change beyond uncertainty","no change beyond its uncertainty",found))`;
}

function crossing(column: string): string {
  const found = `IFERROR(${trend(column, "verdict")},"")`;
  return (
    `IF(trend_limit="","no limit given",IFERROR(${trend(column, "crossing")},LET(found,${found},` +
    'IF(RIGHT(found,12)="limit passed","passed already",IF(LEFT(found,9)="no change","no date: no change",IF(found="falling","no date: falling","no date")))))) '.trimEnd()
  );
}

function end(column: string, show: string): string {
  return `IF(trend_limit="","",IFERROR(${trend(column, show)},"open"))`;
}

function sentence(kelvin: string): string {
  const day = (value: string): string => `IF(ISNUMBER(${value}),TEXT(${value},"yyyy-mm-dd"),${value})`;
  return (
    `=IF(trend_typed=0,"No visits yet.",IF(trend_used<3,"A trend needs three visits that can be compared: "&trend_used&" so far.",` +
    `"At "&trend_load_used&" A: "&trend_verdict_central&", "&TEXT(trend_slope_central,"0.0")&" ± "&TEXT(trend_slope_u_central,"0.0")&" ${kelvin} a year"&` +
    `IF(trend_limit="",".","; limit of "&trend_limit&" ${kelvin}: "&IF(ISNUMBER(trend_crossing_central),"reached on "&${day("trend_crossing_central")}&", between "&${day("trend_crossing_low_central")}&" and "&${day("trend_crossing_high_central")},trend_crossing_central)&".")))`
  );
}
