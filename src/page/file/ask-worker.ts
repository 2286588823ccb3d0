import type { FileAnswer, FileRequest } from "./messages.js";

/** A worker of its own for each file, which ends with it: what a large workbook took of memory is given back. Never rejects. */
export function askFileWorker(request: FileRequest): Promise<FileAnswer> {
  return new Promise((resolve) => {
    const worker = new Worker("file-worker.js");
    const end = (answer: FileAnswer): void => {
      worker.terminate();
      resolve(answer);
    };
    worker.addEventListener("message", ({ data }: MessageEvent<FileAnswer>) => {
      end(data);
    });
    worker.addEventListener("error", (event) => {
      end({
        kind: "refused",
        message: `The part of the page for files stopped (${event.message || "it could not be loaded"}).`,
      });
    });
    worker.postMessage(request);
  });
}
