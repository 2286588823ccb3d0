import type { Readable } from "node:stream";

/**
 * The lines of a text stream as they become complete, one list for each chunk that was read, so that a program at the
 * other end of a pipe gets its answers without waiting for the end. Ends of line are LF or CR LF; the last line may do
 * without; a byte order mark in front is no part of the first line.
 */
export async function* linesOf(input: Readable): AsyncGenerator<string[]> {
  input.setEncoding("utf8");
  let rest = "";
  let isFirst = true;
  for await (const chunk of input as AsyncIterable<string>) {
    const lines = (rest + (isFirst ? chunk.replace(/^\uFEFF/, "") : chunk)).split("\n");
    isFirst = false;
    rest = lines.pop() ?? "";
    yield lines.map(withoutReturn);
  }
  if (rest !== "") yield [withoutReturn(rest)];
}

function withoutReturn(line: string): string {
  return line.endsWith("\r") ? line.slice(0, -1) : line;
}
