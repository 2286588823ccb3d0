/** Every example of the catalogue through the built command line: what it gives is what the catalogue says it shows. */
import { catalogue } from "../../src/functions/catalogue.js";
import { calc, type Answer } from "../support/calc.js";

/** A value as the example shows it: a number to as many decimals as stand there. */
function reads(value: unknown, shown: string): boolean {
  const decimals = shown.split(".")[1]?.length ?? 0;
  return typeof value === "number" ? value.toFixed(decimals) === shown : value === shown;
}

let answers: readonly Answer[] = [];

beforeAll(async () => {
  answers = await calc(catalogue.map((spec) => spec.example.formula));
});

test.each(catalogue.map((spec, i) => [spec.example.formula, spec.example.shows, i] as const))(
  "%s shows %s",
  (formula, shows, i) => {
    const answer = answers[i];
    expect(answer?.formula).toBe(formula);
    expect(answer).not.toHaveProperty("error");
    const cells = Array.isArray(answer?.value) ? (answer.value as unknown[][]).flat() : [answer?.value];
    // A text with a comma in it is one part.
    const parts = cells.length === 1 ? [shows] : shows.split(", ").filter((part) => part !== "…");
    expect(parts.filter((part) => !cells.some((cell) => reads(cell, part)))).toEqual([]);
  },
);
