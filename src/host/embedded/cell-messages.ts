import type { Nullable } from "@univerjs/core";
import type {
  ArrayValueObject,
  BaseValueObject,
  ErrorValueObject,
  FunctionVariantType,
  IFormulaRuntimeService,
} from "@univerjs/engine-formula";
import type { MessageAt } from "./values.js";

/** An error cell and what it means. Row and column are 0-based. */
export interface CellMessage {
  readonly row: number;
  readonly column: number;
  readonly error: string;
  readonly message: string;
}

/** The error cells with a message in the result of one formula, that stands at row and column. */
export interface FormulaMessages {
  readonly unit: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly messages: readonly CellMessage[];
}

/** What the open book tells of a formula and its sheet. */
export interface BookFacts {
  /** What the form of the formula in a cell says of an error without a message. */
  readonly explain: (error: string, unit: string, sheet: string, row: number, column: number) => string | undefined;
  readonly size: (unit: string, sheet: string) => { readonly rowCount: number; readonly columnCount: number };
}

/**
 * The messages of all error cells. They are taken where the engine stores a formula's result, so that each belongs to
 * the cell that shows the error, also behind INDEX, FILTER or IF, and an error caught by IFERROR has none.
 */
export class CellMessages {
  private readonly byFormula = new Map<string, readonly CellMessage[]>();
  private readonly byCell = new Map<string, string>();

  constructor(
    private readonly onMessages: (messages: FormulaMessages) => void,
    private readonly book: BookFacts,
  ) {}

  /** The message of a cell, for the errors that another formula reads from it. */
  readonly at: MessageAt = (unit, sheet, row, column) => this.byCell.get(key(unit, sheet, row, column));

  listen(runtime: IFormulaRuntimeService): void {
    const setRuntimeData = runtime.setRuntimeData.bind(runtime);
    runtime.setRuntimeData = (result) => {
      setRuntimeData(result);
      this.store(runtime, result);
    };
  }

  private store(runtime: IFormulaRuntimeService, result: FunctionVariantType): void {
    const { currentUnitId: unit, currentSubUnitId: sheet, currentRow: row, currentColumn: column } = runtime;
    const formula = key(unit, sheet, row, column);
    const messages =
      beyond(result, row, column, this.book.size(unit, sheet)) ??
      this.messagesOf(result, row, column, (error) => this.book.explain(error, unit, sheet, row, column));
    const before = this.byFormula.get(formula);
    if (messages.length === 0 && before === undefined) return;
    for (const old of before ?? []) this.byCell.delete(key(unit, sheet, old.row, old.column));
    for (const cell of messages) this.byCell.set(key(unit, sheet, cell.row, cell.column), cell.message);
    if (messages.length === 0) this.byFormula.delete(formula);
    else this.byFormula.set(formula, messages);
    this.onMessages({ unit, sheet, row, column, messages });
  }

  private messagesOf(
    result: FunctionVariantType,
    row: number,
    column: number,
    explain: (error: string) => string | undefined,
  ): CellMessage[] {
    const messages: CellMessage[] = [];
    const explained = new Map<string, string | undefined>();
    const byForm = (error: string): string | undefined => {
      if (!explained.has(error)) explained.set(error, explain(error));
      return explained.get(error);
    };
    const add = (value: Nullable<BaseValueObject>, atRow: number, atColumn: number, passedOn?: string): void => {
      if (!value?.isError()) return;
      const error = value as ErrorValueObject;
      const message = (error.getErrorContent() || passedOn) ?? byForm(error.getErrorType());
      if (message) messages.push({ row: atRow, column: atColumn, error: error.getErrorType(), message });
    };
    if (!result.isReferenceObject() && !result.isArray()) {
      add(result as BaseValueObject, row, column);
      return messages;
    }
    const range = result as Extract<FunctionVariantType, { iterator: unknown }>;
    const { startRow, startColumn } = range.getRangePosition();
    const [unit, sheet] = [range.getUnitId(), range.getSheetId()];
    range.iterator((value, r, c) => {
      const passedOn = result.isReferenceObject() ? this.at(unit, sheet, r, c) : undefined;
      add(value, row + r - startRow, column + c - startColumn, passedOn);
      return undefined;
    });
    return messages;
  }
}

/** The one message of a spill that has no room before the sheet ends: the engine shows #SPILL! at its first cell. */
function beyond(
  result: FunctionVariantType,
  row: number,
  column: number,
  { rowCount, columnCount }: ReturnType<BookFacts["size"]>,
): CellMessage[] | undefined {
  if (!result.isReferenceObject() && !result.isArray()) return undefined;
  const { startRow, startColumn, endRow, endColumn } = (result as ArrayValueObject).getRangePosition();
  const [rows, columns] = [endRow - startRow + 1, endColumn - startColumn + 1];
  if (rows === 1 && columns === 1) return undefined;
  if (row + rows <= rowCount && column + columns <= columnCount) return undefined;
  const message =
    `The results, ${rows} row${rows === 1 ? "" : "s"} by ${columns} column${columns === 1 ? "" : "s"}, reach beyond ` +
    `the end of the sheet: enter the formula further up or left, where they have room.`;
  return [{ row, column, error: "#SPILL!", message }];
}

function key(unit: string, sheet: string, row: number, column: number): string {
  return `${unit}\n${sheet}\n${row}\n${column}`;
}
