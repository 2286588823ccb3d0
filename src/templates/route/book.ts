/** The electrical route as a workbook: what is typed by key and in metric units, in the units of the book. */
import { cautions } from "../../functions/cautions.js";
import type { Cell } from "../../functions/contract.js";
import type { Units } from "../../functions/units.js";
import {
  criteriaInWords,
  criteriaSheet,
  criteriaWithEdition,
  type OwnCriterion,
  startingCriteria,
} from "../common/criteria.js";
import { JOB_IN_WORDS } from "../common/job-in-words.js";
import { REPAIR } from "../common/repair.js";
import type { BookDescription } from "../contract.js";
import { assetColumns, readingColumns } from "../report/columns.js";
import { electricalReport } from "../report/electrical.js";
import type { FollowUp } from "../report/follow-up-typed.js";
import { reportSheets } from "../report/sheets.js";
import type { Computed } from "./columns.js";
import { checkColumns } from "./checks.js";
import { compareColumns } from "./compare.js";
import { fullLoadColumns } from "./full-load.js";
import { number, ofPhase, phaseOf } from "./formula.js";
import { gradeColumns } from "./grade.js";
import { CRITERIA_CHOICES, jobSheet, type JobValues } from "./job.js";
import { ASSET_COLUMNS, SURFACE_COLUMNS, WINDOW_COLUMNS, type Asset, type Surface, type WindowEntry } from "./lists.js";
import { LAST_TIME, lastTimeColumns, type LastTimeKind } from "./last-time.js";
import { COMPARED_AT, loadColumns, UNEQUAL } from "./load.js";
import { planSheet } from "./plan.js";
import type { PlannedView } from "./plan-typed.js";
import { settingsColumns } from "./settings.js";
import { type SheetUnits, sheetUnits } from "./sheet-units.js";
import { ARITHMETIC, cautionsSheet, tableSheet } from "./sheets.js";
import { temperatureColumns } from "./temperatures.js";
import { airUncertainty, apparentOf, inputUncertainties, riseUncertainty, similarUncertainty } from "./uncertainty.js";
import { READING_COLUMNS, type Reading } from "./typed.js";

export interface Route {
  readonly title: string;
  /** Lines under the title of the first sheet and of the job's. */
  readonly about: readonly string[];
  readonly job: JobValues;
  readonly assets: readonly Asset[];
  readonly windows: readonly WindowEntry[];
  readonly surfaces: readonly Surface[];
  readonly rows: readonly Reading[];
  readonly followUp?: readonly FollowUp[];
  /** Those of the workbook's own; the built-in ones of the job where absent. */
  readonly criteria?: readonly OwnCriterion[];
  readonly plan?: readonly PlannedView[];
  readonly units: Units;
}

const CRITERIA =
  `"over similar and air "&${criteriaWithEdition("job_criteria", "job_criteria_edition")}&` +
  `"; share of limit "&${criteriaInWords("job_criteria_limit")}&"; indirect view "&job_criteria_indirect`;

/** What own criteria begin with: the set of the job, where it is a built-in one. */
const setOf = (chosen: Cell | undefined): string =>
  CRITERIA_CHOICES.find((one) => one === chosen) ?? CRITERIA_CHOICES[0];

