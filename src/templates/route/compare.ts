/** The phases against one another, and the hottest against its limit. */
import type { Computed } from "./columns.js";
import { eachRow, fromAssets, is, ofPhase, PHASES, phases, typedPhases } from "./formula.js";
import { UNEQUAL } from "./load.js";
import type { SheetUnits } from "./sheet-units.js";
import { WARMEST } from "./temperatures.js";

const WORKING = "Working";
const COMPARED = phases("c");

export function compareColumns(units: SheetUnits): Computed[] {
  const difference = { measure: "difference", format: "0.0", align: "right" } as const;
  return [
    {
      key: "pattern",
      header: "phases",
      group: "Compared",
      width: 130,
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
      formula: `=IF(([pattern]="one hot")+([pattern]="balanced")>0,${eachRow(COMPARED, 3, "1.5*MAX(three)-SUM(three)/2")},"")`,
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
      formula: `=LET(most,${eachRow(COMPARED, 3, "MAX(three)-MIN(three)")},IF(most="","",IF([limit_reading]<>"","≥ "&TEXT(most,"0.0"),most)))`,
    },
    {
      key: "relative_rise",
      header: "relative rise",
      group: "Compared",
      width: 92,
      format: "0 %",
      align: "right",
      note: "Rise over similar as a share of the rise over air: to first order it does not depend on the load. For one hot phase.",
      formula: relativeRise(units),
    },
    {
      key: "limit_at_load",
      header: "limit at this load",
      group: "Limit",
      width: 92,
      measure: "temperature",
      format: "0.0",
      align: "right",
      note: "What a sound part may show: air + permitted rise × (current / rated)ⁿ, at most the permitted temperature of Assets.",
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
      formula: '=IF([share]="","",IF([limit_reading]<>"","≥ "&TEXT([share],"0 %"),[share]))',
    },
    {
      key: "rise_air",
      group: WORKING,
      width: 72,
      folded: true,
      ...difference,
      note: "The highest rise over air of the row.",
      formula: `=LET(warmest,${WARMEST},IF((warmest="")+([air_used]="")>0,"",warmest-[air_used]))`,
    },
  ];
}

const PATTERN_NOTE = (units: SheetUnits): string => {
  const kelvin = (metric: number): string => `${units.from("difference", metric)} ${units.label("difference")}`;
  return (
    `Balanced: within ${kelvin(3)} or 15 % of the rise, whichever is more (indirect view: ${kelvin(1)}); then it is load, not a joint, ` +
    "and the limit judges, else the air. Two hot: the middle one is nearer to the hottest than to the coolest, so no mean of two cool sisters is there to compare with."
  );
};

function pattern(units: SheetUnits): string {
  const limit = PHASES.map((phase) => `([${phase}]=[limit_reading])`).join("+");
  const isHottest = ofPhase("[hottest]", (phase) => `[${phase}]`);
  return (
    `=LET(count,BYROW(${COMPARED},LAMBDA(three,COUNT(three))),` +
    `highest,${eachRow(COMPARED, 3, "MAX(three)")},lowest,${eachRow(COMPARED, 3, "MIN(three)")},middling,${eachRow(COMPARED, 3, "MEDIAN(three)")},` +
    `rise,IF(${UNEQUAL},highest,IF([air_used]="",0,highest-[air_used])),` +
    `allowed,IF([view]="direct",IF(${is("rise", `>${units.from("difference", 20)}`)},0.15*rise,${units.from("difference", 3)}),${units.from("difference", 1)}),` +
    // What stands at a limit of the camera's range is no reference for anything.
    `unsure,IF([limit_reading]="",0,([reading_is]="at most")+(${limit}>1)+(${isHottest}<>[limit_reading])),` +
    `IF(count=0,"",IF((count<3)+unsure>0,"fewer than two sisters",` +
    `IF(ROUND(highest-lowest,6)<=allowed,"balanced",IF(middling>(highest+lowest)/2,"two hot","one hot")))))`
  );
}

function relativeRise(units: SheetUnits): string {
  const others = (three: string, hottest: string): string => `(${eachRow(three, 3, "SUM(three)")}-${hottest})/2`;
  const loads = `IF([view]="direct",[amps_hottest],""),IF([view]="direct",${others(typedPhases("amps_"), "[amps_hottest]")},"")`;
  const floor = units.from("difference", 10);
  return (
    `=IF(([pattern]<>"one hot")+([limit_reading]<>"")+([air_used]="")>0,"",` +
    `IFERROR(GREY.RELATIVE_RISE([t_hottest],${others(phases("t"), "[t_hottest]")},[air_used],${loads},${units.argument}),` +
    `IF([t_hottest]-[air_used]<${floor},"below ${floor} ${units.label("difference")}",IF(${UNEQUAL},"currents differ",""))))`
  );
}

function limitAtLoad(units: SheetUnits): string {
  return (
    `=LET(permitted,${fromAssets("permitted_rise")},rated,${fromAssets("rated_A")},` +
    `IF((permitted="")+(rated="")+([air_used]="")+([t_hottest]="")+([amps_hottest]="")+([view]<>"direct")>0,"",` +
    `IFERROR(GREY.LIMIT_AT_LOAD(permitted,[amps_hottest],rated,[air_used],${fromAssets("permitted_temp")},job_exponent,job_minimum_load,${units.argument}),` +
    `IF([amps_hottest]=0,"no current",IF([amps_hottest]/rated<job_minimum_load,TEXT([amps_hottest]/rated,"0 %")&" of rated: none","none at this load")))))`
  );
}
