import { isCellError, type Cell, type FunctionSpec, type Grid } from "../../functions/contract.js";
import { explainError } from "./explain.js";
import { plainMessage } from "../plain-messages.js";
import { readFormula, type FormulaReading } from "./syntax.js";
import { tokenize } from "../tokens.js";
import { FormulaEngine } from "./formula-engine.js";

/** A formula that cannot be read; the message tells the position. */
export interface Unreadable {
  readonly error: "SYNTAX";
  readonly message: string;
}

/** No cell holds anything here. */
const NOWHERE = { name: "s", rows: 1_048_576, columns: 16_384, valueAt: () => null, formulaAt: () => undefined };

/**
 * The engine without a screen, for single formulas. Each is evaluated for itself, standing in no cell: nothing spills
 * into another, references to cells find them empty, and there is no other sheet and no table.
 */
export class HeadlessEngine {
  private readonly engine: FormulaEngine;

  constructor(specs: readonly FunctionSpec[]) {
    this.engine = new FormulaEngine(specs, [NOWHERE]);
  }

  /** The result of a formula, with or without "=": one row and column or a spill, each error with its message. Never throws. */
  async evaluate(formula: string): Promise<Grid | Unreadable> {
    const reading = readFormula(formula);
    if (reading.problem !== undefined) return { error: "SYNTAX", message: reading.problem.message };
    const missing = missingPlace(formula);
    if (missing !== undefined) return [[{ error: "#REF!", message: missing }]];
    try {
      const result = await this.engine.evaluate(formula);
      return result === undefined ? unreadable : this.withMessages(result, reading);
    } finally {
      this.engine.forget();
    }
  }

  private withMessages(grid: Grid, reading: FormulaReading): Grid {
    const explain = (cell: Cell): Cell => {
      if (!isCellError(cell) || cell.message !== plainMessage(cell.error)) return cell;
      const message = explainError(cell.error, reading, this.engine.functions);
      return message === undefined ? cell : { ...cell, message };
    };
    return grid.some((row) => row.some(isCellError)) ? grid.map((row) => row.map(explain)) : grid;
  }
}

const unreadable: Unreadable = {
  error: "SYNTAX",
  message: "The engine cannot read this formula, although its form is right: write it in a simpler way (position 1).",
};

/** What a formula alone cannot refer to. */
function missingPlace(formula: string): string | undefined {
  const place = tokenize(formula).find(({ kind }) => kind === "sheet" || kind === "bracket");
  if (place === undefined) return undefined;
  const what =
    place.kind === "sheet" ? `no sheet ${place.text.slice(0, -1)}` : `no table with the column ${place.text}`;
  return `There is ${what} here: the formula is evaluated by itself, outside any workbook.`;
}
