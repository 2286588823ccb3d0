/** The four verdicts on every value that a row of a client's report states. */
import { atLoadVerdict } from "./at-load.js";
import type { Claim, QuantityStated } from "./claim.js";
import { type Consequence, consequence } from "./consequence.js";
import { type GradeVerdict, gradeVerdict, type Numbering } from "./grade.js";
import { type Defect, defectsOf, isBeyondRange } from "./method.js";
import { atLimit, isAirAlone, type NumberVerdict, temperatureVerdict } from "./number.js";
import { recompute } from "./recompute.js";
import { endsOf, overOf, riseOf, riseVerdict } from "./rise.js";

/** One value that a row states. */
export interface StatedLine {
  readonly what: QuantityStated;
  /** SI; of a grade as written. */
  readonly stated: number;
  readonly half: number;
  /** Undefined of a grade. */
  readonly number: NumberVerdict | undefined;
}

export interface RowAudit {
  readonly claim: Claim;
  readonly lines: readonly StatedLine[];
  readonly method: readonly Defect[];
  /** Undefined where the row states no grade. */
  readonly grade: GradeVerdict | undefined;
  readonly consequence: Consequence;
}

/**
 * Recomputes a row from its own readings and settings. The uncertainty of the inputs cancels in that comparison, so a number
 * is held to its printed digits and not to the uncertainty of the measurement, which counts for the consequence alone.
 * @param numbering which way the report counts its grades, where it says so
 */
export function auditRow(claim: Claim, numbering: Numbering | undefined): RowAudit {
  const isLimit = isBeyondRange(claim);
  const over = overOf(claim);
  const numeric: Claim = over === undefined ? claim : { ...claim, reference: over };
  const ends = endsOf(numeric);
  const rise = riseOf(ends);
  const numbers: StatedLine[] = [];
  const add = (what: QuantityStated, stated: Claim["statedTemp"], verdict: () => NumberVerdict): void => {
    if (stated !== undefined)
      numbers.push({
        what,
        stated: stated.value,
        half: stated.half,
        number: isLimit && what !== "reference temperature" ? atLimit : verdict(),
      });
  };
  const { statedTemp, statedReferenceTemp, statedRise, statedRiseAtLoad, statedGrade } = claim;
  // A report that gives neither reading nor setting states its temperatures, and no more can be said of them.
  const { emissivity, reflected } = claim.settings;
  const isGiven = (claim.apparent ?? emissivity ?? reflected) !== undefined;
  add("temperature", isGiven ? statedTemp : undefined, () =>
    temperatureVerdict(statedTemp!, recompute(claim, claim.apparent)),
  );
  add("reference temperature", claim.referenceApparent && statedReferenceTemp, () =>
    temperatureVerdict(statedReferenceTemp!, recompute(claim, claim.referenceApparent)),
  );
  /** What the rise is over was found from its number where the report does not say it. */
  const assumed = (verdict: NumberVerdict): NumberVerdict =>
    claim.reference === undefined && over !== undefined ? { ...verdict, over } : verdict;
  /** Whether nothing speaks against what the report states before. */
  const holds = (): boolean => numbers.every(({ number }) => number?.kind === "reproduced");
  add("rise", statedRise, () => assumed(riseVerdict(statedRise!, numeric, ends, holds())));
  const riseHolds = numbers.every(({ what, number }) => what !== "rise" || number?.kind === "reproduced");
  add("rise at load", statedRiseAtLoad, () => assumed(atLoadVerdict(statedRiseAtLoad!, numeric, ends, riseHolds)));
  const isSure =
    isAirAlone(rise.missing) || rise.span === undefined || rise.span[1] - rise.span[0] <= rise.inputTolerance;
  const recomputed = isLimit || !isSure ? undefined : rise.value;
  const printed = recomputed === undefined ? undefined : { value: recomputed, half: rise.inputTolerance };
  const grade = statedGrade === undefined ? undefined : gradeVerdict(claim, statedGrade, numbering, printed);
  if (statedGrade !== undefined) numbers.push({ what: "grade", stated: statedGrade, half: 0, number: undefined });
  const verdicts = numbers.flatMap(({ number }) => (number === undefined ? [] : [number]));
  return {
    claim,
    lines: numbers,
    method: defectsOf(claim, verdicts),
    grade,
    consequence: consequence(claim, recomputed, grade?.stated, Math.hypot(ends.hot.ofDigits, ends.reference.ofDigits)),
  };
}

/** Grades that nothing is said against. */
const FOLLOWS: ReadonlySet<GradeVerdict["kind"]> = new Set(["follows", "before rounding", "other numbering"]);

/** Whether anything that the row states is not what its inputs give, or does not follow. */
function isReproduced({ lines, grade }: RowAudit): boolean {
  const right = (line: StatedLine): boolean => line.number === undefined || line.number.kind === "reproduced";
  return lines.every(right) && (grade === undefined || FOLLOWS.has(grade.kind));
}

export type Standing = "reproduced" | "cannot be reproduced" | "not reproduced";

/** The row all in all: what lacks an input is neither right nor wrong. */
export function standingOf(audit: RowAudit): Standing {
  if (isReproduced(audit)) return "reproduced";
  const isOpen = ({ number }: StatedLine): boolean =>
    number === undefined || ["reproduced", "limit", "needs"].includes(number.kind);
  const { lines, grade } = audit;
  const isGradeOpen = grade === undefined || grade.kind === "needs" || FOLLOWS.has(grade.kind);
  return lines.every(isOpen) && isGradeOpen ? "cannot be reproduced" : "not reproduced";
}
