/** What is worked out of each visit: its rise at the common load, whether the trend may use it, and what has changed since. */
import type { Computed } from "../route/columns.js";
import { clause, given, joined } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { rank } from "../report/ranked.js";
import { riseColumns } from "./rise.js";

const VISIT = "Is it used";
const STEP = "Since the visit before";
const FIRST = "Since the first visit used";
const WORKING = "Working";
const kelvin = { measure: "difference", format: "0.0", align: "right" } as const;

/** Of the visit used before, and of the first one: the latest has the order 1. */
const before = (column: string): string => `XLOOKUP(IF(ISNUMBER([order]),[order]+1,"none"),[order],${column},"")`;
const first = (column: string): string => `XLOOKUP(MAX([order]),[order],${column},"")`;
/** Where there is such a visit. */
const HAS_BEFORE = "(ISNUMBER([order])*([order]<MAX([order])))";

export function computedColumns(units: SheetUnits): Computed[] {
  const folded = { group: WORKING, width: 84, folded: true } as const;
  return [
    {
      key: "used",
      header: "used for the trend",
      group: VISIT,
      width: 76,
      formula: '=IF([typed]=0,"",IF([why]="","yes","no"))',
    },
    { key: "why", header: "why not", group: VISIT, width: 290, formula: why() },
    {
      key: "remarks",
      header: "with care",
      group: VISIT,
      width: 300,
      formula: withCare(),
      note: "Does not keep a visit out; the change may come from it.",
    },
    ...riseColumns(units),
    {
      key: "change",
      group: STEP,
      width: 72,
      ...kelvin,
      formula: `=IF(${HAS_BEFORE},[at_load]-${before("[at_load]")},"")`,
      note: "Of the rise at the common load.",
    },
    {
      key: "change_u",
      header: "± U of the change",
      group: STEP,
      width: 84,
      ...kelvin,
      formula: `=IF(ISNUMBER([change]),LET(before,${before("[u]")},IF(ISNUMBER(before)*ISNUMBER([u]),SQRT([u]*[u]+before*before),"")),"")`,
      note: "Root of the sum of both squares. With the same camera its offset cancels and this is rather too much.",
    },
    { key: "step", header: "what it shows", group: STEP, width: 230, formula: verdict("change") },
    {
      key: "since_first",
      header: "change",
      group: FIRST,
      width: 72,
      ...kelvin,
      formula: `=IF(${HAS_BEFORE},[at_load]-${first("[at_load]")},"")`,
      note: "The first visit used is the baseline.",
    },
    {
      key: "since_first_u",
      header: "± U of the change",
      group: FIRST,
      width: 84,
      ...kelvin,
      formula: `=IF(ISNUMBER([since_first]),LET(before,${first("[u]")},IF(ISNUMBER(before)*ISNUMBER([u]),SQRT([u]*[u]+before*before),"")),"")`,
    },
    {
      key: "baseline_grade",
      header: "grade over baseline (house)",
      group: FIRST,
      width: 300,
      grade: true,
      formula: baselineGrade(units),
      note: 'Our own numbers: =GREY.CRITERIA("house"). A change within its uncertainty has no grade.',
    },
    {
      key: "typed",
      ...folded,
      format: "0",
      formula: `=IF(${["date", "hot", "reference", "surrounding_air", "current"].map((key) => `([${key}]<>"")`).join("+")}>0,1,0)`,
      note: "1 where a row holds something.",
    },
    {
      key: "over_used",
      ...folded,
      header: "over",
      formula: `=IF([typed]=0,"",IF([over]<>"",[over],${given("trend_over")}))`,
    },
    {
      key: "reflected_used",
      ...folded,
      header: "reflected",
      measure: "temperature",
      format: "0.0",
      formula: `=IF([typed]=0,"",IF([reflected]<>"",[reflected],${given("trend_reflected")}))`,
    },
    {
      key: "order",
      ...folded,
      format: "0",
      note: "Of the visits used, the latest is 1.",
      formula: rank("[date]", '([used]="yes")*1'),
    },
  ];
}

