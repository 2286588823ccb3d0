/** Fills a workbook that `greybody new` wrote as a script would: values into cells that are there, nothing else touched. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { columnLetters } from "../../src/host/embedded/structured.js";
import { readContents } from "../../src/host/file/read/contents.js";

type Value = string | number;

export interface Filling {
  /** By table: a record a row, by header. */
  readonly tables: Readonly<Record<string, readonly Readonly<Record<string, Value>>[]>>;
  /** By defined name. */
  readonly names: Readonly<Record<string, Value>>;
}

export function fillFile(bytes: Uint8Array, { tables, names }: Filling): Uint8Array {
  const contents = readContents(bytes);
  const bySheet = new Map<string, Map<string, Value>>();
  const put = (sheet: string, row: number, column: number, value: Value): void => {
    const cells = bySheet.get(sheet) ?? new Map<string, Value>();
    bySheet.set(sheet, cells.set(`${columnLetters(column)}${row + 1}`, value));
  };
  for (const [name, rows] of Object.entries(tables)) {
    const table = contents.tables.find((one) => one.name === name)!;
    rows.forEach((row, at) => {
      if (table.firstRow + at > table.lastRow) throw new Error(`${name} has no row ${at}`);
      for (const [header, value] of Object.entries(row)) {
        const column = table.columns.find((one) => one.header === header);
        if (column === undefined) throw new Error(`${name} has no column ${header}`);
        put(table.sheet, table.firstRow + at, column.column, value);
      }
    });
  }
  for (const [name, value] of Object.entries(names)) {
    const cell = contents.names.find((one) => one.name === name)!;
    put(cell.sheet, cell.startRow, cell.startColumn, value);
  }
  const parts = unzipSync(bytes);
  const sheets = [...strFromU8(parts["xl/workbook.xml"]!).matchAll(/<sheet name="([^"]*)"/g)].map(([, name]) => name!);
  for (const [sheet, cells] of bySheet) {
    const part = `xl/worksheets/sheet${sheets.indexOf(sheet) + 1}.xml`;
    let found = 0;
    const text = strFromU8(parts[part]!).replaceAll(
      /<c r="([A-Z]+\d+)"((?: s="\d+")?)(?: t="\w+")?(?:\/>|><v>[^<]*<\/v><\/c>)/g,
      (whole, ref: string, style: string) => {
        const value = cells.get(ref);
        if (value === undefined) return whole;
        found++;
        return typeof value === "number"
          ? `<c r="${ref}"${style}><v>${value}</v></c>`
          : `<c r="${ref}"${style} t="inlineStr"><is><t>${value}</t></is></c>`;
      },
    );
    if (found !== cells.size) throw new Error(`${sheet}: ${cells.size - found} cells are not in the file`);
    parts[part] = strToU8(text);
  }
  return zipSync(parts);
}

/** A long morning at one invented board: every row has numbers of its own, some rows are colder, uneven or at a limit. */
export function manyRows(rows: number): Filling {
  return {
    names: {
      job_id: "J-1",
      job_date: 46_092,
      job_reflected: 22,
      job_path_air: 22,
      job_ifov: 1.2,
      job_range_from: -20,
      job_range_to: 150,
    },
    tables: {
      AssetList: [
        {
          asset_id: "A-1",
          component: "lugs (invented)",
          surface: "tape",
          target_size: 20,
          rated_A: 250,
          expected_max_A: 200,
          criticality: "2",
          physical_condition: "1",
          environment: "1",
        },
      ],
      SurfaceList: [{ surface: "tape", emissivity: 0.95 }],
      Readings: Array.from({ length: rows }, (_, row) => ({
        asset_id: "A-1",
        status: row % 3 === 0 ? "no exception" : "exception",
        thermal_image: `IR-${row}`,
        time: 0.4,
        left: 35 + (row % 37) / 10,
        middle: 35 + (row % 11) / 10,
        right: row % 97 === 0 ? 150 : 36 + (row % 23),
        ...(row % 97 === 0 ? { reading_is: "at least" } : {}),
        amps_left: 120 + (row % 7),
        amps_middle: 121,
        amps_right: row % 13 === 0 ? 160 : 119 + (row % 3),
        surrounding_air: 24,
      })),
    },
  };
}
