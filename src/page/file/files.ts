/** Opens and saves workbooks as .xlsx files: by the bar's buttons, by Ctrl+S, by dropping a file on the page. */
import type { Result } from "../../host/port.js";
import type { BookDescription } from "../../templates/contract.js";
import type { Changes } from "../edit/leaving.js";
import { button, element } from "../frame/dom.js";
import { askFileWorker } from "./ask-worker.js";
import type { Described } from "./described.js";
import { notice } from "./notice.js";

export interface FileParts {
  /** Buttons and the state, for the bar. */
  readonly tools: HTMLElement;
  readonly notice: HTMLElement;
}

export interface FileTools {
  readonly changes: Changes;
  readonly title: () => string;
  readonly describe: () => Described;
  readonly open: (book: BookDescription) => Promise<Result<unknown>>;
  /** Another book stands in the grid, from wherever it came. */
  readonly onOpened: (listener: () => void) => void;
  readonly say: (message: string) => void;
}

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** More than that is refused before it is read into memory; the reader has its own limits for what it expands to. */
const MOST_BYTES = 512 * 2 ** 20;

export function fileParts(tools: FileTools): FileParts {
  const { changes, say } = tools;
  const said = notice();
  const state = element("span", { class: "gb-saved", role: "status" });
  let fileName: string | undefined;
  let opening = false;
  let busy = false;
  const show = (): void => {
    state.textContent = busy
      ? "working…"
      : changes.made()
        ? "changed, not saved"
        : fileName === undefined
          ? ""
          : "saved";
    for (const one of [open, save]) one.disabled = busy;
  };
  const open = button("Open", () => {
    pick((file) => {
      ask(file);
    });
  });
  const save = button(
    "Save as .xlsx",
    () => {
      prepare();
    },
    { title: "Ctrl+S" },
  );

  const working = async (work: () => Promise<void>): Promise<void> => {
    if (busy) return;
    busy = true;
    said.hide();
    show();
    try {
      await work();
    } finally {
      busy = false;
      show();
    }
  };

  /** What is open goes: where it was changed that is asked for once more. */
  function ask(file: File): void {
    if (!changes.made()) return void working(() => take(file));
    said.show({
      title: `The open workbook has changes that are not saved. Opening ${file.name} takes its place.`,
      actions: [
        ["Keep the open one", () => undefined],
        ["Open all the same", () => void working(() => take(file))],
      ],
    });
  }

  async function take(file: File): Promise<void> {
    const answer =
      file.size > MOST_BYTES
        ? ({ kind: "refused", message: "It is larger than any workbook that is read." } as const)
        : await askFileWorker({ kind: "read", bytes: new Uint8Array(await file.arrayBuffer()) });
    const close = [["Close", () => undefined]] as const;
    if (answer.kind !== "read") {
      const why = answer.kind === "refused" ? answer.message : "";
      said.show({ title: `${file.name} was not opened. ${why}`, actions: close });
      return;
    }
    opening = true;
    const opened = await tools.open(answer.book);
    opening = false;
    if (!opened.ok) {
      said.show({ title: `${file.name} was not opened. ${opened.message}`, actions: close });
      return;
    }
    fileName = file.name;
    if (answer.left.length === 0) say(`${file.name} is open, with all that was typed into it.`);
    else
      said.show({
        title: `${file.name} is open. These could not be taken over; the file itself stays as it is.`,
        lines: answer.left,
        actions: close,
      });
  }

  /** What a file would not hold is told before it is written. */
  function prepare(): void {
    if (busy) return;
    const { book, left } = tools.describe();
    if (left.length === 0) return void working(() => write(book));
    said.show({
      title: "The file would not hold all that stands here.",
      lines: left,
      actions: [
        ["Save without it", () => void working(() => write(book))],
        ["Do not save", () => undefined],
      ],
    });
  }

  async function write(book: BookDescription): Promise<void> {
    const answer = await askFileWorker({ kind: "write", book });
    if (answer.kind !== "written") {
      const why = answer.kind === "refused" ? answer.message : "";
      said.show({ title: `Nothing was saved. ${why}`, actions: [["Close", () => undefined]] });
      return;
    }
    fileName ??= `${
      tools
        .title()
        .replaceAll(/[\\/:*?"<>|\u0000-\u001f]+/g, " ")
        .trim() || "workbook"
    }.xlsx`;
    download(answer.bytes, fileName.replace(/\.(xlsm|xltx|xltm)$/i, ".xlsx"));
    changes.saved();
    say(
      `${fileName} is among the downloads. Values and the pictures of exceptions are saved with it; other pictures and sheets of a file that was opened are not.`,
    );
  }

  changes.onChange(show);
  tools.onOpened(() => {
    if (!opening) fileName = undefined;
    show();
  });
  document.addEventListener(
    "keydown",
    (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || event.key.toLowerCase() !== "s")
        return;
      event.preventDefault();
      event.stopPropagation();
      prepare();
    },
    true,
  );
  takeDropped(ask);
  return { tools: element("div", { class: "gb-files" }, [open, save, state]), notice: said.root };
}

function pick(take: (file: File) => void): void {
  const input = element("input", { type: "file", accept: `.xlsx,.xlsm,${XLSX}` });
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    if (file !== undefined) take(file);
  });
  input.click();
}

/** Anywhere on the page, before the grid hears of it. */
function takeDropped(take: (file: File) => void): void {
  const hasFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") === true;
  document.addEventListener(
    "dragover",
    (event) => {
      if (hasFiles(event)) event.preventDefault();
    },
    true,
  );
  document.addEventListener(
    "drop",
    (event) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      event.stopPropagation();
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) take(file);
    },
    true,
  );
}

function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: XLSX }));
  element("a", { href: address, download: name }).click();
  // The browser has taken it by then.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
}
