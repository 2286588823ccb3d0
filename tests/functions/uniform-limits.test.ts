/**
 * Both ends of every range of every function, in °C and in °F: on an end that is allowed (and just inside one that is not)
 * there is an answer or the refusal that the fixture names; just outside the message names argument, value and range.
 */
import type { ArgumentSpec, Cell, Grid } from "../../src/functions/contract.js";
import { baseFor, call, errorIn, inFahrenheit, mapGiven, metric, specOf, type Given } from "./fixture.js";
import { fixtures } from "./fixtures.js";

type Side = "low" | "high";
interface Limit {
  readonly arg: ArgumentSpec;
  readonly side: Side;
  readonly inside: number;
  readonly outside: number;
}

/** The ends of an argument's range in the metric sheet, with a value that must be taken and one that must not. */
function limitsOf(arg: ArgumentSpec): Limit[] {
  const { min, max, minExcluded, maxExcluded } = arg.range ?? {};
  return (["low", "high"] as const).flatMap((side) => {
    const si = side === "low" ? min : max;
    if (si === undefined) return [];
    const end = metric(arg.quantity, si);
    const outward = (side === "low" ? -1 : 1) * Math.max(1e-6 * Math.abs(end), 1e-6);
    const excluded = (side === "low" ? minExcluded : maxExcluded) === true;
    // A 0 that cannot be is an empty cell: the end itself is neither inside nor outside.
    const blank = arg.zeroIsBlank === true && end === 0;
    return [
      { arg, side, inside: excluded || blank ? end - outward : end, outside: excluded && !blank ? end : end + outward },
    ];
  });
}

/** The whole argument replaced, in a range taken whole its first cell. */
function put(given: Given, name: string, value: number): Given {
  const own = given[name];
  if (!Array.isArray(own)) return { ...given, [name]: value };
  const [[, ...others] = [], ...rows] = own as Grid;
  return { ...given, [name]: [[value, ...others], ...rows] };
}

const readable = (value: number): string => String(Number(value.toPrecision(6)));

describe.each(fixtures.map((fixture) => [fixture.name, fixture] as const))("GREY.%s", (name, fixture) => {
  const spec = specOf(name);
  const limits = spec.args.flatMap(limitsOf);
  const systems = spec.args.some((arg) => arg.name === "units") ? (["C", "F"] as const) : (["C"] as const);

  it("names ends only of ranges that it has", () => {
    const known = limits.map(({ arg, side }) => `${arg.name} ${side}`);
    const named = Object.entries(fixture.ends ?? {}).flatMap(([arg, sides]) =>
      Object.keys(sides).map((side) => `${arg} ${side}`),
    );
    expect(known).toEqual(expect.arrayContaining(named));
  });

  if (limits.length === 0) return;
  it.each(limits.flatMap((limit) => systems.map((units) => [limit.arg.name, limit.side, units, limit] as const)))(
    "%s, %s end, °%s",
    (argument, side, units, { arg, inside, outside }) => {
      const end = fixture.ends?.[argument]?.[side];
      // As a person would write it: -459.67, not what is left of it in binary.
      const inSheet = (value: number): number =>
        units === "F" ? Number(inFahrenheit(arg.quantity, value).toPrecision(13)) : value;
      const withValue = (value: number): { given: number; first: Cell } => {
        const around = { ...baseFor(fixture, argument), ...end?.given };
        const sheet = units === "F" ? mapGiven(spec, around, (v, quantity) => inFahrenheit(quantity, v)) : around;
        const system = systems.length > 1 ? { units } : {};
        const given = inSheet(value);
        return { given, first: call(spec, { ...put(sheet, argument, given), ...system })[0]?.[0] ?? null };
      };

      const answer = withValue(inside).first;
      if (end?.refused) {
        const fault = errorIn([[answer]]);
        expect(fault?.error).toBe("#N/A");
        if (units === "C") expect(fault?.message).toMatch(end.refused);
      } else if (fixture.results[0] === "text" || fixture.mixed === true) {
        expect(answer).toEqual(expect.any(String));
      } else {
        expect(answer).toEqual(expect.any(Number));
        expect(answer).not.toBeNaN();
      }

      const refused = withValue(outside);
      const fault = errorIn([[refused.first]]);
      expect(fault?.error).toBe("#VALUE!");
      expect(fault?.message.startsWith(`${argument}: ${refused.given}`)).toBe(true);
      for (const bound of [arg.range?.min, arg.range?.max]) {
        if (bound !== undefined) expect(fault?.message).toContain(readable(inSheet(metric(arg.quantity, bound))));
      }
      expect(fault?.message).toContain("Allowed: ");
    },
  );
});
