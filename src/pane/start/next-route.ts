/** The next route from the one that is open, through the port: its tables are read, the rest is src/templates/route/next.ts. */
import type { Cell } from "../../functions/contract.js";
import { isCellError } from "../../functions/contract.js";
import type { FieldInfo, HostPort, Result, TableContent } from "../../host/port.js";
import type { BookDescription, SheetDescription } from "../../templates/contract.js";
import { type Template, templates } from "../../templates/registry.js";
import { numberIn } from "../../templates/route/next-last.js";
import { type MadeRoute, nextRoute } from "../../templates/route/next.js";

/** In Excel a second route cannot stand beside the first: its tables bear the same names. */
export const NOT_HERE =
  "In Excel the next route is a workbook of its own, which this pane cannot begin: greybody new route --from THIS.xlsx -o NEXT.xlsx makes it from the saved file, or open the file in the page, make the next route there and save it.";

const FIRST_DAY = Date.UTC(1899, 11, 30);

/** A day as a sheet counts it: undefined for an empty text, NaN for what is none. */
export function dayTyped(text: string): number | undefined {
  const typed = text.trim();
  if (typed === "") return undefined;
  const time = /^\d{4}-\d\d-\d\d$/.test(typed) ? Date.parse(typed) : NaN;
  const isDay = !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === typed;
  return isDay ? (time - FIRST_DAY) / 86_400_000 : NaN;
}

/** The template of the route that is open, by what is typed in it; undefined where there is none. */
export function routeTemplateOf(route: TableContent | undefined): Template | undefined {
  const has = (key: string): boolean => route?.table.columns.some((column) => column.key === key) === true;
  if (route === undefined || !has("grade_number")) return undefined;
  return templates.find(({ name }) => name === (has("left") ? "route" : has("reading") ? "mechanical-route" : ""));
}

export async function nextFromOpen(
  port: HostPort,
  template: Template,
  date: number | undefined,
): Promise<Result<MadeRoute>> {
  const tables = await port.tables();
  if (!tables.ok) return tables;
  const contents = new Map<string, TableContent>();
  for (const { name } of tables.value) {
    const content = await port.readTable(name);
    if (!content.ok) return content;
    contents.set(name, content.value);
  }
  const fields = await port.fields();
  if (!fields.ok) return fields;
  const readings = contents.get("Readings");
  const heading = readings && (await port.read(`'${readings.table.sheet}'!B1:B5`));
  if (readings === undefined || heading === undefined)
    return { ok: false, reason: "missing", message: "The workbook has no table Readings: no route is open." };
  if (!heading.ok) return heading;
  const { units } = readings.table;
  const lines = heading.value.map(([cell]) => (typeof cell === "string" ? cell : ""));
  const empty = template.empty({
    units,
    rows: 1,
    ...(lines[0] === "" || isFormula(lines[0]) ? {} : { title: lines[0]! }),
  });
  const rowsOf = (name: string): TableContent["rows"] => contents.get(name)?.rows ?? [];
  const made = nextRoute({
    template,
    carried: filled(empty, rowsOf, fields.value, lines.filter(isOfDemo)),
    last: {
      readings: rowsOf("Readings"),
      assets: rowsOf("AssetList"),
      followUp: rowsOf("FollowUp"),
      date: numberIn(fields.value.find(({ name }) => name === "job_date")?.value),
    },
    from: units,
    to: units,
    ...(date === undefined ? {} : { date }),
    left: [],
  });
  return { ok: true, value: made };
}

/** What says that all of it is invented goes along. */
const isOfDemo = (line: string): boolean => line.startsWith("Demonstration:");

const isFormula = (value: unknown): boolean => typeof value === "string" && value.startsWith("=");

/** A text stays text, an error is nothing that can be carried over. */
function plain(cell: Cell | undefined): Cell {
  if (cell === undefined || isCellError(cell)) return null;
  return typeof cell === "string" && isFormula(cell) ? ` ${cell}` : cell;
}

function filled(
  empty: BookDescription,
  rowsOf: (table: string) => TableContent["rows"],
  fields: readonly FieldInfo[],
  about: readonly string[],
): BookDescription {
  const values = new Map(fields.map(({ name, value }) => [name, value]));
  const withAbout = ([title = "", first = "", ...rest]: readonly string[]): string[] => [
    title,
    first,
    ...about,
    ...rest,
  ];
  const sheets = empty.sheets.map((sheet): SheetDescription => {
    const heading = sheet.heading.length > 1 && isFormula(sheet.heading[1]) ? withAbout(sheet.heading) : sheet.heading;
    if (sheet.kind === "table") {
      const rows = rowsOf(sheet.tableName).map((row) => sheet.columns.map(({ key }) => plain(row[key])));
      return { ...sheet, heading, rows };
    }
    if (sheet.kind !== "form") return { ...sheet, heading };
    const refilled = sheet.fields.map((field) => {
      const { definedName, value } = field;
      if (definedName === undefined || isFormula(value) || !values.has(definedName)) return field;
      return { ...field, value: plain(values.get(definedName)) };
    });
    return { ...sheet, heading, fields: refilled };
  });
  return { ...empty, sheets };
}
