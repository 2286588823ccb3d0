/** Before the trip: from where, how large, through what; whether a rise can be read there, and from which on it can be graded. */
import { KNOWN_LESS, KNOWN_WELL, REFLECTED_HALF } from "../../core/audit/verdict/consequence.js";
import { criteriaOf } from "../common/criteria.js";
import type { TableSheet } from "../contract.js";
import type { Computed } from "./columns.js";
import { clause, given, is, joined } from "./formula.js";
import { PLAN_COLUMNS, PLANNED, type PlannedView } from "./plan-typed.js";
import { planVerdict } from "./plan-verdict.js";
import type { SheetUnits } from "./sheet-units.js";
import { tableSheet } from "./sheets.js";

/** What a rise may be over: by the route's criteria. */
export type PlanKind = "electrical" | "mechanical";
const OVER = { electrical: ["similar", "ambient"], mechanical: ["similar", "baseline"] } as const;

const DISTANCE = "Distance";
const UNCERTAINTY = "Uncertainty of the rise";
const USED = "Settings used";

const kelvin = { measure: "difference", format: "0.0", align: "right" } as const;
const used = { group: USED, folded: true, align: "right" } as const;
const degrees = { measure: "temperature", format: "0.0" } as const;

/** As typed; our functions take an empty one for no window. */
const WINDOW = ["window_transmission", "window_temp", "window_reflectance"].map((key) => given(`[${key}]`)).join(",");
const orEmpty = (call: string): string => `IFERROR(${call},"")`;
const ifPlanned = (rest: string): string => `=IF(${PLANNED},${rest},"")`;

export function planSheet(kind: PlanKind, views: readonly PlannedView[], units: SheetUnits): TableSheet {
  const columns = PLAN_COLUMNS.map((one) => (one.key === "over" ? { ...one, choices: OVER[kind] } : one));
  return tableSheet(
    "Plan",
    "PlanList",
    [
      "Plan",
      "Before the trip: with the camera, the air and the criteria of Job. What is expected is your guess; ± U is as good as it.",
    ],
    columns,
    views,
    units,
    { computed: planColumns(units) },
  );
}

function planColumns(units: SheetUnits): Computed[] {
  const last = `,,job_band,${units.argument}`;
  const settings = `${given("[emissivity]")},[reflected_used],[air_transmission],[path_air_used],${WINDOW}`;
  const apparent = (temp: string): string =>
    ifPlanned(orEmpty(`GREY.APPARENT(${temp},${settings},[outer_reflected_used]${last})`));
  return [
    planVerdict(units),
    {
      key: "smallest_target",
      header: "smallest target",
      group: DISTANCE,
      width: 80,
      measure: "size",
      format: "0.0",
      align: "right",
      note: "Three pixels wide, from this distance.",
      formula: ifPlanned(orEmpty(`GREY.SPOT_SIZE([distance_used],${given("job_ifov")},,${units.argument})`)),
    },
    {
      key: "spot_margin",
      header: "spot margin",
      group: DISTANCE,
      width: 72,
      format: "0.00",
      align: "right",
      note: "Target over smallest target: at least 1, better 1.5.",
      formula: '=IF(ISNUMBER([target_size])*ISNUMBER([smallest_target]),ROUND([target_size]/[smallest_target],9),"")',
    },
    {
      key: "farthest",
      group: DISTANCE,
      width: 72,
      measure: "distance",
      format: "0.0",
      align: "right",
      note: "From further away the target is smaller than three pixels.",
      formula: ifPlanned(orEmpty(`GREY.FARTHEST(${given("[target_size]")},${given("job_ifov")},,${units.argument})`)),
    },
    {
      key: "air_transmission",
      group: DISTANCE,
      width: 96,
      format: "0.000",
      align: "right",
      formula: ifPlanned(
        orEmpty(
          `GREY.AIR_TRANSMISSION([distance_used],[path_air_used],job_humidity,job_pressure,,job_band,${units.argument})`,
        ),
      ),
    },
    {
      key: "u",
      header: "± U of the rise",
      group: UNCERTAINTY,
      width: 80,
      ...kelvin,
      note: "Expanded (95 %), of the expected rise: camera of Job, emissivity, reflected, and the window where it is said. Air counts as exact.",
      formula: `=IF(ISNUMBER([apparent])*ISNUMBER([apparent_reference]),${expanded(units)},"")`,
    },
    {
      key: "graded_from",
      header: "surely graded from",
      group: UNCERTAINTY,
      width: 84,
      ...kelvin,
      note: "Lower edge of the first grade of Job's criteria, and ± U on top: from this rise on it is a grade whatever the uncertainty makes of it.",
      formula: `=IF(ISNUMBER([u]),${orEmpty(`GREY.GRADE(0,[over],${criteriaOf("job_criteria")},"direct","upper",,${units.argument})+[u]`)},"")`,
    },
    {
      key: "grade_expected",
      header: "grade expected",
      group: UNCERTAINTY,
      width: 230,
      grade: true,
      formula: `=IF(ISNUMBER([expected_rise])*([over]<>""),${orEmpty(`${graded("grade", units)}&" of 4: "&${graded("words", units)}`)},"")`,
    },
    {
      key: "distance_used",
      header: "distance, used",
      width: 80,
      measure: "distance",
      format: "0.0",
      ...used,
      formula: ifPlanned(`IF([distance]<>"",[distance],${given("job_distance")})`),
    },
    {
      key: "reflected_used",
      header: "reflected, used",
      width: 84,
      ...degrees,
      ...used,
      formula: ifPlanned(`IF([reflected]<>"",[reflected],${given("job_reflected")})`),
    },
    {
      key: "path_air_used",
      header: "path air, used",
      width: 84,
      ...degrees,
      ...used,
      formula: ifPlanned(given("job_path_air")),
    },
    {
      key: "outer_reflected_used",
      header: "outer_reflected, used",
      width: 92,
      ...degrees,
      ...used,
      note: "What the camera's side of a window mirrors: reflected indoors of Job.",
      formula: ifPlanned(given("job_reflected")),
    },
    {
      key: "apparent",
      header: "reading expected",
      width: 84,
      ...degrees,
      ...used,
      note: "Apparent temperature that the camera would show.",
      formula: apparent("[expected_temp]"),
    },
    {
      key: "apparent_reference",
      header: "reading of the reference",
      width: 92,
      ...degrees,
      ...used,
      formula: apparent('IF(ISNUMBER([expected_temp])*ISNUMBER([expected_rise]),[expected_temp]-[expected_rise],"")'),
    },
    {
      key: "reach",
      header: "farthest, in words",
      width: 96,
      ...used,
      formula: `=IF(ISNUMBER([farthest]),TEXT([farthest],"0.0")&" ${units.label("distance")}","")`,
    },
    {
      key: "needs",
      width: 190,
      group: USED,
      folded: true,
      note: "What the view still lacks.",
      formula: needs(),
    },
    {
      key: "relation",
      width: 190,
      ...used,
      align: "left",
      note: "How the two temperatures of the rise belong together.",
      formula: ifPlanned(
        'IF([over]="similar",IF([similar_is]="on the same surface","same image, same surface",' +
          'IF([similar_is]="in another image","two images","same image, other surface")),IF([over]="","","air by thermometer"))',
      ),
    },
  ];
}

