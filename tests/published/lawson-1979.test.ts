/** Lawson (1979), a table in an instrumentation handbook, one figure printed. */
import { radiance } from "../../src/core/planck/exact.js";
import { expectCited, kelvinsIn, namedBand } from "../support/radiometry.js";
import { publishedChecks } from "../support/rows.js";

it.each(publishedChecks("LAW-").map((check) => [check.cited, check] as const))("%s", (_, check) => {
  expectCited(check, Math.PI * radiance(namedBand(check), kelvinsIn(check, "T")));
});
