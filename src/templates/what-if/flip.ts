/** The value of the varied setting at which the rise meets the edges of its grade, the others as given. */
import type { Computed } from "../route/columns.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { grade, settings } from "./calls.js";
import { TEMPERATURES } from "./settings.js";

const GROUP = "Where the grade flips";

export function flipColumns(units: SheetUnits): Computed[] {
  const edge = (key: string, show: "lower" | "upper", header: string): Computed => ({
    key,
    header,
    group: GROUP,
    width: 76,
    folded: true,
    measure: "difference",
    format: "General",
    formula: `=IF(ISNUMBER([rise]),IFERROR(${grade("[rise]", show, units)},""),"")`,
  });
  const value = (key: string, of: string, header: string): Computed => ({
    key,
    header,
    group: GROUP,
    width: 92,
    align: "right",
    format: "General",
    note: "Of the varied setting, in the unit of from and to; the nearest to the one given.",
    formula: settingFor(of, units),
  });
  return [
    value("flip_down", "edge_below", "next lower grade at"),
    value("flip_up", "edge_above", "next higher grade at"),
    {
      key: "flips",
      header: "in words",
      group: GROUP,
      width: 360,
      formula: inWords(units),
      note: "The rise at the edge of its grade, and the setting that would make it so.",
    },
    edge("edge_below", "lower", "edge below"),
    edge("edge_above", "upper", "edge above"),
  ];
}

/** A setting that both readings share moves both; the air, or a reading alone, leaves the reference where it is. */
function settingFor(edge: string, units: SheetUnits): string {
  const end = `${settings().join(",")},whatif_band,${units.argument}`;
  const alone = `GREY.SETTING_FOR(IF([over_used]="similar",[temp_reference],[air_used])+[${edge}],whatif_varied,[apparent],${end})`;
  const shared = `GREY.SETTING_FOR_RISE([${edge}],whatif_varied,[apparent],[reference_apparent],${end})`;
  return (
    `=IF(ISNUMBER([${edge}]),IF(whatif_varied="","",LET(found,` +
    `IF(([over_used]="similar")*(whatif_varied<>"apparent"),IFERROR(${shared},""),IFERROR(${alone},"")),` +
    'IF(ISNUMBER(found),ROUND(found,4),""))),"")'
  );
}

function inWords(units: SheetUnits): string {
  const isTemperature = `(${TEMPERATURES.map((key) => `(whatif_varied="${key}")`).join("+")}>0)`;
  const shown = (value: string): string =>
    `IF(${isTemperature},TEXT(${value},"0.0")&" ${units.label("temperature")}",TEXT(${value},"0.000"))`;
  const within =
    "(value>=IF(whatif_from<whatif_to,whatif_from,whatif_to))*(value<=IF(whatif_from<whatif_to,whatif_to,whatif_from))";
  const one = (edge: string, value: string): string =>
    `IF(ISNUMBER([${edge}]),"the edge of "&ROUND([${edge}],2)&" ${units.label("difference")} "&` +
    `IF(ISNUMBER([${value}]),LET(value,[${value}],"at "&${shown("value")}&` +
    `IF(ISNUMBER(whatif_from)*ISNUMBER(whatif_to),IF(${within},", within the span",", outside the span"),"")),` +
    '"at no value")&"; ","")';
  return (
    `=IF(ISNUMBER([rise])*(whatif_varied<>""),LET(all,${one("edge_below", "flip_down")}&${one("edge_above", "flip_up")},` +
    'IF(all="","",LEFT(all,LEN(all)-2))),"")'
  );
}
