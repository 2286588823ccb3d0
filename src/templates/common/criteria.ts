/** Criteria of the workbook's own: a sheet with a table in the form that GRADE takes, and how a formula names what was chosen. */
import { criteriaNamed } from "../../core/severity/criteria.js";
import type { TableSheet } from "../contract.js";
import { column, type Computed, type Row } from "../route/columns.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { tableSheet } from "../route/sheets.js";

/** As it is chosen on Job, among the names of the built-in sets. */
export const OWN_CRITERIA = "own (sheet Criteria)";

const isOwn = (field: string): string => `(LEFT(${field},3)="own")`;

const TABLE = "CriteriaList";
const RANGE = `HSTACK(${["reference", "grade", "from_or_above", "lower_edge", "words", "action"].map((key) => `${TABLE}[${key}]`).join(",")})`;

/** GRADE's argument: the name that stands in a field of Job, or the workbook's own range. */
export function criteriaOf(field: string): string {
  return `IF(${isOwn(field)},${RANGE},${field})`;
}

/** What reports call them. */
export function criteriaInWords(field: string): string {
  return `IF(${isOwn(field)},"own criteria (sheet Criteria)",${field})`;
}

/** With the edition that was agreed, which is one of a document: the workbook's own criteria have none. */
export function criteriaWithEdition(field: string, edition: string): string {
  return `${criteriaInWords(field)}&IF((${edition}="")+${isOwn(field)}>0,""," ("&${edition}&")")`;
}

/**
 * True where one of these fields has chosen the own range and GRADE cannot take it. A reference that it has no rows for is
 * #N/A, which is no fault of the table.
 */
export function ownCriteriaFail(fields: readonly string[], units: SheetUnits): string {
  return `IF(${fields.map(isOwn).join("+")}>0,ISERR(GREY.GRADE(0,"similar",${RANGE},,,,${units.argument})),FALSE)`;
}

const REFERENCES = {
  electrical: ["similar", "ambient", "limit"],
  mechanical: ["similar", "baseline", "limit"],
} as const;

const LIMIT = { key: "reference", is: "limit" };

const COLUMNS = [
  column("reference", "Criteria", 92, { note: "What the rise is over; limit: the share of a limit." }),
  column("grade", "Criteria", 64, { format: "0", choices: ["1", "2", "3", "4"], note: "4 is the worst." }),
  column("from_or_above", "Criteria", 112, {
    header: "from or above",
    choices: ["from", "above"],
    note: "From: the edge itself has the grade. Above: only what exceeds it.",
  }),
  column("lower_edge", "Criteria", 88, {
    header: "lower edge",
    measure: "difference",
    range: [0, 1000],
    format: "General",
    plainWhere: LIMIT,
    note: "Of a limit a share: 0.9 is 90 % of the rise that it permits.",
  }),
  column("words", "Criteria", 300, { note: "No grade is shown without its words." }),
  column("action", "Criteria", 330, { note: "What is to be done." }),
];

/** A row of own criteria, edges in K or as a share of the limit. */
export type OwnCriterion = Row<(typeof COLUMNS)[number]["key"]>;

/** The rows of built-in sets that a route may be graded by, to begin with. */
export function startingCriteria(kind: keyof typeof REFERENCES, ...names: readonly string[]): OwnCriterion[] {
  const references: readonly string[] = REFERENCES[kind];
  return names.flatMap((name) =>
    criteriaNamed(name)
      .rows.filter(({ reference }) => references.includes(reference))
      .map(({ reference, grade, bound, edge, words, action }) => ({
        ...{ reference, grade, words, action },
        from_or_above: bound,
        lower_edge: edge,
      })),
  );
}

export function criteriaSheet(
  kind: keyof typeof REFERENCES,
  rows: readonly OwnCriterion[],
  units: SheetUnits,
): TableSheet {
  const references = REFERENCES[kind];
  const columns = COLUMNS.map((one) => (one.key === "reference" ? { ...one, choices: references } : one));
  return tableSheet(
    "Criteria",
    TABLE,
    [
      "Criteria",
      `=IF(${isOwn("job_criteria")}+${isOwn("job_criteria_limit")}>0,"Used: chosen in Job for "&IF(${isOwn("job_criteria")},"rises","")&IF(${isOwn("job_criteria")}*${isOwn("job_criteria_limit")}," and ","")&IF(${isOwn("job_criteria_limit")},"shares of a limit",""),"Not used now: choose ${OWN_CRITERIA} in Job")&"."`,
      "It begins as a copy of built-in sets. What you change here is yours: it is called own criteria wherever a grade stands, and needs your client's consent.",
      "Within a reference edges and grades rise from row to row. Below the first edge the grade is 0.",
    ],
    columns,
    rows,
    units,
    { computed: [faults(references, units)], frozenColumns: 1 },
  );
}

/** What is wrong with a row, in words: GRADE refuses the whole table then, and no row of the route has a grade. */
function faults(references: readonly string[], units: SheetUnits): Computed {
  const fault = (condition: string, words: string): string => `IF(${condition},"${words}; ","")`;
  const number = (key: string): string => `IF(ISNUMBER([${key}]),[${key}],-1)`;
  const within = `(TRANSPOSE(place)<place)*(TRANSPOSE(kind)=kind)`;
  const known = references.map((one) => `(kind<>"${one}")`).join("*");
  // "above" an edge comes after "from" it.
  const edge = `${number("lower_edge")}+IF(LOWER(TRIM([from_or_above]))="above",0.0000001,0)`;
  const notRising = (values: string): string =>
    `(MMULT(${within}*(TRANSPOSE(${values})>=${values}),SEQUENCE(ROWS([reference]),1,1,0))>0)`;
  const all = [
    fault(known, `reference: ${references.slice(0, -1).join(", ")} or ${references.at(-1)}`),
    fault("(grades<1)+(grades>4)+(grades<>INT(grades))>0", "grade: 1 to 4"),
    fault('(LOWER(TRIM([from_or_above]))<>"from")*(LOWER(TRIM([from_or_above]))<>"above")', "from or above"),
    fault("edges<0", `lower edge: a number in ${units.label("difference")}, of a limit a share`),
    fault('(kind="limit")*(edges>10)', "lower edge of a limit: a share, 0.9 for 90 %"),
    fault('TRIM([words])=""', "words: no grade is shown without them"),
    fault(notRising("edges"), "edge not above that of the row before"),
    fault(notRising("grades"), "grade not above that of the row before"),
  ];
  const filled = '([reference]&[grade]&[from_or_above]&[lower_edge]&[words]&[action]<>"")';
  return {
    key: "faults",
    header: "to be put right",
    group: "Checks",
    width: 420,
    note: "While anything stands here, the table cannot be used: rows that would be graded by it have no grade.",
    formula:
      `=LET(kind,IF([reference]="","",LOWER(TRIM([reference]))),place,SEQUENCE(ROWS([reference])),grades,${number("grade")},edges,${edge},` +
      `all,${all.join("&")},IF(${filled},IF(all="","",LEFT(all,LEN(all)-2)),""))`,
  };
}
