/** The phases against one another, and the hottest against its limit. */
import type { Computed } from "./columns.js";
import { columnsOf, fromAssets, is, number, ofPhase, PHASES } from "./formula.js";
import { UNEQUAL } from "./load.js";
import type { SheetUnits } from "./sheet-units.js";

const WORKING = "Working";

export function compareColumns(units: SheetUnits): Computed[] {
  const difference = { measure: "difference", format: "0.0", align: "right" } as const;
  return [
    {
      key: "pattern",
      header: "phases",
      group: "Compared",
      width: 200,
      note: PATTERN_NOTE(units),
      formula: pattern(units),
    },
    {
      key: "similar",
      group: WORKING,
      width: 72,
      folded: true,
      ...difference,
      note: "Hottest phase less the mean of the other two, where there are two to compare with.",
      formula: `=IF(([pattern]="one hot")+([pattern]="balanced")>0,1.5*[c_high]-[c_sum]/2,"")`,
    },
    {
      key: "rise_similar",
      header: "rise over similar",
      group: "Compared",
      width: 76,
      ...difference,
      note: "Hottest phase less the mean of the other two.",
      formula: '=IF([similar]="","",IF([limit_reading]<>"","≥ "&TEXT([similar],"0.0"),[similar]))',
    },
    {
      key: "rise_lowest",
      header: "hottest less lowest",
      group: "Compared",
      width: 76,
      ...difference,
      formula: '=IF([c_sum]="","",IF([limit_reading]<>"","≥ "&TEXT([c_high]-[c_low],"0.0"),[c_high]-[c_low]))',
    },
    {
      key: "relative_rise",
      header: "relative rise",
      group: "Compared",
      width: 110,
      format: "0 %",
      align: "right",
      note: "Rise over similar as a share of the rise over air: to first order it does not depend on the load. For one hot phase.",
      formula: relativeRise(units),
    },
    {
      key: "limit_at_load",
      header: "limit at this load",
      group: "Limit",
      width: 190,
      measure: "temperature",
      format: "0.0",
      align: "right",
      note: "What a sound part may show: air + permitted rise × (current / rated)ⁿ, at most the permitted temperature of Assets. None below the least load of Job, as a share of rated_A: so little heat says nothing of the part.",
      formula: limitAtLoad(units),
    },
    {
      key: "share",
      group: WORKING,
      width: 72,
      folded: true,
      format: "0 %",
      formula: `=IF(ISNUMBER([limit_at_load]),IFERROR(GREY.SHARE_OF_LIMIT([t_hottest],[limit_at_load],[air_used],${units.argument}),""),"")`,
    },
    {
      key: "share_of_limit",
      header: "share of limit",
      group: "Limit",
      width: 64,
      format: "0 %",
      align: "right",
      note: "Rise of the hottest phase as a share of the rise permitted at this load.",
      formula:
        '=IF([share]="","",IF(([reading_is]="at least")*([limit_reading]<>"")>0,"≥ "&TEXT([share],"0 %"),[share]))',
    },
    {
      key: "rise_air",
      group: WORKING,
      width: 72,
      folded: true,
      ...difference,
      note: "The highest rise over air of the row.",
      formula: '=IF(([t_high]="")+([air_used]="")>0,"",[t_high]-[air_used])',
    },
  ];
}

const PATTERN_NOTE = (units: SheetUnits): string => {
  const kelvin = (metric: number): string => `${units.from("difference", metric)} ${units.label("difference")}`;
  return (
    `Balanced: within ${kelvin(3)} or 15 % of the rise, whichever is more (indirect view: ${kelvin(1)}); then it is load, not a joint, ` +
    "and the limit judges, else the air. Two hot: the middle one is nearer to the hottest than to the coolest, so no mean of two cool similar phases is there to compare with."
  );
};

function pattern(units: SheetUnits): string {
  const limit = PHASES.map((phase) => `([${phase}]=[limit_reading])`).join("+");
  const isHottest = ofPhase("[hottest]", (phase) => `[${phase}]`);
  return (
    `=LET(rise,IF(${UNEQUAL},[c_high],IF([air_used]="",0,[c_high]-[air_used])),` +
    `allowed,IF([view]="direct",IF(${is("rise", `>${units.from("difference", 20)}`)},0.15*rise,${units.from("difference", 3)}),${units.from("difference", 1)}),` +
    // What stands at a limit of the camera's range is no reference for anything.
    `unsure,IF([limit_reading]="",0,([reading_is]="at most")+(${limit}>1)+(${isHottest}<>[limit_reading])),` +
    `IF([c_high]="",IF([imbalance]="no current","no current",""),IF(([c_sum]="")+unsure>0,"fewer than two similar phases",` +
    `IF(ROUND([c_high]-[c_low],6)<=allowed,"balanced",IF([c_sum]>1.5*([c_high]+[c_low]),"two hot","one hot")))))`
  );
}

function relativeRise(units: SheetUnits): string {
  const others = (prefix: string, hottest: string): string => `(${columnsOf(prefix).join("+")}-${hottest})/2`;
  const loads = `IF([view]="direct",[amps_hottest],""),IF([view]="direct",${others("amps_", "[amps_hottest]")},"")`;
  const floor = units.from("difference", 10);
  return (
    `=IF(([pattern]<>"one hot")+([limit_reading]<>"")+([air_used]="")>0,"",` +
    `IFERROR(GREY.RELATIVE_RISE([t_hottest],${others("t_", "[t_hottest]")},[air_used],${loads},${units.argument}),` +
    `IF([t_hottest]-[air_used]<${floor},"below ${floor} ${units.label("difference")}",IF(${UNEQUAL},"currents differ",""))))`
  );
}

function limitAtLoad(units: SheetUnits): string {
  return (
    `=LET(permitted,${fromAssets("permitted_rise")},listed,${fromAssets("rated_A")},rated,${number("listed")},` +
    `IF((permitted="")+(rated="")+([air_used]="")+([t_hottest]="")+([amps_hottest]="")+([view]<>"direct")>0,"",` +
    `IFERROR(GREY.LIMIT_AT_LOAD(permitted,[amps_hottest],rated,[air_used],${fromAssets("permitted_temp")},job_exponent,job_minimum_load,${units.argument}),` +
    `IF([amps_hottest]=0,"no current",IF([amps_hottest]/rated<job_minimum_load,TEXT([amps_hottest]/rated,"0 %")&" of rated load: no limit","no limit at this load")))))`
  );
}
