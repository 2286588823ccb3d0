/** Modest, Radiative Heat Transfer (1993), as quoted: share of a black body's emission below λ·T. */
import { SECOND_RADIATION_CONSTANT } from "../../src/core/constants.js";
import { fractionBelow } from "../../src/core/planck/integrals.js";
import { expectCited } from "../support/radiometry.js";
import { inputOf, publishedChecks } from "../support/rows.js";

it.each(publishedChecks("FM-").map((check) => [check.cited, check] as const))("%s", (_, check) => {
  expectCited(check, fractionBelow(inputOf(check, "lambda_T") * 1e-6, SECOND_RADIATION_CONSTANT));
});
