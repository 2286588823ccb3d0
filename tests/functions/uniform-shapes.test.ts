/** Ranges in and spills out, the same for every function: columns, rows, broadcast, what does not fit, bad rows. */
import type { ArgumentSpec, Cell, FunctionSpec, Grid, Input } from "../../src/functions/contract.js";
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
  type Fixture,
  type Given,
} from "./fixture.js";
import { fixtures } from "./fixtures.js";

const spreads = (arg: ArgumentSpec): boolean => arg.whole !== true;
const column = (cells: readonly (Cell | undefined)[]): Grid => cells.map((cell) => [cell ?? null]);
const cellOf = (input: Input): Cell => (Array.isArray(input) ? null : ((input ?? null) as Cell));

/** Arguments that count: nothing lies between two of their values. */
const COUNTED = new Set(["grade", "criticality", "physical_condition", "environment"]);
/** A text without choices is a name in a table: what has no such name is no error of the form, it has no answer. */
const isName = (arg: ArgumentSpec): boolean => arg.quantity === "text" && arg.choices === undefined;

/** Another value that works in an argument's place, or the same where nothing else is sure to. */
function another(arg: ArgumentSpec, value: Cell, step: number): Cell {
  if (COUNTED.has(arg.name)) return value;
  if (typeof value === "number") return value * (1 - 0.004 * step);
  if (arg.name === "reference") return step % 2 === 0 ? value : "ambient";
  return value;
}

const ofShape = (shape: FunctionSpec["shape"]): (readonly [string, Fixture])[] =>
  fixtures.filter((fixture) => specOf(fixture.name).shape === shape).map((fixture) => [fixture.name, fixture]);

describe.each([...ofShape("cells"), ...ofShape("rows")])("GREY.%s", (name, fixture) => {
  const spec = specOf(name);
  const inRows = spec.shape === "rows";
  const base = fixture.cases[0].given;
  const spreading = spec.args.filter(spreads);

  it("gives a row for each row of its cases, bands and defaults mixed", () => {
    const given = Object.fromEntries(
      spec.args.map((arg): [string, Input] => {
        const values = fixture.cases.map((one) => cellOf(one.given[arg.name]));
        if (spreads(arg)) return [arg.name, column(values)];
        return [arg.name, values.find((value) => value !== null) ?? base[arg.name]];
      }),
    );
    const found = call(spec, given);
    expect(found).toHaveLength(fixture.cases.length);
    for (const [row, one] of fixture.cases.entries()) expectCells([found[row] ?? []], gridOfCase(one), one.tolerance);
  });

  it.each(spreading.map((arg) => [arg.name, arg] as const))("%s as a column, alone", (argument, arg) => {
    const values = [0, 1, 2].map((step) => another(arg, cellOf(base[argument]), step));
    const found = call(spec, { ...base, [argument]: column(values) });
    expectCells(
      found,
      values.flatMap((value) => call(spec, { ...base, [argument]: value })),
      1e-9,
    );
  });

  it.each(spreading.map((arg) => [arg.name, arg] as const))("%s as a row, alone", (argument, arg) => {
    const values = [0, 1].map((step) => another(arg, cellOf(base[argument]), step));
    const found = call(spec, { ...base, [argument]: [values] });
    if (inRows) {
      expect(found).toHaveLength(1);
      expect(errorIn(found)?.message).toBe(
        `GREY.${name} takes single values or one column, a row for each result; a range here has 2 columns.`,
      );
      return;
    }
    expectCells(found, [values.flatMap((value) => call(spec, { ...base, [argument]: value })[0] ?? [])], 1e-9);
  });

  it("one bad row spoils no other, whichever argument it is in", () => {
    for (const arg of spreading) {
      const base = baseFor(fixture, arg.name);
      const [single = []] = call(spec, base);
      const value = cellOf(base[arg.name]);
      for (const bad of [passing, "neither a number nor a choice nor a band"]) {
        const found = call(spec, { ...base, [arg.name]: column([value, value, bad, value, value]) });
        expect(found).toHaveLength(5);
        for (const row of [0, 1, 3, 4]) expectCells([found[row] ?? []], [single], 1e-9);
        for (const cell of found[2] ?? []) {
          if (bad === passing) expect(cell).toEqual(passing);
          else if (isName(arg) && typeof bad === "string")
            expect(cell).toMatchObject({ error: "#N/A", message: expect.stringContaining(bad) as string });
          else
            expect(cell).toMatchObject({
              error: "#VALUE!",
              message: expect.stringMatching(`^${arg.name}: `) as string,
            });
        }
      }
    }
  });

  it("each row may have its own units", () => {
    if (!spec.args.some((arg) => arg.name === "units")) return;
    const inF = mapGiven(spec, base, (value, quantity) => inFahrenheit(quantity, value));
    const mixed = Object.fromEntries(
      spec.args.map((arg): [string, Input] => {
        const own = base[arg.name];
        return [arg.name, spreads(arg) ? column([cellOf(own), cellOf(inF[arg.name]), cellOf(own)]) : own];
      }),
    );
    const found = call(spec, { ...mixed, units: column(["C", "f", null]) });
    const expected = [base, { ...inF, units: "F" }, base].flatMap((given) => call(spec, given));
    expectCells(found, expected, 1e-9);
  });

  it("ranges that do not fit give one #VALUE! that names both", () => {
    const [first, second] = spreading;
    if (!first || !second) throw new Error(`${name} has one argument only`);
    const [a, b] = [cellOf(base[first.name]), cellOf(base[second.name])];
    const misfits: [Grid, Grid][] = [
      [column([a, a]), column([b, b, b])],
      [column([a, a, a]), column([b, b])],
      ...(inRows
        ? []
        : ([
            [[[a, a]], [[b, b, b]]],
            [
              [
                [a, a],
                [a, a],
              ],
              column([b, b, b]),
            ],
          ] satisfies [Grid, Grid][])),
    ];
    for (const [one, other] of misfits) {
      const found = call(spec, { ...base, [first.name]: one, [second.name]: other });
      expect(found).toHaveLength(1);
      const fault = errorIn(found);
      expect(fault?.error).toBe("#VALUE!");
      expect(fault?.message).toMatch(new RegExp(`\\b${first.name} `));
      expect(fault?.message).toMatch(new RegExp(`\\b${second.name} `));
      expect(fault?.message).toMatch(/[23] rows? by|by [23] columns/);
    }
  });

  if (inRows) return;

  it("a row against a column gives every pair", () => {
    const [first, second] = spreading;
    if (!first || !second) throw new Error(`${name} has one argument only`);
    for (const [down, across] of [
      [first, second],
      [second, first],
    ] as const) {
      const rows = [0, 1, 2].map((step) => another(down, cellOf(base[down.name]), step));
      const columns = [0, 1].map((step) => another(across, cellOf(base[across.name]), step));
      const found = call(spec, { ...base, [down.name]: column(rows), [across.name]: [columns] });
      const expected = rows.map((a) =>
        columns.map((b) => call(spec, { ...base, [down.name]: a, [across.name]: b })[0]?.[0] ?? null),
      );
      expectCells(found, expected, 1e-9);
      expect(typeof found[2]?.[1]).toBe(fixture.results[0] === "text" ? "string" : "number");
      // A table of both, cell by cell, gives the same.
      const spread = { [down.name]: rows.map((a) => columns.map(() => a)), [across.name]: rows.map(() => columns) };
      expectCells(call(spec, { ...base, ...spread }), expected, 1e-9);
    }
  });

  it("keeps its results when it is called again", () => {
    const [first] = spreading;
    const ask = (step: number): Grid =>
      call(spec, {
        ...base,
        [first!.name]: column(Array.from({ length: 20 }, () => another(first!, cellOf(base[first!.name]), step))),
      });
    const before = ask(0);
    const copy = JSON.stringify(before);
    ask(3);
    expect(JSON.stringify(before)).toBe(copy);
  });
});