export function routeBook(route: Route): BookDescription {
  const units = sheetUnits(route.units);
  const jobLine = `=${JOB_IN_WORDS}&". Criteria: "&${CRITERIA}`;
  return {
    title: route.title,
    sheets: [
      tableSheet(
        "Route",
        "Readings",
        [route.title, jobLine, ...route.about, ARITHMETIC, ...REPAIR],
        READING_COLUMNS,
        route.rows,
        units,
        {
          computed: routeColumns(units),
          frozenColumns: 1,
        },
      ),
      ...reportSheets({
        kind: electricalReport,
        head: { job: JOB_IN_WORDS, criteria: CRITERIA, about: route.about },
        rows: route.rows.length,
        followUp: route.followUp ?? [],
        units,
      }),
      jobSheet(
        ["Job", jobLine, ...route.about, cautions[0]?.text ?? "", "The other cautions stand on their own sheet."],
        route.job,
        units,
      ),
      criteriaSheet(
        "electrical",
        route.criteria ?? startingCriteria("electrical", setOf(route.job.criteria), "house-limit"),
        units,
      ),
      planSheet("electrical", route.plan ?? [], units),
      tableSheet(
        "Assets",
        "AssetList",
        ["Assets", "What is on the route, how it is seen, and what it may carry and reach."],
        ASSET_COLUMNS,
        route.assets,
        units,
        { computed: assetColumns() },
      ),
      tableSheet(
        "Windows",
        "WindowList",
        [
          "Windows",
          "A line for each measurement: the transmission drifts over the years. The first line of a window is used.",
        ],
        WINDOW_COLUMNS,
        route.windows,
        units,
      ),
      tableSheet(
        "Surfaces",
        "SurfaceList",
        ["Surfaces", "The emissivity that stands for each kind of surface, where a row has none of its own."],
        SURFACE_COLUMNS,
        route.surfaces,
        units,
      ),
      cautionsSheet,
    ],
  };
}

/** A rise over air is that of the phase that reads highest, which unequal currents may make another one than the hottest. */
const LOAD_OF_HIGHEST = `IF([t_high]="",[amps_hottest],LET(phase,${phaseOf("[t_high]", "t_")},${ofPhase("phase", (phase) => number(`[amps_${phase}]`))}))`;

const lastTime: LastTimeKind = {
  load: "last_amps",
  loadUnit: "A",
  loadNow: `IF([governs]="over similar",${COMPARED_AT},${LOAD_OF_HIGHEST})`,
  overNow: 'IF([governs]="over similar","similar","air")',
  atLoad:
    'IF([last_rise]<=0,[last_rise],IFERROR(GREY.RISE_AT_LOAD([last_rise],[last_load],[load_judged],job_exponent,job_minimum_load),""))',
};

/** The order of reading; what is only worked with stands last, folded. */
const GROUPS = [
  "Looked up",
  "Corrected",
  "Rise over air",
  "Compared",
  "Load",
  "Limit",
  "Grade as found",
  "At full load, projected",
  LAST_TIME,
  "Checks",
  "Grades it is taken from",
  "Settings used",
  "Working",
];

/** What the hottest phase's rise, and the uncertainty of it, is brought to the largest current by. */
const GROWN = "IFERROR(([amps_high]/[amps_hottest])^job_exponent,1)";

/** Of the hottest phase, and of one reading in the middle of the others: three phases are compared by their mean. */
function uncertaintyColumns(units: SheetUnits): Computed[] {
  const shown = ofPhase("[hottest]", (phase) => number(`[${phase}]`));
  const working = { group: "Working", width: 84, folded: true, measure: "temperature", format: "0.0" } as const;
  const [hot, others] = ["[apparent_hottest]", "[apparent_others]"];
  return [
    {
      key: "apparent_hottest",
      ...working,
      note: "Reading of the hottest phase as an apparent temperature.",
      formula: `=LET(shown,${shown},IF(shown="","",${apparentOf("shown", units)}))`,
    },
    {
      key: "apparent_others",
      ...working,
      note: "Mean reading of the other two: the uncertainty is that of one reading there.",
      formula: `=IF([similar]="","",LET(shown,([left]+[middle]+[right]-(${shown}))/2,${apparentOf("shown", units)}))`,
    },
    ...inputUncertainties(hot, units),
    similarUncertainty(`${riseUncertainty(hot, others, units)}*IF(${UNEQUAL}>0,${GROWN},1)`),
    airUncertainty(hot, "[air_used]", "[rise_air]", units),
  ];
}

/** Everything that is worked out beside the readings. */
function routeColumns(units: SheetUnits): Computed[] {
  const columns = [
    ...settingsColumns(),
    ...temperatureColumns(units),
    ...loadColumns(units),
    ...compareColumns(units),
    ...uncertaintyColumns(units),
    ...gradeColumns(units),
    ...fullLoadColumns(units),
    ...checkColumns(units),
    ...readingColumns(electricalReport),
    ...lastTimeColumns(lastTime),
  ];
  return columns.sort((one, other) => GROUPS.indexOf(one.group) - GROUPS.indexOf(other.group));
}
