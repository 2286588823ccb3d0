/** What calls for care on a row that has numbers. */
import { criteriaOf } from "../common/criteria.js";
import { clause, fromAssets, is, MEASURED, ofNumbers } from "./formula.js";
import type { SheetUnits } from "./sheet-units.js";

export function cautions(units: SheetUnits): string[] {
  const difference = (metric: number): number => units.from("difference", metric);
  const speed = (metric: number): number => units.from("speed", metric);
  const kelvin = units.label("difference");
  const outdoors = '([air_taken]="outdoors")';
  const nearAir = ofNumbers(
    ["[reflected_used]", "[surrounding_air]"],
    `ABS([reflected_used]-[surrounding_air])<${difference(5)}`,
  );
  const airsApart = ofNumbers(
    ["[rise_air]", "[surrounding_air]", "[room_air]"],
    `ABS([surrounding_air]-[room_air])>${difference(5)}`,
  );
  const belowReflected = ofNumbers(["[t_high]", "[reflected_used]"], `[t_high]<[reflected_used]-${difference(2)}`);
  return [
    clause('[location]="not in Assets"', '[asset_id]&" is not in Assets"'),
    clause(
      `${MEASURED}*(job_calibrated<>"")*(1-ISNUMBER(job_calibrated)*ISNUMBER(job_calibration_days))`,
      '"calibration cannot be told: Job wants a date and days"',
    ),
    clause('[limit_reading]<>""', `"reading at the camera's limit: take it again in the next range"`),
    clause(`([status]="exception")*${belowReflected}`, '"colder than what it reflects: check reflected and reading"'),
    clause(
      `(LEFT([grade_air],6)="colder")`,
      '"colder than its reference: air taken elsewhere, open or unloaded phase, wet or sky-cooled"',
    ),
    clause(
      '([pattern]="two hot")*([rise_lowest]<>"")',
      `"two phases hot: "&IF(ISNUMBER([rise_lowest]),TEXT([rise_lowest],"0.0"),[rise_lowest])&" ${kelvin} over the third, not graded"`,
    ),
    clause(
      '([pattern]="one hot")*(LEFT([grade_limit],1)>LEFT([grade_found],1))',
      '"at "&TEXT([share],"0 %")&" of its limit: "&[grade_limit]',
    ),
    clause('[imbalance]="no current"', "[currents]"),
    clause(is("[imbalance]", ">0.05"), '"currents "&[currents]'),
    clause(
      `${MEASURED}*${is("[load_share]", "<job_minimum_load")}`,
      'TEXT([load_share],"0 %")&" load: a small rise proves nothing"',
    ),
    clause(
      `${MEASURED}*${is("[load_share]", ">=job_minimum_load")}*${is("[load_share]", "<0.5")}`,
      'TEXT([load_share],"0 %")&" load: light"',
    ),
    clause(
      is("[load_share]", ">1.2"),
      'TEXT([load_share],"0 %")&" of the expected load: check current and asset list"',
    ),
    clause(
      `${MEASURED}*${is("[emissivity_used]", "<0.6")}*${is("[emissivity_used]", ">=0.3")}`,
      '"emissivity "&TEXT([emissivity_used],"0.00")&": wide uncertainty"',
    ),
    clause(
      `${MEASURED}*(job_reflected_method="assumed")*([reflected]="")*(1-${outdoors})*${is("[emissivity_used]", "<0.91")}`,
      '"reflected is assumed"',
    ),
    clause(
      `${MEASURED}*${outdoors}*${is("[emissivity_used]", "<0.95")}*${nearAir}`,
      '"reflected close to the air, outdoors: was it the sky?"',
    ),
    clause(is("[spot_margin]", ">=1") + "*" + is("[spot_margin]", "<1.5"), '"target hardly larger than 3 × 3 pixels"'),
    clause(
      `${is("[wind]", `>${speed(2)}`)}*${is("[wind]", `<=${speed(7)}`)}`,
      `"wind "&TEXT([wind],"0.0")&" ${units.label("speed")}"&IF([wind]>${speed(5)},": doubtful","")`,
    ),
    clause(`([view]="direct")*${is("[hours_since_sun]", "<2")}`, '"sun within 2 h"'),
    clause(
      `${is("[minutes_since_load_change]", ">=0")}*(${fromAssets("settling")}<>"")*([minutes_since_load_change]<${fromAssets("settling")})`,
      '"load changed "&[minutes_since_load_change]&" min before: not settled"',
    ),
    clause(
      ofNumbers(["[amps_time]", "[time]"], "([amps_time]<1)*([time]<1)*ROUND(ABS([amps_time]-[time])*1440,3)>10"),
      '"current read "&ROUND(ABS([amps_time]-[time])*1440,0)&" min from the image"',
    ),
    clause(
      `([air_taken]="enclosure")*${airsApart}`,
      `"over the enclosure's air "&TEXT([rise_air]+[room_air]-[surrounding_air],"0.0")&" ${kelvin}"&${overEnclosure(units)}`,
    ),
    clause(
      `([status]="no exception")*(LEFT([grade_found],1)<>"0")*(MID([grade_found],3,4)="of 4")`,
      '"marked no exception"',
    ),
  ];
}

/** The room's air governs; what the enclosure's would have given stands beside it. */
function overEnclosure(units: SheetUnits): string {
  const graded = `GREY.GRADE([rise_air]+[room_air]-[surrounding_air],"ambient",${criteriaOf("job_criteria")},"direct","grade",,${units.argument})`;
  return `IFERROR(": grade "&${graded}&" of 4, the room's governs","")`;
}
