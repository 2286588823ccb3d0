import { neverEnds, strange } from "./syntax-words.js";
import { hasTooManyOperators, MOST_OPERATORS, tokenize, type Token } from "../tokens.js";

export interface SyntaxProblem {
  readonly message: string;
  /** 1-based, in the formula as it was given. */
  readonly position: number;
}

export interface FunctionCall {
  readonly name: string;
  readonly args: number;
}

export interface FormulaReading {
  /** The first thing that is wrong with the formula's form. */
  readonly problem?: SyntaxProblem;
  readonly calls: readonly FunctionCall[];
  /** Names that stand alone and are no cell, row, column or truth value, nor made by LET or LAMBDA. */
  readonly names: readonly string[];
  /** Names that LET and LAMBDA make, in lower case. */
  readonly bound: ReadonlySet<string>;
}

const BINARY = new Set(["+", "-", "*", "/", "^", "&", "=", "<", ">", "<=", ">=", "<>"]);
const PREFIX = new Set(["+", "-", "@"]);
const CELL = /^\$?[A-Za-z]{1,3}\$?\d+$/;
const TRUTH = /^(TRUE|FALSE)$/i;
const DEEPEST = 200;

/** Reads a formula's form. The engine itself forgives too much: {1,2;3}, or a parenthesis too many. */
export function readFormula(formula: string): FormulaReading {
  const parser = new Parser(formula);
  try {
    parser.whole();
  } catch (problem) {
    if (problem instanceof Problem) return { problem, calls: parser.calls, names: [], bound: parser.bound };
    throw problem;
  }
  const { calls, bound } = parser;
  return { calls, names: parser.names.filter((name) => !bound.has(name.toLowerCase())), bound };
}

class Problem extends Error implements SyntaxProblem {
  constructor(
    message: string,
    readonly position: number,
  ) {
    super(message);
  }
}

class Parser {
  readonly calls: FunctionCall[] = [];
  readonly names: string[] = [];
  readonly bound = new Set<string>();
  private readonly tokens: readonly Token[];
  private at = 0;
  private depth = 0;

  constructor(private readonly formula: string) {
    this.tokens = tokenize(formula).filter((token) => token.kind !== "space");
  }

  whole(): void {
    if (this.tokens[0]?.text === "=") this.at = 1;
    if (this.at === this.tokens.length) throw this.problem("The formula is empty", undefined);
    if (hasTooManyOperators(this.formula))
      throw this.problem(`The formula has more than ${MOST_OPERATORS} operators`, undefined);
    this.expression();
    const rest = this.peek();
    if (rest?.kind === "close") throw this.problem("This closing parenthesis has no opening one", rest);
    if (rest?.kind === "comma")
      throw this.problem("A comma stands between arguments only, and a decimal needs a point", rest);
    if (rest !== undefined) throw this.unjoined(rest);
  }

  private expression(): void {
    if (++this.depth > DEEPEST)
      throw this.problem(`The formula is nested more than ${DEEPEST} levels deep`, this.peek());
    do this.operand();
    while (this.takeOperator());
    this.depth--;
  }

  private takeOperator(): boolean {
    const token = this.peek();
    if (token?.kind !== "operator" || !BINARY.has(token.text)) return false;
    this.at++;
    return true;
  }

  private operand(): void {
    while (this.peek()?.kind === "operator" && PREFIX.has(this.peek()!.text)) this.at++;
    this.value();
    for (let next = this.peek(); next !== undefined; next = this.peek()) {
      if (next.text === "%") this.at++;
      else if (next.text === ":") {
        this.at++;
        this.value();
      } else if (next.text === "#") throw this.problem("A reference to a whole spill (A1#) is not known here", next);
      else if (next.kind === "open" && this.tokens[this.at - 1]?.kind === "close") this.arguments(next);
      else return;
    }
  }

