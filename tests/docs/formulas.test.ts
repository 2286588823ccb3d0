import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root, runNode } from "../support/run.js";

/** What the README says a formula gives, read off its own sentences: "`=…` gives 64.13", "is grade 1", "is 4". */
const SAYS = /`(?:node dist\/cli\.js calc ')?(=GREY\.[^`]*?)'?` (?:gives|is grade|is) ([\d.]+)/g;

interface Line {
  readonly formula: string;
  readonly value?: unknown;
  readonly error?: string;
  readonly message?: string;
}

describe("the formulas of the README", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const spans = [...readme.matchAll(/`(?:node dist\/cli\.js calc ')?(=GREY\.[^`]+?)'?`/g)].map((match) =>
    match[1]!.replaceAll("\\|", "|"),
  );
  const formulas = [...new Set(spans)];
  let lines = new Map<string, Line>();

  beforeAll(async () => {
    const { stdout } = await runNode(["dist/cli.js", "calc"], { input: formulas.join("\n") });
    const answers = stdout
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as Line);
    lines = new Map(formulas.map((formula, i) => [formula, answers[i]!]));
  });

  test("are many, so that the pattern has not gone blind", () => {
    expect(formulas.length).toBeGreaterThan(25);
    expect([...readme.matchAll(SAYS)].length).toBeGreaterThan(4);
  });

  // References to cells are empty here, and one formula is there for its refusal.
  const runs = formulas.filter((formula) => !formula.includes("A2:A500") && formula !== "=GREY.CORRECTED(58,95,22)");
  test.each(runs)("%s has no error", (formula) => {
    expect(lines.get(formula)).not.toHaveProperty("error");
    expect(JSON.stringify(lines.get(formula))).not.toContain('"error"');
  });

  test("the refused one is refused with its hint", () => {
    expect(lines.get("=GREY.CORRECTED(58,95,22)")?.message).toContain("0.95");
  });

  test.each([...readme.matchAll(SAYS)].map((match) => [match[1]!, match[2]!]))("%s shows %s", (formula, shown) => {
    const digits = shown.replace(/\.$/, "");
    const decimals = digits.split(".")[1]?.length ?? 0;
    expect(Number(lines.get(formula)?.value).toFixed(decimals)).toBe(Number(digits).toFixed(decimals));
  });
});
