/** The mechanical route as a workbook: one row a point of a machine. */
import { cautions } from "../../functions/cautions.js";
import type { Units } from "../../functions/units.js";
import { criteriaInWords, criteriaSheet, type OwnCriterion, startingCriteria } from "../common/criteria.js";
import { JOB_IN_WORDS } from "../common/job-in-words.js";
import { REPAIR } from "../common/repair.js";
import type { BookDescription } from "../contract.js";
import { assetColumns, readingColumns } from "../report/columns.js";
import type { FollowUp } from "../report/follow-up-typed.js";
import { mechanicalReport } from "../report/mechanical.js";
import { reportSheets } from "../report/sheets.js";
import type { Computed } from "../route/columns.js";
import { fromAssets, number } from "../route/formula.js";
import { LAST_TIME, lastTimeColumns, type LastTimeKind } from "../route/last-time.js";
import { SURFACE_COLUMNS, WINDOW_COLUMNS, type Surface, type WindowEntry } from "../route/lists.js";
import { planSheet } from "../route/plan.js";
import type { PlannedView } from "../route/plan-typed.js";
import {
  airUncertainty,
  apparentOf,
  inputUncertainties,
  readingUncertainty,
  riseUncertainty,
  similarUncertainty,
} from "../route/uncertainty.js";
import { settingsColumns } from "../route/settings.js";
import { type SheetUnits, sheetUnits } from "../route/sheet-units.js";
import { ARITHMETIC, cautionsSheet, tableSheet } from "../route/sheets.js";
import { checkColumns } from "./checks.js";
import { compareColumns } from "./compare.js";
import { gradeColumns } from "./grade.js";
import { MECHANICAL_CRITERIA, mechanicalJobSheet, type MechanicalJob } from "./job.js";
import { POINT_COLUMNS, POINT_READING_COLUMNS, type Point, type PointReading } from "./typed.js";

export interface MechanicalRoute {
  readonly title: string;
  readonly about: readonly string[];
  readonly job: MechanicalJob;
  readonly assets: readonly Point[];
  readonly windows: readonly WindowEntry[];
  readonly surfaces: readonly Surface[];
  readonly rows: readonly PointReading[];
  readonly followUp?: readonly FollowUp[];
  /** Those of the workbook's own; the built-in ones where absent. */
  readonly criteria?: readonly OwnCriterion[];
  readonly plan?: readonly PlannedView[];
  readonly units: Units;
}

const CRITERIA = `"over like and baseline "&${criteriaInWords("job_criteria")}&"; share of limit "&${criteriaInWords("job_criteria_limit")}`;
const JOB_LINE = `=${JOB_IN_WORDS}&". Criteria: "&${CRITERIA}`;

export function mechanicalBook(route: MechanicalRoute): BookDescription {
  const units = sheetUnits(route.units);
  const sheets = [
    tableSheet(
      "Route",
      "Readings",
      [route.title, JOB_LINE, ...route.about, `${ARITHMETIC} Guards stay on.`, ...REPAIR],
      POINT_READING_COLUMNS,
      route.rows,
      units,
      { computed: routeColumns(units), frozenColumns: 1 },
    ),
    ...reportSheets({
      kind: mechanicalReport,
      head: { job: JOB_IN_WORDS, criteria: CRITERIA, about: route.about },
      rows: route.rows.length,
      followUp: route.followUp ?? [],
      units,
    }),
    mechanicalJobSheet(
      ["Job", JOB_LINE, ...route.about, cautions[0]?.text ?? "", "The other cautions stand on their own sheet."],
      route.job,
      units,
    ),
    criteriaSheet(
      "mechanical",
      route.criteria ?? startingCriteria("mechanical", MECHANICAL_CRITERIA[0], "house-limit"),
      units,
    ),
    planSheet("mechanical", route.plan ?? [], units),
    tableSheet(
      "Assets",
      "AssetList",
      ["Assets", "The points of the machines: what each is compared with, and what it may reach."],
      POINT_COLUMNS,
      route.assets,
      units,
      { computed: assetColumns() },
    ),
    tableSheet(
      "Windows",
      "WindowList",
      ["Windows", "A line for each measurement. The first line of a window is used; without a window, none is needed."],
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
  ];
  return { title: route.title, sheets };
}

const lastTime: LastTimeKind = {
  load: "last_load",
  loadUnit: "%",
  loadNow: "[process_load]",
  overNow: 'IF([governs]="over like","like",IF([governs]="over baseline","baseline","air"))',
  // Of a machine's load nothing is projected.
  atLoad:
    'IF(ISNUMBER([load_judged])*ISNUMBER([last_load]),IF(ABS([load_judged]-[last_load])<=job_load_apart,[last_rise],""),"")',
};

/** The order of reading; what is only worked with stands last, folded. */
const GROUPS = [
  "Looked up",
  "Corrected",
  "Rise over air",
  "Compared",
  "Limit",
  "Greasing",
  "Grade as found",
  LAST_TIME,
  "Checks",
  "Grades it is taken from",
  "Settings used",
  "Working",
];

/** Against a reading of the same image, or of the like's row: two images share nothing. */
function uncertaintyColumns(units: SheetUnits): Computed[] {
  const working = { group: "Working", width: 84, folded: true, measure: "temperature", format: "0.0" } as const;
  const apparent = (key: string): Computed => ({
    key: `apparent_${key}`,
    ...working,
    note: "The reading as an apparent temperature.",
    formula: `=LET(shown,${number(`[${key}]`)},IF(shown="","",${apparentOf("shown", units)}))`,
  });
  const hot = "[apparent_reading]";
  const ofLike = 'IF([like_id]="","",XLOOKUP([like_id],[asset_id],[reading_U],""))';
  return [
    apparent("reading"),
    apparent("reference"),
    ...inputUncertainties(hot, units),
    readingUncertainty(hot, units),
    similarUncertainty(
      `IF([reference]<>"",${riseUncertainty(hot, "[apparent_reference]", units)},SQRT([reading_U]^2+(${ofLike})^2))`,
    ),
    airUncertainty(hot, number("[surrounding_air]"), "[over_air]", units),
  ];
}

function routeColumns(units: SheetUnits): Computed[] {
  const columns = [
    ...settingsColumns().map((one) => (one.key === "component" ? component : one)),
    ...compareColumns(units),
    ...uncertaintyColumns(units),
    ...gradeColumns(units),
    ...checkColumns(units),
    ...readingColumns(mechanicalReport),
    ...lastTimeColumns(lastTime),
  ];
  return columns.sort((one, other) => GROUPS.indexOf(one.group) - GROUPS.indexOf(other.group));
}

const component: Computed = {
  key: "component",
  header: "machine, point",
  group: "Looked up",
  width: 220,
  formula: `=LET(machine,${fromAssets("machine")},point,${fromAssets("point")},machine&IF((machine<>"")*(point<>""),", ","")&point)`,
};
