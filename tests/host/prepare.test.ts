import fc from "fast-check";
import { prepareFormula } from "../../src/host/embedded/prepare.js";

test.each([
  ["=- 5", "=-5"],
  ["=1 - - 2", "=1 - -2"],
  ["=2*( - 5)", "=2*( -5)"],
  ["=SUM(+ 5, - A1)", "=SUM(+5, -A1)"],
  ["=1+{1,2}", "=1+HSTACK({1,2})"],
  ["=-{1.0,2}", "=-HSTACK({1,2})"],
  ["=1+({1,2})", "=1+(HSTACK({1,2}))"],
  ["=SUM({1.0;2.0},{3,4})", "=SUM({1;2},{3,4})"],
  ["={1,2}+{3,4}", "={1,2}+HSTACK({3,4})"],
  ['={"a""b"}', '={"a""""b"}'],
  ['="a\nb\r\nc"', '=("a"&CHAR(10)&"b"&CHAR(10)&"c")'],
  ["=_xldudf_GREY_CORRECTED(58.0,.95,22)", "=GREY.CORRECTED(58,0.95,22)"],
  ["=_xlfn.LET(_xlpm.x,1.50,_xlpm.x)", "=LET(x,1.5,x)"],
])("%j becomes %j", (formula, expected) => {
  expect(prepareFormula(formula)).toBe(expected);
});

test.each([
  "=1 - 2",
  "=A1 -B1",
  "=10% - 5",
  "=(1) - 2",
  '="a""b"',
  '="- 5"',
  "='- 5'!A1",
  "={1,2;3,4}",
  "={-1,2}",
  "= 5",
])("%s stays as it is", (formula) => {
  expect(prepareFormula(formula)).toBe(formula);
});

test("takes any text without an exception", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."=+-*{}()[]'\",;: .0123456789eA#_\n") }), (formula) => {
      expect(typeof prepareFormula(formula)).toBe("string");
    }),
  );
});
