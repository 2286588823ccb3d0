/** A formula as a person reads it, as a file holds it. */
import { NAMESPACE } from "../../../functions/describe.js";
import { isCall, tokenize } from "../../tokens.js";
import type { Token } from "../../tokens.js";

/**
 * Functions younger than the file format: a file marks them, or Excel takes them for unknown. [MS-XLSX] 2.2.3 lists them;
 * here stand those that a sheet of ours may come to use.
 */
const FUTURE = new Set(
  (
    "ANCHORARRAY BYCOL BYROW CHOOSECOLS CHOOSEROWS CONCAT DROP EXPAND HSTACK IFNA IFS ISOMITTED LAMBDA LET MAKEARRAY " +
    "MAP MAXIFS MINIFS NORM.S.DIST NORM.S.INV PERCENTILE.INC QUARTILE.INC RANDARRAY RANK.EQ REDUCE SCAN SEQUENCE SINGLE " +
    "SORTBY STDEV.P STDEV.S SWITCH T.DIST.2T T.INV T.INV.2T TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW " +
    "UNIQUE VAR.P VAR.S VSTACK WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR DAYS"
  ).split(" "),
);
/** Those that bear a second mark. */
const WORKSHEET = new Set(["FILTER", "SORT"]);
/** Those that name values: their names are marked, too. */
const NAMING = new Set(["LET", "LAMBDA"]);

/** True where a file must hold the formula as a dynamic array: Excel would else write @ before a function of ours. */
export function callsOurs(formula: string): boolean {
  const tokens = tokenize(formula);
  return tokens.some((token, at) => isCall(tokens, at) && isOurs(token.text));
}

/** Without "=". References to whole spills (A1#) and to a table's own row (T[@a]) in the long form. */
export function storedFormula(formula: string): string {
  const tokens = tokenize(formula.replace(/^=/, ""));
  const named = namesIn(tokens);
  const written = tokens.map((token, at) => {
    if (token.kind === "name") return storedName(token.text, isCall(tokens, at), named);
    return token.kind === "bracket" ? longBracket(token.text) : token.text;
  });
  return withAnchors(tokens, written).join("");
}

function isOurs(name: string): boolean {
  return name.toUpperCase().startsWith(`${NAMESPACE}.`);
}

function storedName(name: string, isCalled: boolean, named: ReadonlySet<string>): string {
  const upper = name.toUpperCase();
  if (named.has(upper)) return `_xlpm.${name}`;
  if (!isCalled) return name;
  if (isOurs(name)) return `_xldudf_${upper.replaceAll(".", "_")}`;
  if (WORKSHEET.has(upper)) return `_xlfn._xlws.${upper}`;
  return FUTURE.has(upper) ? `_xlfn.${upper}` : upper;
}

/** What LET and LAMBDA name, in capitals: every argument that is a bare name with another argument after it. */
function namesIn(tokens: readonly Token[]): Set<string> {
  const names = new Set<string>();
  const calls: { readonly name: string; argument: number }[] = [];
  const plain = tokens.filter(({ kind }) => kind !== "space");
  plain.forEach((token, at) => {
    const before = plain[at - 1];
    if (token.kind === "open")
      calls.push({ name: before?.kind === "name" ? before.text.toUpperCase() : "", argument: 0 });
    else if (token.kind === "close") calls.pop();
    const call = calls.at(-1);
    // Outside of any call a comma stands between two areas.
    if (token.kind === "comma" && call !== undefined) call.argument++;
    if (token.kind !== "name" || call === undefined || !NAMING.has(call.name)) return;
    const isAlone = (before?.kind === "open" || before?.kind === "comma") && plain[at + 1]?.kind === "comma";
    if (isAlone && (call.name === "LAMBDA" || call.argument % 2 === 0)) names.add(token.text.toUpperCase());
  });
  return names;
}

/** T[@a] as T[[#This Row],[a]], T[@] as T[#This Row]. */
function longBracket(bracket: string): string {
  const own = /^\[@(.*)\]$/s.exec(bracket);
  if (own === null) return bracket;
  const rest = own[1] ?? "";
  if (rest === "") return "[#This Row]";
  return `[[#This Row],${rest.startsWith("[") ? rest : `[${rest}]`}]`;
}

/** A reference with # behind it is a call in a file. */
function withAnchors(tokens: readonly Token[], written: readonly string[]): string[] {
  const out = [...written];
  tokens.forEach((token, at) => {
    if (token.text !== "#") return;
    const from = tokens[at - 2]?.kind === "sheet" ? at - 2 : at - 1;
    out[from] = `_xlfn.ANCHORARRAY(${out[from] ?? ""}`;
    out[at] = ")";
  });
  return out;
}
