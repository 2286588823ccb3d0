import { once } from "node:events";

/** Room for some thousand short answers before they are written. */
const FULL = 1 << 16;

/** Writes text to standard output in large pieces, at the pace of whoever reads it. */
export class Output {
  private pieces: string[] = [];
  private length = 0;

  async line(text: string): Promise<void> {
    this.pieces.push(text, "\n");
    this.length += text.length;
    if (this.length >= FULL) await this.flush();
  }

  async flush(): Promise<void> {
    const text = this.pieces.join("");
    this.pieces = [];
    this.length = 0;
    if (text !== "" && !process.stdout.write(text)) await once(process.stdout, "drain");
  }
}
