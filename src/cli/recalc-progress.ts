/** Milliseconds between two lines: a terminal need not show more, and short work shows nothing. */
const PAUSE = 200;

/** One line on a terminal's standard error that tells how far a file is; silent elsewhere. */
export class Progress {
  private last = performance.now();
  private isShown = false;

  readonly show = (file: string, done: number, all: number): void => {
    if (!process.stderr.isTTY) return;
    const now = performance.now();
    if (now - this.last < PAUSE) return;
    this.last = now;
    this.isShown = true;
    const line = `${file}: ${done.toLocaleString("en-GB")} of ${all.toLocaleString("en-GB")} formulas`;
    process.stderr.write(`\r\u001b[2K${line.slice(0, Math.max(20, (process.stderr.columns || 80) - 1))}`);
  };

  /** Takes the line away again. */
  clear(): void {
    if (this.isShown) process.stderr.write("\r\u001b[2K");
    this.isShown = false;
  }
}
