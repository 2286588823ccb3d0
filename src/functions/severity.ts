import { EXPONENT, LOAD, REFERENCE_LOAD } from "../core/loading/load.js";
import { gradeRange, RISE_UNCERTAINTY } from "../core/severity/grade-range.js";
import { grade, ROUND_TO } from "../core/severity/grade.js";
import type { Edge, Grade } from "../core/severity/ladder.js";
import { RULES } from "../data/rules.js";
import type { ArgumentSpec, FunctionSpec, Input } from "./contract.js";
import { CRITERIA, CRITERIA_ARGUMENT, readCriteria } from "./criteria.js";
import { GRADE_CHANCE } from "./grade-chance.js";
import { defineCells, defineRows, UNITS_ARGUMENT } from "./lift.js";
import type { Values } from "./lift.js";
import { MINIMUM_LOAD_ARGUMENT } from "./load-arguments.js";
import { provenanceInWords } from "./provenance.js";
import {
  againstLimit,
  criteriaOf,
  difference,
  REFERENCE_ARGUMENT,
  RISE_ARGUMENT,
  VIEW_ARGUMENT,
} from "./severity-arguments.js";
import { fromSI, unitOf } from "./units.js";

const SHOWS = ["grade", "words", "action", "source", "lower", "upper"] as const;

function edgeInSheet(edge: Edge | undefined, result: Grade, values: Values): number | string {
  if (!edge) return "";
  return result.reference === "limit" ? edge.value : fromSI(edge.value, unitOf("difference", values.units));
}

function shown(result: Grade, show: string, values: Values): number | string {
  switch (show) {
    case "words":
      return result.words;
    case "action":
      return result.action;
    case "source":
      return result.source ? provenanceInWords(result.source) : "the workbook's own criteria";
    case "lower":
      return edgeInSheet(result.lower, result, values);
    case "upper":
      return edgeInSheet(result.upper, result, values);
    default:
      return result.grade;
  }
}

const GRADE = defineCells({
  name: "GRADE",
  topic: "Severity",
  summary: "Severity of a rise by a table of criteria, 0 (below the first band) to 4 (worst); show it with its words.",
  returns: "grade, or what show names",
  args: [
    RISE_ARGUMENT,
    REFERENCE_ARGUMENT,
    CRITERIA_ARGUMENT,
    VIEW_ARGUMENT,
    { name: "show", quantity: "text", help: "what to show", optional: true, default: "grade", choices: SHOWS },
    {
      name: "round_to",
      quantity: "difference",
      help: "step to round the rise to first, as many reports do; not rounded where left out",
      optional: true,
      range: ROUND_TO,
      zeroIsBlank: true,
    },
    UNITS_ARGUMENT,
  ],
  result: "number",
  whole: (inputs: readonly Input[], units) => readCriteria(inputs[2], units),
  cell: (values, whole) => {
    const reference = values.text("reference");
    const isShare = reference === "limit";
    const roundTo =
      values.optional("round_to") === undefined ? {} : { roundTo: difference(values, "round_to", isShare) };
    const rise = difference(values, "rise", isShare);
    const result = againstLimit(isShare, () =>
      grade({ rise, reference, criteria: criteriaOf(whole), view: values.text("view"), ...roundTo }),
    );
    return shown(result, values.text("show"), values);
  },
  example: { formula: '=GREY.GRADE(30,"similar")', shows: "4" },
  sources: ["neta-ats-2003", "iec-60694-1996", "greybody-house"],
});

const optionalNumber = (name: string, quantity: ArgumentSpec["quantity"], help: string): ArgumentSpec => ({
  name,
  quantity,
  help,
  optional: true,
});

const GRADE_RANGE = defineRows({
  name: "GRADE_RANGE",
  topic: "Severity",
  summary:
    "Grades a rise may have at the reference load, over the usual exponents and the uncertainty of what was measured.",
  returns: 'a row: low and high projected rise, low and high grade, "same" or "depends"',
  args: [
    RISE_ARGUMENT,
    { name: "load", quantity: "current", help: "load as found, in the unit of reference_load", range: LOAD },
    {
      name: "reference_load",
      quantity: "current",
      help: "load to project to",
      range: REFERENCE_LOAD,
      zeroIsBlank: true,
    },
    REFERENCE_ARGUMENT,
    CRITERIA_ARGUMENT,
    {
      ...optionalNumber("exponent_low", "number", "low end of the exponent"),
      default: RULES.exponent_low.value,
      range: EXPONENT,
      zeroIsBlank: true,
    },
    {
      ...optionalNumber("exponent_high", "number", "high end of the exponent"),
      default: RULES.exponent_high.value,
      range: EXPONENT,
      zeroIsBlank: true,
    },
    MINIMUM_LOAD_ARGUMENT,
    {
      ...optionalNumber("rise_u", "difference", "standard uncertainty of the rise (k = 1); exact where left out"),
      range: RISE_UNCERTAINTY,
    },
    {
      ...optionalNumber("current_u", "current", "standard uncertainty of the load as found; exact where left out"),
      range: LOAD,
    },
    UNITS_ARGUMENT,
  ],
  results: ["number", "number", "number", "number", "text"],
  whole: (inputs: readonly Input[], units) => readCriteria(inputs[4], units),
  row: (values, whole) => {
    const reference = values.text("reference");
    const isShare = reference === "limit";
    const rise = difference(values, "rise", isShare);
    const riseU = values.optional("rise_u") === undefined ? {} : { riseU: difference(values, "rise_u", isShare) };
    const currentU = values.optional("current_u");
    const range = againstLimit(isShare, () =>
      gradeRange({
        rise,
        load: values.number("load"),
        referenceLoad: values.number("reference_load"),
        reference,
        criteria: criteriaOf(whole),
        exponentLow: values.number("exponent_low"),
        exponentHigh: values.number("exponent_high"),
        minimumLoad: values.number("minimum_load"),
        ...riseU,
        ...(currentU === undefined ? {} : { currentU }),
      }),
    );
    const inSheet = (si: number): number => (isShare ? si : fromSI(si, unitOf("difference", values.units)));
    return [inSheet(range.low), inSheet(range.high), range.lowGrade.grade, range.highGrade.grade, range.verdict];
  },
  example: { formula: '=GREY.GRADE_RANGE(12,45,100,"similar")', shows: "43.1, 59.3, 4, 4, same" },
  sources: ["irinfo-2023", "neta-ats-2003", "jcgm-100-2008"],
});

export const severityFunctions: readonly FunctionSpec[] = [GRADE, GRADE_CHANCE, GRADE_RANGE, CRITERIA];
