import { LocaleType, LogLevel, Univer, UniverInstanceType } from "@univerjs/core";
import {
  AstTreeBuilder,
  CELL_INVERTED_INDEX_CACHE,
  FORMULA_REF_TO_ARRAY_CACHE,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  Interpreter,
  Lexer,
  LexerTreeBuilder,
  UniverFormulaEnginePlugin,
  type ArrayValueObject,
  type BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
  type IFunctionNames,
} from "@univerjs/engine-formula";
import { isCellError, type Cell, type FunctionSpec, type Grid } from "../../functions/contract.js";
import { equipEngine } from "./equip.js";
import { explainError } from "./explain.js";
import { plainMessage } from "../plain-messages.js";
import { readFormula, type FormulaReading } from "./syntax.js";
import { tokenize } from "../tokens.js";
import { toGrid, toInput } from "./values.js";

/** A formula that cannot be read; the message tells the position. */
export interface Unreadable {
  readonly error: "SYNTAX";
  readonly message: string;
}

const ROWS = 1_048_576;
const COLUMNS = 16_384;
const UNIT = "u";
const SHEET = "s";

/**
 * The engine without a screen, for single formulas. Each is evaluated for itself, standing in no cell: nothing spills
 * into another, references to cells find them empty, and there is no other sheet and no table.
 */
export class HeadlessEngine {
  private readonly lexer: Lexer;
  private readonly lexerCache: LexerTreeBuilder;
  private readonly parser: AstTreeBuilder;
  private readonly interpreter: Interpreter;
  private readonly runtime: IFormulaRuntimeService;
  private readonly functions: ReadonlyMap<IFunctionNames, BaseFunction>;

  constructor(specs: readonly FunctionSpec[]) {
    // Without locales a long calculation ends the process from a timer.
    const locales = { [LocaleType.EN_US]: {} };
    const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.SILENT });
    univer.registerPlugin(UniverFormulaEnginePlugin);
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, {
      id: UNIT,
      sheetOrder: [SHEET],
      sheets: { [SHEET]: { id: SHEET, name: SHEET, rowCount: ROWS, columnCount: COLUMNS, cellData: {} } },
    });
    const injector = univer.__getInjector();
    equipEngine(injector, specs);
    injector.get(IFormulaCurrentConfigService).loadDataLite();
    this.lexer = injector.get(Lexer);
    this.lexerCache = injector.get(LexerTreeBuilder);
    this.parser = injector.get(AstTreeBuilder);
    this.interpreter = injector.get(Interpreter);
    this.runtime = injector.get(IFormulaRuntimeService);
    this.functions = injector.get(IFunctionService).getExecutors();
  }

  /** The result of a formula, with or without "=": one row and column or a spill, each error with its message. Never throws. */
  async evaluate(formula: string): Promise<Grid | Unreadable> {
    const reading = readFormula(formula);
    if (reading.problem !== undefined) return { error: "SYNTAX", message: reading.problem.message };
    const missing = missingPlace(formula);
    if (missing !== undefined) return [[{ error: "#REF!", message: missing }]];
    try {
      const result = await this.run(formula);
      return result === undefined ? unreadable : this.withMessages(result, reading);
    } finally {
      this.forget();
    }
  }

  private async run(formula: string): Promise<Grid | undefined> {
    this.runtime.setCurrent(0, 0, ROWS, COLUMNS, SHEET, UNIT);
    const lexed = this.lexer.treeBuilder(formula.trim());
    if (lexed === undefined || typeof lexed === "string" || Array.isArray(lexed)) return undefined;
    const node = this.parser.parse(lexed);
    if (!node) return undefined;
    const data = { node, refOffsetX: 0, refOffsetY: 0 };
    const value = this.interpreter.checkAsyncNode(node)
      ? await this.interpreter.executeAsync(data)
      : this.interpreter.execute(data);
    return gridOf(value);
  }

  private withMessages(grid: Grid, reading: FormulaReading): Grid {
    const explain = (cell: Cell): Cell => {
      if (!isCellError(cell) || cell.message !== plainMessage(cell.error)) return cell;
      const message = explainError(cell.error, reading, this.functions);
      return message === undefined ? cell : { ...cell, message };
    };
    return grid.some((row) => row.some(isCellError)) ? grid.map((row) => row.map(explain)) : grid;
  }

  /** Also because the engine's caches know long formulas by a hash of 32 bits only: two could be taken for one. */
  private forget(): void {
    this.runtime.reset();
    this.lexerCache.dispose();
    FORMULA_REF_TO_ARRAY_CACHE.clear();
    CELL_INVERTED_INDEX_CACHE.clear();
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

/** Empty cells come out as 0, as in a worksheet. */
function gridOf(value: FunctionVariantType): Grid {
  if (!value.isReferenceObject() && !value.isArray()) return [[(toInput(value as BaseValueObject) ?? 0) as Cell]];
  const array = value.isReferenceObject()
    ? (value as BaseReferenceObject).toArrayValueObject(false)
    : (value as ArrayValueObject);
  return toGrid(array).map((row) => row.map((cell) => cell ?? 0));
}