const graded = (show: string, units: SheetUnits): string =>
  `GREY.GRADE([expected_rise],[over],${criteriaOf("job_criteria")},"direct","${show}",,${units.argument})`;

/** Over a similar component by both readings, else over the air; over a baseline there are two rises over air. */
function expanded(units: SheetUnits): string {
  const row = (reading: string): string =>
    `HSTACK(${reading},${given("[emissivity]")},[reflected_used],[air_transmission],[path_air_used],${WINDOW},[outer_reflected_used])`;
  const half = (typed: string, usual: string): string => `IF(ISNUMBER(${typed}),${typed},${usual})/SQRT(3)`;
  const uncertainties = `HSTACK(${[
    `GREY.CAMERA_UNCERTAINTY([apparent],${given("job_accuracy")},${given("job_accuracy_percent")},${units.argument})`,
    half("[emissivity_half]", `IF(${is("[emissivity]", `>=${KNOWN_WELL.from}`)},${KNOWN_WELL.half},${KNOWN_LESS})`),
    half("[reflected_half]", String(units.from("difference", REFLECTED_HALF))),
    // Air and its temperature count as exact.
    'IF([apparent]="","","")',
    'IF([apparent]="","","")',
    'IF(ISNUMBER([window_half])*ISNUMBER([window_transmission]),[window_half]/SQRT(3),"")',
  ].join(",")})`;
  const call = (reference: string, relation: string): string =>
    `GREY.RISE_UNCERTAINTY(${row("[apparent]")},${reference},${uncertainties},${relation},,job_band,${units.argument})`;
  const overAir = call("[expected_temp]-[expected_rise]", '"air by thermometer"');
  return orEmpty(
    `IF([over]="similar",${call(row("[apparent_reference]"), "[relation]")},IF([over]="ambient",${overAir},${overAir}*SQRT(2)))`,
  );
}

function needs(): string {
  const missing = (condition: string, words: string): string => clause(`${PLANNED}*(${condition})`, `"${words}"`, ", ");
  const empty = (key: string): string => `[${key}]=""`;
  return joined(
    [
      missing('job_ifov=""', "IFOV in Job"),
      missing(empty("over"), "over what"),
      missing(empty("distance_used"), "distance"),
      missing(empty("target_size"), "target_size"),
      missing(empty("emissivity"), "emissivity"),
      missing(`${is("[window_transmission]", "<1")}*(${empty("window_temp")})`, "window_temp"),
      missing(empty("expected_temp"), "expected_temp"),
      missing(empty("expected_rise"), "expected_rise"),
      missing(empty("reflected_used"), "reflected in Job"),
      missing(empty("path_air_used"), "air between camera and target in Job"),
    ],
    ", ",
  );
}
