/**
 * As much of a workbook as src/host/excel asks Excel for. It fails on a property that is read before it was loaded and
 * synced, as Excel does, and counts the syncs, each of which costs a person on the web a wait.
 */
export interface FakeSheet {
  readonly name: string;
  /** Where the first cell of the two arrays stands, from 0. */
  readonly row?: number;
  readonly column?: number;
  readonly formulas: unknown[][];
  readonly values: unknown[][];
}

type Members = Readonly<Record<string, unknown>>;

export class FakeWorkbook {
  syncs = 0;
  /** "Route!B3" as selected by the code under test. */
  selected = "";
  /** Formulas that the code under test entered, with their place. */
  readonly entered: string[] = [];
  private pending: (() => void)[] = [];
  private readonly listeners: (() => void)[] = [];

  constructor(
    private readonly sheets: readonly FakeSheet[],
    private active: { readonly sheet: string; readonly row: number; readonly column: number },
  ) {}

  /** For globalThis.Excel. */
  readonly excel = {
    run: async <T>(work: (context: unknown) => Promise<T>): Promise<T> => work(this.context()),
  };

  /** As a person does, on the sheet in front. */
  select(row: number, column: number): void {
    this.active = { ...this.active, row, column };
    for (const listener of this.listeners) listener();
  }

  private hear(listener: () => void): object {
    this.listeners.push(listener);
    return { remove: () => this.listeners.splice(this.listeners.indexOf(listener), 1) };
  }

  private context(): object {
    const quiet = { add: () => ({ remove: () => undefined }) };
    const workbook = {
      getActiveCell: () => this.range(this.sheet(this.active.sheet), this.active.row, this.active.column, 1, 1),
      worksheets: this.collection(
        this.sheets.map((sheet) => this.worksheet(sheet)),
        {
          onActivated: quiet,
          onCalculated: quiet,
          getActiveWorksheet: () => this.worksheet(this.sheet(this.active.sheet)),
          getItem: (name: string) => this.worksheet(this.sheet(name)),
          getItemOrNullObject: (name: string) => this.worksheet(this.sheet(name)),
        },
      ),
      // A sheet alone: no tables, no names, nothing that an add-in keeps in the file.
      tables: this.collection([]),
      names: this.collection([]),
      settings: { getItemOrNullObject: () => this.proxy({ value: undefined }, {}, true) },
      onSelectionChanged: { add: (listener: () => void) => this.hear(listener) },
    };
    return {
      workbook,
      sync: () => {
        this.syncs++;
        for (const load of this.pending.splice(0)) load();
        return Promise.resolve();
      },
    };
  }

  private sheet(name: string): FakeSheet {
    const found = this.sheets.find((sheet) => sheet.name === name);
    if (found === undefined) throw new Error(`ItemNotFound: ${name}`);
    return found;
  }

  private worksheet(sheet: FakeSheet): object {
    const { row = 0, column = 0, values } = sheet;
    return this.proxy(
      { name: sheet.name },
      {
        activate: () => undefined,
        getUsedRangeOrNullObject: () => this.range(sheet, row, column, values.length, values[0]?.length ?? 0),
        getRangeByIndexes: (r: number, c: number, rows: number, columns: number) =>
          this.range(sheet, r, c, rows, columns),
        getRange: (address: string) => {
          const [, letter = "", digits = ""] = /^([A-Z])(\d+)$/.exec(address) ?? [];
          return this.range(sheet, Number(digits) - 1, letter.charCodeAt(0) - 65, 1, 1);
        },
      },
    );
  }

  private range(sheet: FakeSheet, row: number, column: number, rows: number, columns: number): object {
    const part = (cells: unknown[][]): unknown[][] =>
      Array.from({ length: rows }, (_, r) =>
        Array.from(
          { length: columns },
          (_c, c) => cells[row + r - (sheet.row ?? 0)]?.[column + c - (sheet.column ?? 0)] ?? "",
        ),
      );
    const first = `${String.fromCharCode(65 + column)}${row + 1}`;
    const address = `${/\W/.test(sheet.name) ? `'${sheet.name}'` : sheet.name}!${first}`;
    const values = part(sheet.values);
    return this.proxy(
      {
        address,
        values,
        text: values.map((cells) => cells.map(String)),
        formulas: part(sheet.formulas),
        rowIndex: row,
        columnIndex: column,
        rowCount: rows,
        columnCount: columns,
        columnHidden: false,
      },
      {
        select: () => (this.selected = address),
        getSpillParentOrNullObject: () => this.range(sheet, row, column, 0, 0),
        getEntireRow: () => ({
          getUsedRangeOrNullObject: () => this.range(sheet, row, sheet.column ?? 0, 1, sheet.values[0]?.length ?? 0),
        }),
      },
      rows === 0,
      (name, value) => this.entered.push(`${address} ${name} ${JSON.stringify(value)}`),
    );
  }

  /** Its items are there from the start, and each loads what "items/…" names. */
  private collection(items: readonly object[], methods: Members = {}): object {
    return this.proxy({ items }, methods);
  }

  private proxy(
    properties: Members,
    methods: Members,
    isNullObject = false,
    set?: (name: string, value: unknown) => void,
  ): object {
    const loaded = new Map<string | symbol, unknown>();
    const load = (names: string): void => {
      const paths = names.split(",").map((name) => name.trim().split("/"));
      for (const [first, ...rest] of paths)
        if (first === "items" && rest.length > 0)
          for (const item of properties.items as { load: (names: string) => void }[]) item.load(rest.join("/"));
      const wanted = paths.map(([first = ""]) => first);
      const unknown = wanted.find((name) => !(name in properties));
      if (unknown !== undefined) throw new Error(`There is no property ${unknown}.`);
      this.pending.push(() => {
        loaded.set("isNullObject", isNullObject);
        if (!isNullObject) for (const name of wanted) loaded.set(name, properties[name]);
      });
    };
    return new Proxy(
      {},
      {
        set: (_, name, value) => {
          set?.(String(name), value);
          return set !== undefined;
        },
        get: (_, name) => {
          if (name === "load") return load;
          if (typeof name === "string" && name in methods) return methods[name];
          if (!loaded.has(name)) throw new Error(`PropertyNotLoaded: ${String(name)}`);
          return loaded.get(name);
        },
      },
    );
  }
}
