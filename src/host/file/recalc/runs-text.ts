/** The text of a formula as its column goes on with it: the same but for the rows that its relative references name. */
import { MOST_ROWS, segmentsOf } from "../formula/segments.js";

const CORNER = /^(\$?[A-Za-z]{0,3})(\d+)$/;

export class RowTemplate {
  private constructor(
    /** One more than rows. */
    private readonly pieces: readonly string[],
    /** Rows that stand between the pieces, less the formula's own. */
    private readonly offsets: readonly number[],
  ) {}

  /** @param row of the formula, from 0 */
  static of(formula: string, row: number, isSheet: (name: string) => boolean): RowTemplate {
    const pieces: string[] = [];
    const offsets: number[] = [];
    let open = "";
    for (const { kind, text } of segmentsOf(formula, isSheet)) {
      if (kind !== "reference") {
        open += text;
        continue;
      }
      const sheets = text.lastIndexOf("!") + 1;
      open += text.slice(0, sheets);
      for (const [i, corner] of text.slice(sheets).split(":").entries()) {
        open += i > 0 ? ":" : "";
        const relative = CORNER.exec(corner);
        open += relative ? relative[1]! : corner;
        if (!relative) continue;
        pieces.push(open);
        offsets.push(Number(relative[2]) - 1 - row);
        open = "";
      }
    }
    pieces.push(open);
    return new RowTemplate(pieces, offsets);
  }

  textAt(row: number): string {
    let text = this.pieces[0]!;
    for (let i = 0; i < this.offsets.length; i++) text += String(row + this.offsets[i]! + 1) + this.pieces[i + 1]!;
    return text;
  }

  /** No reference leaves the sheet there: beyond its ends references begin again at the other. */
  fits(row: number): boolean {
    return this.offsets.every((offset) => row + offset >= 0 && row + offset < MOST_ROWS);
  }
}
