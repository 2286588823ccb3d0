/** Reports of a mechanical route. */
import { known, type ReportKind, settingsShown, text } from "./kind.js";

const degrees = (units: { label: (measure: "temperature") => string }): string => units.label("temperature");

export const mechanicalReport: ReportKind = {
  item: "points",
  named: ["machine", "point"],
  riseJudged: 'IF([governs]="over like",[similar],IF([governs]="over baseline",[baseline],[over_air]))',
  judged: (units) =>
    `IF([governs]="share of limit",${text("[share_of_limit]", "0 %")}&" of its limit",IF(ISNUMBER([rise_judged]),` +
    'IF([reading_is]="at least","≥ ","")&TEXT([rise_judged],"0.0")&' +
    `" ${units.label("difference")} "&IF([governs]="","over air",[governs]),"not known"))`,
  readings: {
    columns: ["point", "reference"],
    rows: [
      { label: "reading", unit: degrees, cells: ["[reading]", "[reference]"] },
      {
        label: "corrected",
        unit: degrees,
        cells: ["[corrected_reading]", 'IF([reference]="",[t_like],[corrected_reference])'],
      },
    ],
  },
  facts: (units) => {
    const kelvin = units.label("difference");
    const rise = (key: string): string => `IF([${key}]="","not known",${text(`[${key}]`)}&" ${kelvin}")`;
    return [
      {
        label: "rise judged, ± U",
        shown: `${mechanicalReport.judged(units)}&IF([grade_found_u]="","","; "&[grade_found_u])`,
      },
      {
        label: "rise over like",
        shown: `${rise("rise_similar")}&IF([compared_with]="","","; "&[compared_with])`,
      },
      { label: "rise over baseline", shown: rise("rise_baseline") },
      {
        label: "rise over air",
        shown: `${rise("rise_air")}&"; air "&${known("[surrounding_air]", "0.0")}&" ${degrees(units)}"`,
      },
      {
        label: "limit",
        shown: `IF([limit_used]="","none",IF(ISNUMBER([limit_used]),TEXT([limit_used],"0")&" ${degrees(units)}; share of it "&${text("[share_of_limit]", "0 %")},[limit_used]))`,
      },
      { label: "process load", shown: `${known("[process_load]", "0")}&" %"` },
      { label: "since greasing", shown: 'IF(ISNUMBER([hours_greased]),TEXT([hours_greased],"0")&" h","not known")' },
      { label: "projected, advice", shown: 'IF([exception_rank]="","","not projected")' },
    ];
  },
  load: 'IF(ISNUMBER([process_load]),TEXT([process_load],"0")&" %","")',
  projected: 'IF([grade_number]="","","not projected")',
  settings: settingsShown,
  cautions: ["Arithmetic only", "Grades are guidance", "Moving machinery", "Immediate danger"],
  followUp: { references: ["like", "baseline", "air"], air: "air", loadUnit: "%", projects: false },
};
