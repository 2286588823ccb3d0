import { isCall, tokenize } from "../tokens.js";

/** How Excel stores a custom function in a file: the namespace and the name joined by an underscore. */
const STORED_CUSTOM = /^_xldudf_([A-Za-z]{3,})_(.+)$/i;
/** Marks of functions younger than the file format, and of LET and LAMBDA's own names. */
const STORED_PREFIX = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;

/**
 * The formula with names as a person types them: _xldudf_GREY_CORRECTED( → GREY.CORRECTED(, and
 * _xlfn., _xlfn._xlws. and _xlpm. taken away. Strings, sheet names and brackets stay as they are.
 */
export function plainNames(formula: string): string {
  const tokens = tokenize(formula);
  return tokens
    .map((token, index) => (token.kind === "name" ? plainName(token.text, isCall(tokens, index)) : token.text))
    .join("");
}

/** One name without its file marks; only a called name can be a custom function. */
export function plainName(name: string, called: boolean): string {
  const own = name.replace(STORED_PREFIX, "");
  const custom = called ? STORED_CUSTOM.exec(own) : null;
  return custom === null ? own : `${custom[1] ?? ""}.${custom[2] ?? ""}`;
}
