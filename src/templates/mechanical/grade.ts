/** Grades of a point: over its like, over its baseline, by a limit of the user's own; the worst governs. */
import { criteriaInWords, criteriaOf } from "../common/criteria.js";
import type { Computed } from "../route/columns.js";
import { is } from "../route/formula.js";
import { MORE, shareUncertainty, type Show, uncertaintyInWords } from "../route/grade.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { MEASURED } from "./compare.js";

interface Way {
  readonly key: "similar" | "baseline" | "limit";
  readonly judgedBy: string;
  /** The column that is graded, in brackets. */
  readonly rise: string;
  readonly criteria: string;
  readonly call: (show: Show) => string;
  readonly u: string;
  readonly more: string;
  /** Fresh grease may account for it. */
  readonly greased: boolean;
  readonly perCent?: boolean;
  /** Below this it is colder than its reference, which says nothing of either. A baseline may well be passed below. */
  readonly colder?: string;
}

/** Two rises over air, the one of then as uncertain as the one of today. */
const BASELINE_U = 'IF(ISNUMBER([rise_U_air]),[rise_U_air]*SQRT(2),"")';

function ways(units: SheetUnits): readonly Way[] {
  const graded = (rise: string, reference: string, criteria: string) => (show: Show) =>
    `GREY.GRADE(${rise},"${reference}",${criteria},"direct","${show}",,${units.argument})`;
  const below = (metric: number): string => `-${units.from("difference", metric)}`;
  return [
    {
      key: "similar",
      judgedBy: "over like",
      rise: "[similar]",
      criteria: criteriaInWords("job_criteria"),
      call: graded("[similar]", "similar", criteriaOf("job_criteria")),
      u: "[rise_U_similar]",
      more: MORE,
      greased: true,
      colder: below(1),
    },
    {
      key: "baseline",
      judgedBy: "over baseline",
      rise: "[baseline]",
      criteria: criteriaInWords("job_criteria"),
      call: graded("[baseline]", "baseline", criteriaOf("job_criteria")),
      u: BASELINE_U,
      more: MORE,
      greased: true,
    },
    {
      key: "limit",
      judgedBy: "share of limit",
      rise: "[share]",
      criteria: criteriaInWords("job_criteria_limit"),
      call: graded("[share]", "limit", criteriaOf("job_criteria_limit")),
      u: shareUncertainty("[limit_used]", "[surrounding_air]"),
      more: MORE,
      greased: false,
      perCent: true,
    },
  ];
}

const suppressed = (rise: string): string => `([fresh]=1)*(${rise}<=job_grease_rise)`;

/** Why a row with a reading has no grade: an empty cell would look calm. */
const WITHOUT_GRADE =
  `IF(1-${MEASURED},"",IF([stops]<>"","no grade",IF([withheld]<>"","no grade: needs "&[withheld],` +
  'IF([grade_similar]&[grade_baseline]<>"","no grade: "&IF([grade_similar]="",[grade_baseline],[grade_similar]),"no grade"))))';

export function gradeColumns(units: SheetUnits): Computed[] {
  const all = ways(units);
  const governing = (columnOf: (way: Way) => string): string =>
    all.reduceRight((rest, way) => `IF([governs]="${way.judgedBy}",${columnOf(way)},${rest})`, '""');
  const AS_FOUND = "Grade as found";
  return [
    ...all.map(numberColumn),
    {
      key: "grade_found",
      header: "grade as found",
      group: AS_FOUND,
      width: 370,
      grade: true,
      note: "At the load found, and never projected to another: a bearing's heat follows no one power of the load. The worst of over like, over baseline and share of a limit of your own.",
      formula: `=IF([governs]="",${WITHOUT_GRADE},${governing((way) => `[grade_${way.key}]`)})`,
    },
    {
      key: "rise_U",
      group: AS_FOUND,
      width: 76,
      measure: "difference",
      format: "0.0",
      align: "right",
      note: "Expanded uncertainty (95 %) of the rise that was graded; of a share of the limit that of the rise it is taken from.",
      formula: `=IF([governs]="","",IF([governs]="over like",[rise_U_similar],IF([governs]="over baseline",${BASELINE_U},[rise_U_air])))`,
    },
    {
      key: "grade_found_u",
      header: "± U 95 %, edge inside",
      group: AS_FOUND,
      width: 250,
      note: "Expanded uncertainty (95 %) of what was graded, from the row's own settings (see Job, Surfaces, Windows), and an edge of the criteria that lies inside it.",
      formula: `=${governing((way) => `[u_${way.key}]`)}`,
    },
    { key: "governs", group: "Working", width: 104, folded: true, formula: governs() },
    {
      key: "judged_by",
      header: "judged by",
      group: AS_FOUND,
      width: 220,
      formula: `=IF([governs]="","",[governs]&" ("&${governing((way) => way.criteria)}&")")`,
    },
    {
      key: "criteria_action",
      header: "the criteria say",
      group: AS_FOUND,
      width: 330,
      formula: `=${governing((way) => `IFERROR(${way.call("action")},"")`)}`,
    },
    ...all.flatMap((way) => [shownColumn(way), uncertaintyColumn(way, units)]),
  ];
}

function numberColumn({ key, rise, call, greased }: Way): Computed {
  const grease = greased ? `IF(${suppressed(rise)}*(grade>=1),"",grade)` : "grade";
  return {
    key: `g_${key}`,
    group: "Working",
    width: 56,
    folded: true,
    format: "0",
    formula:
      `=IF(([stops]<>"")+(${rise}="")+([view]<>"direct")>0,"",` +
      `LET(graded,IFERROR(${call("grade")},""),grade,IF(ISNUMBER(graded),graded,-1),IF(grade<0,"",${grease})))`,
  };
}

function governs(): string {
  const number = (key: string): string => `IF(ISNUMBER([g_${key}]),[g_${key}],-1)`;
  return (
    `=LET(similar,${number("similar")},baseline,${number("baseline")},limit,${number("limit")},` +
    'IF(similar+baseline+limit=-3,"",IF((limit>=similar)*(limit>=baseline),"share of limit",IF(similar>=baseline,"over like","over baseline"))))'
  );
}

function shownColumn({ key, judgedBy, rise, call, greased, colder }: Way): Computed {
  const words = `[g_${key}]&" of 4"&IF([limit_reading]<>""," at least","")&": "&${call("words")}`;
  const cold = colder === undefined ? "FALSE" : is(rise, `<${colder}`);
  const grease = greased
    ? `IF(ISNUMBER(${rise})*${suppressed(rise)},"greased "&TEXT([hours_greased],"0")&" h before: not graded up to "&job_grease_rise,"")`
    : '""';
  return {
    key: `grade_${key}`,
    header: judgedBy === "share of limit" ? "grade by share of limit" : `grade ${judgedBy}`,
    group: "Grades it is taken from",
    width: 370,
    grade: true,
    formula: `=IF([g_${key}]<>"",${words},IF((${rise}="")+([stops]<>""),"",IF([view]<>"direct",[view]&" view: no grade",IF(${cold},"colder than its like",${grease}))))`,
  };
}

function uncertaintyColumn(way: Way, units: SheetUnits): Computed {
  return {
    key: `u_${way.key}`,
    header: `± U ${way.judgedBy}`,
    group: "Grades it is taken from",
    width: 250,
    note: "Over like: of two readings of one image, or of two images where the like stands in another row. Over the baseline: of two rises over air. More than: of a reading at a limit.",
    formula: uncertaintyInWords(way, `[g_${way.key}]=""`, units),
  };
}