  private value(): void {
    const token = this.peek();
    if (token === undefined) throw this.problem("The formula ends where a value is expected", undefined);
    this.at++;
    switch (token.kind) {
      case "number":
        if (Number.isFinite(Number(token.text))) return;
        throw this.problem("This number is larger than a cell can hold", token);
      case "row":
      case "text":
      case "error":
      case "bracket":
        return;
      case "name":
        return this.named(token);
      case "sheet":
        return this.afterSheet(token);
      case "open":
        return this.group(token);
      case "openBrace":
        return this.array(token);
      case "unterminated":
        throw this.problem(neverEnds(token.text), token);
      case "unknown":
        throw this.problem(strange(token.text), token);
      case "operator":
      case "close":
      case "closeBrace":
      case "comma":
      case "semicolon":
      case "space":
        throw this.problem(`A value is expected here, not "${token.text}"`, token);
    }
  }

  private named(token: Token): void {
    const next = this.peek();
    if (next?.kind === "open") return this.arguments(next, token.text);
    if (next?.kind === "bracket" && next.start === token.start + token.text.length) this.at++;
    else if (!CELL.test(token.text) && !TRUTH.test(token.text) && !this.isRangeSide()) this.names.push(token.text);
  }

  /** Whether the value just read stands beside a colon, as A does in A:A. */
  private isRangeSide(): boolean {
    return this.peek()?.text === ":" || this.tokens[this.at - 2]?.text === ":";
  }

  private afterSheet(sheet: Token): void {
    const token = this.peek();
    if (token?.kind === "name" || token?.kind === "row" || token?.kind === "error") this.at++;
    else throw this.problem("A reference is expected after the sheet's name", token ?? sheet);
  }

  /** (…), also a union (A1,B1). */
  private group(open: Token): void {
    do this.expression();
    while (this.take("comma"));
    this.close(open);
  }

  private arguments(open: Token, name?: string): void {
    this.at++;
    const binds = /^(_xlfn\.)?(LET|LAMBDA)$/i.test(name ?? "");
    let args = 0;
    if (this.peek()?.kind !== "close") {
      do {
        args++;
        const first = this.peek();
        const from = this.at;
        if (first !== undefined && first.kind !== "comma" && first.kind !== "close") this.expression();
        if (binds && first?.kind === "name" && this.at === from + 1) this.bound.add(first.text.toLowerCase());
      } while (this.take("comma"));
    }
    this.close(open);
    if (name !== undefined) this.calls.push({ name, args });
  }

  private array(open: Token): void {
    let columns: number | undefined;
    do {
      const row = this.peek();
      let count = 0;
      do {
        this.element();
        count++;
      } while (this.take("comma"));
      if (columns !== undefined && count !== columns) {
        throw this.problem(
          `Each row of an array constant needs as many values: ${columns} in the first row, ${count} in this one`,
          row,
        );
      }
      columns = count;
    } while (this.take("semicolon"));
    if (!this.take("closeBrace")) throw this.unclosed("brace", "{", open);
  }

  private element(): void {
    const sign = this.peek()?.text === "-" || this.peek()?.text === "+";
    if (sign) this.at++;
    const value = this.peek();
    const isOther = value?.kind === "text" || value?.kind === "error" || TRUTH.test(value?.text ?? "");
    if (value?.kind !== "number" && value?.kind !== "unterminated" && (sign || !isOther)) {
      throw this.problem("An array constant holds only numbers, texts, TRUE, FALSE and errors", value);
    }
    this.value();
  }

  private close(open: Token): void {
    if (!this.take("close")) throw this.unclosed("parenthesis", "(", open);
  }

  private unclosed(what: string, opened: string, open: Token): Problem {
    const token = this.peek();
    if (token === undefined) return this.problem(`The ${what} "${opened}" opened here is never closed`, open);
    return this.unjoined(token);
  }

  /** Two values side by side. */
  private unjoined(token: Token): Problem {
    if (token.kind === "semicolon")
      return this.problem("Arguments are separated by commas here, not by semicolons", token);
    if (token.kind === "unterminated") return this.problem(neverEnds(token.text), token);
    if (token.kind === "unknown") return this.problem(strange(token.text), token);
    return this.problem(`An operator or a comma is missing before "${token.text}"`, token);
  }

  private take(kind: Token["kind"]): boolean {
    if (this.peek()?.kind !== kind) return false;
    this.at++;
    return true;
  }

  private peek(): Token | undefined {
    return this.tokens[this.at];
  }

  private problem(sentence: string, token: Token | undefined): Problem {
    const position = (token?.start ?? this.formula.length) + 1;
    return new Problem(`${sentence} (position ${position}).`, position);
  }
}
