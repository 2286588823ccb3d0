/** What a recomputed rise changes: here alone the uncertainty of the measurement counts. */
import { correct } from "../../correction/correct.js";
import { GreybodyError } from "../../errors.js";
import { cameraUncertainty } from "../../uncertainty/camera.js";
import type { UncertainReading } from "../../uncertainty/inputs.js";
import { coverageFactor } from "../../uncertainty/coverage.js";
import { riseUncertainty } from "../../uncertainty/rise.js";
import { RULES } from "../../../data/rules.js";
import { grade as gradeOf } from "../../severity/grade.js";
import type { Claim } from "./claim.js";
import { gradeFor } from "./grade.js";
import { recompute } from "./recompute.js";

export interface Consequence {
  readonly kind: "unchanged" | "changed" | "undecided" | "not recomputed" | "no grade";
  readonly rise: number | undefined;
  /** Of the recomputed rise, by the report's criteria and reference. */
  readonly grade: number | undefined;
  /** Expanded uncertainty of the recomputed rise (95 %) [K], of what is usual where the report says nothing. */
  readonly expanded: number | undefined;
  /** The edge that lies within it [K]. */
  readonly edge: number | undefined;
}

/** Half-widths where a report says nothing of them: emissivity of what is known well and less well, reflected temperature. */
export const KNOWN_WELL = { from: 0.9, half: 0.02 };
export const KNOWN_LESS = 0.05;
export const REFLECTED_HALF = 3;
const COVERAGE = 0.95;

/**
 * @param stated the stated grade in our numbering, where the report states one
 * @param ofDigits what half a last digit of the readings moves the rise by [K]: of "about 60" far more than a camera's own
 */
export function consequence(
  claim: Claim,
  rise: number | undefined,
  stated: number | undefined,
  ofDigits: number,
): Consequence {
  const { reference } = claim;
  const grade = rise === undefined || reference === undefined ? undefined : gradeFor(claim, rise, reference);
  if (rise === undefined || reference === undefined)
    return { kind: "not recomputed", rise, grade: undefined, expanded: undefined, edge: undefined };
  const measured = uncertaintyOf(claim, rise);
  const rounded = Number.isFinite(ofDigits) ? (coverageFactor(COVERAGE, Infinity) * ofDigits) / Math.sqrt(3) : 0;
  const expanded = measured === undefined ? undefined : Math.hypot(measured, rounded);
  const edge = grade === undefined || expanded === undefined ? undefined : edgeWithin(claim, rise, expanded);
  if (stated === undefined || grade === undefined) return { kind: "no grade", rise, grade, expanded, edge };
  const kind = edge !== undefined ? "undecided" : grade === stated ? "unchanged" : "changed";
  return { kind, rise, grade, expanded, edge };
}

function edgeWithin(claim: Claim, rise: number, expanded: number): number | undefined {
  const { lower, upper } = gradeOf({ rise, reference: claim.reference!, criteria: claim.criteria, view: claim.view });
  return [lower, upper].find((edge) => edge !== undefined && Math.abs(edge.value - rise) <= expanded)?.value;
}

/** Of a rise as it is usual: camera ±2 K or 2 %, emissivity and reflected temperature as above, air by thermometer. */
function uncertaintyOf(claim: Claim, rise: number): number | undefined {
  const { apparent, referenceApparent, statedTemp, reference, surroundingAir, band } = claim;
  const hot = apparent?.value ?? statedTemp?.value;
  if (hot === undefined) return undefined;
  const emissivity = claim.settings.emissivity ?? 0.95;
  const half = emissivity >= KNOWN_WELL.from ? KNOWN_WELL.half : KNOWN_LESS;
  const given = recompute(claim, { value: hot, half: 0 }).given;
  const settings = given?.settings ?? {
    emissivity,
    reflected: claim.settings.reflected ?? surroundingAir?.value ?? hot - rise,
  };
  const reading = (value: number): UncertainReading => ({
    apparent: value,
    settings,
    uncertainties: {
      apparent: { stated: cameraUncertainty(value, RULES.camera_accuracy.value, RULES.camera_accuracy_share.value) },
      emissivity: { stated: half, distribution: "rectangular" },
      reflected: { stated: REFLECTED_HALF, distribution: "rectangular" },
    },
  });
  try {
    const hotReading = reading(hot);
    const cool = referenceApparent?.value ?? hot - rise;
    return reference === "ambient"
      ? riseUncertainty(
          hotReading,
          { temperature: correct(hot, settings, band).temperature - rise },
          "air by thermometer",
          COVERAGE,
          band,
        ).expanded
      : riseUncertainty(hotReading, reading(cool), "same image, other surface", COVERAGE, band).expanded;
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}
