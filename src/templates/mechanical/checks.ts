/** What a row of a mechanical route needs, what stops a grade, and what calls for care: everything in words. */
import { ownCriteriaFail } from "../common/criteria.js";
import type { Computed } from "../route/columns.js";
import { clause, fromAssets, is, joined, number, ofNumbers } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { AIR } from "../route/ranges.js";
import { doubtfulTyping, inUnits, notAChoice, wrong, wrongSettings } from "../route/typed-wrong.js";
import { MEASURED } from "./compare.js";
import { POINT_READING_COLUMNS } from "./typed.js";

const WORKING = "Working";
const UNKNOWN = '([location]="not in Assets")';
const missing = (condition: string, words: string): string => clause(condition, `"${words}"`, ", ");
const choices = (key: string): string => notAChoice(key, POINT_READING_COLUMNS);

export function checkColumns(units: SheetUnits): Computed[] {
  const working = { group: WORKING, width: 120, folded: true } as const;
  return [
    {
      key: "spot_margin",
      header: "spot margin",
      group: "Checks",
      width: 76,
      unit: "× 3 pixels",
      format: "0.0",
      note: "Size of the target in Assets over 3 pixels of the camera at this distance. Below 1 the reading is mixed with what lies around.",
      formula:
        `=LET(listed,${fromAssets("target_size")},size,${number("listed")},IF(${MEASURED}*(size<>"")*(job_ifov<>""),IFERROR(` +
        `size/(3*job_ifov*IF([distance]="",job_distance,[distance])*${units.label("size") === "mm" ? 1 : 0.012}),""),""))`,
    },
    { key: "out_of_range", ...working, note: "Typed values that cannot be.", formula: joined(outOfRange(units), "; ") },
    { key: "stops", ...working, note: "Why the row has no grade.", formula: joined(stops(units)) },
    { key: "needs", ...working, formula: needs() },
    {
      key: "withheld",
      ...working,
      note: "What the row lacks for a grade, where it has a reading.",
      formula: withheld(),
    },
    { key: "cautions", ...working, formula: joined(cautions(units)) },
    doubtfulTyping(["time"]),
    {
      key: "remarks",
      header: "needs, speaks against it",
      group: "Checks",
      width: 640,
      note: "What is missing, what stops a grade, and what calls for care.",
      formula: joined([
        choices("status"),
        clause('([status]="not inspected")*([reason]<>"")', '"not inspected: "&[reason]'),
        clause('([status]="partly seen")*([reason]<>"")', '"partly seen: "&[reason]'),
        clause('[needs]<>""', '"needs: "&[needs]'),
        clause('[stops]<>""', "[stops]"),
        clause('[cautions]<>""', "[cautions]"),
        clause('[typing]<>""', "[typing]"),
      ]),
    },
  ];
}

function outOfRange(units: SheetUnits): string[] {
  return [
    clause('[wrong_readings]<>""', "[wrong_readings]"),
    wrong("[process_load]", [0, 150], '"process_load"'),
    wrong("[last_greased]", [1, 2_958_465], '"last_greased"'),
    wrong("[speed]", [0, 200_000], '"speed"'),
    wrong("[surrounding_air]", inUnits(AIR, units), '"surrounding_air"'),
    ...wrongSettings(units),
    choices("reading_is"),
    choices("air_taken"),
  ];
}

function stops(units: SheetUnits): string[] {
  return [
    clause('[out_of_range]<>""', "[out_of_range]"),
    clause('[beyond_camera]<>""', "[beyond_camera]"),
    clause(
      `${MEASURED}*${ownCriteriaFail(["job_criteria", "job_criteria_limit"], units)}`,
      '"own criteria cannot be used: see the sheet Criteria"',
    ),
    clause(`${MEASURED}*([reading_is]="at most")`, '"only known to be at most so hot: no grade"'),
    clause(`${MEASURED}*(([view]="indirect")+([view]="enclosed"))`, '[view]&" view: what is seen has no grade"'),
    clause(
      `${MEASURED}*${is("[emissivity_used]", "<0.3")}`,
      '"qualitative only: emissivity "&TEXT([emissivity_used],"0.00")',
    ),
    clause(
      `${MEASURED}*([out_of_range]="")*([path_air_used]<>"")*([air_transmission]="")`,
      '"no transmission of air for this distance, air and band"',
    ),
    clause(
      '([corrected_reading]="no answer")*([out_of_range]="")*([air_transmission]<>"")',
      '"no answer: the reading is colder than what it would reflect"',
    ),
    clause(is("[spot_margin]", "<1"), '"target smaller than 3 × 3 pixels at this distance"'),
    clause(
      is("[wind]", `>${units.from("speed", 7)}`),
      `"wind "&TEXT([wind],"0.0")&" ${units.label("speed")}: no grade"`,
    ),
    clause(
      `${MEASURED}*${ofNumbers(["job_calibrated", "job_calibration_days", "job_date"], "job_calibrated+job_calibration_days<job_date")}`,
      '"the camera\'s calibration had run out"',
    ),
  ];
}

