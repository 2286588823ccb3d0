/** What the rise may be at the reference load: advice beside the grade as found. */
import type { Computed } from "../route/columns.js";
import type { SheetUnits } from "../route/sheet-units.js";

const GROUP = "At the reference load, projected";
/** U is expanded with 1.96, the usual factor of 95 %. */
const STANDARD = "[u]/1.96";

export function loadColumns(units: SheetUnits): Computed[] {
  const loads = "ISNUMBER([load])*ISNUMBER([reference_load])";
  const row =
    "GREY.GRADE_RANGE([rise],[load],[reference_load],[over_used],whatif_criteria,whatif_exponent_low,whatif_exponent_high," +
    `whatif_minimum_load,IF(ISNUMBER([u]),${STANDARD},""),,${units.argument})`;
  return [
    {
      key: "rise_at_load",
      header: "rise",
      group: GROUP,
      width: 220,
      measure: "difference",
      format: "0.0",
      note: "By the central exponent: read it as at least.",
      formula:
        `=IF(${loads}*ISNUMBER([rise]),IFERROR(GREY.RISE_AT_LOAD([rise],[load],[reference_load],whatif_exponent,whatif_minimum_load),` +
        'IF([reference_load]>0,"not projected: load "&TEXT([load]/[reference_load],"0 %"),"not projected: no reference load")),"")',
    },
    {
      key: "grade_at_load",
      header: "grade",
      group: GROUP,
      width: 210,
      note: "Over the exponents of Settings and ± U of the rise. Advice, never the grade as found.",
      formula:
        `=IF(ISNUMBER([rise_at_load]),LET(range,${row},low,IFERROR(CHOOSECOLS(range,3),""),high,IFERROR(CHOOSECOLS(range,4),""),` +
        'IF(ISNUMBER(low)*ISNUMBER(high),IF(low=high,"projected "&low&" of 4 throughout","projected "&low&" to "&high&" of 4"),"no grade")),"")',
    },
  ];
}
