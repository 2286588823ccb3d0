import type { Hints } from "./words.js";

/** Of criteria and grades. */
export const SEVERITY_HINTS: Hints = {
  "share-of-limit": () => "Against a limit the rise is its share of the permitted rise, such as 0.9.",
  "reference-not-in-criteria": (w) =>
    `${w.number("criteria")} has no column for "${w.number("reference")}", only ${w.number("has")}.${w.number("sets") && ` Built-in tables that have it: ${w.number("sets")}.`}`,
  "enclosed-not-graded": () =>
    "An enclosed part is not seen, and what is not seen is not graded: nothing ties the temperature of a door to what is behind it.",
  "view-not-in-criteria": (w) =>
    `${w.number("criteria")} is for ${w.number("has")} views only: ${
      w.number("view") === "indirect"
        ? "an indirect view hides most of a rise; take a table made for it, such as house-indirect."
        : "its edges are far too low for a part seen directly."
    }`,
  "colder-than-reference": (w) =>
    `Colder than its reference (${w.number("reference")}): references swapped, an unloaded or open phase, wet or sky-cooled, or air taken elsewhere.`,
  "criteria-empty": () => "The range has no rows: reference | grade | from or above | lower edge | words | action.",
  "criteria-reference": (w) => `Row ${w.number("row")} of the criteria: the first column names the reference.`,
  "criteria-bound": (w) => `Row ${w.number("row")} of the criteria: the third column is "from" or "above".`,
  "criteria-grade": (w) =>
    `Row ${w.number("row")} of the criteria: a grade is a whole number from 1 to 4, 4 the worst.`,
  "criteria-edge": (w) => `Row ${w.number("row")} of the criteria: the lower edge is a number from 0 up.`,
  "criteria-words": (w) => `Row ${w.number("row")} of the criteria has no words: no grade is shown without them.`,
  "criteria-edge-order": (w) =>
    `Row ${w.number("row")} of the criteria: within a reference lower edges rise from row to row.`,
  "criteria-grade-order": (w) =>
    `Row ${w.number("row")} of the criteria: within a reference grades rise from row to row.`,
};
