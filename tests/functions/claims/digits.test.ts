/** What the marks and the digits of a client's column tell. */
import { decimalMark, withDigits, withPoint } from "../../../src/functions/claims/digits.js";

test("decimals behind one mark alone make the other one part thousands; behind both they tell nothing", () => {
  expect(decimalMark(["58,2", "1.250", "0,95"])).toBe(",");
  expect(decimalMark(["58.2", "1,250 A"])).toBe(".");
  expect(decimalMark(["0.950", "1.250"])).toBe(".");
  expect(decimalMark(["58,2", "58.2"])).toBeUndefined();
  expect(decimalMark(["1.250", "1,250", "58"])).toBeUndefined();
  // A number already is no text that tells anything.
  expect(decimalMark([58.2, null])).toBeUndefined();
});

test.each([
  ["1.250", ",", "1250"],
  ["1.250,5 A", ",", "1250.5 A"],
  [">1.250.000", ",", ">1250000"],
  ["0,950", ",", "0.950"],
  ["1,250", ",", "1.250"],
  ["1,250 A", ".", "1250 A"],
  ["1,250.5", ".", "1250.5"],
  ["1.250", ".", "1.250"],
  ["12.34.56", ",", "12.34.56"],
] as const)("%s where decimals stand behind %s is %s", (text, mark, plain) => {
  expect(withPoint(text, mark)).toBe(plain);
});

test("dropped zeros: a 58 among tenths is a tenth, but not where zeros are printed or few cells tell", () => {
  const tenths = ["58.2", "45.1", "61.7", "58", "49.3", "50.9"];
  expect(withDigits(tenths)).toEqual([58.2, 45.1, 61.7, 58, 49.3, 50.9]);
  expect(withDigits([...tenths, "47.0"])).toContain("58");
  expect(withDigits(["58.2", "58"])).toContain("58");
});

test("long columns are no trouble", () => {
  expect(withDigits(Array.from({ length: 200_000 }, () => "58.25"))).toHaveLength(200_000);
});
