/** A worker for one file: reads it, or writes it with every value worked out, while the grid stays free. */
import { version } from "../../../package.json";
import { catalogue } from "../../functions/catalogue.js";
import { readContents } from "../../host/file/read/contents.js";
import { FileRefused } from "../../host/file/refusal.js";
import { writeDescribed } from "../../host/file/write/book.js";
import { marksOf } from "../../host/file/write/marks.js";
import { refill } from "../../templates/refill/refill.js";
import { NotOurs } from "../../templates/refill/which.js";
import type { FileAnswer, FileRequest } from "./messages.js";

const answer = (message: FileAnswer, transfer: Transferable[] = []): void => {
  self.postMessage(message, { transfer });
};

self.addEventListener("message", ({ data }: MessageEvent<FileRequest>) => {
  void (data.kind === "read" ? read(data.bytes) : write(data)).catch((error: unknown) => {
    const message = error instanceof Error ? error.message : String(error);
    const isSaid = error instanceof FileRefused || error instanceof NotOurs;
    answer({ kind: "refused", message: isSaid ? message : `It cannot be worked through (${message}).` });
  });
});

// eslint-disable-next-line @typescript-eslint/require-await -- What is thrown becomes a refusal.
async function read(bytes: Uint8Array): Promise<void> {
  const { book, left } = refill(readContents(bytes));
  answer({ kind: "read", book, left });
}

async function write({ book }: Extract<FileRequest, { kind: "write" }>): Promise<void> {
  const bytes = await writeDescribed(book, catalogue, {
    paper: book.template?.units === "F" ? "Letter" : "A4",
    marks: marksOf(book, version),
  });
  answer({ kind: "written", bytes }, [bytes.buffer]);
}
