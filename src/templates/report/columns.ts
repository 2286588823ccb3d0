/** What the report sheets need beside the readings and the assets: folded helpers, and what is known of an asset this time. */
import type { Computed } from "../route/columns.js";
import { clause, joined, number } from "../route/formula.js";
import type { ReportKind } from "./kind.js";
import { rank } from "./ranked.js";

const WORKING = { group: "Working", width: 72, folded: true } as const;

/** Beside the readings. */
export function readingColumns(kind: ReportKind): Computed[] {
  const digit = (from: number): string => (from < 0 ? '""' : `IF(first="${from}",${from},${digit(from - 1)})`);
  const grade = "IF(ISNUMBER([grade_number]),[grade_number],-1)";
  const rise = "IF(ISNUMBER([rise_judged]),[rise_judged],-1000)";
  return [
    {
      key: "grade_number",
      ...WORKING,
      format: "0",
      note: "The grade as found as a number; none where there is no grade.",
      formula: `=LET(first,IF(MID([grade_found],3,4)="of 4",LEFT([grade_found],1),""),${digit(4)})`,
    },
    {
      key: "rise_judged",
      ...WORKING,
      measure: "difference",
      format: "0.0",
      note: "What exceptions of one grade are ordered by: the rise that was graded, else the one over air.",
      formula: `=${kind.riseJudged}`,
    },
    {
      key: "exception_rank",
      ...WORKING,
      format: "0",
      note: "Rows marked exception, and those partly seen that have a grade of 1 or more or a rise that lacks a current for one, the worst first: readings at the camera's limit, then the grade, then the rise.",
      formula: rank(
        `(([reading_is]="at least")*([limit_reading]<>""))*1000000+${grade}*100000+${rise}`,
        // A word for the status that is none, or a rise that could not be graded, takes nothing hot off the list.
        '([status]="exception")+([status]<>"")*([status]<>"exception")*([status]<>"no exception")*([status]<>"not inspected")*' +
          'IF(ISNUMBER([grade_number]),([grade_number]>=1)*1,([status]="partly seen")*ISNUMBER([rise_judged])*(LEFT([grade_found],23)="no grade: needs current"))',
      ),
    },
    {
      key: "seen",
      ...WORKING,
      width: 120,
      note: "The row's asset with what the row says of it: Assets looks for it.",
      formula:
        '=IF([asset_id]="","",[asset_id]&"|"&IF(([status]="exception")+([status]="no exception")>0,IF([needs]="","complete","incomplete"),' +
        'IF(([status]="partly seen")+([status]="not inspected")>0,[status],"open")))',
    },
  ];
}

const CONDITIONS = ["physical_condition", "criticality", "environment"] as const;

/** Beside the assets: what this route saw of each, and when it is due. */
export function assetColumns(): Computed[] {
  const THIS_TIME = "This time";
  const DUE = "Next survey";
  const has = (word: string): string => `ISNUMBER(XMATCH([asset_id]&"|${word}",Readings[seen]))*1`;
  const missing = joined(
    CONDITIONS.map((one) => clause(`[${one}]=""`, `"${one}"`, ", ")),
    ", ",
  ).slice(1);
  const isWorst = (one: string): string => `(${one}&""=worst)`;
  return [
    {
      key: "seen",
      header: "on this route",
      group: THIS_TIME,
      width: 170,
      note: "From the rows of Route. Where one row of an asset was seen and another not, it is partly seen.",
      formula:
        `=IF([asset_id]="","",LET(complete,${has("complete")},incomplete,${has("incomplete")},partly,${has("partly seen")},` +
        `unseen,${has("not inspected")},open,${has("open")},some,complete+incomplete,` +
        'IF(partly+unseen*some>0,"partly seen",IF(unseen>0,"not inspected",IF(incomplete>0,"inspected, row not complete",' +
        'IF(complete>0,"inspected",IF(open>0,"row without status","no row")))))))',
    },
    {
      key: "survey",
      header: "surveyed last",
      group: THIS_TIME,
      width: 96,
      format: "yyyy-mm-dd",
      align: "right",
      note: "The survey date of Job where it was inspected on this route, else last_survey. What was seen in part does not count.",
      formula: `=IF([asset_id]="","",IF((LEFT([seen],9)="inspected")*ISNUMBER(job_date),job_date,${number("[last_survey]")}))`,
    },
    {
      key: "due",
      header: "next due",
      group: DUE,
      width: 150,
      format: "yyyy-mm-dd",
      align: "right",
      note: "NFPA 70B-2023: 12, 12 or 6 months by the worst of physical condition, criticality and environment. Where it was not inspected this time, a next_due that comes earlier stands.",
      formula:
        `=IF([asset_id]="","",LET(missing,${missing},planned,${number("[next_due]")},inspected,LEFT([seen],9)="inspected",` +
        'reckoned,IF(missing<>"","needs: "&missing,IF([survey]="","no survey known",' +
        'IFERROR(GREY.NEXT_DUE([survey],[physical_condition],[criticality],[environment]),"no date: check survey and conditions"))),' +
        "IF(inspected+(ISNUMBER(planned)=FALSE)>0,reckoned,IF(ISNUMBER(reckoned),IF(planned<reckoned,planned,reckoned),planned))))",
    },
    {
      key: "due_by",
      header: "by",
      group: DUE,
      width: 270,
      formula:
        "=IF(ISNUMBER([due]),LET(worst,IF(" +
        `${CONDITIONS.map((one) => `([${one}]&""="3")`).join("+")}>0,"3",IF(${CONDITIONS.map((one) => `([${one}]&""="2")`).join("+")}>0,"2","1")),` +
        `words,${CONDITIONS.map((one) => `IF(${isWorst(`[${one}]`)},", ${one.replaceAll("_", " ")}","")`).join("&")},` +
        'IF(([due]=[next_due])*(LEFT([seen],9)<>"inspected"),"next_due, as planned",MID(words,3,60)&" "&worst&": "&ROUND(([due]-[survey])/30.4375,0)&" months")),"")',
    },
    {
      key: "overdue",
      header: "overdue",
      group: DUE,
      width: 76,
      unit: "d",
      format: "0",
      align: "right",
      note: "On the survey date of Job.",
      formula: '=IF(ISNUMBER([due])*ISNUMBER(job_date),IF([due]<job_date,job_date-[due],""),"")',
    },
    {
      key: "due_rank",
      ...WORKING,
      format: "0",
      note: "What has no known survey first, then by date, what lacks something last.",
      formula: rank('IF(ISNUMBER([due]),-[due],IF([due]="no survey known",0,-1000000))', '([asset_id]<>"")*1'),
    },
  ];
}
