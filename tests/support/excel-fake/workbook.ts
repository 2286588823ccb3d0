/** As much of Excel's workbook as src/host/excel asks for: objects of client.ts over the cells of model.ts. */
import { parseReference } from "../../../src/host/reference.js";
import { address, type BoxClient, boxOf, found, usedOf } from "./boxes.js";
import { client, ExcelError, looks, type Client, type Queue } from "./client.js";
import {
  checkFormula,
  SheetModel,
  type BookModel,
  type Box,
  type ShapeModel,
  type TableModel,
  type Value,
} from "./model.js";
import { NEW_SHAPE, shapeClient } from "./shapes.js";

type Listener = () => unknown;
export type Events = Record<"selection" | "activated" | "calculated", Set<Listener>>;

export function workbook(queue: Queue, model: BookModel, events: Events, changed: () => void): object {
  const event = (listeners: Set<Listener>) => ({
    add: (listener: Listener) => {
      listeners.add(listener);
      return { remove: () => listeners.delete(listener) };
    },
  });
  return {
    getActiveCell: () => range(() => ({ ...model.active, rows: 1, columns: 1 })),
    onSelectionChanged: event(events.selection),
    worksheets: client(queue, {
      target: () => model.sheets,
      items: (sheets) => sheets.map((sheet) => worksheet(() => sheet)),
      members: {
        getActiveWorksheet: () => worksheet(() => model.active.sheet),
        getItem: (name: string) => worksheet(() => model.sheet(name)),
        getItemOrNullObject: (name: string) => worksheet(() => model.sheet(name), true),
        add: (name: string) => {
          const sheet = new SheetModel(name);
          queue.push(() => {
            if (model.sheet(name) !== undefined) throw new ExcelError("ItemAlreadyExists");
            model.sheets.push(sheet);
          });
          return worksheet(() => sheet);
        },
        onActivated: event(events.activated),
        onCalculated: event(events.calculated),
      },
    }),
    tables: client(queue, { target: () => model.tables, items: (tables) => tables.map((one) => table(() => one)) }),
    names: client(queue, {
      target: () => model.names,
      items: (names) => [
        ...[...names].map(([name, box]) =>
          client(queue, {
            target: () => box,
            get: {
              name: () => name,
              type: () => "Range",
              visible: () => true,
              value: (at) => `=${address(at, true)}`,
              formula: (at) => `=${address(at, true)}`,
            },
          }),
        ),
        ...[...model.formulas].map(([name, named]) =>
          client(queue, {
            target: () => named,
            get: {
              name: () => name,
              type: () => "Range",
              visible: ({ visible }) => visible,
              value: ({ formula }) => formula,
              formula: ({ formula }) => formula,
            },
          }),
        ),
      ],
      members: {
        add: (name: string, at: BoxClient | string) => {
          if (typeof at !== "string") {
            queue.push(() => model.names.set(name, at[boxOf]()!));
            return undefined;
          }
          const named = { formula: at, visible: true };
          queue.push(() => model.formulas.set(name, named));
          return client(queue, {
            target: () => named,
            set: { visible: (one, visible: boolean) => (one.visible = visible) },
          });
        },
      },
    }),
    settings: {
      getItemOrNullObject: (key: string) =>
        client(queue, { target: () => model.settings.get(key), orNull: true, get: { value: (value) => value } }),
      add: (key: string, value: unknown) => {
        queue.push(() => model.settings.set(key, value));
      },
    },
  };

  function worksheet(target: () => SheetModel | undefined, orNull = false): Client {
    const byIndexes = (row: number, column: number, rows: number, columns: number): Client =>
      range(() => ({ sheet: found(target()), row, column, rows, columns }));
    return client(queue, {
      target,
      orNull,
      get: { name: ({ name }) => name },
      members: {
        getRangeByIndexes: byIndexes,
        getRange: (written: string) => {
          const at = parseReference(written);
          if (at === undefined) throw new ExcelError("InvalidArgument");
          return byIndexes(at.startRow, at.startColumn, at.endRow - at.startRow + 1, at.endColumn - at.startColumn + 1);
        },
        getUsedRangeOrNullObject: () => range(() => usedOf(found(target())), true),
        tables: {
          add: (at: BoxClient) => {
            const made: TableModel = { name: "Table1", box: undefined as unknown as Box };
            queue.push(() => {
              made.box = at[boxOf]()!;
              model.tables.push(made);
            });
            return table(() => made);
          },
        },
        shapes: client(queue, {
          target: () => found(target()).shapes,
          items: (shapes) => shapes.map((one) => shapeClient(queue, () => one, found(target()))),
          members: {
            addImage: (image: string) => {
              const made: ShapeModel = { ...NEW_SHAPE, image };
              queue.push(() => found(target()).shapes.push(made));
              return shapeClient(queue, () => made, undefined);
            },
          },
        }),
        freezePanes: { freezeAt: () => undefined },
        activate: () => {
          queue.push(() => {
            if (model.active.sheet !== found(target())) model.active = { sheet: found(target()), row: 0, column: 0 };
          });
        },
        delete: () => {
          queue.push(() => {
            model.sheets = model.sheets.filter((sheet) => sheet !== target());
            model.tables = model.tables.filter(({ box }) => box.sheet !== target());
          });
        },
      },
    });
  }

  function table(target: () => TableModel): Client {
    return client(queue, {
      target,
      get: { name: ({ name }) => name },
      set: {
        name: (made, name: string) => {
          if (model.tables.some((other) => other.name.toLowerCase() === name.toLowerCase()))
            throw new ExcelError("ItemAlreadyExists");
          made.name = name;
        },
        showBandedRows: () => undefined,
      },
      members: {
        worksheet: worksheet(() => target().box.sheet),
        getHeaderRowRange: () => range(() => ({ ...target().box, rows: 1 })),
        getDataBodyRange: () =>
          range(() => ({ ...target().box, row: target().box.row + 1, rows: target().box.rows - 1 })),
      },
    });
  }

  function range(target: () => Box | undefined, orNull = false): Client {
    const cells = (at: Box, cell: (row: number, column: number) => Value): Value[][] =>
      Array.from({ length: at.rows }, (_, r) =>
        Array.from({ length: at.columns }, (_c, c) => cell(at.row + r, at.column + c)),
      );
    const enter = (at: Box, given: unknown[][]): void => {
      if (given.length !== at.rows || given.some((row) => row.length !== at.columns))
        throw new ExcelError("InvalidArgument");
      for (const cell of given.flat()) checkFormula(cell);
      given.forEach((row, r) => {
        row.forEach((cell, c) => {
          at.sheet.enter(at.row + r, at.column + c, cell);
        });
      });
      model.recalculate();
      changed();
    };
    return client(queue, {
      target,
      orNull,
      get: {
        address: (at) => address(at, false),
        values: (at) => cells(at, (row, column) => at.sheet.value(row, column)),
        text: (at) => cells(at, (row, column) => String(at.sheet.value(row, column))),
        formulas: (at) => cells(at, (row, column) => at.sheet.input(row, column)),
        rowIndex: ({ row }) => row,
        columnIndex: ({ column }) => column,
        rowCount: ({ rows }) => rows,
        columnCount: ({ columns }) => columns,
        columnHidden: ({ sheet, column }) => sheet.hidden.has(column),
        // Columns of 48 points and rows of 15, as a new workbook has them.
        left: ({ column }) => column * 48,
        top: ({ row }) => row * 15,
        width: ({ columns }) => columns * 48,
        height: ({ rows }) => rows * 15,
      },
      set: {
        values: enter,
        formulas: enter,
        numberFormat: () => undefined,
        columnHidden: ({ sheet, column, columns }, hide: boolean) => {
          for (let at = column; at < column + columns; at++)
            if (hide) sheet.hidden.add(at);
            else sheet.hidden.delete(at);
        },
      },
      members: {
        [boxOf]: target,
        format: looks(),
        dataValidation: looks(),
        merge: () => undefined,
        getEntireRow: () => ({
          getUsedRangeOrNullObject: () =>
            range(() => {
              const at = found(target());
              const used = usedOf(at.sheet);
              const filled = used && cells({ ...used, row: at.row, rows: 1 }, (row, c) => at.sheet.value(row, c))[0];
              return filled?.some((value) => value !== "") ? { ...used!, row: at.row, rows: 1 } : undefined;
            }, true),
        }),
        getSpillParentOrNullObject: () =>
          range(() => {
            const { sheet, row, column } = found(target());
            const anchor = sheet.anchors.get(`${row},${column}`);
            const [r, c] = (anchor ?? "").split(",").map(Number) as [number, number];
            return anchor === undefined ? undefined : { sheet, row: r, column: c, rows: 1, columns: 1 };
          }, true),
        select: () => {
          queue.push(() => {
            const { sheet, row, column } = found(target());
            model.active = { sheet, row, column };
          });
        },
      },
    });
  }
}
