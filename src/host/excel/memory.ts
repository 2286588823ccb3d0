/**
 * What a sheet alone does not tell of a book that we made: the keys, units and choices of its columns and the labels
 * of its fields. Kept in the workbook's own settings, and so in its file.
 */
import type { ColumnInfo } from "../port.js";

export interface Memory {
  /** By the table's name; where a column stands now is read from its header. */
  readonly tables: Readonly<Record<string, readonly ColumnInfo[]>>;
  /** By the defined name. */
  readonly fields: Readonly<Record<string, { readonly label: string; readonly unit?: string }>>;
}

export const memoryKey = "greybody.book";
const none: Memory = { tables: {}, fields: {} };

/** Settings are anybody's to write: what is not of this form is as good as nothing. */
export function readMemory(setting: { readonly isNullObject: boolean; readonly value: unknown }): Memory {
  if (setting.isNullObject || typeof setting.value !== "string") return none;
  try {
    const memory = JSON.parse(setting.value) as Partial<Memory>;
    return { tables: memory.tables ?? {}, fields: memory.fields ?? {} };
  } catch {
    return none;
  }
}

export function joined(one: Memory, other: Memory): Memory {
  return { tables: { ...one.tables, ...other.tables }, fields: { ...one.fields, ...other.fields } };
}
