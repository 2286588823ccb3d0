/** How an explanation stands on a sheet: the table, the best match in words, the count. */
import { SLACK, TOLERANCE } from "../core/audit/judge.js";
import type { Explanation, Judged } from "../core/audit/judge.js";
import type { ArgumentSpec, Cell, Grid } from "./contract.js";
import { inWords } from "./stated-digits.js";
import type { StatedDigits } from "./stated-digits.js";
import { fromSI, readable } from "./units.js";
import type { Unit } from "./units.js";

export const TOLERANCE_ARGUMENT: ArgumentSpec = {
  name: "tolerance",
  quantity: "difference",
  help: "how far stated and given may lie apart: half the last digit stated, so 0.5 for whole degrees",
  optional: true,
  default: 0.05,
  range: TOLERANCE,
  zeroIsBlank: true,
};

export const SHOW_ARGUMENT: ArgumentSpec = {
  name: "show",
  quantity: "text",
  help: "the table, the best match in words, or how many slips match",
  optional: true,
  default: "table",
  choices: ["table", "slip", "count"],
};

/** How one explanation is told. */
export interface Telling<Key extends string> {
  readonly words: Readonly<Record<Key, string>>;
  /** Of what is stated, and of a difference of two such. */
  readonly unit: Unit;
  readonly difference: Unit;
  /** Where the stated number may have been rounded or cut off to these digits. */
  readonly digits?: StatedDigits | undefined;
  /** Nobody gave a tolerance, so the stated number may have fewer digits than the one taken. */
  readonly leftOut: boolean;
  /** What to say where a reading of the inputs as stated gives the number, by its key. */
  readonly reproduced?: Partial<Readonly<Record<Key, string>>> | undefined;
  /** What goes before all else in words. */
  readonly before?: string | undefined;
}

const HEADER = ["slip", "gives", "difference", "matches", "chance"] as const;
const VERDICTS = { matches: "yes", no: "no", hidden: "would not show" } as const;
const NONE = "none of the usual slips";

export function shown<Key extends string>(show: string, explanation: Explanation<Key>, telling: Telling<Key>): Grid {
  if (show === "count") return [[explanation.count]];
  if (show === "slip") return [[inOneLine(explanation, telling)]];
  const { words, unit, difference } = telling;
  const number = (value: number | undefined, of: Unit, none: string): Cell =>
    value === undefined ? none : fromSI(value, of);
  const row = (line: Judged<Key>, place: number): Cell[] => [
    words[line.key],
    number(line.gives, unit, "no answer"),
    number(line.difference, difference, ""),
    (place < explanation.readings ? fewerDigits(line, telling) : undefined) ?? VERDICTS[line.verdict],
    line.chance ?? "",
  ];
  return [HEADER, ...explanation.lines.map(row)];
}

/** How the inputs as stated would give the number after all, with fewer digits than the tolerance means. */
function fewerDigits<Key extends string>(
  { difference, verdict }: Judged<Key>,
  { digits, leftOut }: Telling<Key>,
): string | undefined {
  if (digits === undefined || difference === undefined || verdict === "matches") return undefined;
  if (leftOut && Math.abs(difference) <= digits.step / 2 + SLACK) return `if rounded to ${inWords(digits)}`;
  const cut = difference <= SLACK && difference > -digits.step - SLACK;
  return cut ? `if cut off to ${inWords(digits)}, not rounded` : undefined;
}

function inOneLine<Key extends string>(explanation: Explanation<Key>, telling: Telling<Key>): string {
  const { lines, readings, reproduced } = explanation;
  const own = lines.slice(0, readings);
  const before = telling.before === undefined ? "" : `${telling.before}; `;
  if (reproduced) {
    const key = own.find(({ verdict }) => verdict === "matches")?.key;
    const said = key === undefined ? undefined : telling.reproduced?.[key];
    return before + (said ?? "as stated, no slip needed");
  }
  const slip = bestSlip(explanation, telling);
  const [first] = own;
  for (const line of own) {
    const fewer = fewerDigits(line, telling);
    if (fewer === undefined) continue;
    const reading = line === first ? "as stated" : telling.words[line.key];
    const give = fewer.startsWith("if rounded") ? `: give tolerance ${halfDigit(telling)}` : "";
    return `${before}${reading}, ${fewer}${give}${slip === undefined ? "" : `; if not, ${slip}`}`;
  }
  if (slip !== undefined) return before + slip;
  const { digits, leftOut } = telling;
  const ask = digits && leftOut ? `; stated to ${inWords(digits)}? Then give tolerance ${halfDigit(telling)}` : "";
  return before + NONE + ask;
}

/** Half the last digit, in the sheet's own unit, as it is typed. */
const halfDigit = ({ digits, difference }: Telling<string>): string =>
  readable(fromSI((digits?.step ?? NaN) / 2, difference), 3);

function bestSlip<Key extends string>(
  { lines, readings, count }: Explanation<Key>,
  { words }: Telling<Key>,
): string | undefined {
  const best = lines.slice(readings).find(({ verdict }) => verdict === "matches");
  if (best === undefined) return undefined;
  const others = count - 1;
  const also = others === 0 ? "" : `; so would ${others} other${others === 1 ? "" : "s"}`;
  const chance = lines.at(-1)?.chance;
  const byChance = chance === undefined ? "" : ` (by chance one matches ${readable(chance * 100, 2)} % of values)`;
  return `${words[best.key]} would give it${also}${byChance}`;
}
