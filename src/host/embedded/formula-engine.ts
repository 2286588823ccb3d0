import { CellValueType, LocaleType, LogLevel, Univer, UniverInstanceType, type ICellData } from "@univerjs/core";
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
import { releaseValues } from "./release.js";
import { plainExecutors, type PlainFunction } from "./plain-functions.js";
import { toGrid, toInput } from "./values.js";

/** A sheet as the engine sees it: what its cells hold is asked for at each reading. */
export interface EngineSheet {
  readonly name: string;
  /** As far as a whole column or row is read. */
  readonly rows: number;
  readonly columns: number;
  /** The value of a cell, 0-based; null for an empty one. */
  readonly valueAt: (row: number, column: number) => Cell;
  /** The formula of a cell where it has one, else undefined. */
  readonly formulaAt: (row: number, column: number) => string | undefined;
}

/** Where a formula stands. */
export interface EnginePlace {
  /** Index of its sheet. */
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

const UNIT = "u";
const LAMBDA = /LAMBDA/i;
const HERE: EnginePlace = { sheet: 0, row: 0, column: 0 };
const idOf = (sheet: number): string => `s${sheet}`;

/** The engine without a screen and without a calculation of its own: one formula at a time, over cells that others keep. */
export class FormulaEngine {
  readonly functions: ReadonlyMap<IFunctionNames, BaseFunction>;
  private readonly lexer: Lexer;
  private readonly lexerCache: LexerTreeBuilder;
  private readonly parser: AstTreeBuilder;
  private readonly interpreter: Interpreter;
  private readonly runtime: IFormulaRuntimeService & { clearFunctionDefinitionPrivacyVar?: () => void };
  private holdsLambda = false;

  constructor(
    specs: readonly FunctionSpec[],
    private readonly sheets: readonly EngineSheet[],
    /** Our own worksheet functions, in the place of the engine's. */
    plain: readonly PlainFunction[] = [],
  ) {
    // Without locales a long calculation ends the process from a timer.
    const locales = { [LocaleType.EN_US]: {} };
    const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.SILENT });
    univer.registerPlugin(UniverFormulaEnginePlugin);
    const snapshots = sheets.map(({ name, rows, columns }, i) => [
      idOf(i),
      { id: idOf(i), name, rowCount: rows, columnCount: columns, cellData: {} },
    ]);
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, {
      id: UNIT,
      sheetOrder: sheets.map((_, i) => idOf(i)),
      sheets: Object.fromEntries(snapshots) as object,
    });
    const injector = univer.__getInjector();
    equipEngine(injector, specs);
    const config = injector.get(IFormulaCurrentConfigService);
    config.loadDataLite();
    for (const [i, sheet] of sheets.entries()) readFrom(sheet, config.getUnitData()[UNIT]?.[idOf(i)]);
    this.lexer = injector.get(Lexer);
    this.lexerCache = injector.get(LexerTreeBuilder);
    this.parser = injector.get(AstTreeBuilder);
    this.interpreter = injector.get(Interpreter);
    this.runtime = injector.get(IFormulaRuntimeService);
    releaseValues(this.interpreter, () => this.holdsLambda);
    const functions = injector.get(IFunctionService);
    functions.registerExecutors(...plainExecutors(plain));
    this.functions = functions.getExecutors();
  }

  /** The result of a formula as it would stand in its place; undefined where the engine cannot read it. */
  async evaluate(formula: string, place: EnginePlace = HERE): Promise<Grid | undefined> {
    const sheet = this.sheets[place.sheet];
    this.runtime.setCurrent(place.row, place.column, sheet?.rows ?? 1, sheet?.columns ?? 1, idOf(place.sheet), UNIT);
    const lexed = this.lexer.treeBuilder(formula.trim());
    if (lexed === undefined || typeof lexed === "string" || Array.isArray(lexed)) return undefined;
    const node = this.parser.parse(lexed);
    if (!node) return undefined;
    this.holdsLambda = LAMBDA.test(formula);
    const data = { node, refOffsetX: 0, refOffsetY: 0 };
    const value = this.interpreter.checkAsyncNode(node)
      ? await this.interpreter.executeAsync(data)
      : this.interpreter.execute(data);
    return gridOf(value);
  }

  /** Lets go of what was read: cells may have changed since. */
  forgetCells(): void {
    FORMULA_REF_TO_ARRAY_CACHE.clear();
    CELL_INVERTED_INDEX_CACHE.clear();
  }

  /**
   * The engine's caches know long formulas by a hash of 32 bits only: two could be taken for one. The names of every LET
   * are kept with their values too, of a long sheet more than a gigabyte.
   */
  forgetFormula(): void {
    this.runtime.clearFunctionDefinitionPrivacyVar?.();
    this.lexerCache.dispose();
  }

  forget(): void {
    this.runtime.reset();
    this.forgetFormula();
    this.forgetCells();
  }
}

/** Puts a sheet in the place of the engine's own matrix of cells, of which it only ever asks single values. */
function readFrom(sheet: EngineSheet, data: object | undefined): void {
  if (!data) return;
  const cells = { getValue: (row: number, column: number) => cellData(sheet, row, column) };
  Object.assign(data, { cellData: cells });
}

function cellData(sheet: EngineSheet, row: number, column: number): ICellData | undefined {
  const value = sheet.valueAt(row, column);
  if (value === null) return undefined;
  const f = sheet.formulaAt(row, column);
  // An empty text is an empty cell to the engine unless a formula made it.
  const made = f === undefined ? {} : { f };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, ...made };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN, ...made };
  if (isCellError(value)) return { v: value.error, t: CellValueType.STRING, ...made };
  return { v: value, t: CellValueType.STRING, ...made };
}

/** Empty cells come out as 0, as in a worksheet. */
function gridOf(value: FunctionVariantType): Grid {
  if (!value.isReferenceObject() && !value.isArray()) return [[(toInput(value as BaseValueObject) ?? 0) as Cell]];
  const array = value.isReferenceObject()
    ? (value as BaseReferenceObject).toArrayValueObject(false)
    : (value as ArrayValueObject);
  return toGrid(array).map((row) => row.map((cell) => cell ?? 0));
}
