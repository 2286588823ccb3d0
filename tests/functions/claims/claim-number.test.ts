/** Readings as reports write them. Conversions by the definitions of the units: °F = 1.8 °C + 32, 1 ft = 0.3048 m. */
import { writtenNumber } from "../../../src/functions/claims/claim-number.js";
import { choiceMeant } from "../../../src/functions/claims/claim-words.js";
import type { Quantity } from "../../../src/functions/contract.js";
import type { Units } from "../../../src/functions/units.js";

type Case = readonly [text: string, quantity: Quantity, units: Units, value: number, half: number, more?: string];

const READ: readonly Case[] = [
  ["58,2 °C", "temperature", "C", 58.2, 0.05],
  ["58.20", "temperature", "C", 58.2, 0.005],
  ["58 C", "temperature", "C", 58, 0.5],
  ["−3,5 ºC", "temperature", "C", -3.5, 0.05],
  ["136.8 F", "temperature", "C", (136.8 - 32) / 1.8, 0.05 / 1.8],
  ["136.8 F", "temperature", "F", 136.8, 0.05],
  ["331.35 K", "temperature", "C", 58.2, 0.005],
  ["58 deg C", "temperature", "F", 136.4, 0.9],
  ["27 °F", "difference", "C", 15, 0.5 / 1.8],
  ["15 K", "difference", "C", 15, 0.5],
  [">150", "temperature", "C", 150, 0.5, "at least"],
  ["150+", "temperature", "C", 150, 0.5, "at least"],
  ["< -20 °C", "temperature", "C", -20, 0.5, "at most"],
  ["~150", "temperature", "C", 150, 5, "about"],
  ["~58.2 °C", "temperature", "C", 58.2, 0.05, "about"],
  ["approx. 40 °C", "temperature", "C", 40, 5, "about"],
  ["0,950", "fraction", "C", 0.95, 0.0005],
  ["95 %", "fraction", "C", 0.95, 0.005],
  ["45 % RH", "percent", "C", 45, 0.5],
  ["118 A", "current", "C", 118, 0.5],
  ["1,25 kA", "current", "C", 1250, 5],
  ["1 250 A", "current", "C", 1250, 0.5],
  ["1.250,5 A", "current", "C", 1250.5, 0.05],
  ["1,250.5 A", "current", "C", 1250.5, 0.05],
  ["1,250,000 mA", "current", "C", 1250, 0.0005],
  ["12'500 A", "current", "C", 12500, 0.5],
  ["12 500,5 A", "current", "C", 12500.5, 0.05],
  ["150+ °F", "temperature", "F", 150, 0.5, "at least"],
  ["150 °C +", "temperature", "C", 150, 0.5, "at least"],
  ["10 ft", "distance", "C", 3.048, 0.1524],
  ["3 m", "distance", "F", 3 / 0.3048, 0.5 / 0.3048],
  ["10'", "distance", "F", 10, 0.5],
];

test.each(READ.map((one) => ({ one })))("$one.0 as a $one.1", ({ one }) => {
  const [text, quantity, units, value, half, more] = one;
  const read = writtenNumber(text, quantity, units);
  if (read === undefined || "because" in read) throw new Error(`not read: ${JSON.stringify(read)}`);
  expect(read.value).toBeCloseTo(value, 9);
  expect(read.half).toBeCloseTo(half, 9);
  expect(read.bound ?? (read.isAbout ? "about" : undefined)).toBe(more);
});

const NOT_READ: readonly (readonly [text: string, quantity: Quantity, because: RegExp])[] = [
  ["1,250", "current", /thousands or decimals/],
  ["58.2 / 45.1", "temperature", /more than one number/],
  ["58-60 °C", "temperature", /more than one number/],
  ["58.2 100", "temperature", /more than one number/],
  ["1'250 000", "current", /more than one number/],
  ["118 120 121", "current", /two numbers/],
  ["118 120", "current", /two numbers/],
  ["±2 K", "difference", /no number/],
  [`58${" ".repeat(200)}C`, "temperature", /too long/],
  ["58 A", "temperature", /unit "A"/],
  ["74 %", "current", /unit "%"/],
  ["12.34.56", "temperature", /do not fit/],
  [">0.95", "fraction", /at least/],
  ["T1", "temperature", /no number/],
];

test.each(NOT_READ)("%s is no %s", (text, quantity, because) => {
  const read = writtenNumber(text, quantity, "C");
  expect(read !== undefined && "because" in read ? read.because : read).toMatch(because);
});

test("a word without a digit is none of its business", () => {
  expect(writtenNumber("not measured", "temperature", "C")).toBeUndefined();
});

test("words of others for our choices; what may be two of them is none", () => {
  expect(choiceMeant("reference", "Adjacent phase")).toBe("similar");
  expect(choiceMeant("reference", "over ambient")).toBe("ambient");
  expect(choiceMeant("reference", "phase or air")).toBeUndefined();
  expect(choiceMeant("view", "not direct")).toBe("indirect");
  expect(choiceMeant("access", "IR window")).toBe("window");
  expect(choiceMeant("item", "phase")).toBeUndefined();
});
