/** Grades as found, each with its uncertainty, and which of them governs. */
import { criteriaInWords, criteriaOf } from "../common/criteria.js";
import type { Computed } from "./columns.js";
import { is, MEASURED } from "./formula.js";
import { UNEQUAL } from "./load.js";
import type { SheetUnits } from "./sheet-units.js";

const WORKING = "Working";

export type Show = "grade" | "words" | "action" | "lower" | "upper";

/** One way to grade: what is graded, over what, by which criteria. */
interface Way {
  readonly judgedBy: string;
  readonly key: "similar" | "limit" | "air";
  readonly rise: string;
  /** The name of the set it is graded by. */
  readonly criteria: string;
  /** A call of GRADE; the view, and with it the criteria, may differ by row. */
  readonly call: (show: Show) => string;
  /** Expanded uncertainty of what is graded, and words before it where it is only known to be more. */
  readonly u: string;
  readonly more: string;
  readonly perCent?: boolean;
}

/** Above 0 where there is more to it than the figure: the hottest reading at the upper end of the camera's range. */
export const MORE = '([reading_is]="at least")*([limit_reading]<>"")';
/** Expanded uncertainty of a share of a limit: of the rise, over what the limit permits. */
export const shareUncertainty = (limit: string, air: string): string =>
  `IF(ISNUMBER([rise_U_air]),[rise_U_air]/(${limit}-${air}),"")`;

/** 1 where balanced phases are judged by their limit, so not over air. */
const BY_LIMIT = '([pattern]="balanced")*ISNUMBER([g_limit])';

function ways(units: SheetUnits): readonly [Way, Way, Way] {
  const graded = (rise: string, reference: string, criteria: string, view: string) => (show: Show) =>
    `GREY.GRADE(${rise},"${reference}",${criteria},"${view}","${show}",,${units.argument})`;
  const direct = graded("[similar]", "similar", criteriaOf("job_criteria"), "direct");
  const indirect = graded("[similar]", "similar", "job_criteria_indirect", "indirect");
  return [
    {
      judgedBy: "over similar",
      key: "similar",
      rise: "[similar]",
      criteria: `IF([view]="direct",${criteriaInWords("job_criteria")},job_criteria_indirect)`,
      call: (show) => `IF([view]="direct",${direct(show)},${indirect(show)})`,
      u: "[rise_U_similar]",
      more: `(${MORE}+${UNEQUAL})`,
    },
    {
      judgedBy: "share of limit",
      key: "limit",
      rise: "[share]",
      criteria: criteriaInWords("job_criteria_limit"),
      call: graded("[share]", "limit", criteriaOf("job_criteria_limit"), "direct"),
      u: shareUncertainty("[limit_at_load]", "[air_used]"),
      more: MORE,
      perCent: true,
    },
    {
      judgedBy: "over air",
      key: "air",
      rise: "[rise_air]",
      criteria: criteriaInWords("job_criteria"),
      call: graded("[rise_air]", "ambient", criteriaOf("job_criteria"), "direct"),
      u: "[rise_U_air]",
      more: MORE,
    },
  ];
}

/** Why a row with readings has no grade: an empty cell would look calm. What stops a grade is told among the checks. */
const WITHOUT_GRADE =
  `IF(1-${MEASURED},"",IF([stops]<>"","no grade",IF([withheld]<>"","no grade: needs "&[withheld],` +
  'IF(LEFT([grade_air],6)="colder","no grade: colder than its reference","no grade"))))';

/** The governing grade comes first, as that is what is read; the three it is taken from follow. */
export function gradeColumns(units: SheetUnits): Computed[] {
  const all = ways(units);
  const governing = (columnOf: (way: Way) => string): string =>
    all.reduceRight((rest, way) => `IF([governs]="${way.judgedBy}",${columnOf(way)},${rest})`, '""');
  const AS_FOUND = "Grade as found";
  return [
    ...all.map((way) => numberColumn(way)),
    {
      key: "grade_found",
      header: "grade as found",
      group: AS_FOUND,
      width: 370,
      grade: true,
      note: "At the load found. One hot phase: the worse of over similar and over air. Balanced phases: by their limit, else over air. Without a similar reference: the worse of limit and air.",
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
      formula: `=IF([governs]="","",IF([governs]="over similar",[rise_U_similar],[rise_U_air]))`,
    },
    {
      key: "grade_found_u",
      header: "± U 95 %, edge inside",
      group: AS_FOUND,
      width: 250,
      note: "Expanded uncertainty (95 %) of what was graded, from the row's own settings (see Job, Surfaces, Windows), and an edge of the criteria that lies inside it. Of a share of the limit in points: 5 points about 73 % is 68 to 78 %.",
      formula: `=${governing((way) => `[u_${way.key}]`)}`,
    },
    { key: "governs", group: WORKING, width: 104, folded: true, formula: governs() },
    {
      key: "judged_by",
      header: "judged by",
      group: AS_FOUND,
      width: 290,
      note: "What was graded, and the criteria it was graded by. Unequal phases are brought to one load, the largest of the three, before they are compared: that is not a projection to full load.",
      formula:
        `=IF([governs]="","",[governs]&" ("&${governing((way) => way.criteria)}&")"&` +
        `IF(([governs]="over similar")*${UNEQUAL},", compared at "&[amps_high]&" A",""))`,
    },
    {
      key: "finding",
      group: AS_FOUND,
      width: 370,
      note: "All three phases hot in proportion to their currents is load, not a joint.",
      formula:
        '=IF(([governs]="")+([pattern]<>"balanced")+([view]<>"direct")>0,"",IF([share]="","balanced: no joint finding, no limit known",' +
        'IF([share]<0.9,"load heating, no joint finding","all three hot: overload, harmonics, ventilation or size")))',
    },
    {
      key: "criteria_action",
      header: "the criteria say",
      group: AS_FOUND,
      width: 330,
      formula: `=${governing((way) => `IFERROR(${way.call("action")},"")`)}`,
    },
    ...all.flatMap((way) => [shownColumn(way, units), uncertaintyColumn(way, units)]),
  ];
}

