/** The four verdicts on every value that a row of a client's report states. */
import { atLoadVerdict } from "./at-load.js";
import type { Claim, QuantityStated } from "./claim.js";
import { type Consequence, consequence } from "./consequence.js";
import { type GradeVerdict, gradeVerdict, type Numbering } from "./grade.js";
import { type Defect, defectsOf } from "./method.js";
import { atLimit, isAirAlone, type NumberVerdict, temperatureVerdict } from "./number.js";
import { recompute } from "./recompute.js";
import { endsOf, riseOf, riseVerdict } from "./rise.js";

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
  const isLimit = claim.readingIs !== undefined && claim.readingIs !== "exact";
  const ends = endsOf(claim);
  const rise = riseOf(ends);
  const numbers: StatedLine[] = [];
  const add = (what: QuantityStated, stated: Claim["statedTemp"], verdict: () => NumberVerdict): void => {
    if (stated !== undefined)
      numbers.push({ what, stated: stated.value, half: stated.half, number: isLimit ? atLimit : verdict() });
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
  add("rise", statedRise, () => riseVerdict(statedRise!, claim, ends));
  add("rise at load", statedRiseAtLoad, () => atLoadVerdict(statedRiseAtLoad!, claim, ends));
  const isSure =
    isAirAlone(rise.missing) || rise.span === undefined || rise.span[1] - rise.span[0] <= rise.inputTolerance;
  const recomputed = isLimit || !isSure ? undefined : rise.value;
  const grade = statedGrade === undefined ? undefined : gradeVerdict(claim, statedGrade, numbering, recomputed);
  if (statedGrade !== undefined) numbers.push({ what: "grade", stated: statedGrade, half: 0, number: undefined });
  const verdicts = numbers.flatMap(({ number }) => (number === undefined ? [] : [number]));
  return {
    claim,
    lines: numbers,
    method: defectsOf(claim, verdicts),
    grade,
    consequence: consequence(claim, recomputed, grade?.stated),
  };
}

/** Whether anything that the row states is not what its inputs give, or does not follow. */
export function isReproduced({ lines, grade }: RowAudit): boolean {
  const right = (line: StatedLine): boolean =>
    line.number === undefined || line.number.kind === "reproduced" || line.number.kind === "limit";
  return lines.every(right) && (grade === undefined || grade.kind === "follows" || grade.kind === "other numbering");
}
