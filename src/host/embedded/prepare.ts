import { shortest } from "./literals.js";
import { plainName } from "./names.js";
import { isCall, tokenize, type Token } from "../tokens.js";

/**
 * A formula as the engine can read it, of the same meaning. What is mended, each a fault of the engine's lexer:
 * numeric literals that do not print back identically become text; a space after a sign (=- 5) gives #NAME?;
 * an array constant after an operator (=1+{1,2}) is refused; quotes in the text of an array constant are lost;
 * a line break in text becomes a space. And names lose the marks they bear in a file.
 */
export function prepareFormula(formula: string): string {
  const tokens = tokenize(formula);
  /** What closes the array constant that is open, if one is. */
  let arrayEnd: string | undefined;
  return tokens.map(prepare).join("");

  function prepare(token: Token, at: number): string {
    const { kind, text } = token;
    if (kind === "space") return isSign(tokens, at - 1) ? "" : text;
    if (kind === "number") return shortest(text);
    if (kind === "name") return plainName(text, isCall(tokens, at));
    if (kind === "text") return arrayEnd === undefined ? breakLines(text) : doubleQuotes(text);
    if (kind === "openBrace") {
      arrayEnd = mayBeginWithArray(tokens, at) ? "}" : "})";
      return arrayEnd === "}" ? "{" : "HSTACK({";
    }
    if (kind !== "closeBrace") return text;
    const end = arrayEnd ?? "}";
    arrayEnd = undefined;
    return end;
  }
}

/** True for a + or - that belongs to the value after it. */
function isSign(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.kind !== "operator" || (token.text !== "-" && token.text !== "+")) return false;
  const before = lastBefore(tokens, at);
  if (before === undefined) return true;
  if (before.kind === "operator") return before.text !== "%" && before.text !== "#";
  return before.kind === "open" || before.kind === "comma";
}

/** Only here does the engine take an array constant as it is. */
function mayBeginWithArray(tokens: readonly Token[], at: number): boolean {
  const before = lastBefore(tokens, at);
  return (
    before === undefined ||
    before === tokens[0] ||
    before.kind === "comma" ||
    isCall(tokens, tokens.indexOf(before) - 1)
  );
}

function lastBefore(tokens: readonly Token[], at: number): Token | undefined {
  for (let index = at - 1; index >= 0; index--) if (tokens[index]?.kind !== "space") return tokens[index];
  return undefined;
}

/** The engine takes one of each two quotes away before it takes the array's text apart. */
function doubleQuotes(text: string): string {
  return `"${text.slice(1, -1).replaceAll('""', '""""')}"`;
}

function breakLines(text: string): string {
  const lines = text.slice(1, -1).split(/\r\n|\r|\n/);
  return lines.length === 1 ? text : `(${lines.map((line) => `"${line}"`).join("&CHAR(10)&")})`;
}
