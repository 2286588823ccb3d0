/**
 * The same tests for every function of the catalogue, driven by its own argument list; what differs stands in fixtures/.
 * Ranges have their tests in uniform-limits, columns and shapes in uniform-shapes.
 */
import { catalogue } from "../../src/functions/catalogue.js";
import type { ArgumentSpec, Cell, Grid, Input } from "../../src/functions/contract.js";
import {
  baseFor,
  call,
  errorIn,
  expectCells,
  gridOfCase,
  inFahrenheit,
  mapGiven,
  passing,
  specOf,
  type Given,
} from "./fixture.js";
import { fixtures } from "./fixtures.js";

const WORDS = new Set(["text", "band", "table"]);
const isNumeric = (arg: ArgumentSpec): boolean => !WORDS.has(arg.quantity);

/** The same call with one cell in an argument's place; in a range taken whole it is the first. */
function withCell(given: Given, arg: ArgumentSpec, cell: Cell | undefined): Given {
  const own = given[arg.name];
  if (!Array.isArray(own)) return { ...given, [arg.name]: cell };
  const [[, ...others] = [], ...rows] = own as Grid;
  return { ...given, [arg.name]: [[cell ?? null, ...others], ...rows] };
}

const without = (given: Given, name: string): Given => ({ ...given, [name]: undefined });

it("has a fixture for every function, and none for a function that is not there", () => {
  expect(fixtures.map((fixture) => fixture.name).sort()).toEqual(catalogue.map((spec) => spec.name).sort());
});

