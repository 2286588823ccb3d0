/** How an explanation stands on a sheet: the table, the best match in words, the count. */
import { TOLERANCE } from "../core/audit/judge.js";
import type { Explanation, Judged } from "../core/audit/judge.js";
import type { ArgumentSpec, Cell, Grid } from "./contract.js";
import { fromSI, readable } from "./units.js";
import type { Unit } from "./units.js";

export const TOLERANCE_ARGUMENT: ArgumentSpec = {
  name: "tolerance",
  quantity: "difference",
  help: "how far stated and given may lie apart: half the last digit stated",
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

const HEADER = ["slip", "gives", "difference", "matches", "chance"] as const;
const VERDICTS = { matches: "yes", no: "no", hidden: "would not show" } as const;
const NONE = "none of the usual slips";

export function shown<Key extends string>(
  show: string,
  explanation: Explanation<Key>,
  words: Readonly<Record<Key, string>>,
  unit: Unit,
  difference: Unit,
): Grid {
  if (show === "count") return [[explanation.count]];
  if (show === "slip") return [[bestInWords(explanation, words)]];
  const number = (value: number | undefined, of: Unit, none: string): Cell =>
    value === undefined ? none : fromSI(value, of);
  const row = (line: Judged<Key>): Cell[] => [
    words[line.key],
    number(line.gives, unit, "no answer"),
    number(line.difference, difference, ""),
    VERDICTS[line.verdict],
    line.chance ?? "",
  ];
  return [HEADER, ...explanation.lines.map(row)];
}

function bestInWords<Key extends string>(
  { lines, reproduced, count }: Explanation<Key>,
  words: Readonly<Record<Key, string>>,
): string {
  if (reproduced) return "as stated, no slip needed";
  const best = lines.slice(1).find(({ verdict }) => verdict === "matches");
  if (best === undefined) return NONE;
  const others = count - 1;
  const also = others === 0 ? "" : `; so would ${others} other${others === 1 ? "" : "s"}`;
  const chance = lines.at(-1)?.chance;
  const byChance = chance === undefined ? "" : ` (by chance one matches ${readable(chance * 100, 2)} % of values)`;
  return `${words[best.key]} would give it${also}${byChance}`;
}
