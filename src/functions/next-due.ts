import { DATE } from "../core/plan/calendar.js";
import { DEFAULT_INTERVALS, intervalsNamed, nextDue, ownIntervals } from "../core/plan/next-due.js";
import { CONDITION } from "../core/severity/priority.js";
import type { ArgumentSpec, CellError, FunctionSpec, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { defineCells } from "./lift.js";
import { numberOf, singleCell, textOf } from "./own-table.js";
import { gridOf, isNoWord } from "./read.js";

const INTERVALS_ARGUMENT: ArgumentSpec = {
  name: "intervals",
  quantity: "table",
  help: "NFPA-70B-2023, or three cells of the workbook's own: months for condition 1, 2 and 3",
  optional: true,
  default: DEFAULT_INTERVALS,
  whole: true,
};

function readIntervals(input: Input): readonly number[] | CellError {
  const single = singleCell(input);
  if (isCellError(single)) return single;
  if (single !== undefined) return intervalsNamed(isNoWord(single) ? DEFAULT_INTERVALS : textOf(single));
  const cells = gridOf(input).flat();
  return cells.find(isCellError) ?? ownIntervals(cells.map(numberOf));
}

const condition = (name: string, help: string): ArgumentSpec => ({
  name,
  quantity: "number",
  help: `${help}, 1 to 3, 3 = worst`,
  range: CONDITION,
  zeroIsBlank: true,
});

export const NEXT_DUE: FunctionSpec = defineCells({
  name: "NEXT_DUE",
  topic: "Trend and plan",
  summary:
    "Date on which the next survey is due: months by the worst of physical condition, criticality and environment. Format the cell as a date.",
  returns: "date, as Excel counts days",
  args: [
    {
      name: "last_date",
      quantity: "date",
      help: "date of the last survey, as Excel counts days",
      range: DATE,
      zeroIsBlank: true,
    },
    condition("physical_condition", "physical condition of the asset"),
    condition("criticality", "criticality of the asset"),
    condition("environment", "environment of the asset"),
    INTERVALS_ARGUMENT,
  ],
  result: "date",
  whole: (inputs: readonly Input[]) => readIntervals(inputs[4]),
  cell: (values, whole) =>
    nextDue(
      {
        lastDate: values.number("last_date"),
        physicalCondition: values.number("physical_condition"),
        criticality: values.number("criticality"),
        environment: values.number("environment"),
      },
      whole as readonly number[],
    ),
  // 46082 is 2026-03-01; six months on it is 2026-09-01.
  example: { formula: "=GREY.NEXT_DUE(46082,1,3,2)", shows: "46266" },
  sources: ["nfpa-70b-2023"],
});