function needs(): string {
  const typed = POINT_READING_COLUMNS.filter(({ folded }) => folded !== true).map(({ key }) => `([${key}]<>"")`);
  const inspected = '([status]<>"not inspected")';
  const clauses = [
    missing('typed*([asset_id]="")', "asset_id"),
    missing('typed*([status]="")', "status"),
    missing('typed*([time]="")', "time"),
    missing('(([status]="not inspected")+([status]="partly seen"))*([reason]="")', "reason"),
    missing('exception*([thermal_image]="")', "thermal image"),
    missing('exception*([reading]="")', "reading"),
    missing('numbers*([surrounding_air]="")', "surrounding air"),
    missing('numbers*([process_load]="")', "process load"),
    clause('numbers*([settings_missing]<>"")', "[settings_missing]", ", "),
    missing('numbers*([last_greased]<>"")*(job_date="")', "survey date in Job"),
    missing(
      '(LEFT([grade_found],1)="4")*([told_to]="")',
      "told_to: a grade 4 is told to the person responsible at once",
    ),
  ];
  return joined(clauses, ", ", [
    ["typed", `IF(${typed.join("+")}>0,1,0)`],
    ["exception", '([status]="exception")*1'],
    ["numbers", `${inspected}*(exception+${MEASURED}>0)`],
  ]);
}

function withheld(): string {
  const nothing = '([similar]&[baseline]&[share]="")';
  return joined(
    [
      missing(`${MEASURED}*([asset_id]="")`, "asset_id"),
      missing(`${MEASURED}*${UNKNOWN}`, "its asset in Assets"),
      clause(`${MEASURED}*(1-${UNKNOWN})*([settings_missing]<>"")`, "[settings_missing]", ", "),
      missing(`${MEASURED}*([surrounding_air]="")*${nothing}`, "surrounding air"),
      // A grade wants a reference; without one it is only a temperature.
      missing(
        `([t_reading]<>"")*([surrounding_air]<>"")*(1-${UNKNOWN})*${nothing}`,
        "a like point, a baseline or a limit of the surface",
      ),
    ],
    ", ",
  );
}

function cautions(units: SheetUnits): string[] {
  const kelvin = units.label("difference");
  const apart = (other: string): string =>
    ofNumbers(["[process_load]", other], `ABS([process_load]-${other})>job_load_apart`);
  const base = fromAssets("baseline_load");
  const usual = fromAssets("usual_speed");
  return [
    clause(UNKNOWN, '[asset_id]&" is not in Assets"'),
    clause(
      `${MEASURED}*(job_calibrated<>"")*(1-ISNUMBER(job_calibrated)*ISNUMBER(job_calibration_days))`,
      '"calibration cannot be told: Job wants a date and days"',
    ),
    clause('[limit_reading]<>""', `"reading at the camera's limit: take it again in the next range"`),
    clause(
      `${MEASURED}*([grade_similar]="colder than its like")`,
      '"colder than its like: which of the two runs, and which is the sound one?"',
    ),
    clause(
      `([stops]="")*${is("[baseline]", `<-${units.from("difference", 3)}`)}`,
      '"colder than its baseline: load, air or position differ"',
    ),
    clause(`(LEFT([compared_with],10)="no reading")`, '[compared_with]&": nothing to compare with"'),
    clause(`(ISNUMBER([limit_used])=FALSE)*([limit_used]<>"")*${MEASURED}`, '"limit "&[limit_used]'),
    clause(
      "([fresh]=1)*ISNUMBER([reading])",
      `"greased "&TEXT([hours_greased],"0")&" h before: up to "&job_grease_rise&" ${kelvin} may be grease, look again"`,
    ),
    clause(is("[hours_greased]", "<0"), '"greased after the image: check both times"'),
    clause(
      `([reference]="")*${apart("[like_load]")}`,
      '"load "&[process_load]&" % against "&[like_load]&" % of its like: compare with care"',
    ),
    clause(
      ofNumbers(["[process_load]", base, "[baseline]"], `ABS([process_load]-${base})>job_load_apart`),
      `"load "&[process_load]&" % against "&${base}&" % at its baseline: compare with care"`,
    ),
    clause(ofNumbers(["[speed]", usual], `ABS([speed]-${usual})>0.1*${usual}`), '"speed is not the usual one"'),
    clause(is("[process_load]", "<40") + `*${MEASURED}`, '[process_load]&" % load: a small rise proves nothing"'),
    clause(
      `${MEASURED}*${is("[emissivity_used]", "<0.6")}*${is("[emissivity_used]", ">=0.3")}`,
      '"emissivity "&TEXT([emissivity_used],"0.00")&": wide uncertainty"',
    ),
    clause(
      `${MEASURED}*(job_reflected_method="assumed")*([reflected]="")*(1-([air_taken]="outdoors"))*${is("[emissivity_used]", "<0.91")}`,
      '"reflected is assumed"',
    ),
    clause(`${is("[spot_margin]", ">=1")}*${is("[spot_margin]", "<1.5")}`, '"target hardly larger than 3 × 3 pixels"'),
    clause(
      `${is("[wind]", `>${units.from("speed", 2)}`)}*${is("[wind]", `<=${units.from("speed", 7)}`)}`,
      `"wind "&TEXT([wind],"0.0")&" ${units.label("speed")}"&IF([wind]>${units.from("speed", 5)},": doubtful","")`,
    ),
    clause(`${MEASURED}*${is("[hours_since_sun]", "<2")}`, '"sun within 2 h"'),
    clause(
      `${is("[minutes_since_load_change]", ">=0")}*(${fromAssets("settling")}<>"")*([minutes_since_load_change]<${fromAssets("settling")})`,
      '"load changed "&[minutes_since_load_change]&" min before: not settled"',
    ),
    clause(
      '([status]="no exception")*(LEFT([grade_found],1)<>"0")*(MID([grade_found],3,4)="of 4")',
      '"marked no exception"',
    ),
  ];
}
