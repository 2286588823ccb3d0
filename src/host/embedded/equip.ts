import type { Injector } from "@univerjs/core";
import {
  AstTreeBuilder,
  ErrorType,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  Interpreter,
  Lexer,
  LexerTreeBuilder,
  ValueNodeFactory,
} from "@univerjs/engine-formula";
import type { FunctionSpec } from "../../functions/contract.js";
import { CellMessages, type FormulaMessages } from "./cell-messages.js";
import { compareByValue, compareTruths } from "./comparisons.js";
import { explainError } from "./explain.js";
import { executorsOf } from "./executors.js";
import { limitFunctions, Refusal } from "./limits.js";
import { readLiteralsAsWritten } from "./literal-values.js";
import { prepareFormula } from "./prepare.js";
import { workQuickly } from "./quick/quick.js";
import { readFormula } from "./syntax.js";
import { hasTooManyOperators } from "../tokens.js";
import { errorValue } from "./values.js";

/**
 * Makes a Univer formula engine ours: registers the catalogue's functions, mends what the engine misreads, lets no
 * exception and no huge array stop it, and tells the messages of error cells. Call once, where the engine runs
 * (the worker of the page, the process of the command line), when its plugin has started and before it calculates.
 *
 * `onMessages` is called after each formula with the error cells of its result that have a message of ours, and with
 * none where there were some before; a cell is told by sheet and 0-based row and column, spilled cells each by their own.
 */
export function equipEngine(
  injector: Injector,
  specs: readonly FunctionSpec[],
  onMessages?: (messages: FormulaMessages) => void,
): void {
  const functions = injector.get(IFunctionService);
  const formulas = injector.get(IFormulaCurrentConfigService);
  const messages =
    onMessages &&
    new CellMessages(onMessages, {
      explain: (error, unit, sheet, row, column) => {
        const formula = formulas.getFormulaData()[unit]?.[sheet]?.[row]?.[column]?.f;
        return formula ? explainError(error, readFormula(formula), functions.getExecutors()) : undefined;
      },
      size: (unit, sheet) => formulas.getSheetRowColumnCount(unit, sheet),
    });
  messages?.listen(injector.get(IFormulaRuntimeService));
  workQuickly(functions);
  limitFunctions(functions);
  compareByValue();
  compareTruths();
  functions.registerExecutors(...executorsOf(specs, messages?.at));
  readLiteralsAsWritten(injector.get(ValueNodeFactory));
  readPreparedFormulas(injector.get(Lexer), injector.get(LexerTreeBuilder), injector.get(AstTreeBuilder));
  survive(injector.get(Interpreter));
}

/** Its names are put into the formula itself when it is read: read again from the cache, a LET within a LET gives #VALUE!. */
const HAS_NAMES = /\b(?:LET|LAMBDA)\s*\(/i;

/** Whatever way a formula came in: typed, pasted, loaded or by a defined name. */
function readPreparedFormulas(lexer: Lexer, cache: LexerTreeBuilder, parser: AstTreeBuilder): void {
  const treeBuilder = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, transformSuffix) => {
    if (hasTooManyOperators(formula)) return ErrorType.VALUE;
    if (HAS_NAMES.test(formula)) cache.dispose();
    try {
      return treeBuilder(prepareFormula(formula), transformSuffix);
    } catch {
      return ErrorType.VALUE;
    }
  };
  const parse = parser.parse.bind(parser);
  parser.parse = (node) => {
    try {
      return parse(node);
    } catch {
      return undefined;
    }
  };
}

/** An exception of any function, the engine's own included, becomes the error of its formula and of no other. */
function survive(interpreter: Interpreter): void {
  const checkAsyncNode = interpreter.checkAsyncNode.bind(interpreter);
  interpreter.checkAsyncNode = (node) => {
    try {
      return checkAsyncNode(node);
    } catch {
      return false;
    }
  };
  const execute = interpreter.execute.bind(interpreter);
  interpreter.execute = (node) => {
    try {
      return execute(node);
    } catch (error) {
      return errorValue("#VALUE!", sentence(error));
    }
  };
  const executeAsync = interpreter.executeAsync.bind(interpreter);
  interpreter.executeAsync = async (node) => {
    try {
      return await executeAsync(node);
    } catch (error) {
      return errorValue("#VALUE!", sentence(error));
    }
  };
}

function sentence(error: unknown): string {
  if (error instanceof Refusal) return error.message;
  if (error instanceof RangeError) return "The formula is nested too deeply, or asks for more than can be held.";
  return "The engine cannot work this formula out: it uses a function in a way that the engine does not know.";
}
