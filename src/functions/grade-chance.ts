import { gradeChance } from "../core/severity/grade-chance.js";
import { RISE_UNCERTAINTY } from "../core/severity/grade-range.js";
import type { Input } from "./contract.js";
import { CRITERIA_ARGUMENT, readCriteria } from "./criteria.js";
import { defineRows, UNITS_ARGUMENT } from "./lift.js";
import {
  againstLimit,
  criteriaOf,
  difference,
  REFERENCE_ARGUMENT,
  RISE_ARGUMENT,
  VIEW_ARGUMENT,
} from "./severity-arguments.js";

export const GRADE_CHANCE = defineRows({
  name: "GRADE_CHANCE",
  topic: "Severity",
  summary: "Probability of each grade 0 to 4 that a rise may have, from its uncertainty; the five make 1.",
  returns: "a row: probability of grade 0, 1, 2, 3, 4; 0 for a grade that the table does not have",
  args: [
    RISE_ARGUMENT,
    {
      name: "standard_uncertainty",
      quantity: "difference",
      help: "standard uncertainty of the rise (k = 1): of an expanded one at 95 %, divide by 1.96; 0 is exact",
      range: RISE_UNCERTAINTY,
    },
    REFERENCE_ARGUMENT,
    CRITERIA_ARGUMENT,
    VIEW_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  results: ["fraction", "fraction", "fraction", "fraction", "fraction"],
  whole: (inputs: readonly Input[], units) => readCriteria(inputs[3], units),
  row: (values, whole) => {
    const reference = values.text("reference");
    const isShare = reference === "limit";
    return againstLimit(isShare, () =>
      gradeChance({
        rise: difference(values, "rise", isShare),
        standardUncertainty: difference(values, "standard_uncertainty", isShare),
        reference,
        criteria: criteriaOf(whole),
        view: values.text("view"),
      }),
    );
  },
  example: { formula: '=GREY.GRADE_CHANCE(14,1,"similar")', shows: "0.000, 0.000, 0.841, 0.000, 0.159" },
  sources: ["neta-ats-2003", "jcgm-106-2012"],
});
