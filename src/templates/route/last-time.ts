/** What the survey before this one found of a row's asset, beside what is found today. */
import type { Computed } from "./columns.js";
import { fromAssets } from "./formula.js";

/** What the two routes differ in. */
export interface LastTimeKind {
  /** The column of Assets that has the load of last time. */
  readonly load: "last_amps" | "last_load";
  readonly loadUnit: string;
  /** The load that the judged rise belongs to. */
  readonly loadNow: string;
  /** What the judged rise is over, as Assets and Follow-up call it. */
  readonly overNow: string;
  /** Last time's rise at today's load: a number or "". */
  readonly atLoad: string;
}

export const LAST_TIME = "Last time";

/** 1 where a text or number is a grade of 1 or more. */
const graded = (grade: string): string => `(MID(${grade},3,4)="of 4")*(LEFT(${grade},1)<>"0")`;

/** Not yet found again or found better: what is still to be looked at. */
const WORDS =
  'IF([last_grade]="","",LET(again,(MID([last_grade],3,4)="of 4")*(LEFT([last_grade],1)<>"0"),' +
  `now,${graded("[grade_found]")},` +
  'IF(again*now>0,"repeat: ",IF(again>0,"look again: ",""))&IF(MID([last_grade],3,4)="of 4","graded ","")&[last_grade]&' +
  // What was seen in part has its own day among its words.
  'IF(ISNUMBER([last_survey])*(MID([last_grade],7,6)<>", seen")*1," on "&TEXT([last_survey],"yyyy-mm-dd"),"")&IF([repaired]="","",IF([repaired]="none noted",", no repair noted",", repaired: "&[repaired]))))';

export function lastTimeColumns(kind: LastTimeKind): Computed[] {
  const { load, loadUnit, loadNow, overNow, atLoad } = kind;
  const difference = { measure: "difference", format: "0.0", align: "right" } as const;
  const working = { group: "Working", width: 76, folded: true } as const;
  return [
    {
      key: "last_survey",
      header: "surveyed last time",
      group: LAST_TIME,
      width: 96,
      format: "yyyy-mm-dd",
      align: "right",
      formula: `=${fromAssets("last_survey")}`,
    },
    {
      key: "last_rise",
      header: "rise last time",
      group: LAST_TIME,
      width: 72,
      ...difference,
      note: "As it was judged then, at the load of then.",
      formula: `=${fromAssets("last_rise")}`,
    },
    {
      key: "last_load",
      header: "load last time",
      group: LAST_TIME,
      width: 72,
      unit: loadUnit,
      format: "0",
      align: "right",
      formula: `=${fromAssets(load)}`,
    },
    {
      key: "last_grade",
      header: "grade last time",
      group: LAST_TIME,
      width: 84,
      formula: `=${fromAssets("last_grade")}`,
    },
    {
      key: "repaired",
      header: "repaired since",
      group: LAST_TIME,
      width: 170,
      formula: `=${fromAssets("repaired")}`,
    },
    {
      key: "rise_change",
      header: "change of rise",
      group: LAST_TIME,
      width: 150,
      ...difference,
      note: "The rise judged today less that of last time at today's load; only where both are over the same. It means something beyond the root of both squared uncertainties.",
      formula:
        '=IF(ISNUMBER([rise_judged])*ISNUMBER([last_rise]),IF([last_over]="","reference of then not noted",IF([last_over]<>[judged_over],"then over "&[last_over],' +
        `LET(was,${atLoad},IF(ISNUMBER(was),[rise_judged]-was,"loads not comparable")))),"")`,
    },
    {
      key: "last_time",
      header: "last time, in words",
      group: LAST_TIME,
      width: 320,
      formula: `=${WORDS}`,
    },
    { key: "last_over", ...working, formula: `=${fromAssets("last_over")}` },
    {
      key: "judged_over",
      ...working,
      note: "What the rise that was judged is over.",
      formula: `=IF([rise_judged]="","",${overNow})`,
    },
    {
      key: "load_judged",
      ...working,
      unit: loadUnit,
      format: "0",
      note: "The load that the rise that was judged belongs to.",
      formula: `=IF([rise_judged]="","",${loadNow})`,
    },
  ];
}
