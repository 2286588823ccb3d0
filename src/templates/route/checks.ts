/** What a row still needs, what stops a grade, and what speaks against the numbers: everything in words. */
import { ownCriteriaFail } from "../common/criteria.js";
import type { Computed } from "./columns.js";
import { cautions } from "./cautions.js";
import { clause, fromAssets, is, joined, MEASURED, ofNumbers, PHASES } from "./formula.js";
import { gradeNeeds, needs } from "./needs.js";
import type { SheetUnits } from "./sheet-units.js";
import { doubtfulTyping, notAChoice, outOfRange } from "./typed-wrong.js";

const WORKING = "Working";
export function checkColumns(units: SheetUnits): Computed[] {
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
        `=LET(size,${fromAssets("target_size")},IF(${MEASURED}*(size<>"")*(job_ifov<>""),IFERROR(` +
        `size/(3*job_ifov*IF([distance]="",job_distance,[distance])*${inSize(units)}),""),""))`,
    },
    {
      key: "out_of_range",
      group: WORKING,
      width: 120,
      folded: true,
      note: "Typed values that cannot be.",
      formula: joined(outOfRange(units), "; "),
    },
    {
      key: "stops",
      group: WORKING,
      width: 120,
      folded: true,
      note: "Why the row has no grade.",
      formula: joined(stops(units)),
    },
    { key: "needs", group: WORKING, width: 120, folded: true, formula: needs() },
    {
      key: "withheld",
      group: WORKING,
      width: 120,
      folded: true,
      note: "What the row lacks for a grade, where it has readings.",
      formula: gradeNeeds(),
    },
    { key: "cautions", group: WORKING, width: 120, folded: true, formula: joined(cautions(units)) },
    doubtfulTyping(["time", "amps_time"]),
    {
      key: "remarks",
      header: "needs, speaks against it",
      group: "Checks",
      width: 640,
      note: "What is missing, what stops a grade, and what calls for care.",
      formula: joined([
        notAChoice("status"),
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

/** One pixel's share of the distance in the unit of the target's size: mrad of metres are mm; of feet, thousandths of 12 inches. */
function inSize(units: SheetUnits): number {
  return units.label("size") === "mm" ? 1 : 0.012;
}

function stops(units: SheetUnits): string[] {
  const noAnswer = PHASES.map((phase) => `([corrected_${phase}]="no answer")`).join("+");
  return [
    clause('[out_of_range]<>""', "[out_of_range]"),
    clause('[beyond_camera]<>""', "[beyond_camera]"),
    clause(
      `${MEASURED}*${ownCriteriaFail(["job_criteria", "job_criteria_limit"], units)}`,
      '"own criteria cannot be used: see the sheet Criteria"',
    ),
    // Where another phase is hotter, that one is known exactly.
    clause(
      `([reading_is]="at most")*([limit_reading]<>"")*${PHASES.map((phase) => `(([${phase}]="")+([${phase}]=[limit_reading])>0)`).join("*")}`,
      '"only known to be at most so hot: no grade"',
    ),
    clause(`${MEASURED}*([view]="enclosed")`, '"enclosed: what is seen has no grade"'),
    clause(
      `${MEASURED}*${is("[emissivity_used]", "<0.3")}`,
      '"qualitative only: emissivity "&TEXT([emissivity_used],"0.00")',
    ),
    clause(
      `${MEASURED}*([out_of_range]="")*([path_air_used]<>"")*([air_transmission]="")`,
      '"no transmission of air for this distance, air and band"',
    ),
    clause(
      `(${noAnswer}>0)*([out_of_range]="")*([air_transmission]<>"")`,
      '"no answer: a reading is colder than what it would reflect"',
    ),
    clause(is("[spot_margin]", "<1"), '"target smaller than 3 × 3 pixels at this distance"'),
    clause(
      is("[wind]", `>${units.from("speed", 7)}`),
      `"wind "&TEXT([wind],"0.0")&" ${units.label("speed")}: no grade"`,
    ),
    clause(`([view]="indirect")*${is("[hours_since_sun]", "<2")}`, '"sun within 2 h on an indirect view"'),
    clause(
      `${MEASURED}*${ofNumbers(["job_calibrated", "job_calibration_days", "job_date"], "job_calibrated+job_calibration_days<job_date")}`,
      '"the camera\'s calibration had run out"',
    ),
  ];
}
