import { CHECK_RULES } from "../data/check-rules.js";
import type { CheckRule } from "../data/check-rules.js";
import { FIGURES } from "../data/figures.js";
import { INTERVALS } from "../data/intervals.js";
import { PRIORITY_MATRICES } from "../data/priorities.js";
import { RULES } from "../data/rules.js";
import type { Rule } from "../data/rules.js";
import { WINDOWS } from "../data/windows.js";
import type { WindowMaterial, WindowRange } from "../data/windows.js";
import { provenanceInWords } from "./provenance.js";

/** A line of ABOUT. */
export type Line = readonly [what: string, value: string | number, unit: string, source: string];

const span = (low: number, high: number): string | number => (low === high ? low : `${low} to ${high}`);
const plain = (unit: string): string => (unit === "-" ? "" : unit);
const sentences = (...parts: readonly (string | undefined)[]): string =>
  parts
    .filter((part) => part !== undefined && part !== "")
    .map((part) => part?.replace(/\.$/, ""))
    .join("; ");

const ruleLines = (of: string, rules: Readonly<Record<string, Rule | CheckRule>>): Line[] =>
  Object.entries(rules).map(([name, rule]) => [
    `${of}: ${name.replaceAll("_", " ")}`,
    rule.value,
    plain(rule.unit),
    sentences(rule.what, provenanceInWords(rule)),
  ]);

const WAVES = { long: "long wave", short: "short wave" };
const rangeInWords = ({ band, what, low, high }: WindowRange): string => `${WAVES[band]} ${what} ${span(low, high)}`;

function windowLine({ material, note, ranges }: WindowMaterial): Line {
  const sources = new Map<string, string[]>();
  for (const range of ranges) {
    const source = provenanceInWords(range);
    sources.set(source, [...(sources.get(source) ?? []), `${WAVES[range.band]} ${range.what}`]);
  }
  return [
    `transmission of a window: ${material}`,
    ranges.map(rangeInWords).join("; "),
    "",
    sentences(
      "a window's own transmission is measured",
      note,
      ...[...sources].map(([source, ranges]) => `${ranges.join(", ")}: ${source}`),
    ),
  ];
}

/** Rules, figures of machines, windows, intervals and priorities: each number that no other function's table shows. */
export function dataLines(): Line[] {
  return [
    ...ruleLines("rule", RULES),
    ...ruleLines("check", CHECK_RULES),
    ...INTERVALS.map((set): Line => [
      `intervals ${set.name}`,
      set.months.join("; "),
      "months",
      sentences(set.about, provenanceInWords(set)),
    ]),
    ...PRIORITY_MATRICES.flatMap((matrix) =>
      matrix.rows.map(({ grade, priorities }): Line => [
        `priorities ${matrix.name}: grade ${grade}`,
        priorities.map((words, i) => `criticality ${i + 1}: ${words}`).join("; "),
        "",
        sentences(matrix.about, provenanceInWords(matrix)),
      ]),
    ),
    ...FIGURES.map((figure): Line => [
      figure.what,
      span(figure.low, figure.high),
      plain(figure.unit),
      sentences(figure.note, provenanceInWords(figure)),
    ]),
    ...WINDOWS.map(windowLine),
  ];
}
