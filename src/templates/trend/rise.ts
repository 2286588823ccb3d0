/** A visit's temperatures, rise and uncertainty, and the rise as it would be at the common load. */
import type { Computed } from "../route/columns.js";
import { given } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { RELATION } from "./form.js";

const GROUP = "Rise";
const WORKING = "Working";
const degrees = { measure: "temperature", format: "0.0", align: "right" } as const;
const kelvin = { measure: "difference", format: "0.0", align: "right" } as const;

export function riseColumns(units: SheetUnits): Computed[] {
  const path = `trend_air_transmission,IF(trend_path_air="","",trend_path_air)`;
  const settings = (reading: string): string => `${reading},[emissivity],[reflected_used],${path}`;
  const call = (name: string, reading: string): string =>
    `GREY.${name}(${settings(reading)},,,,,,trend_band,${units.argument})`;
  /** As the readings are typed, and the other way round. */
  const temp = (reading: string): string =>
    `=IF(ISNUMBER([${reading}]),IF(trend_readings_are="apparent",IFERROR(${call("CORRECTED", `[${reading}]`)},""),[${reading}]),"")`;
  const apparent = (reading: string): string =>
    `=IF(ISNUMBER([${reading}]),IF(trend_readings_are="apparent",[${reading}],IFERROR(${call("APPARENT", `[${reading}]`)},"")),"")`;
  const atLoad = (exponent: string): string =>
    `=IF(ISNUMBER([rise])*ISNUMBER([current])*ISNUMBER(trend_load_used),IFERROR(GREY.RISE_AT_LOAD([rise],[current],trend_load_used,${exponent},trend_minimum_load),${exponent === "trend_exponent" ? '"not projected"' : '""'}),"")`;
  const folded = { group: WORKING, width: 92, folded: true } as const;
  return [
    {
      key: "load_share",
      header: "load share",
      group: GROUP,
      width: 72,
      format: "0 %",
      align: "right",
      note: "Current over the common load.",
      formula: '=IF(ISNUMBER([current])*ISNUMBER(trend_load_used),IFERROR([current]/trend_load_used,""),"")',
    },
    {
      key: "rise",
      group: GROUP,
      width: 72,
      ...kelvin,
      note: "As found, at the visit's own current.",
      formula:
        '=LET(rise,IF(ISNUMBER([temp_hot]),IF([over_used]="similar",IF(ISNUMBER([temp_reference]),[temp_hot]-[temp_reference],""),' +
        'IF([over_used]="ambient",IF(ISNUMBER([surrounding_air]),[temp_hot]-[surrounding_air],""),"")),""),' +
        'sign,IF([reading_is]="at least","≥ ",IF([reading_is]="at most","≤ ","")),IF(ISNUMBER(rise)*(sign<>""),sign&TEXT(rise,"0.0"),rise))',
    },
    {
      key: "at_load",
      header: "rise at the common load",
      group: GROUP,
      width: 100,
      ...kelvin,
      formula: atLoad("trend_exponent"),
    },
    {
      key: "u",
      header: "± U at the common load",
      group: GROUP,
      width: 92,
      ...kelvin,
      formula: `=IF(ISNUMBER([at_load]),IFERROR(${uncertainty(units, path)}*(trend_load_used/[current])^trend_exponent,""),"")`,
      note: "Of the rise as found by the half-widths of Point; it grows with the rise when that is brought to the common load.",
    },
    { key: "temp_hot", header: "hot, corrected", ...folded, ...degrees, formula: temp("hot") },
    { key: "temp_reference", header: "reference, corrected", ...folded, ...degrees, formula: temp("reference") },
    { key: "apparent_hot", header: "hot, apparent", ...folded, ...degrees, formula: apparent("hot") },
    { key: "apparent_reference", header: "reference, apparent", ...folded, ...degrees, formula: apparent("reference") },
    {
      key: "at_load_low",
      header: "at load, exponent low",
      ...folded,
      ...kelvin,
      formula: atLoad("trend_exponent_low"),
    },
    {
      key: "at_load_high",
      header: "at load, exponent high",
      ...folded,
      ...kelvin,
      formula: atLoad("trend_exponent_high"),
    },
  ];
}

function uncertainty(units: SheetUnits, path: string): string {
  const [transmission = "", air = ""] = path.split(/,(.*)/s);
  const each = (one: string): string => `IF([typed]=0,"",${one})`;
  const row = (reading: string): string =>
    `HSTACK(${[`[${reading}]`, "[emissivity]", "[reflected_used]", each(transmission), each(air)].join(",")})`;
  const camera = `GREY.CAMERA_UNCERTAINTY([apparent_hot],${given("trend_accuracy")},${given("trend_accuracy_percent")},${units.argument})`;
  const u = `HSTACK(${camera},${each("trend_emissivity_half/SQRT(3)")},${each("trend_reflected_half/SQRT(3)")})`;
  const call = (reference: string, relation: string): string =>
    `GREY.RISE_UNCERTAINTY(${row("apparent_hot")},${reference},${u},${relation},trend_coverage,trend_band,${units.argument})`;
  return `IF([over_used]="similar",${call(row("apparent_reference"), RELATION)},${call("[surrounding_air]", '"air by thermometer"')})`;
}
