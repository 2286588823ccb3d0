import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import type { FunctionSpec } from "../functions/contract.js";
import { type FileBox, readBoxes } from "../host/file/pictures/boxes.js";
import { placePictures } from "../host/file/pictures/place.js";
import { loadBook } from "../host/file/recalc/load.js";
import { recalculateFile } from "../host/file/recalc/file.js";
import { FileRefused } from "../host/file/refusal.js";
import { areaName, cellName } from "../host/file/write/place.js";
import { isPictureName, plainPicture, requirePictureBytes } from "../host/picture-file.js";
import type { PlainPicture } from "../host/picture-jpeg.js";
import { PictureRefused } from "../host/picture-refused.js";
import { countsText, planLines, planPictures, type PicturePlan } from "../templates/report/plan-pictures.js";
import { CODEC, contents, reasonOf, requireEnding, requireOther } from "./recalc.js";
import { printable } from "./recalc-text.js";
import { requirePlace, writeWhole } from "./recalc-write.js";
import { UsageError } from "./usage.js";

export interface PicturesOptions {
  readonly output?: string;
  readonly inPlace?: boolean;
  readonly report?: string;
}

const FILE_MODE = 0o644;

/**
 * `greybody pictures ROUTE.xlsx FOLDER`: the pictures of a folder into the boxes of a route that name them by number.
 * Without -o and --in-place it only tells what it would do.
 * @returns exit status: 0 every number has its picture, 1 some have not, 2 the workbook was not taken
 */
export async function pictures(
  file: string,
  folder: string,
  options: PicturesOptions,
  specs: readonly FunctionSpec[],
): Promise<number> {
  const target = targetOf(file, options);
  const { names, folders } = pictureNames(folder);
  try {
    const { bytes, mode } = contents(file);
    // What is saved may be older than what is typed: a picture must not go where its number no longer stands.
    const recalculated = await recalculateFile(bytes, specs, {
      all: true,
      codec: CODEC,
      isListed: (status) => status === "kept",
    });
    const book = loadBook(recalculated.bytes, CODEC);
    const boxes = readBoxes(book);
    if (boxes.length === 0)
      throw new FileRefused(
        "It has no boxes for pictures: `greybody new route` makes a workbook that has, and --from takes over what is in this one.",
      );
    const kept = new Map(recalculated.cells.map(({ sheet, cell, reason = "" }) => [`${sheet}!${cell}`, reason]));
    const plan = await planPictures(
      boxes.map((box) => wantedOf(box, kept)),
      names,
      (name) => Promise.resolve(opened(path.join(folder, name))),
    );
    const byKey = new Map(boxes.map((box) => [box.key, box]));
    const placements = plan.placed.map(({ key, ...rest }) => ({ box: byKey.get(key)!, ...rest }));
    let outcome = "nothing written: -o OUT.xlsx or --in-place does";
    if (target !== undefined) {
      const fresh = placePictures(book, placements, plan.keeps);
      writeWhole(target, existsSync(target) ? statSync(target).mode : mode, ({ put }) => {
        put(fresh);
      });
      outcome = options.inPlace === true ? "written in place" : `written to ${options.output}`;
    }
    if (options.report !== undefined) writeReport(options.report, { file, folder, plan, boxes });
    process.stdout.write(
      `${text(file, { plan, outcome, folders, changed: recalculated.counts.changed }).join("\n")}\n`,
    );
    return plan.boxes.every((box) => box.outcome === "placed" || box.outcome === "kept") ? 0 : 1;
  } catch (error) {
    process.stderr.write(`greybody: ${printable(file)}: ${printable(reasonOf(error))}\n`);
    return 2;
  }
}

function targetOf(file: string, { output, inPlace = false, report }: PicturesOptions): string | undefined {
  if (output !== undefined && inPlace) throw new UsageError("pictures takes only one of -o and --in-place.");
  if (report !== undefined) {
    requirePlace(report);
    requireOther(report, output === undefined ? [file] : [file, output], "--report");
  }
  if (inPlace) return existsSync(file) ? realpathSync(file) : file;
  if (output === undefined) return undefined;
  requirePlace(output);
  requireEnding(file, output);
  requireOther(output, [file], "-o");
  return existsSync(output) ? realpathSync(output) : output;
}

/** Only what lies in the folder itself: cameras begin their numbers again in the next one. */
function pictureNames(folder: string): { names: string[]; folders: number } {
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new UsageError(`there is no folder ${folder} with pictures.`);
  const entries = readdirSync(folder, { withFileTypes: true });
  const isFile = (name: string): boolean =>
    statSync(path.join(folder, name), { throwIfNoEntry: false })?.isFile() === true;
  const names = entries.map(({ name }) => name).filter((name) => isPictureName(name) && isFile(name));
  return { names: names.sort(), folders: entries.filter((entry) => entry.isDirectory()).length };
}

/** The picture, or why it is not taken. */
function opened(file: string): PlainPicture | string {
  try {
    requirePictureBytes(statSync(file).size);
    return plainPicture(new Uint8Array(readFileSync(file)));
  } catch (error) {
    if (error instanceof PictureRefused) return error.message;
    return reasonOf(error);
  }
}

function wantedOf(box: FileBox, kept: ReadonlyMap<string, string>) {
  const { key, kind, sheet, area, numberAt, shown, held } = box;
  const unsure = kept.get(`${sheet}!${cellName(numberAt.row, numberAt.column)}`);
  return { key, kind, shown, held, unsure, at: `${sheet}!${cellName(area.startRow, area.startColumn)}` };
}

interface Told {
  readonly plan: PicturePlan<object>;
  readonly outcome: string;
  readonly folders: number;
  readonly changed: number;
}

function text(file: string, { plan, outcome, folders, changed }: Told): string[] {
  const lines = planLines(plan);
  if (folders > 0) lines.push(`${folders === 1 ? "1 folder" : `${folders} folders`} within it not looked into`);
  if (changed > 0) lines.push(`${changed} saved ${changed === 1 ? "value was" : "values were"} worked out anew`);
  return [`${file}: ${countsText(plan)}; ${outcome}`, ...lines.map((line) => `  ${line}`)].map(printable);
}

interface Reported {
  readonly file: string;
  readonly folder: string;
  readonly plan: PicturePlan<object>;
  readonly boxes: readonly FileBox[];
}

function writeReport(target: string, { file, folder, plan, boxes }: Reported): void {
  const places = new Map(boxes.map(({ key, area, numberAt }) => [key, { area, numberAt }]));
  const rows = plan.boxes.map((row) => {
    const { area, numberAt } = places.get(row.box)!;
    return { ...row, cells: areaName(area), numberCell: cellName(numberAt.row, numberAt.column) };
  });
  const place = existsSync(target) ? realpathSync(target) : target;
  writeWhole(place, existsSync(target) ? statSync(target).mode : FILE_MODE, ({ put }) => {
    put(`${JSON.stringify({ file, folder, boxes: rows, unused: plan.unused }, undefined, 1)}\n`);
  });
}
