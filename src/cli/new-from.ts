import { existsSync, realpathSync } from "node:fs";
import type { FunctionSpec } from "../functions/contract.js";
import { readContents } from "../host/file/read/contents.js";
import { NotWorkedOut, writeDescribed } from "../host/file/write/book.js";
import type { BookContents } from "../templates/contents.js";
import type { BookDescription } from "../templates/contract.js";
import { refill, type Refilled } from "../templates/refill/refill.js";
import { NotOurs } from "../templates/refill/which.js";
import { lastRoute } from "../templates/route/next-read.js";
import { nextRoute } from "../templates/route/next.js";
import { type NewOptions, requireNew, unitsOf, writeBook } from "./new.js";
import { CODEC, contents, reasonOf } from "./recalc.js";
import { printable } from "./recalc-text.js";
import { UsageError } from "./usage.js";

const ROUTES = ["route", "mechanical-route"];
const FIRST_DAY = Date.UTC(1899, 11, 30);

/**
 * `greybody new route --from LAST.xlsx`: the next route, made from the last one, which stays as it is.
 * @returns what was done, for standard output
 */
export async function newFromLast(
  name: string,
  options: NewOptions & { readonly from: string },
  specs: readonly FunctionSpec[],
): Promise<string> {
  if (!ROUTES.includes(name)) throw new UsageError(`--from makes the next ${ROUTES.join(" or ")}, not ${name}.`);
  if (options.rows !== undefined) throw new UsageError("--from makes a row an asset: no --rows.");
  const { from: file } = options;
  const target = options.output ?? `${name}-next.xlsx`;
  const date = options.date === undefined ? undefined : dayOf(options.date);
  const wanted = options.units === undefined ? undefined : unitsOf(options.units);
  if (existsSync(target) && existsSync(file) && realpathSync(target) === realpathSync(file))
    throw new UsageError(`-o ${target} is the last route itself, which stays as it is: choose another name.`);
  requireNew(target);
  const read = readLast(file);
  const own = refilled(file, read);
  if (own.template.name !== name) {
    const advice = ROUTES.includes(own.template.name)
      ? `use greybody new ${own.template.name} --from`
      : "only a route has a next one";
    throw new UsageError(`${printable(file)} is a workbook of the template ${own.template.name}: ${advice}.`);
  }
  const to = wanted ?? own.from;
  const carried = to === own.from ? own : refill(read, to);
  // Worked out anew: what is saved in the file may be older than what is typed in it.
  const worked = readContents(await workedOut(file, own.book, specs));
  const { book, told } = nextRoute({
    template: own.template,
    carried: options.title === undefined ? carried.book : { ...carried.book, title: options.title },
    last: lastRoute(worked, own.book),
    from: own.from,
    to,
    ...(date === undefined ? {} : { date }),
    left: carried.left,
  });
  await writeBook(target, book, to, specs);
  return `${[`${target} written`, ...told.map((line) => `  ${printable(line)}`)].join("\n")}\n`;
}

async function workedOut(file: string, book: BookDescription, specs: readonly FunctionSpec[]): Promise<Uint8Array> {
  try {
    return await writeDescribed(book, specs);
  } catch (error) {
    if (!(error instanceof NotWorkedOut)) throw error;
    throw new UsageError(
      `${printable(file)}: of what is typed in it ${printable(error.message)}. \`greybody recalc\` tells which cells; put them right first.`,
    );
  }
}

function readLast(file: string): BookContents {
  try {
    return readContents(contents(file).bytes, CODEC);
  } catch (error) {
    throw new UsageError(`${printable(file)}: ${printable(reasonOf(error))}`);
  }
}

function refilled(file: string, read: BookContents): Refilled {
  try {
    return refill(read);
  } catch (error) {
    if (error instanceof NotOurs) throw new UsageError(`${printable(file)}: ${printable(error.message)}`);
    throw error;
  }
}

/** A day as a sheet counts it. @throws UsageError */
function dayOf(text: string): number {
  const time = /^\d{4}-\d\d-\d\d$/.test(text) ? Date.parse(text) : NaN;
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text)
    throw new UsageError(`--date ${text}: a day such as 2026-09-14.`);
  return (time - FIRST_DAY) / 86_400_000;
}