/** The first reason counts; each is enough. */
function why(): string {
  const missing = (condition: string, words: string): string => clause(condition, `"${words}"`, ", ");
  const needs = joined(
    [
      missing("1-ISNUMBER([date])", "date"),
      missing("1-ISNUMBER([hot])", "hot"),
      missing('[over_used]=""', "over"),
      missing('([over_used]="similar")*(1-ISNUMBER([reference]))', "reference"),
      missing('([over_used]="ambient")*(1-ISNUMBER([surrounding_air]))', "surrounding air"),
      missing("1-ISNUMBER([current])", "current"),
      missing("1-ISNUMBER([emissivity])", "emissivity"),
      missing("1-ISNUMBER([reflected_used])", "reflected"),
      missing("1-ISNUMBER(trend_load_used)", "a common load in Point"),
    ],
    ", ",
  ).slice(1);
  const limit = '([reading_is]="at least")+([reading_is]="at most")>0';
  const share = "[load_share]";
  return (
    `=IF([typed]=0,"",LET(needs,${needs},IF(needs<>"","needs "&needs,` +
    `IF(${limit},"a limit reading: "&[reading_is],` +
    'IF([over_used]<>trend_over,"over "&[over_used]&": the trend is over "&trend_over,' +
    'IF([rise]="","no answer: check reading, emissivity and reflected",' +
    `IF(ISNUMBER([at_load]),"",IF(ISNUMBER(${share}),IF(${share}<trend_minimum_load,"not projected: load "&TEXT(${share},"0 %")&" of "&trend_load_used,"no rise at the common load"),"no rise at the common load"))))))))`
  );
}

function withCare(): string {
  const own = (column: string): string => before(given(`[${column}]`));
  return joined(
    [
      clause(
        `${HAS_BEFORE}*(camera<>"")*([camera]<>"")*([camera]<>camera)`,
        '"another camera than before ("&camera&")"',
      ),
      clause('([used]="yes")*([camera]="")', '"no camera noted"'),
      clause(
        `${HAS_BEFORE}*ISNUMBER(emissivity)*ISNUMBER([emissivity])*([emissivity]<>emissivity)`,
        '"emissivity was "&emissivity&" before"',
      ),
      clause('([used]="yes")*(ISNUMBER([emissivity])*([emissivity]<0.6))', '"emissivity below 0.6"'),
      clause('([used]="yes")*(ISNUMBER([load_share])*([load_share]>1.2))', '"load above the common load"'),
      clause(
        `([used]="yes")*ISNUMBER([expected_max])*(ISNUMBER(trend_load_used)*([expected_max]<>trend_load_used))`,
        '"expected maximum was "&[expected_max]&", compared at "&trend_load_used',
      ),
    ],
    "; ",
    [
      ["camera", own("camera")],
      ["emissivity", own("emissivity")],
    ],
  );
}

function verdict(change: string): string {
  return (
    `=IF(ISNUMBER([${change}]),IF(ISNUMBER([${change}_u]),IF([${change}]>[${change}_u],"more, beyond its uncertainty",` +
    `IF([${change}]<-[${change}_u],"less, beyond its uncertainty","no change beyond its uncertainty")),"uncertainty not known"),"")`
  );
}

function baselineGrade(units: SheetUnits): string {
  const grade = (show: string): string =>
    `GREY.GRADE([since_first],"baseline","house","direct","${show}",,${units.argument})`;
  return (
    '=IF(ISNUMBER([since_first])*ISNUMBER([since_first_u]),IF([since_first]<-[since_first_u],"no grade: less than at the first visit",' +
    'IF([since_first]<=[since_first_u],"no grade: no change beyond its uncertainty",' +
    `IFERROR(${grade("grade")}&" of 4: "&${grade("words")},"no grade"))),"")`
  );
}
