/** The four verdicts and what they rest on, beside the claims: one call of AUDIT a column. */
import type { Computed } from "../route/columns.js";
import { given } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { JOB_ARGUMENT } from "./report.js";
import { CLAIM_COLUMNS } from "./typed.js";

const HEADERS = `{${CLAIM_COLUMNS.map(({ key }) => `"${key}"`).join(",")}}`;

/** @param prefix the table's name, where the formula stands on another sheet */
export function auditCall(show: string, units: SheetUnits, prefix = ""): string {
  const rows = `HSTACK(${CLAIM_COLUMNS.map(({ key }) => given(`${prefix}[${key}]`)).join(",")})`;
  return `GREY.AUDIT(${HEADERS},${rows},${JOB_ARGUMENT},"${show}",${units.argument})`;
}

export function auditColumns(units: SheetUnits): Computed[] {
  const words = (key: string, header: string, width: number, note: string): Computed => ({
    key,
    header,
    group: "Four verdicts",
    width,
    note,
    formula: `=${auditCall(key, units)}`,
  });
  const number = (key: string, header: string, measure: "temperature" | "difference", decimals: string): Computed => ({
    key,
    header,
    group: "Recomputed",
    width: 92,
    measure,
    format: decimals,
    align: "right",
    formula: `=${auditCall(key, units)}`,
  });
  // A stated value may be a text that keeps its last zero.
  const difference = (key: string, header: string, stated: string, recomputed: string): Computed => ({
    ...number(key, header, "difference", "0.0"),
    formula: `=IFERROR(VALUE([${stated}]&"")-[${recomputed}],"")`,
  });
  return [
    {
      key: "verdict",
      header: "all in all",
      group: "Four verdicts",
      width: 150,
      formula: `=${auditCall("verdict", units)}`,
    },
    words("number", "number", 330, "Held to the digits that are printed, not to the uncertainty of the measurement."),
    words("method", "method", 260, "What speaks against the way, also where the number is reproduced."),
    words("grade", "grade", 330, "Whether it follows from the stated rise by the report's criteria."),
    words(
      "consequence",
      "consequence",
      380,
      "Here alone the uncertainty of the measurement counts: ± is expanded, 95 %.",
    ),
    {
      ...words("slips", "what would give it", 420, "Possibilities, with how often chance alone would match."),
      group: "Reason",
    },
    {
      ...words(
        "missing",
        "missing, not read",
        220,
        "Inputs that the report does not give, and what could not be read.",
      ),
      group: "Reason",
    },
    number("temp", "temperature", "temperature", "0.0"),
    difference("temp_difference", "stated less recomputed", "stated_temp", "temp"),
    number("temp_tolerance", "tolerance", "difference", "0.00"),
    number("rise", "rise", "difference", "0.0"),
    difference("rise_difference", "stated less recomputed (rise)", "stated_rise", "rise"),
    number("rise_tolerance", "tolerance (rise)", "difference", "0.00"),
    number("rise_at_load", "rise at load", "difference", "0.0"),
    difference("rise_at_load_difference", "stated less recomputed (at load)", "stated_rise_at_load", "rise_at_load"),
    number("rise_at_load_tolerance", "tolerance (at load)", "difference", "0.00"),
    {
      ...words(
        "values",
        "stated and recomputed",
        330,
        "What is not reproduced, with both numbers: as the page Findings has it.",
      ),
      group: "Recomputed",
    },
    { ...words("formula", "formula of the temperature", 420, "To paste into a cell."), group: "Recomputed" },
  ];
}
