/** Reports of an electrical route. */
import { PHASES } from "../route/formula.js";
import { known, type ReportKind, settingsShown } from "./kind.js";

const over = (prefix: string): string[] => PHASES.map((phase) => `[${prefix}${phase}]`);
const degrees = (units: { label: (measure: "temperature") => string }): string => units.label("temperature");

export const electricalReport: ReportKind = {
  item: "assets",
  named: ["component"],
  riseJudged: 'IF([governs]="over similar",[similar],[rise_air])',
  judged: (units) =>
    'IF([governs]="share of limit",IF(ISNUMBER([share_of_limit]),TEXT([share_of_limit],"0 %"),[share_of_limit])&" of its limit",IF(ISNUMBER([rise_judged]),' +
    'IF(IF([governs]="over similar",[limit_reading]<>"",[reading_is]="at least"),"≥ ","")&TEXT([rise_judged],"0.0")&' +
    `" ${units.label("difference")} "&IF([governs]="","over air",[governs]),"not known"))`,
  readings: {
    columns: [...PHASES],
    rows: [
      { label: "reading", unit: degrees, cells: over("") },
      { label: "corrected", unit: degrees, cells: over("corrected_") },
      { label: "rise over air", unit: (units) => units.label("difference"), cells: over("rise_") },
      { label: "current", unit: () => "A", cells: over("amps_").map((one) => `${one}&""`) },
    ],
  },
  facts: (units) => {
    const kelvin = units.label("difference");
    return [
      {
        label: "rise judged, ± U",
        shown: `${electricalReport.judged(units)}&IF([grade_found_u]="","","; "&[grade_found_u])`,
      },
      {
        label: "compared",
        shown: '[pattern]&IF([hottest]="","",", hottest: "&[hottest])&IF([finding]="","","; "&[finding])',
      },
      {
        label: "surrounding air",
        shown: `${known("[air_used]", "0.0")}&" ${degrees(units)}, "&IF([air_taken]="","room",IF(([air_taken]="enclosure")*ISNUMBER([room_air]),"room; enclosure "&TEXT([surrounding_air],"0.0")&" ${degrees(units)}",[air_taken]))`,
      },
      {
        label: "limit at this load",
        shown: `IF([limit_at_load]="","not known",IF(ISNUMBER([limit_at_load]),TEXT([limit_at_load],"0.0")&" ${degrees(units)}; share of it "&IF(ISNUMBER([share_of_limit]),TEXT([share_of_limit],"0 %"),[share_of_limit]),[limit_at_load]))`,
      },
      {
        label: "load",
        shown:
          'IF(ISNUMBER([load_share]),TEXT([load_share],"0 %")&" of "&[expected_max]&" A expected","share not known")&IF([currents]="","",IF(LEFT([currents],2)="no","; ","; currents ")&[currents])',
      },
      {
        label: "projected, advice",
        shown: `IF([grade_full]="","not projected",[grade_full]&IF([full_low]="","","; rise "&IF(ISNUMBER([full_low]),TEXT([full_low],"0.0"),[full_low])&IF(ISNUMBER([full_high])," to "&TEXT([full_high],"0.0"),"")&" ${kelvin}"))`,
      },
    ];
  },
  load: 'IF(ISNUMBER([load_share]),TEXT([load_share],"0 %"),"")',
  projected: 'IF([grade_number]="","",[grade_full])',
  settings: settingsShown,
  cautions: ["Arithmetic only", "Keep covers and doors closed", "Grades are guidance", "Immediate danger"],
  followUp: { references: ["similar", "air"], air: "air", loadUnit: "A", projects: true },
};