describe.each(fixtures.map((fixture) => [fixture.name, fixture] as const))("GREY.%s", (name, fixture) => {
  const spec = specOf(name);
  const base = fixture.cases[0].given;
  const result = (given: Given): Grid => call(spec, given);
  const hasUnits = spec.args.some((arg) => arg.name === "units");

  it("has the arguments of the design, in its order, with its defaults", () => {
    const written = spec.args.map((arg) => {
      if (arg.optional !== true) return arg.name;
      return typeof arg.default === "number" ? `[${arg.name}=${arg.default}]` : `[${arg.name}]`;
    });
    expect(written.join(", ")).toBe(fixture.design);
  });

  it("states a range for every number and choices or a meaning for every text", () => {
    for (const arg of spec.args) {
      expect(arg.help.length).toBeGreaterThanOrEqual(10);
      if (isNumeric(arg)) expect(arg.range).toBeDefined();
    }
    // The first case gives all of them, so that the tests below reach each one.
    const ranged = spec.args.filter((arg) => arg.range !== undefined).map((arg) => arg.name);
    expect(Object.keys(base)).toEqual(expect.arrayContaining(ranged));
  });

  it.each(fixture.cases.map((one) => [one.from, JSON.stringify(one.given), one] as const))("%s: %s", (_, __, one) => {
    const expected = gridOfCase(one);
    const found = result(one.given);
    const width = expected[0]?.length ?? 0;
    // Of a table the columns that the source has.
    expectCells(spec.shape === "table" ? found.map((row) => row.slice(0, width)) : found, expected, one.tolerance);
  });

  it("takes text that is a plain number for that number", () => {
    expect(result(mapGiven(spec, base, (value) => String(value)))).toEqual(result(base));
    expect(result(mapGiven(spec, base, (value) => ` ${value >= 0 ? "+" : ""}${value}e0`))).toEqual(result(base));
  });

  it("takes its choices in any case", () => {
    for (const arg of spec.args) {
      const own = base[arg.name] ?? arg.default;
      if (arg.choices && typeof own === "string") {
        expect(result({ ...base, [arg.name]: own.toUpperCase() })).toEqual(result(base));
      }
    }
  });

  it("refuses more arguments than it takes, and says how many", () => {
    const inputs: Input[] = [...spec.args.map((arg) => base[arg.name]), null];
    const excess = {
      error: "#VALUE!",
      message: `GREY.${name} takes at most ${spec.args.length} arguments; ${inputs.length} were given.`,
    };
    expect(spec.evaluate(inputs)).toEqual([[excess]]);
    expect(errorIn(spec.evaluate([]))?.error ?? "answers").toBe(
      spec.args.every((arg) => arg.optional) ? "answers" : "#VALUE!",
    );
  });

  if (hasUnits) {
    it("gives in °F what it gives in °C", () => {
      if (fixture.mixed) return;
      for (const { given, results = fixture.results } of fixture.cases) {
        const inF = result({
          ...mapGiven(spec, given, (value, quantity) => inFahrenheit(quantity, value)),
          units: "F",
        });
        const expected = result(given).map((row) =>
          row.map((cell, i) => {
            const quantity = results[i] ?? results.at(-1) ?? "number";
            return typeof cell === "number" ? inFahrenheit(quantity, cell) : cell;
          }),
        );
        expectCells(inF, expected, 1e-9);
        expect(result({ ...given, units: "C" })).toEqual(result(given));
      }
    });

    it("takes its defaults over into °F", () => {
      for (const arg of spec.args) {
        if (typeof arg.default !== "number") continue;
        const inF = mapGiven(spec, base, (value, quantity) => inFahrenheit(quantity, value));
        const said = { ...inF, units: "F", [arg.name]: inFahrenheit(arg.quantity, arg.default) };
        expectCells(result(without({ ...inF, units: "F" }, arg.name)), result(said), 1e-9);
      }
    });
  }

  describe.each(spec.args.map((arg) => [arg.name, arg] as const))("%s", (argument, arg) => {
    const base = baseFor(fixture, argument);
    const bare = without(base, argument);
    // Of a range of columns a cell is read by its own column: its tests stand with the function's own.
    const cellwise = arg.columns === undefined;
    const expectFault = (cell: Cell | undefined, message: RegExp): void => {
      const fault = errorIn(result(withCell(base, arg, cell)));
      expect(fault?.error).toBe("#VALUE!");
      expect(fault?.message).toMatch(message);
      expect(fault?.message).not.toContain("fault of ours");
    };
    const named = new RegExp(`^${argument}: `);

    it("left out, empty or blank is not given", () => {
      const blanks = !cellwise ? [undefined] : arg.whole === true ? [null, ""] : [undefined, null, ""];
      for (const blank of blanks) {
        if (!cellwise && arg.optional !== true) {
          expect(errorIn(result(bare))?.message).toMatch(new RegExp(`^${argument} is not given\\.`));
        } else if (arg.optional === true) expect(result({ ...base, [argument]: blank })).toEqual(result(bare));
        else expectFault(blank, new RegExp(`^${argument} is not given\\.`));
      }
    });

    if (arg.default !== undefined) {
      it("left out is its default", () => {
        expect(result(bare)).toEqual(result({ ...base, [argument]: arg.default }));
      });
    }

    if (arg.zeroIsBlank === true && cellwise) {
      it("0 is read as an empty cell", () => {
        for (const zero of [0, -0, "0", "0.0"]) {
          if (arg.optional === true) expect(result({ ...base, [argument]: zero })).toEqual(result(bare));
          else expectFault(zero, new RegExp(`^${argument} is not given\\. 0 is read as an empty cell`));
        }
      });
    }

    it("passes an error through", () => {
      const found = result(withCell(base, arg, passing));
      expect(found[0]?.[0]).toEqual(passing);
      if (spec.shape === "rows") expect(found).toEqual([fixture.results.map(() => passing)]);
    });

    if (isNumeric(arg)) {
      it("refuses what is no number", () => {
        for (const nonsense of ["abc", "12 A", "1,5", "1 000", "0x10", "--1", "1e", "12%", true, false]) {
          expectFault(nonsense, named);
          expectFault(nonsense, /A number is wanted/);
        }
        for (const nonsense of [NaN, Infinity, -Infinity, "1e999"]) expectFault(nonsense, named);
      });

      it("refuses a bound, which is no reading", () => {
        for (const bound of [">150", "< 20", "*"]) expectFault(bound, /A bound is not a reading/);
      });
    }

    if (arg.choices) {
      it("refuses what is not among its choices, and lists them", () => {
        for (const nonsense of ["nonsense", 7]) {
          expectFault(nonsense, named);
          for (const choice of arg.choices ?? []) expectFault(nonsense, new RegExp(`"${choice}"`));
        }
      });
    }

    if (arg.quantity === "band" || (arg.quantity === "table" && cellwise)) {
      it("refuses what names none", () => {
        expectFault("nonsense", named);
      });
    }
  });
});
