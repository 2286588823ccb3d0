import { catalogue, findFunction } from "../../src/functions/catalogue.js";
import { isCellError } from "../../src/functions/contract.js";
import { argumentsOf } from "../../src/host/array.js";
import { callFormula, previewCall, readArgument } from "../../src/host/call.js";

const spec = (name: string) => findFunction(name)!;
const call = (name: string, ...typed: string[]) => callFormula(spec(name), typed.map(readArgument));

test.each([
  ["58", { kind: "value", value: 58 }],
  ["-.5e1", { kind: "value", value: -5 }],
  ["", { kind: "none" }],
  ["similar", { kind: "value", value: "similar" }],
  ["7.5-14", { kind: "value", value: "7.5-14" }],
  ["NETA-100.18", { kind: "value", value: "NETA-100.18" }],
  ['"B3"', { kind: "value", value: "B3" }],
  ['"a ""b"""', { kind: "value", value: 'a "b"' }],
  ["true", { kind: "value", value: true }],
  [
    "{58,0.85;60,-1e2}",
    {
      kind: "array",
      grid: [
        [58, 0.85],
        [60, -100],
      ],
    },
  ],
  [
    '{"a;b","c"; TRUE ,2}',
    {
      kind: "array",
      grid: [
        ["a;b", "c"],
        [true, 2],
      ],
    },
  ],
  ["{1,2;3}", { kind: "value", value: "{1,2;3}" }],
  ["{1,,3}", { kind: "value", value: "{1,,3}" }],
  ["B3", { kind: "reference", reference: "B3" }],
  ["$B$3:C9", { kind: "reference", reference: "$B$3:C9" }],
  ["'My job'!B4", { kind: "reference", reference: "'My job'!B4" }],
  ["Readings[left]", { kind: "reference", reference: "Readings[left]" }],
])("%s is read", (typed, expected) => {
  expect(readArgument(typed)).toEqual(expected);
});

test("a reference for a temperature is wrapped, one for a quantity that 0 cannot be is not", () => {
  expect(call("CORRECTED", "B3", "C3", "22")).toBe('=GREY.CORRECTED(IF(B3="","",B3),C3,22)');
});

test("so is a range some of whose columns may be 0; one of headers is not", () => {
  expect(call("UNCERTAINTY", "A2:E9", "F2:J9")).toMatch(/^=GREY\.UNCERTAINTY\(IF\(A2:E9="","",A2:E9\),/);
  expect(call("CHECK", "A1:F1", "A2:F9")).toBe('=GREY.CHECK(A1:F1,IF(A2:F9="","",A2:F9))');
});

test.each(catalogue.map(({ name, example }) => [name, example.formula] as const))(
  "%s: the form takes its example as it is written, and gives it back",
  (name, formula) => {
    const typed = argumentsOf(formula)!;
    expect(call(name, ...typed)).toBe(formula);
    expect(previewCall(spec(name), typed.map(readArgument), new Map()).flat().filter(isCellError)).toEqual([]);
  },
);

test("what is left out between stays empty, at the end it is left out", () => {
  expect(call("RADIANCE", "58", "", "F", "")).toBe('=GREY.RADIANCE(58,,"F")');
  expect(call("ABOUT")).toBe("=GREY.ABOUT()");
});

test("a text that looks like a number or holds a quotation mark comes back as it was meant", () => {
  expect(call("GRADE", "12", '"B3"', 'my "own"')).toBe('=GREY.GRADE(12,"B3","my ""own""")');
});

describe("a preview", () => {
  const preview = (typed: string[], cells = new Map()) =>
    previewCall(spec("RISE_AT_LOAD"), typed.map(readArgument), cells);

  test("gives the function's own value: 20 K at half load with the exponent 2 are 80 K", () => {
    expect(preview(["20", "50", "100", "2"])[0]?.[0]).toBeCloseTo(80, 9);
  });

  test("gives the message while typing", () => {
    expect(preview(["20"])).toEqual([
      [{ error: "#VALUE!", message: expect.stringContaining("load is not given") as unknown }],
    ]);
  });

  test("takes the cells that the host read, and says where there are none", () => {
    const cells = new Map([["B3:B4", [[10], [20]]]]);
    expect(preview(["B3:B4", "100", "100"], cells)).toEqual([[10], [20]]);
    expect(preview(["B9", "100", "100"], cells)).toEqual([
      [{ error: "#REF!", message: expect.stringContaining("B9") as unknown }],
    ]);
  });
});
