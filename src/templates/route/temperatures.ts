/** Readings made into temperatures and rises over air. */
import type { Computed } from "./columns.js";
import { columnsOf, extreme, given, joined, MEASURED, number, PHASES, type Phase, UNREADABLE } from "./formula.js";
import { apparentOf } from "./uncertainty.js";
import type { SheetUnits } from "./sheet-units.js";
import { beyondCamera, unreadable, wrongReadings } from "./typed-wrong.js";

const WORKING = "Working";

/** Words before a number that stands for more, or less, than it says. */
export const LIMIT_MARK = `IF([reading_is]="at least","≥ ","≤ ")`;

export function temperatureColumns(units: SheetUnits): Computed[] {
  return [
    { key: "wrong_readings", group: WORKING, width: 120, folded: true, formula: joined(wrongReadings(units), "; ") },
    { key: "beyond_camera", group: WORKING, width: 120, folded: true, formula: joined(beyondCamera(units)) },
    {
      key: "unreadable",
      group: WORKING,
      width: 84,
      folded: true,
      format: "0",
      note: "Above 0 where a reading is no temperature or stands beyond the camera's range: nothing is said of the hottest phase then.",
      formula: `=IF(${MEASURED},${unreadable(units)}+([beyond_camera]<>""),"")`,
    },
    ...PHASES.map((phase) => corrected(phase, units)),
    {
      key: "limit_reading",
      group: WORKING,
      width: 84,
      folded: true,
      measure: "temperature",
      format: "0.0",
      note: "The reading that stands at a limit of the camera's range.",
      formula:
        `=IF(${UNREADABLE},"",IF([reading_is]="at least",${extreme("highest", columnsOf(""))},` +
        `IF([reading_is]="at most",${extreme("lowest", columnsOf(""))},"")))`,
    },
    {
      key: "t_high",
      group: WORKING,
      width: 72,
      folded: true,
      measure: "temperature",
      format: "0.0",
      formula: `=IF(${UNREADABLE},"",${extreme("highest", columnsOf("t_"))})`,
    },
    {
      key: "air_used",
      group: WORKING,
      width: 72,
      folded: true,
      measure: "temperature",
      format: "0.0",
      note: "The air the rise is over: the room's where both it and the enclosure's are noted.",
      formula: `=IF(([air_taken]="enclosure")*ISNUMBER([room_air]),[room_air],${number("[surrounding_air]")})`,
    },
    ...PHASES.map(correctedShown),
    airTransmission(columnsOf("").join("&"), units),
    ...PHASES.map(riseShown),
  ];
}

/** @param readings the row's readings, put together: "" where there is none */
export function airTransmission(readings: string, units: SheetUnits): Computed {
  return {
    key: "air_transmission",
    group: "Corrected",
    width: 92,
    format: "0.000",
    note: "From distance, path air and humidity of the row, else of the job, for the job's band.",
    formula:
      `=IF((${readings}="")+([path_air_used]="")>0,"",IFERROR(GREY.AIR_TRANSMISSION(` +
      `IF([distance]="",job_distance,[distance]),[path_air_used],IF([humidity]="",job_humidity,[humidity]),job_pressure,,job_band,${units.argument}),""))`,
  };
}

/** The corrected temperature as a number, "" where there is none; the columns that are read show it or say why not. */
export function corrected(phase: string, units: SheetUnits): Computed {
  const settings =
    `[emissivity_used],[reflected_used],[air_transmission],[path_air_used],[window_transmission],${given("[window_temp]")},` +
    `[window_reflectance],IF([outer_reflected]<>"",[outer_reflected],${given("job_reflected")}),,job_band,${units.argument}`;
  return {
    key: `t_${phase}`,
    group: WORKING,
    width: 72,
    folded: true,
    measure: "temperature",
    format: "0.0",
    note: "Corrected temperature for reckoning. None where a setting is missing or the emissivity is below 0.3. Readings corrected in the camera are taken back to apparent ones first.",
    formula:
      `=LET(reading,IF([${phase}]="","",${apparentOf(`[${phase}]`, units)}),` +
      `IF((reading="")+([settings_missing]<>"")+([air_transmission]="")+(ISNUMBER([emissivity_used])*([emissivity_used]<0.3))>0,"",` +
      `IFERROR(GREY.CORRECTED(reading,${settings}),"")))`,
  };
}

/** 1 where a reading stands at a limit; 0 of a column and "" of another are alike to the engine, so both are asked. */
function atLimit(phase: Phase): string {
  return `([limit_reading]<>"")*([${phase}]=[limit_reading])`;
}

function correctedShown(phase: Phase): Computed {
  return {
    key: `corrected_${phase}`,
    header: `corrected ${phase}`,
    group: "Corrected",
    width: 82,
    measure: "temperature",
    format: "0.0",
    align: "right",
    note: "Temperature of the object. ≥ or ≤ where the reading stands at a limit of the camera's range.",
    formula:
      `=IF([${phase}]="","",IF([t_${phase}]="",IF(([settings_missing]<>"")+([asset_id]="")>0,"",IF(ISNUMBER([emissivity_used])*([emissivity_used]<0.3),"qualitative","no answer")),` +
      `IF(${atLimit(phase)},${LIMIT_MARK}&TEXT([t_${phase}],"0.0"),[t_${phase}])))`,
  };
}

function riseShown(phase: Phase): Computed {
  const rise = `[t_${phase}]-[air_used]`;
  return {
    key: `rise_${phase}`,
    header: `rise over air, ${phase}`,
    group: "Rise over air",
    width: 76,
    measure: "difference",
    format: "0.0",
    align: "right",
    formula:
      `=IF(([t_${phase}]="")+([air_used]="")>0,"",` +
      `IF(${atLimit(phase)},${LIMIT_MARK}&TEXT(${rise},"0.0"),${rise}))`,
  };
}
