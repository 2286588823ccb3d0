/**
 * Degrees Fahrenheit: an NDT society's journal prints a fuse example in both scales (to whole kelvin); and by definition a
 * difference converts without the 32, which published severity tables have been seen to get wrong.
 */
import { findFunction } from "../../src/functions/catalogue.js";
import { fromSI, toSI, unitOf } from "../../src/functions/units.js";
import { expectCited } from "../support/radiometry.js";
import { publishedChecks } from "../support/rows.js";

it.each(publishedChecks("UNIT-1", "UNIT-2", "UNIT-3").map((check) => [check.cited, check] as const))(
  "%s",
  (_, check) => {
    expectCited(check, toSI(parseFloat(check.inputs), unitOf("temperature", "F")));
  },
);

it.each(publishedChecks("UNIT-4", "UNIT-5", "UNIT-6").map((check) => [check.cited, check] as const))(
  "%s",
  (_, check) => {
    const kelvins = parseFloat(check.inputs);
    expectCited(check, fromSI(kelvins, unitOf("difference", "F")));
    // And no more than that in the worksheet: a black body warmer by so many kelvin reads warmer by so many °F.
    const corrected = (t: number): number =>
      Number(
        findFunction("CORRECTED")?.evaluate([
          t * 1.8 + 32,
          1,
          32,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          "F",
        ])[0]?.[0],
      );
    expect(Math.abs(corrected(50 + kelvins) - corrected(50) - check.expected)).toBeLessThanOrEqual(1e-7);
  },
);
