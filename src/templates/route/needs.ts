/** What a row still needs: for its status, and for a grade. */
import { clause, joined, MEASURED, PHASES } from "./formula.js";
import { READING_COLUMNS } from "./typed.js";

const missing = (condition: string, words: string): string => clause(condition, `"${words}"`, ", ");

const UNKNOWN = '([location]="not in Assets")';

function currents(when: string): string[] {
  return PHASES.map((phase) => missing(`${when}*([amps_${phase}]="")`, `current ${phase}`));
}

export function needs(): string {
  const typed = READING_COLUMNS.filter(({ folded }) => folded !== true).map(({ key }) => `([${key}]<>"")`);
  const clauses = [
    missing('typed*([asset_id]="")', "asset_id"),
    missing('typed*([status]="")', "status"),
    missing('typed*([time]="")', "time"),
    missing('(([status]="not inspected")+([status]="partly seen"))*([reason]="")', "reason"),
    missing('exception*([thermal_image]="")', "thermal image"),
    ...PHASES.map((phase) => missing(`exception*([${phase}]="")`, `reading ${phase}`)),
    ...currents("loaded"),
    missing('numbers*([surrounding_air]="")', "surrounding air"),
    clause('numbers*([settings_missing]<>"")', "[settings_missing]", ", "),
    missing(
      '(LEFT([grade_found],1)="4")*([told_to]="")',
      "told_to: a grade 4 is told to the person responsible at once",
    ),
  ];
  const inspected = '([status]<>"not inspected")';
  return joined(clauses, ", ", [
    ["typed", `IF(${typed.join("+")}>0,1,0)`],
    ["exception", '([status]="exception")*1'],
    // An exception, and whatever was read, wants all that a corrected rise needs.
    ["numbers", `${inspected}*(exception+${MEASURED}>0)`],
    ["loaded", `${inspected}*([asset_id]<>"")*([view]="direct")*(exception+([status]="no exception")+${MEASURED}>0)`],
  ]);
}

/** What a row with readings lacks for a grade; the table is for the load found, so a current is part of it. */
export function gradeNeeds(): string {
  return joined(
    [
      missing(`${MEASURED}*([asset_id]="")`, "asset_id"),
      ...currents(`${MEASURED}*([asset_id]<>"")*([view]="direct")`),
      missing(`${MEASURED}*${UNKNOWN}`, "its asset in Assets"),
      clause(`${MEASURED}*(1-${UNKNOWN})*([settings_missing]<>"")`, "[settings_missing]", ", "),
      missing(`${MEASURED}*([surrounding_air]="")`, "surrounding air"),
    ],
    ", ",
  );
}
