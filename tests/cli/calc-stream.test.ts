/** `greybody calc` as one part of a pipe. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { CLI, calc, type Answer } from "../support/calc.js";
import { runNode } from "../support/run.js";

test("formulas as arguments, a leading minus too", async () => {
  const { status, stdout, stderr } = await runNode([CLI, "calc", "=1+1", "-5+3", "=SUM(1"]);
  const answers = stdout
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Answer);
  expect(answers.map(({ value, error }) => value ?? error)).toEqual([2, -2, "SYNTAX"]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
});

test("ends of line, blank lines, a byte order mark and a last line without an end", async () => {
  const { stdout } = await runNode([CLI, "calc"], { input: '\uFEFF="é"\r\n\r\n=2\n=3' });
  const answers = stdout
    .split("\n")
    .slice(0, -1)
    .map((line) => JSON.parse(line) as Answer);
  expect(answers.map(({ formula, value }) => [formula, value])).toEqual([
    ['="é"', "é"],
    ["", undefined],
    ["=2", 2],
    ["=3", 3],
  ]);
});

test("nothing in, nothing out", async () => {
  expect(await runNode([CLI, "calc"], { input: "" })).toEqual({ status: 0, stdout: "", stderr: "" });
});

test("10,000 lines in one run, in order, each apart, in seconds", async () => {
  const formulas = Array.from({ length: 10_000 }, (_, index) => {
    if (index % 100 === 7) return "=GREY.CORRECTED(58,95,22)";
    if (index % 100 === 8) return "=SUM(1";
    if (index % 100 === 9) return "=SEQUENCE(3)";
    // Longer than 64 characters: the engine knows such formulas by a short hash only.
    return `=GREY.RISE_AT_LOAD(${index % 1000}.0,100.0,100.0)+0*SUM(1000000,2000000,3000000,4000000,${index})`;
  });
  const started = performance.now();
  const answers = await calc(formulas);
  expect(performance.now() - started).toBeLessThan(30_000);
  expect(answers.map(({ formula }) => formula)).toEqual(formulas);
  answers.forEach(({ value, error }, index) => {
    if (index % 100 === 7) expect(error).toBe("#VALUE!");
    else if (index % 100 === 8) expect(error).toBe("SYNTAX");
    else if (index % 100 === 9) expect(value).toEqual([[1], [2], [3]]);
    else expect(value).toBe(index % 1000);
  });
});

/** A running calc that answers line by line. */
function converse(): { ask: (formula: string) => Promise<string>; end: () => Promise<unknown> } {
  const child = spawn(process.execPath, [CLI, "calc"], { stdio: ["pipe", "pipe", "inherit"] });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  return {
    ask: async (formula) => {
      child.stdin.write(`${formula}\n`);
      return String((await lines.next()).value);
    },
    end: () => {
      child.stdin.end();
      return once(child, "close");
    },
  };
}

test("a program that waits for each answer gets it, also for a line that comes in two pieces", async () => {
  const { ask, end } = converse();
  expect(await ask("=1+1")).toBe('{"formula":"=1+1","value":2}');
  expect(await ask("=2+2")).toBe('{"formula":"=2+2","value":4}');
  expect(await end()).toEqual([0, null]);
});

test("100,000 corrected readings spill in at most three times the time of a plain column", async () => {
  const { ask, end } = converse();
  const best = { plain: Infinity, ours: Infinity };
  const time = async (formula: string): Promise<number> => {
    const started = performance.now();
    const answer = JSON.parse(await ask(formula)) as { value: unknown[] };
    expect(answer.value).toHaveLength(100_000);
    return performance.now() - started;
  };
  for (let round = 0; round < 5; round++) {
    best.plain = Math.min(best.plain, await time("=SEQUENCE(100000)*1"));
    best.ours = Math.min(best.ours, await time("=GREY.CORRECTED(SEQUENCE(100000,1,40,0.001),0.9,22)"));
  }
  await end();
  expect(best.ours / best.plain).toBeLessThanOrEqual(3);
});

test("a reader that has enough is no failure", async () => {
  const child = spawn(process.execPath, [CLI, "calc"], { stdio: ["pipe", "pipe", "pipe"] });
  let complaint = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => (complaint += text));
  child.stdin.on("error", () => undefined);
  child.stdin.end("=SEQUENCE(20000)\n".repeat(200));
  await once(child.stdout, "data");
  child.stdout.destroy();
  expect(await once(child, "close")).toEqual([0, null]);
  expect(complaint).toBe("");
});
