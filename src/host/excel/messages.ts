import { isCellError, type Grid } from "../../functions/contract.js";
import { localAddress, parseAddress, type CellAddress } from "./address.js";

/** Why a cell shows an error of ours. */
export interface KeptMessage {
  readonly message: string;
  /** Where the formula stands; it may have been replaced since, which nobody tells us. */
  readonly formulaAt: CellAddress;
  /** The function that said it. */
  readonly functionName: string;
}

/** One function in one cell's formula. */
interface Call {
  readonly formulaAt: CellAddress;
  readonly functionName: string;
  /** Those of one turn belong to one recalculation. */
  readonly turn: number;
  readonly cells: string[];
}

interface Entry {
  readonly call: Call;
  readonly message: string;
}

/**
 * The last messages of our functions, by the cell that shows the error. Excel does not always show them, and hands an
 * error that comes in over without its message; the pane shows them beside the selected cell.
 */
export class KeptMessages {
  private readonly calls = new Map<string, Call>();
  private readonly byCell = new Map<string, Entry>();
  private readonly byFormula = new Map<string, Call>();
  private readonly listeners = new Set<() => void>();
  private turn = 0;
  private inTurn = false;

  /** @param limit most cells with a message; past it the oldest formulas' are dropped */
  constructor(private readonly limit = 50_000) {}

  /** Notes what one call gave, in place of what the same function said in that cell in an earlier recalculation. */
  keep(address: string, functionName: string, result: Grid): void {
    const formulaAt = parseAddress(address);
    if (formulaAt === undefined) return;
    const turn = this.currentTurn();
    const formula = cellKey(formulaAt);
    const name = `${formula}\n${functionName}`;
    const before = this.calls.get(name);
    // A function may stand twice in one formula; Excel calls both without a pause.
    const call = before?.turn === turn ? before : { formulaAt, functionName, turn, cells: [] };
    if (before !== undefined && before !== call) this.drop(name, before);
    result.forEach((row, r) => {
      row.forEach((cell, c) => {
        if (!isCellError(cell) || cell.message === "") return;
        const key = cellKey({ ...formulaAt, row: formulaAt.row + r, column: formulaAt.column + c });
        if (this.byCell.get(key)?.call === call) return;
        this.byCell.set(key, { call, message: cell.message });
        call.cells.push(key);
      });
    });
    if (call.cells.length === 0) return;
    this.calls.set(name, call);
    this.byFormula.set(formula, call);
    this.shorten();
  }

  /**
   * The message of a cell. Of a formula that keeps the error and not the function's place (SUM, INDEX), the first.
   */
  at(cell: CellAddress): KeptMessage | undefined {
    const key = cellKey(cell);
    const entry = this.byCell.get(key) ?? this.firstOf(this.byFormula.get(key));
    return entry && { message: entry.message, formulaAt: entry.call.formulaAt, functionName: entry.call.functionName };
  }

  /** Told once after each recalculation, until what is returned is called. */
  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  }

  private firstOf(call: Call | undefined): Entry | undefined {
    const [first] = call?.cells ?? [];
    return first === undefined ? undefined : this.byCell.get(first);
  }

  private drop(name: string, call: Call): void {
    for (const key of call.cells) {
      // Another formula may have spoken of the cell since.
      if (this.byCell.get(key)?.call === call) this.byCell.delete(key);
    }
    const formula = cellKey(call.formulaAt);
    if (this.byFormula.get(formula) === call) this.byFormula.delete(formula);
    this.calls.delete(name);
  }

  private shorten(): void {
    for (const [name, call] of this.calls) {
      if (this.byCell.size <= this.limit || this.calls.size === 1) return;
      this.drop(name, call);
    }
  }

  private currentTurn(): number {
    if (!this.inTurn) {
      this.inTurn = true;
      this.turn++;
      void Promise.resolve().then(() => {
        this.inTurn = false;
        for (const listener of this.listeners) listener();
      });
    }
    return this.turn;
  }
}

/** Excel takes a sheet's name in any case. */
function cellKey(cell: CellAddress): string {
  return `${cell.sheet.toLowerCase()}!${localAddress(cell)}`;
}

/** Those of the shared runtime. */
export const keptMessages = new KeptMessages();
