import { CHECK_RULES } from "../../data/check-rules.js";
import { ZERO_CELSIUS } from "../constants.js";
import { GreybodyError } from "../errors.js";
import { criteriaNamed, DEFAULT_CRITERIA } from "../severity/criteria.js";
import type { Grade } from "../severity/ladder.js";
import { gradeOn, ladderFor } from "../severity/ladder.js";
import type { RowFacts } from "./facts.js";
import { above, below, when } from "./hit.js";
import type { Hit } from "./hit.js";
import type { Named } from "./named.js";

/** Grade of a rise [K] by the job's criteria, else by the usual ones; undefined where they have none for the reference. */
export function gradeBy(job: Named, reference: "similar" | "ambient", rise: number): Grade | undefined {
  if (Number.isNaN(rise)) return undefined;
  try {
    return gradeOn(ladderFor(criteriaNamed(job.text("criteria") ?? DEFAULT_CRITERIA), reference), rise);
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

/** Whether two of three phases at like currents are hot, so that a mean of the others would hide both. */
export function isTwoHot({ radiometry, isDirect, imbalance = 0 }: RowFacts): boolean {
  return isDirect && radiometry.pattern === "two hot" && !above(imbalance, CHECK_RULES.imbalance_most.value);
}

/** One comparison that a row allows, and the grade from which it speaks against the status. */
interface Comparison {
  readonly over: "similar" | "the lowest" | "air";
  readonly reference: "similar" | "ambient";
  /** [K] */
  readonly rise: number | undefined;
  readonly least: number;
}

/**
 * A row called no exception whose rise has a grade by the job's criteria, also less its expanded uncertainty: from grade 2 on,
 * since grade 1 begins within what two readings differ by. Over air it counts from grade 2 where there is nothing else to
 * compare with, else from the worst grade on: load warms all phases alike, and that is no exception of a joint.
 */
export function gradedNoException(facts: RowFacts): readonly Hit[] {
  const { status, isDirect, emissivity, hottest, radiometry, job, row } = facts;
  const isTold = status === "no exception" && isDirect && row.text("reading_is") !== "at most";
  if (!isTold || hottest === undefined || below(emissivity, CHECK_RULES.emissivity_qualitative.value)) return [];
  const graded = comparisons(facts).flatMap(({ over, reference, rise = NaN, least }) => {
    const u = radiometry.uncertaintyOf(reference === "similar" ? "similar" : "air");
    const grade = gradeBy(job, reference, rise);
    const surely = gradeBy(job, reference, rise - u);
    return grade && surely && surely.grade >= least ? [{ over, rise, grade }] : [];
  });
  const [worst] = graded.sort((a, b) => b.grade.grade - a.grade.grade);
  return when(worst !== undefined, "status", () => ({
    rise: worst?.rise ?? NaN,
    over: worst?.over ?? "",
    grade: worst?.grade.grade ?? NaN,
    criteria: worst?.grade.criteria ?? "",
    asRead: radiometry.compared?.isCorrected === true ? "" : "as read",
    ...inFahrenheit(facts),
  }));
}

function comparisons(facts: RowFacts): readonly Comparison[] {
  const { radiometry, imbalance = 0, isSingle } = facts;
  const { compared, pattern } = radiometry;
  const areComparable = !above(imbalance, CHECK_RULES.imbalance_most.value);
  const [least, leastOverAir] = [CHECK_RULES.exception_grade.value, CHECK_RULES.exception_grade_air.value];
  const over: Comparison[] = [];
  if (areComparable && (pattern === "one hot" || (isSingle && compared?.others.length === 1))) {
    const others = compared?.others ?? [];
    const mean = others.reduce((a, b) => a + b, 0) / others.length;
    const rise = radiometry.riseOverSimilar ?? (compared?.hot ?? NaN) - mean;
    over.push({ over: "similar", reference: "similar", rise, least });
  }
  if (isTwoHot(facts)) over.push({ over: "the lowest", reference: "similar", rise: radiometry.riseOverLowest, least });
  // A machine is warm by itself: it is compared with its like, or with itself when it was sound.
  if (isMachine(facts)) return over;
  // All alike and well within their limit: load, which no table over air is meant for.
  if (pattern === "balanced" && below(facts.row.number("share_of_limit"), CHECK_RULES.load_heating.value)) return over;
  const hasLike = over.length > 0 || (areComparable && pattern === "balanced");
  const rise = radiometry.riseOverAir ?? (compared?.hot ?? NaN) - (facts.riseAir ?? NaN);
  return [...over, { over: "air", reference: "ambient", rise, least: hasLike ? leastOverAir : least }];
}

function isMachine({ isSingle, row }: RowFacts): boolean {
  return isSingle && !["load", "reference_load", "expected_max_A"].some((name) => row.given(name));
}

const FREEZING_F = 32;
const DEGREES_F = 1.8;

/**
 * Readings in °C that, were they in °F, would all lie a little above the air: only of phases like each other that nobody called
 * an exception, so that what is really hot is not doubted. Whether the sheet is in °C its words have to look after.
 */
function inFahrenheit({ readings, radiometry, riseAir }: RowFacts): Readonly<Record<string, number>> {
  if (riseAir === undefined || radiometry.pattern !== "balanced") return {};
  const meant = readings.map(({ value }) => (value - ZERO_CELSIUS - FREEZING_F) / DEGREES_F + ZERO_CELSIUS);
  const most = riseAir + CHECK_RULES.fahrenheit_rise.value;
  const arePlausible = meant.every((value) => !below(value, riseAir) && !above(value, most));
  return arePlausible ? { fahrenheitLow: Math.min(...meant), fahrenheitHigh: Math.max(...meant) } : {};
}
