import { CONDITION, DEFAULT_MATRIX, GRADE, matrixNamed, ownMatrix, priority } from "../core/severity/priority.js";
import type { PriorityRow } from "../data/priorities.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { defineCells } from "./lift.js";
import { numberOf, readOwnTable, singleCell, textOf, wordsOf } from "./own-table.js";
import { isNoWord } from "./read.js";
import { unitOf } from "./units.js";

const MATRIX_ARGUMENT: ArgumentSpec = {
  name: "matrix",
  quantity: "table",
  help: "house, or a range of the workbook's own: grade | words for criticality 1 | 2 | 3",
  optional: true,
  default: DEFAULT_MATRIX,
  whole: true,
};

/** Words where the grade belongs: the row above the grades. */
const isHeading = ([first]: readonly Cell[]): boolean => wordsOf(first) !== "" && Number.isNaN(numberOf(first));

function readMatrix(input: Input): readonly PriorityRow[] | CellError {
  const single = singleCell(input);
  if (isCellError(single)) return single;
  if (single !== undefined) return matrixNamed(isNoWord(single) ? DEFAULT_MATRIX : textOf(single));
  return readOwnTable(MATRIX_ARGUMENT, input, {
    isHeading,
    build: (rows) =>
      ownMatrix(
        rows.map(([grade, ...words]) => ({ grade: numberOf(grade), priorities: words.slice(0, 3).map(wordsOf) })),
      ),
    about: (key, row) => {
      const empty = [1, 2, 3].find((column) => wordsOf(row[column]) === "");
      return { column: key === "matrix-words" ? (empty ?? 0) : 0, unit: unitOf("number", "C") };
    },
  });
}

export const PRIORITY: FunctionSpec = defineCells({
  name: "PRIORITY",
  topic: "Severity",
  summary: "What a grade asks for, by how much hangs on the asset. The grade says how bad it is, not how soon.",
  returns: "priority in words",
  args: [
    { name: "grade", quantity: "number", help: "severity grade, 0 to 4, 4 = worst", range: GRADE },
    {
      name: "criticality",
      quantity: "number",
      help: "criticality of the asset, 1 to 3, 3 = worst",
      range: CONDITION,
      zeroIsBlank: true,
    },
    MATRIX_ARGUMENT,
  ],
  result: "text",
  whole: (inputs: readonly Input[]) => readMatrix(inputs[2]),
  cell: (values, whole) =>
    priority(values.number("grade"), values.number("criticality"), whole as readonly PriorityRow[]),
  example: { formula: "=GREY.PRIORITY(3,2)", shows: "repair at the next stop" },
  sources: ["greybody-house"],
});
