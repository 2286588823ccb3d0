/** The audit as a workbook: what a client reports beside what is recomputed, and a page to send. */
import { cautions } from "../../functions/cautions.js";
import type { Units } from "../../functions/units.js";
import type { BookDescription, NotesSheet } from "../contract.js";
import { sheetUnits } from "../route/sheet-units.js";
import { REPAIR } from "../common/repair.js";
import { ARITHMETIC, cautionsSheet, tableSheet } from "../route/sheets.js";
import { auditColumns } from "./computed.js";
import { findingsSheet } from "./findings.js";
import { reportForm, type ReportValues } from "./report.js";
import { CLAIM_COLUMNS, type ClaimRow } from "./typed.js";

export interface Audit {
  readonly title: string;
  readonly about: readonly string[];
  readonly report: ReportValues;
  readonly rows: readonly ClaimRow[];
  readonly units: Units;
}

const REPORT_LINE =
  '="Report"&IF(report_number="",""," "&report_number)&IF(report_site="","",", "&report_site)&", "&IF(report_date="","no date",TEXT(report_date,"yyyy-mm-dd"))&". Criteria: "&report_criteria&IF(report_criteria_edition="",""," ("&report_criteria_edition&")")';

export function auditBook({ title, about, report, rows, units: system }: Audit): BookDescription {
  const units = sheetUnits(system);
  const head = (name: string, ...more: string[]): string[] => [name, REPORT_LINE, ...about, ...more];
  return {
    title,
    template: { name: "audit", units: system },
    sheets: [
      tableSheet("Claims", "ClaimList", head(title, ARITHMETIC, ...REPAIR), CLAIM_COLUMNS, rows, units, {
        computed: auditColumns(units),
        frozenColumns: 1,
      }),
      findingsSheet(head("Findings", ARITHMETIC), units),
      reportForm(head("Report", cautions[0]?.text ?? "", "What the report says for all of its rows."), report, units),
      HOW_TO_READ,
      cautionsSheet,
    ],
  };
}

const HOW_TO_READ: NotesSheet = {
  kind: "notes",
  name: "How to read it",
  heading: ["How to read it"],
  lines: [
    "Number. The stated value is worked out again from the report's own readings and settings. The uncertainty of the inputs cancels in that, so the two may differ by no more than the digits that are printed allow: half the last digit stated, what half the last digit of each printed reading moves the result by, and the difference between the bands 7.5-14 and 8-14 µm.",
    "Slips. Where the number is not reproduced, each usual slip that would give it is named, with how often a number drawn by chance within 20 K would match one of those named so far. A slip is a possibility, nothing is proved by it; over several rows it weighs more, and the page Findings counts that.",
    "Missing. What the report does not give is varied over what it usually is: reflected temperature 10 K about the air, emissivity 0.85 to 0.98 where it is no metal, transmission of the air 0.97 to 1. Where that moves the result by less than the tolerance it is immaterial; else the number cannot be reproduced, and the span is told; that is a question to the report and no fault. Air that a report does not print at all is taken as 1 first. A rise may also be the difference of the stated temperatures as they are printed, and a rise at load the stated rise as it is printed.",
    "Method. What speaks against the way a number was arrived at, whether the number is reproduced or not.",
    "Grade. Whether the stated grade follows from the stated rise by the report's own criteria: as it stands, only from digits that are not printed (15.04 K is above 15 and printed as 15.0), only if the rise is rounded first, by another column, or where 1 is the worst.",
    "Consequence. The grade of the recomputed rise. Only here the uncertainty of the measurement counts, of a camera of 2 K or 2 %, emissivity known to 0.02 (below 0.9: 0.05), reflected to 3 K and air by thermometer: where an edge of the criteria lies within it the grade is undecided.",
  ],
};
