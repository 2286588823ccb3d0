/**
 * Takes a formula apart without judging it: every character lands in exactly one token, so that joining the
 * tokens' texts gives the formula back. What is wrong with a formula is told by syntax.ts.
 */

export type TokenKind =
  | "space"
  | "number"
  /** A whole row in a reference such as 1:3: digits, but no number. */
  | "row"
  /** A string in double quotes. */
  | "text"
  /** An error value such as #N/A. */
  | "error"
  /** A function, a defined name, a cell or column reference, TRUE or FALSE. */
  | "name"
  /** The sheet before a reference with its exclamation mark: Sheet1!, 'My sheet'!, [Book.xlsx]Sheet1! */
  | "sheet"
  /** The bracketed part of a structured reference, nested brackets included. */
  | "bracket"
  | "operator"
  | "open"
  | "close"
  | "comma"
  | "semicolon"
  | "openBrace"
  | "closeBrace"
  /** A string, sheet name or bracket that never ends: the rest of the formula. */
  | "unterminated"
  | "unknown";

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  /** Index of its first character in the formula. */
  readonly start: number;
}

/** The engine works a chain of operators off by recursion: a longer one overflows its stack. Excel's longest formula has no more. */
export const MOST_OPERATORS = 4000;

const SPACE = /[\s\u00a0]+/y;
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const NAME = /[\p{L}_\\$][\p{L}\p{M}\p{N}_.\\$?]*/uy;
const TEXT = /"(?:[^"]|"")*"/y;
const QUOTED_SHEET = /'(?:[^']|'')+'!/y;
const ERROR =
  /#(?:N\/A|DIV\/0!|GETTING_DATA|(?:VALUE|REF|NUM|NULL|SPILL|CALC|FIELD|BLOCKED|CONNECT|UNKNOWN|BUSY)!|NAME\?)/iy;
const OPERATOR = /<=|>=|<>|[-+*/^&=<>%:@#]/y;
const SINGLE: Readonly<Record<string, TokenKind>> = {
  "(": "open",
  ")": "close",
  ",": "comma",
  ";": "semicolon",
  "{": "openBrace",
  "}": "closeBrace",
};
const WHOLE_NUMBER = /^\d+$/;
const ROW_SIDE = /^\$?\d+$/;

/** The tokens of a formula, with or without its leading "=". Never throws. */
export function tokenize(formula: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  if (formula.startsWith("=")) {
    tokens.push({ kind: "operator", text: "=", start: 0 });
    at = 1;
  }
  while (at < formula.length) {
    const token = nextToken(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return markRows(tokens);
}

function nextToken(formula: string, start: number): Token {
  const make = (kind: TokenKind, text: string): Token => ({ kind, text, start });
  const char = formula.charAt(start);
  const single = SINGLE[char];
  if (single !== undefined) return make(single, char);
  if (char === '"') return made("text", match(TEXT, formula, start));
  if (char === "'") return made("sheet", match(QUOTED_SHEET, formula, start));
  if (char === "[") return bracket(formula, start);
  const space = match(SPACE, formula, start);
  if (space !== undefined) return make("space", space);
  const number = match(NUMBER, formula, start);
  if (number !== undefined) return make("number", number);
  const name = match(NAME, formula, start);
  if (name !== undefined)
    return formula.charAt(start + name.length) === "!" ? make("sheet", `${name}!`) : make("name", name);
  const error = match(ERROR, formula, start);
  if (error !== undefined) return make("error", error);
  const operator = match(OPERATOR, formula, start);
  if (operator !== undefined) return make("operator", operator);
  return make("unknown", String.fromCodePoint(formula.codePointAt(start) ?? 0));

  function made(kind: TokenKind, text: string | undefined): Token {
    return text === undefined ? make("unterminated", formula.slice(start)) : make(kind, text);
  }
}

function match(pattern: RegExp, formula: string, start: number): string | undefined {
  pattern.lastIndex = start;
  return pattern.exec(formula)?.[0];
}

/** In brackets an apostrophe takes the next character's meaning away; a book in brackets belongs to the sheet after it. */
function bracket(formula: string, start: number): Token {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    const char = formula.charAt(at);
    if (char === "'") at++;
    else if (char === "[") depth++;
    else if (char === "]" && --depth === 0) {
      const sheet = match(NAME, formula, at + 1);
      const end = at + 1 + (sheet?.length ?? 0);
      if (sheet !== undefined && formula.charAt(end) === "!")
        return { kind: "sheet", text: formula.slice(start, end + 1), start };
      return { kind: "bracket", text: formula.slice(start, at + 1), start };
    }
  }
  return { kind: "unterminated", text: formula.slice(start), start };
}

/** Digits on both sides of a colon, or after a sheet and a colon, are rows. */
function markRows(tokens: readonly Token[]): Token[] {
  return tokens.map((token, index) => {
    if (token.kind !== "number" || !WHOLE_NUMBER.test(token.text)) return token;
    const isRow = isRowSide(tokens, index, 1) || isRowSide(tokens, index, -1);
    return isRow ? { ...token, kind: "row" } : token;
  });
}

function isRowSide(tokens: readonly Token[], index: number, step: 1 | -1): boolean {
  const colon = tokens[index + step];
  const other = tokens[index + 2 * step];
  return colon?.text === ":" && other !== undefined && ROW_SIDE.test(other.text);
}

/** True where the name at index is called: Excel allows no space before its parenthesis, the engine takes none either. */
export function isCall(tokens: readonly Token[], index: number): boolean {
  return tokens[index]?.kind === "name" && tokens[index + 1]?.kind === "open";
}

export function hasTooManyOperators(formula: string): boolean {
  if (formula.length <= MOST_OPERATORS) return false;
  return tokenize(formula).filter(({ kind }) => kind === "operator").length > MOST_OPERATORS;
}
