/** GREY.PHASE_RISE takes its phases whole: sets as rows, one column as one set. Values worked apart from this code. */
import { call, errorIn, expectCells, passing, specOf, type Given } from "./fixture.js";

const spec = specOf("PHASE_RISE");
const base: Given = {
  temps: [[38, 55, 37]],
  loads: [[62, 41, 60]],
  surrounding_air: 25,
  common_load: 62,
  exponent: 1.6,
};
const RISES = [13, 58.14, 12.65];
const SQUARE = [13, 68.6, 12.81];

describe("sets", () => {
  const two: Given = {
    temps: [
      [38, 55, 37],
      [38, 55, 37],
    ],
    loads: [
      [62, 41, 60],
      [62, 41, 60],
    ],
  };

  it("are rows, each with its own air, common load and exponent", () => {
    const columns = { surrounding_air: [[25], [25]], common_load: [[62], [null]], exponent: [[1.6], [2]] };
    expectCells(call(spec, { ...two, ...columns }), [RISES, SQUARE], 0.01);
    expectCells(call(spec, { ...base, ...two }), [RISES, RISES], 0.01);
  });

  it("a set that cannot be spoils no other", () => {
    const found = call(spec, { ...base, ...two, surrounding_air: [[70], [25]] });
    for (const cell of found[0] ?? []) {
      expect(cell).toMatchObject({
        error: "#VALUE!",
        message: expect.stringMatching(/^surrounding_air: 70 °C/) as string,
      });
    }
    expectCells([found[1] ?? []], [RISES], 0.01);
  });

  it("of another shape than their loads are refused, both named", () => {
    const fault = errorIn(call(spec, { ...base, loads: [[62, 41]] }));
    expect(fault).toMatchObject({ error: "#VALUE!" });
    expect(fault?.message).toMatch(/temps .*1 × 3.*loads .*1 × 2/);
  });

  it("want one value for each set or one for all", () => {
    const fault = errorIn(call(spec, { ...base, ...two, surrounding_air: [[25], [25], [25]] }));
    expect(fault?.message).toMatch(/^surrounding_air is 3 × 1 cells: .*2 sets/);
  });
});

describe("a phase", () => {
  it("without current, empty, or that cannot be read spoils no other while the common load is given", () => {
    const found = call(spec, {
      ...base,
      temps: [[38, 55, 37, "hot", null, 38]],
      loads: [[62, 0, 60, 62, 62, passing]],
    });
    const [first, noCurrent, third, unreadable, empty, broken] = found[0] ?? [];
    expectCells([[first ?? null, third ?? null]], [[13, 12.65]], 0.01);
    expect(noCurrent).toMatchObject({
      error: "#N/A",
      message: expect.stringMatching(/^No current on this phase/) as string,
    });
    expect(unreadable).toMatchObject({ error: "#VALUE!", message: expect.stringMatching(/^temps: "hot"/) as string });
    expect(empty).toMatchObject({ error: "#VALUE!", message: expect.stringMatching(/^temps is not given/) as string });
    expect(broken).toEqual(passing);
  });

  it("with a load that cannot be read leaves the largest of its set unknown", () => {
    const found = call(spec, { ...base, common_load: null, loads: [[62, "41 A", 60]] });
    for (const cell of found[0] ?? []) {
      expect(cell).toMatchObject({ error: "#VALUE!", message: expect.stringMatching(/^loads: "41 A"/) as string });
    }
  });
});

it("one call takes one system of units", () => {
  expect(errorIn(call(spec, { ...base, units: [["C"], ["F"]] }))?.message).toMatch(/^units: one call takes one system/);
});
