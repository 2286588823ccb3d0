/** Every line of a check: a row that sets it off, one just inside that does not; in °C and in °F. */
import { CHECK_COLUMNS, JOB_LINES } from "../../../src/functions/check-columns.js";
import type { CheckColumn } from "../../../src/functions/check-columns.js";
import { inFahrenheit } from "../fixture.js";
import { CANNOT_BE_LINES } from "./cannot-be-lines.js";
import { CAUTION_LINES } from "./caution-lines.js";
import { IMPLAUSIBLE_LINES, STOP_LINES } from "./lines.js";
import { NEEDED_LINES } from "./needed-lines.js";
import { STATUS_LINES } from "./status-lines.js";
import { against, CALM, check } from "./route.js";
import type { Line } from "./route.js";

function toFahrenheit(line: Line, columns: readonly CheckColumn[]): Line {
  return Object.fromEntries(
    Object.entries(line).map(([name, cell]) => {
      const quantity = columns.find((one) => one.name === name)?.quantity ?? "text";
      return [name, typeof cell === "number" ? inFahrenheit(quantity, cell) : cell];
    }),
  );
}

/** The same words with whatever numbers: what is not told may not be told of another value either. */
function withAnyNumber(what: RegExp): RegExp {
  return new RegExp(what.source.replace(/\d+(?:\\\.\d+)?/g, "[-\\d.]+"));
}

it("says nothing of a row with nothing against it", () => {
  expect(against({})).toEqual([]);
  expect(check([CALM]).texts).toEqual([""]);
});

describe.each(
  [...NEEDED_LINES, ...STOP_LINES, ...IMPLAUSIBLE_LINES, ...CANNOT_BE_LINES, ...STATUS_LINES, ...CAUTION_LINES].map(
    (one) => [one.line, one] as const,
  ),
)("%s", (_, { finding, what, off, inside, job, jobInside }) => {
  const told = (changes: Line, ofJob: Line | undefined, like: RegExp): string[] =>
    against(changes, ofJob)
      .filter((one) => one.startsWith(`${finding}: `))
      .map((one) => one.slice(finding.length + 2))
      .filter((one) => like.test(one));

  it("is told", () => {
    expect(told(off, job, what)).toHaveLength(1);
  });

  it("is not told just inside", () => {
    expect(told(inside, jobInside ?? job, withAnyNumber(what))).toEqual([]);
  });

  it("in °F as in °C", () => {
    for (const [changes, ofJob] of [
      [off, job],
      [inside, jobInside ?? job],
    ] as const) {
      const where = (route: ReturnType<typeof check>): string[] =>
        route.findings.map(({ row, kind, column }) => `${row} ${kind} ${column}`);
      const row = { ...CALM, ...changes };
      const inF = check([toFahrenheit(row, CHECK_COLUMNS)], ofJob && toFahrenheit(ofJob, JOB_LINES), "F");
      expect(where(inF)).toEqual(where(check([row], ofJob)));
    }
  });
});
