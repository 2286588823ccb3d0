/** Readings made into temperatures, and those into what is graded: over like, over the baseline, share of a limit. */
import type { Computed } from "../route/columns.js";
import { fromAssets, given, is, joined, number } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { airTransmission, corrected, LIMIT_MARK } from "../route/temperatures.js";
import { beyondCamera, unreadable, wrongReadings } from "../route/typed-wrong.js";

const WORKING = "Working";
const READINGS = ["reading", "reference"] as const;
export const MEASURED = '([reading]<>"")';

/** Classes of winding insulation, °C: never a frame's limit, though some write them there (NEMA MG 1, as it is quoted). */
const WINDING_CLASSES = [105, 130, 155, 180];

export function compareColumns(units: SheetUnits): Computed[] {
  const difference = { measure: "difference", format: "0.0", align: "right" } as const;
  const temperature = { measure: "temperature", format: "0.0", align: "right" } as const;
  const working = { group: WORKING, width: 76, folded: true } as const;
  const marked = (value: string, format: string): string =>
    `=IF(${value}="","",IF([limit_reading]<>"",${LIMIT_MARK}&TEXT(${value},"${format}"),${value}))`;
  return [
    { key: "wrong_readings", ...working, formula: joined(wrongReadings(units, READINGS), "; ") },
    { key: "beyond_camera", ...working, formula: joined(beyondCamera(units, READINGS)) },
    {
      key: "unreadable",
      ...working,
      format: "0",
      note: "Above 0 where a reading is no temperature or stands beyond the camera's range.",
      formula: `=IF(${MEASURED},${unreadable(units, READINGS)}+([beyond_camera]<>""),"")`,
    },
    ...READINGS.map((key) => corrected(key, units)),
    {
      key: "limit_reading",
      ...working,
      ...temperature,
      note: "The reading that stands at a limit of the camera's range.",
      formula: `=IF(([reading_is]="at least")+([reading_is]="at most")>0,${number("[reading]")},"")`,
    },
    {
      key: "usable",
      ...working,
      ...temperature,
      note: "The corrected temperature, where it may be a reference for another row: no limit of the camera's range.",
      formula: `=IF(([t_reading]="")+([limit_reading]<>"")+${is("[unreadable]", ">0")}>0,"",[t_reading])`,
    },
    ...READINGS.map((key) => shownColumn(key)),
    airTransmission("[reading]", units),
    {
      key: "rise_air",
      header: "rise over air",
      group: "Rise over air",
      width: 76,
      ...difference,
      note: "It has no grade of its own: no standard has a table for it.",
      formula: marked("[over_air]", "0.0"),
    },
    {
      key: "over_air",
      ...working,
      ...difference,
      formula: `=IF(([t_reading]="")+(${number("[surrounding_air]")}=""),"",[t_reading]-[surrounding_air])`,
    },
    { key: "like_id", ...working, formula: `=${fromAssets("like")}` },
    {
      key: "like_load",
      ...working,
      unit: "%",
      format: "0",
      note: "Process load in the row of the like point.",
      formula: `=IF([like_id]="","",XLOOKUP([like_id],[asset_id],${given("[process_load]")},""))`,
    },
    {
      key: "t_like",
      ...working,
      ...temperature,
      note: "The row's own reference, else the temperature in the row of the like point.",
      formula: '=IF([reference]<>"",[t_reference],IF([like_id]="","",XLOOKUP([like_id],[asset_id],[usable],"")))',
    },
    {
      key: "similar",
      ...working,
      ...difference,
      formula: '=IF(([t_reading]="")+([t_like]=""),"",[t_reading]-[t_like])',
    },
    {
      key: "compared_with",
      header: "compared with",
      group: "Compared",
      width: 130,
      formula: `=IF([t_reading]="","",IF([t_like]="",IF([like_id]="","","no reading of "&[like_id]),IF([reference]<>"","its reference",[like_id])))`,
    },
    {
      key: "rise_similar",
      header: "rise over like",
      group: "Compared",
      width: 76,
      ...difference,
      formula: marked("[similar]", "0.0"),
    },
    {
      key: "baseline",
      ...working,
      ...difference,
      formula: `=LET(was,${fromAssets("baseline_rise")},IF(([over_air]="")+(${number("was")}=""),"",[over_air]-was))`,
    },
    {
      key: "rise_baseline",
      header: "rise over baseline",
      group: "Compared",
      width: 84,
      ...difference,
      note: "Rise over air less the rise over air of the baseline: what air and season do is out of it, what load does is not.",
      formula: marked("[baseline]", "0.0"),
    },
    {
      key: "limit_used",
      header: "limit",
      group: "Limit",
      width: 260,
      measure: "temperature",
      format: "0",
      align: "right",
      note: "Your own, where it is one of the surface that is seen.",
      formula: limitUsed(units),
    },
    {
      key: "share",
      ...working,
      format: "0 %",
      formula: `=IF(([t_reading]="")+(ISNUMBER([limit_used])=FALSE)+(${number("[surrounding_air]")}=""),"",IFERROR(GREY.SHARE_OF_LIMIT([t_reading],[limit_used],[surrounding_air],${units.argument}),""))`,
    },
    {
      key: "share_of_limit",
      header: "share of limit",
      group: "Limit",
      width: 64,
      format: "0 %",
      align: "right",
      note: "Of the rise over air that the limit permits.",
      formula: marked("[share]", "0 %"),
    },
    {
      key: "hours_greased",
      header: "since greasing",
      group: "Greasing",
      width: 84,
      unit: "h",
      format: "0",
      align: "right",
      formula:
        '=IF(ISNUMBER([last_greased])*ISNUMBER(job_date),ROUND((job_date+IF(ISNUMBER([time]),[time],0)-[last_greased])*24,1),"")',
    },
    {
      key: "fresh",
      ...working,
      format: "0",
      note: "1 where the grease is fresh.",
      formula: `=IF(${is("[hours_greased]", ">=0")}*${is("[hours_greased]", "<job_grease_hours")},1,0)`,
    },
  ];
}

