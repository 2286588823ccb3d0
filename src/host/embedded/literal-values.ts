import {
  ArrayValueObject,
  BooleanValueObject,
  ERROR_TYPE_SET,
  NumberValueObject,
  StringValueObject,
  type BaseAstNode,
  type BaseValueObject,
  type ValueNodeFactory,
} from "@univerjs/engine-formula";
import { errorValue } from "./values.js";
import { tokenize, type Token } from "../tokens.js";
import type { CellError } from "../../functions/contract.js";

/** Two numbers and a dash: a band such as "3-5", that the engine would read as a date. */
const BAND_LIKE = /^\s*\d+([.,]\d+)?\s*[-–]\s*\d+([.,]\d+)?\s*$/;

/**
 * Gives literals the value that is written. The engine's own reading: a text "3-5" is the 3rd of May as soon as it is
 * an argument, {"20%"} is a number, {"a,b"} is two cells, and of "" in a text every second pair is lost.
 */
export function readLiteralsAsWritten(factory: ValueNodeFactory): void {
  const create = factory.create.bind(factory);
  factory.create = (token) => {
    const node = create(token);
    const literal = token.trim();
    if (literal.startsWith('"')) readText(node, literal.slice(1, -1));
    else if (literal.startsWith("{")) readArray(node, literal);
    return node;
  };
}

/** Dates and percentages in text stay numbers for the functions that want one, as the engine has it. */
function readText(node: BaseAstNode, text: string): void {
  const execute = node.execute.bind(node);
  node.execute = () => {
    execute();
    const value = node.getValue();
    if (value?.isValueObject() !== true || (value as BaseValueObject).isString() || BAND_LIKE.test(text)) {
      node.setValue(StringValueObject.create(text));
    }
  };
}

/** Anew at each calculation, because some functions sort an array in its place. */
function readArray(node: BaseAstNode, literal: string): void {
  const rows = elements(literal);
  if (rows === undefined) return;
  node.execute = () => {
    node.setValue(
      ArrayValueObject.create({
        calculateValueList: rows.map((row) => row.map((make) => make())),
        rowCount: rows.length,
        columnCount: rows[0]!.length,
        unitId: "",
        sheetId: "",
        row: -1,
        column: -1,
      }),
    );
  };
}

type Make = () => BaseValueObject;

/** What makes each element, or undefined where the constant holds anything but numbers, texts, TRUE, FALSE and errors. */
function elements(literal: string): Make[][] | undefined {
  const rows: Make[][] = [[]];
  let sign = 1;
  for (const token of tokenize(literal.slice(1, -1))) {
    if (token.kind === "space" || token.kind === "comma") continue;
    if (token.kind === "semicolon") rows.push([]);
    else if (token.text === "-") sign = -1;
    else if (token.text !== "+") {
      const make = element(token, sign);
      if (make === undefined) return undefined;
      rows[rows.length - 1]!.push(make);
      sign = 1;
    }
  }
  return rows.every((row) => row.length > 0 && row.length === rows[0]!.length) ? rows : undefined;
}

function element(token: Token, sign: number): Make | undefined {
  const { kind, text } = token;
  if (kind === "number") return () => NumberValueObject.create(sign * Number(text));
  if (kind === "text") return () => StringValueObject.create(text.slice(1, -1).replaceAll('""', '"'));
  const upper = text.toUpperCase();
  if (kind === "error" && ERROR_TYPE_SET.has(upper as never)) return () => errorValue(upper as CellError["error"], "");
  if (kind === "name" && (upper === "TRUE" || upper === "FALSE"))
    return () => BooleanValueObject.create(upper === "TRUE");
  return undefined;
}