function numberColumn({ key, rise, call }: Way): Computed {
  const against = {
    // Balanced phases have no joint finding among themselves; seen indirectly, small differences count.
    similar: '+([view]="direct")*([pattern]<>"one hot")+([view]="enclosed")',
    limit: '+([pattern]="")',
    air: '+([pattern]="")+([view]<>"direct")',
  };
  return {
    key: `g_${key}`,
    group: WORKING,
    width: 56,
    folded: true,
    format: "0",
    formula: `=IF(([stops]<>"")+(${rise}="")${against[key]}>0,"",IFERROR(${call("grade")},""))`,
  };
}

function governs(): string {
  const number = (key: string): string => `IF(ISNUMBER([g_${key}]),[g_${key}],-1)`;
  return (
    `=LET(similar,${number("similar")},limit,IF([pattern]="one hot",-1,${number("limit")}),` +
    `air,IF(${BY_LIMIT},-1,${number("air")}),` +
    `IF(similar+limit+air=-3,"",IF((similar>=limit)*(similar>=air),"over similar",IF(limit>=air,"share of limit","over air"))))`
  );
}

function shownColumn({ key, judgedBy: over, call }: Way, units: SheetUnits): Computed {
  const words = `[g_${key}]&" of 4"&IF(${MORE}>0," at least","")&": "&${call("words")}`;
  const colder = is("[rise_air]", `<-${units.from("difference", 3)}`);
  const instead = {
    similar:
      'IF([stops]<>"","",IF([pattern]="",IF([withheld]="","","no grade"),IF([pattern]="one hot","no grade",[pattern])))',
    limit: '""',
    air:
      `IF([rise_air]="","",IF([view]<>"direct",[view]&" view: no table grade",IF([stops]<>"","",` +
      `IF(([pattern]<>"")*${colder},"colder than its reference","no grade"))))`,
  };
  const shown = `IF([g_${key}]<>"",${words},${instead[key]})`;
  return {
    key: `grade_${key}`,
    header: over === "share of limit" ? "grade by share of limit" : `grade ${over}`,
    group: "Grades it is taken from",
    width: 370,
    grade: true,
    formula: key === "air" ? `=IF(${BY_LIMIT},"balanced: by its limit",${shown})` : `=${shown}`,
  };
}

function uncertaintyColumn(way: Way, units: SheetUnits): Computed {
  const { key, judgedBy: over } = way;
  return {
    key: `u_${key}`,
    header: `± U ${over}`,
    group: "Grades it is taken from",
    width: 250,
    note: "Of two readings, the second the mean of the other phases'. More than: with unequal currents, whose correction adds to it, or of a reading at a limit.",
    formula: uncertaintyInWords(way, key === "air" ? `([g_air]="")+(${BY_LIMIT})` : `[g_${key}]=""`, units),
  };
}

/** "± 1.4 K, edge 15 K inside"; nothing where `absent` holds. */
export function uncertaintyInWords(
  { rise, u, more, call, perCent }: Pick<Way, "rise" | "u" | "more" | "call" | "perCent">,
  absent: string,
  units: SheetUnits,
): string {
  const unit = `&" ${units.label("difference")}"`;
  const shown = perCent === true ? 'TEXT(100*u,"0")&" points"' : `TEXT(u,"0.0")${unit}`;
  const edgeShown = (edge: string): string => (perCent === true ? `TEXT(${edge},"0 %")` : `ROUND(${edge},2)${unit}`);
  const within = (edge: string): string => `IF(ISNUMBER(${edge}),ABS(ROUND(${rise}-${edge},6))<=u,FALSE)`;
  const told = (edge: string): string => `", edge "&${edgeShown(edge)}&" inside"`;
  return (
    `=IF(${absent},"",LET(u,${u},IF(ISNUMBER(u),LET(below,IFERROR(${call("lower")},""),above,IFERROR(${call("upper")},""),` +
    `IF(${more}>0,"more than ","")&"± "&${shown}&IF(${within("below")},${told("below")},IF(${within("above")},${told("above")},""))),"± U cannot be worked out")))`
  );
}
