/** Whatever stands in a sheet, a function answers or says what is wrong, cell by cell. The seed is fixed. */
import fc from "fast-check";
import type { ArgumentSpec, Cell, Grid, Input } from "../../src/functions/contract.js";
import { isCellError } from "../../src/functions/contract.js";
import { specOf, type Given } from "../functions/fixture.js";
import { fixtures } from "../functions/fixtures.js";

const SEED = 5_670_374;
const REPEATABLE = { seed: SEED, numRuns: 400 };

const ODD: readonly Cell[] = [
  null,
  "",
  " ",
  0,
  -0,
  1,
  -1,
  100,
  1e-320,
  1e308,
  -1e308,
  NaN,
  Infinity,
  -273.15,
  -459.67,
  10_000,
  true,
  "58",
  "1e3",
  "abc",
  "7.5-14",
  "C",
  "F",
  "similar",
  "limit",
  { error: "#DIV/0!", message: "from elsewhere" },
];

/** A number near one that fits; often that one itself, since a count is whole and shares add up to 1. */
const near = (own: number): fc.Arbitrary<Cell> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.constant(own) },
    { weight: 1, arbitrary: fc.integer({ min: 960, max: 1040 }).map((share) => (own * share) / 1000) },
  );

/** Mostly what belongs there, near the fixture's own value where it is a number, now and then what does not. */
function cellFor(arg: ArgumentSpec, usual: Given): fc.Arbitrary<Cell> {
  const own = [usual[arg.name] ?? null].flat(2)[0] as Cell;
  const fitting: fc.Arbitrary<Cell> = arg.choices
    ? fc.constantFrom(...arg.choices)
    : arg.quantity === "band"
      ? fc.constantFrom("7.5-14", "3-5", "8-14", null)
      : typeof own === "number"
        ? near(own)
        : fc.constant(own);
  return fc.oneof({ weight: 12, arbitrary: fitting }, { weight: 1, arbitrary: fc.constantFrom(...ODD) });
}

/** A range in the fixture's own shape, seldom with a cell that does not belong there. */
function rangeFor(own: Grid): fc.Arbitrary<Input> {
  const one = (cell: Cell): fc.Arbitrary<Cell> =>
    fc.oneof(
      { weight: 40, arbitrary: typeof cell === "number" ? near(cell) : fc.constant(cell) },
      { weight: 1, arbitrary: fc.constantFrom(...ODD) },
    );
  return fc.tuple(...own.map((row) => fc.tuple(...row.map(one))));
}

function inputFor(arg: ArgumentSpec, usual: Given): fc.Arbitrary<Input> {
  const cell = cellFor(arg, usual);
  const grid = fc
    .tuple(fc.constantFrom(1, 1, 2, 3), fc.constantFrom(1, 1, 1, 2))
    .chain(([rows, columns]) =>
      fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
    );
  const single: fc.Arbitrary<Input> = cell;
  const absent: fc.Arbitrary<Input> = fc.constant(undefined);
  const own = usual[arg.name];
  if (Array.isArray(own)) {
    return fc.oneof(
      { weight: 12, arbitrary: rangeFor(own as Grid) },
      ...[single, grid, absent].map((arbitrary) => ({ weight: 1, arbitrary })),
    );
  }
  return fc.oneof({ weight: 6, arbitrary: single }, { weight: 2, arbitrary: grid }, { weight: 1, arbitrary: absent });
}

function expectWellFormed(found: Grid): number {
  let answers = 0;
  expect(found.length).toBeGreaterThan(0);
  for (const row of found) {
    expect(row.length).toBe(found[0]?.length);
    for (const cell of row) {
      if (typeof cell === "number") {
        if (!Number.isFinite(cell)) throw new Error(`a cell is ${cell}`);
        answers++;
      } else if (isCellError(cell)) {
        expect(cell.message).toMatch(/^[A-Za-z0-9].*\S$/s);
        // NaN may be what was given; it is never what we have to say.
        const ours = cell.message.replace(/^(?:[a-z_]+[:,] )*[a-z_]+: NaN|"[^"]*"/g, "");
        expect(ours).not.toMatch(/NaN|undefined|fault of ours|\[object/);
      } else {
        expect(typeof cell).toBe("string");
        if (cell !== "") answers++;
      }
    }
  }
  return answers;
}

describe.each(fixtures.map((fixture) => [fixture.name, fixture] as const))(
  `GREY.%s (fast-check seed ${SEED})`,
  (name, fixture) => {
    const spec = specOf(name);
    const usual = fixture.cases[0].given;

    it("never throws, never shows NaN, and says a sentence with every error", () => {
      let answers = 0;
      const inputs = fc.tuple(...spec.args.map((arg) => inputFor(arg, usual)));
      fc.assert(
        fc.property(inputs, fc.nat(3), (given, cut) => {
          answers += expectWellFormed(spec.evaluate(given.slice(0, given.length - cut)));
        }),
        REPEATABLE,
      );
      if (spec.shape !== "table") expect(answers).toBeGreaterThan(REPEATABLE.numRuns / 12);
    });

    it("gives in a spill what it gives cell by cell", () => {
      if (spec.shape !== "cells") return;
      const whole = new Set(spec.args.filter((arg) => arg.whole === true));
      // Where the units themselves cannot be read, nobody knows in which the other faults of the row should be told.
      const cells = (arg: ArgumentSpec): fc.Arbitrary<Cell> =>
        arg.name === "units" ? fc.constantFrom("C", "F", null) : cellFor(arg, usual);
      const rows = fc.tuple(...spec.args.map((arg) => fc.array(cells(arg), { minLength: 4, maxLength: 4 })));
      fc.assert(
        fc.property(rows, (columns) => {
          const input = (i: number, row?: number): Input => {
            const own = columns[i] ?? [];
            if (whole.has(spec.args[i]!)) return null;
            return row === undefined ? own.map((cell) => [cell]) : own[row];
          };
          const spill = spec.evaluate(spec.args.map((__, i) => input(i)));
          for (let row = 0; row < 4; row++) {
            const [[alone = null] = []] = spec.evaluate(spec.args.map((__, i) => input(i, row)));
            const cell = spill[row]?.[0] ?? null;
            if (typeof alone === "number" && typeof cell === "number") {
              expect(Math.abs(cell - alone)).toBeLessThanOrEqual(1e-8 + 1e-9 * Math.abs(alone));
            } else expect(cell).toEqual(alone);
          }
        }),
        REPEATABLE,
      );
    });
  },
);
