/** What holds for a whole report, in words: what was found, why it matters, what to ask. */
import type { ReportFinding } from "../core/audit/verdict/whole-report.js";
import { slipWords } from "./audit-words.js";
import { readable } from "./units.js";

export interface FindingWords {
  readonly what: string;
  readonly why: string;
  readonly todo: string;
}

const list = (rows: readonly number[]): string => rows.join(", ");

export function findingWords(finding: ReportFinding): FindingWords {
  switch (finding.id) {
    case "slip":
      return {
        what: `${slipWords(finding.slip)}: would explain ${finding.rows} of ${finding.of} rows`,
        why: "One slip over several rows is more than chance.",
        todo: "Ask how these numbers were worked out.",
      };
    case "same-emissivity":
      return {
        what: `emissivity ${readable(finding.emissivity)} on ${finding.rows} rows of ${finding.materials} materials`,
        why: "One emissivity is seldom right for so many surfaces.",
        todo: "Ask for the emissivity of each surface, and where it comes from.",
      };
    case "reflected-is-air":
      return {
        what: `reflected temperature equal to the air on ${finding.rows} rows with emissivity below 0.9`,
        why: "It was likely assumed, and at a low emissivity the temperature hangs on it.",
        todo: "Ask how it was found: reflector or direct method.",
      };
    case "round-loads":
      return {
        what: `all ${finding.rows} loads are multiples of 10`,
        why: "Currents that were read seldom are.",
        todo: "Ask whether they were measured, and when.",
      };
    case "full-loads":
      return {
        what: `all ${finding.rows} loads equal the reference load`,
        why: "Plant seldom runs at exactly full load throughout.",
        todo: "Ask whether they were measured, and when.",
      };
    case "same-image":
      return {
        what: `image ${finding.image} on rows ${list(finding.rows)}`,
        why: "One image is given as evidence of several items.",
        todo: "Ask for the image of each.",
      };
    case "before-job":
      return {
        what: `dates before the survey: rows ${list(finding.rows)}`,
        why: "A reading cannot be older than the job.",
        todo: "Ask for the day of these readings.",
      };
    case "calibration-out":
      return {
        what: `calibration had run out: rows ${list(finding.rows)}`,
        why: "A camera out of calibration gives no quantitative reading.",
        todo: "Ask for the certificate that was valid on the day.",
      };
    case "numbering":
      return {
        what: `grades of ${finding.rows} rows fit only where 1 is the worst`,
        why: "Our grades count the other way: 4 is the worst.",
        todo: "Ask which way the report counts, and say it in grades_count.",
      };
  }
}
