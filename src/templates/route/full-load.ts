/** What governs, projected to the expected maximum load: advice, never mixed with the grade as found. */
import { criteriaOf } from "../common/criteria.js";
import type { Computed } from "./columns.js";
import { MORE } from "./grade.js";
import { COMPARED_AT } from "./load.js";
import type { SheetUnits } from "./sheet-units.js";

const PROJECTED = "At full load, projected";

export function fullLoadColumns(units: SheetUnits): Computed[] {
  const range = (position: number): string =>
    `IF([projected]="","",IFERROR(CHOOSECOLS(${gradeRange(units)},${position}),""))`;
  const rise = { group: PROJECTED, width: 72, measure: "difference", format: "0.0", align: "right" } as const;
  const note =
    "The rise found less U at the low exponent of Job, and with U added at the high one: so the low end may lie below the rise found. Sound joints keep to the range; a failing one gets worse with heat and may go beyond it.";
  return [
    {
      key: "projected",
      group: "Working",
      width: 72,
      folded: true,
      note: "The reference whose rise is projected. A share of the limit is not: its limit has been brought to the load already.",
      formula:
        '=IF(([governs]="")+([view]<>"direct")+([load_share]="")+([expected_max]="")>0,"",IF([governs]="over air","ambient",' +
        'IF(([governs]="over similar")+([pattern]="one hot")>0,"similar",IF([pattern]="balanced","","ambient"))))',
    },
    {
      key: "full_low",
      header: "rise at full load with U, low",
      ...rise,
      note,
      formula: `=LET(rise,${range(1)},IF(${MORE}*(rise<>"")>0,"≥ "&TEXT(rise,"0.0"),rise))`,
    },
    // What is at least so much has no high end.
    {
      key: "full_high",
      header: "rise at full load with U, high",
      ...rise,
      note,
      formula: `=IF(${MORE}>0,"",${range(2)})`,
    },
    { key: "full_low_grade", ...rise, group: "Working", folded: true, format: "0", formula: `=${range(3)}` },
    { key: "full_high_grade", ...rise, group: "Working", folded: true, format: "0", formula: `=${range(4)}` },
    {
      key: "grade_full",
      header: "grade at full load",
      group: PROJECTED,
      width: 300,
      note: "Advice: the criteria are for the load found.",
      formula:
        '=IF([governs]="",IF(([stops]="")*([withheld]<>""),"not projected",""),IF([view]<>"direct",[view]&" view: not projected",IF([load_share]="","not projected: no expected load in Assets",' +
        'IF([load_share]<job_minimum_load,TEXT([load_share],"0 %")&" load: not projected",IF([projected]="","by its limit: not projected",' +
        `IF([full_low_grade]="","not projected",IF(${MORE}>0,[full_low_grade]&" of 4 at least",` +
        'IF([full_low_grade]=[full_high_grade],[full_low_grade]&" of 4 throughout",[full_low_grade]&" to "&[full_high_grade]&" of 4: depends"))&IF([projected]="similar",", over similar",", over air")))))))',
    },
  ];
}

/** GRADE_RANGE widens by twice a standard uncertainty: of half the U that stands in the row it comes to that U. */
const WIDENED_BY = 2;

/** A row of results a row; the row's uncertainty as a standard one. */
function gradeRange(units: SheetUnits): string {
  const similar = '[projected]="similar"';
  // Without an uncertainty there is no range: a text is refused, an empty one would count as exact.
  const standard = `LET(u,IF(${similar},[rise_U_similar],[rise_U_air]),IF(ISNUMBER(u),u/${WIDENED_BY},"unknown"))`;
  return (
    `GREY.GRADE_RANGE(IF(${similar},[similar],[t_hottest]-[air_used]),IF(${similar},${COMPARED_AT},[amps_hottest]),[expected_max],[projected],` +
    `${criteriaOf("job_criteria")},job_exponent_low,job_exponent_high,job_minimum_load,${standard},,${units.argument})`
  );
}