/** The limit as a number, or in words why it is not used. */
function limitUsed(units: SheetUnits): string {
  const isClass = WINDING_CLASSES.map((celsius) => `(limit=${units.from("temperature", celsius)})`).join("+");
  return (
    `=LET(listed,${fromAssets("permitted_temp")},limit,${number("listed")},kind,${fromAssets("limit_is_of")},point,${fromAssets("point")},` +
    `IF(listed="","",IF(limit="","no number in Assets",IF(kind="winding","a frame is never judged by its winding",` +
    `IF((point="stator frame")*(${isClass}>0),limit&" is a winding's class: no limit of a frame",` +
    'IF(kind="","not used: whose limit is it? see limit_is_of",IF(kind="this surface",limit,"not used: "&kind&" is hotter than its housing")))))))'
  );
}

function shownColumn(key: (typeof READINGS)[number]): Computed {
  const mark =
    key === "reading" ? `IF([limit_reading]="",[t_reading],${LIMIT_MARK}&TEXT([t_reading],"0.0"))` : `[t_${key}]`;
  return {
    key: `corrected_${key}`,
    header: key === "reading" ? "corrected" : "corrected reference",
    group: "Corrected",
    width: 84,
    measure: "temperature",
    format: "0.0",
    align: "right",
    note: "Temperature of the surface. ≥ or ≤ where the reading stands at a limit of the camera's range.",
    formula:
      `=IF([${key}]="","",IF([t_${key}]="",IF(([settings_missing]<>"")+([asset_id]="")>0,"",` +
      `IF(ISNUMBER([emissivity_used])*([emissivity_used]<0.3),"qualitative","no answer")),${mark}))`,
  };
}
