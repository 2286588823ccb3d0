/** What the pane knows of the workbook while it is shown: read through the port, again whenever something changed. */
import { useEffect, useState } from "react";
import type { FieldInfo, HostPort, SelectedCell, SheetInfo, TableContent } from "../host/port.js";
import { routeTableOf } from "./route.js";

export interface Book {
  readonly cell: SelectedCell | undefined;
  readonly sheets: readonly SheetInfo[];
  readonly fields: readonly FieldInfo[];
  /** The route of the sheet in front, else the first of the workbook. */
  readonly route: TableContent | undefined;
  /** Why nothing could be read just now. */
  readonly trouble: string | undefined;
}

const nothing: Book = { cell: undefined, sheets: [], fields: [], route: undefined, trouble: undefined };

/** Changes come in bursts (a selection that is drawn, a paste); one reading stands for all of a burst. */
const rest = 60;

export function useBook(port: HostPort): { readonly book: Book; readonly refresh: () => void } {
  const [book, setBook] = useState(nothing);
  const [reader] = useState(() => new BookReader(port, setBook));
  useEffect(() => reader.follow(), [reader]);
  return { book, refresh: reader.all };
}

class BookReader {
  private book = nothing;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private wanted: "cell" | "all" = "all";
  private reading = false;
  private again = false;

  constructor(
    private readonly port: HostPort,
    private readonly show: (book: Book) => void,
  ) {}

  follow(): () => void {
    const stops = [this.port.onSelection(() => this.ask("cell")), this.port.onRecalculated(this.all)];
    this.all();
    return () => {
      clearTimeout(this.timer);
      this.timer = undefined;
      for (const stop of stops) stop();
    };
  }

  readonly all = (): void => {
    this.ask("all");
  };

  private ask(what: "cell" | "all"): void {
    if (what === "all") this.wanted = "all";
    if (this.reading) {
      this.again = true;
      return;
    }
    this.timer ??= setTimeout(() => void this.read(), rest);
  }

  private async read(): Promise<void> {
    this.timer = undefined;
    this.reading = true;
    const { wanted } = this;
    this.wanted = "cell";
    this.book = wanted === "all" ? await this.readAll() : await this.readCell();
    this.reading = false;
    this.show(this.book);
    // What changed meanwhile was put off.
    if (!this.again) return;
    this.again = false;
    this.ask(this.wanted);
  }

  private async readCell(): Promise<Book> {
    const [cell, sheets] = await Promise.all([this.port.selected(), this.port.sheets()]);
    const front = (list: readonly SheetInfo[]): string | undefined => list.find(({ active }) => active)?.name;
    // Another sheet may hold another route.
    if (sheets.ok && front(sheets.value) !== front(this.book.sheets)) return this.readAll();
    if (!cell.ok) return { ...this.book, trouble: cell.message };
    return { ...this.book, cell: cell.value, trouble: undefined };
  }

  private async readAll(): Promise<Book> {
    const { port } = this;
    const [cell, sheets, tables, fields] = await Promise.all([
      port.selected(),
      port.sheets(),
      port.tables(),
      port.fields(),
    ]);
    const refused = [cell, sheets, tables, fields].find(({ ok }) => !ok);
    const list = sheets.ok ? sheets.value : [];
    const table = tables.ok ? routeTableOf(tables.value, list) : undefined;
    const route = table === undefined ? undefined : await port.readTable(table.name);
    return {
      cell: cell.ok ? cell.value : undefined,
      sheets: list,
      fields: fields.ok ? fields.value : [],
      route: route?.ok === true ? route.value : undefined,
      trouble: refused?.ok === false ? refused.message : undefined,
    };
  }
}
