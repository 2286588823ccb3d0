/** NOW and TODAY as of one moment, where somebody asks for it: else they keep what is saved. */
import { tokenize } from "../../tokens.js";

export interface Clock {
  /** As a workbook counts days from 1900, in local time. */
  readonly now: number;
}

/** Days between the two systems of dates. */
const FROM_1904 = 1462;

/** The formula with what the clock says in it. */
export function atMoment(formula: string, { now }: Clock, is1904: boolean): string {
  const moment = now - (is1904 ? FROM_1904 : 0);
  const tokens = tokenize(formula);
  let text = "";
  for (let i = 0; i < tokens.length; i++) {
    const { kind, text: own } = tokens[i]!;
    const name = own.toUpperCase();
    const isCall = kind === "name" && tokens[i + 1]?.kind === "open" && tokens[i + 2]?.kind === "close";
    if (isCall && (name === "NOW" || name === "TODAY")) {
      text += `(${name === "NOW" ? moment : Math.floor(moment)})`;
      i += 2;
    } else text += own;
  }
  return text;
}
