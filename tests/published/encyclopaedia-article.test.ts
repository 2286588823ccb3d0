/** An encyclopaedia's article on black bodies: what one emits in all at 25 °C. */
import { radiance } from "../../src/core/planck/exact.js";
import { EVERYTHING } from "../support/bands.js";
import { expectCited, kelvinsIn } from "../support/radiometry.js";
import { publishedChecks } from "../support/rows.js";

it.each(publishedChecks("SIG-").map((check) => [check.cited, check] as const))("%s", (_, check) => {
  expectCited(check, Math.PI * radiance(EVERYTHING, kelvinsIn(check, "T")));
});
