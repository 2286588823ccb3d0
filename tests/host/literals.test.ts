import fc from "fast-check";
import { normaliseLiterals } from "../../src/host/embedded/literals.js";
import { tokenize } from "../../src/host/tokens.js";

const rewritten: readonly (readonly [string, string])[] = [
  ["=58.0", "=58"],
  ["=0.850", "=0.85"],
  ["=.5", "=0.5"],
  ["=5.", "=5"],
  ["=007", "=7"],
  ["=00.70", "=0.7"],
  ["=1E3", "=1000"],
  ["=1e+3", "=1000"],
  ["=1.E3", "=1000"],
  ["=1E-7", "=1e-7"],
  ["=0.0000001", "=1e-7"],
  ["=1E21", "=1e+21"],
  ["=22.00%", "=22%"],
  ["=-.5", "=-0.5"],
  ["=2-.50", "=2-0.5"],
  ["=0.10000000000000000555", "=0.1"],
  ["=64.131967204973100", "=64.1319672049731"],
  ["=123456789012345678", "=123456789012345680"],
  ["=GREY.CORRECTED(58.0,0.850,22.00,.98,20)", "=GREY.CORRECTED(58,0.85,22,0.98,20)"],
  ["=SUM({1.0;2.0})", "=SUM({1;2})"],
  ["={.5,5.;007,-1.50}", "={0.5,5;7,-1.5}"],
  ["=SUM(1,000)", "=SUM(1,0)"],
  ["=1.0:2", "=1:2"],
  ["58.0+1", "58+1"],
  ["=LET(x,1.0,x*2.0)", "=LET(x,1,x*2)"],
];

const kept: readonly string[] = [
  "=A1+B02",
  "=$A$1:$B$10",
  "=SUM(1:3)",
  "=SUM($1:$3)",
  "=SUM(01:03)",
  "=Sheet1!1:3",
  "=Sheet1.0!A1",
  "='Route 2.0'!A1",
  "='It''s 1.0'!B2",
  "=[Book1.00.xlsx]Sheet1!A1",
  "=LOG10(5)",
  "=x1.0",
  "=rate_2.50",
  '="58.0"',
  '="say ""1.0"""',
  "=Table1[1.0]",
  "=T[[#This Row],[Load 1.0]]",
  "=T['[1.0']]",
  "=[@[2.50]]",
  "=#N/A",
  "=1E400",
  "",
  "=",
  '="never ends 1.0',
  "='never ends 1.0",
  "=T[never ends 1.0",
];

test.each(rewritten)("%s becomes %s", (formula, expected) => {
  expect(normaliseLiterals(formula)).toBe(expected);
});

test.each(kept)("%s stays as it is", (formula) => {
  expect(normaliseLiterals(formula)).toBe(formula);
});

test("a name that ends in digits keeps them, a number after an operator does not", () => {
  expect(normaliseLiterals("=Rate1.0*1.0")).toBe("=Rate1.0*1");
});

test("any double written with any digits keeps its value and prints back identically", () => {
  const written = fc
    .tuple(fc.double({ noNaN: true, noDefaultInfinity: true, min: 0 }), fc.constantFrom(17, 18, 21))
    .map(([value, digits]) => ({
      value,
      text: value.toPrecision(digits),
    }));
  fc.assert(
    fc.property(written, ({ value, text }) => {
      const literal = normaliseLiterals(`=${text}`).slice(1);
      expect(Number(literal)).toBe(value);
      expect(String(Number(literal))).toBe(literal);
    }),
  );
});

test("rewriting twice changes nothing more, and only numbers change", () => {
  const others = ["A1", "$B$2", "1:3", '"5.0"', "T[1.0]", "'S 1.0'!A1", "LOG10(x)", "#N/A", "{1,2}"];
  const number = fc.double({ noNaN: true, noDefaultInfinity: true, min: 0 }).map((value) => value.toPrecision(20));
  const operand = fc.oneof(fc.constantFrom(...others), number);
  fc.assert(
    fc.property(
      fc.array(operand, { minLength: 1 }),
      fc.constantFrom("+", "-", "*", "&", "<=", ","),
      (operands, operator) => {
        const once = normaliseLiterals(`=${operands.join(operator)}`);
        expect(normaliseLiterals(once)).toBe(once);
        const expected = operands.map((text) => (others.includes(text) ? text : String(Number(text))));
        expect(once).toBe(`=${expected.join(operator)}`);
      },
    ),
  );
});

test("tokens joined give the formula back, whatever it is", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (formula) => {
      const tokens = tokenize(formula);
      expect(tokens.map((token) => token.text).join("")).toBe(formula);
      expect(tokens.every((token) => token.text.length > 0 && formula.startsWith(token.text, token.start))).toBe(true);
    }),
  );
});
