/** A page on line conductors (unnamed): I = I_base·sqrt((Tc − Ta)/(Tc − T_base)), the square law and not IEEE 738 itself. */
import { expectAllowableCurrent, expectTemperatureAtLoad } from "../support/allowable-current.js";
import { publishedChecks } from "../support/rows.js";

const checks = publishedChecks("AMP-").map((check) => [check.title, check] as const);

describe("line conductors, exponent 2", () => {
  it.each(checks.filter(([, check]) => !check.id.endsWith("T")))("%s", (_, check) => {
    expectAllowableCurrent(check);
  });
  it.each(checks.filter(([, check]) => check.id.endsWith("T")))("%s", (_, check) => {
    expectTemperatureAtLoad(check);
  });
});