/** Tables of our own data, which answer without an argument. */
const listed = ofShape("table").filter(([name]) => specOf(name).args.every((arg) => arg.optional === true));

describe.each(ofShape("table"))("GREY.%s", (name, fixture) => {
  const spec = specOf(name);

  it("spills a header row first, every row as wide", () => {
    // What else `show` may ask for is no table.
    const { show, ...given } = fixture.cases[0].given;
    const tables = [call(spec, show === undefined ? fixture.cases[0].given : given)];
    if (listed.some(([one]) => one === name)) tables.push(call(spec, {}));
    for (const table of tables) {
      expect(table.length).toBeGreaterThan(1);
      for (const cell of table[0] ?? []) expect(cell).toMatch(/^[a-z][a-z ]*( in K)?$/);
      for (const row of table) expect(row).toHaveLength(table[0]?.length ?? 0);
    }
  });
});

describe.each(listed)("GREY.%s", (name) => {
  const spec = specOf(name);
  const [argument] = spec.args;
  const given = (cell: Cell): Given => ({ [argument!.name]: cell });

  it("refuses a name that it does not have, and gives those that it has", () => {
    const fault = errorIn(call(spec, given("no such thing")));
    expect(fault?.message).toContain('"no such thing"');
    if (argument?.name === "search" || argument?.name === "what") {
      // A table too long for a message: each name finds itself, in any case.
      for (const [cell] of call(spec, {}).slice(1)) {
        const known = typeof cell === "string" ? cell : "";
        expect(call(spec, given(known.toUpperCase())).map(([own]) => own)).toContain(known);
      }
      return;
    }
    for (const known of call(spec, {})
      .map(([cell]) => (typeof cell === "string" ? cell : ""))
      .slice(1)) {
      expect(fault?.message).toContain(known);
      expect(errorIn(call(spec, given(known)))).toBeUndefined();
      expect(call(spec, given(known.toUpperCase()))).toEqual(call(spec, given(known)));
    }
  });
});
