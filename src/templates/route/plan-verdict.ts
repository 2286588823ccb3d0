/** What a planned view comes to, in words: go, come closer, or nothing that can be graded. */
import type { Computed } from "./columns.js";
import { clause, is } from "./formula.js";
import { PLANNED } from "./plan-typed.js";
import type { SheetUnits } from "./sheet-units.js";

/** Of a spot margin: below it the target is hardly larger than its three pixels (trade.md 5.5). */
const MARGIN = 1.5;
/** Emissivities below which uncertainties are wide, and below which there is no temperature to be had. */
const WIDE = 0.6;
const QUALITATIVE = 0.3;

const number = (column: string): string => `TEXT(${column},"0.0")`;

export function planVerdict(units: SheetUnits): Computed {
  const [degree, kelvin] = [` ${units.label("temperature")}`, ` ${units.label("difference")}`];
  const reach = `"from at most "&[reach]&", or with a longer lens"`;
  const beyond =
    `(${is("[apparent]", ">job_range_to")}*ISNUMBER(job_range_to)` +
    `+${is("[apparent]", "<job_range_from")}*ISNUMBER(job_range_from)>0)`;
  const cautions = [
    clause(is("[spot_margin]", `<${MARGIN}`), '"closer is better, the target is hardly larger than three pixels"'),
    clause(is("[emissivity]", `<${WIDE}`), `"emissivity below ${WIDE}"`),
    clause('ISNUMBER([window_transmission])*([window_half]="")', '"± U is more: the window counts as exact"'),
  ].join("&");
  const steps: readonly (readonly [condition: string, words: string])[] = [
    ['[needs]<>""', '"needs "&[needs]'],
    [is("[spot_margin]", "<1"), `"come closer: "&${reach}`],
    [is("[emissivity]", `<${QUALITATIVE}`), `"not quantitative: emissivity below ${QUALITATIVE}"`],
    ['([apparent]="")+([apparent_reference]="")>0', '"no answer: a number of this view, or of Job, cannot be"'],
    [beyond, `"not in this range: the reading would be "&${number("[apparent]")}&"${degree}"`],
    ['[u]=""', '"no answer: the uncertainty cannot be worked out"'],
    ['[graded_from]=""', '"no grade: the criteria of Job have none over "&[over]'],
    [
      is("[expected_rise]", "<=[u]"),
      `"not quantitative: the rise lies within its uncertainty, ± "&${number("[u]")}&"${kelvin}"`,
    ],
    [
      is("[expected_rise]", "<[graded_from]"),
      `"not quantitative: it can be read, but a grade is sure only from "&${number("[graded_from]")}&"${kelvin} on"`,
    ],
  ];
  const go = `"go"&IF(cautions="","",", with care: "&LEFT(cautions,LEN(cautions)-2))`;
  const chain = steps.reduceRight((rest, [condition, words]) => `IF(${condition},${words},${rest})`, go);
  return {
    key: "verdict",
    header: "go, come closer, not quantitative",
    group: "To do",
    width: 430,
    note: "By spot margin, emissivity, the camera's range, and whether the expected rise stands clear of its uncertainty.",
    formula: `=LET(cautions,${cautions},IF(${PLANNED},${chain},""))`,
  };
}
