/** Pictures from the pane: files that a person chose, matched to the boxes as the command line matches a folder. */
import { columnLetters } from "../../host/embedded/structured.js";
import type { HostPort, PlacedPicture, Result } from "../../host/port.js";
import { isPictureName, plainPicture, requirePictureBytes } from "../../host/picture-file.js";
import type { PlainPicture } from "../../host/picture-jpeg.js";
import { turnedBy } from "../../host/picture-orientation.js";
import { PictureRefused } from "../../host/picture-refused.js";
import { countsText, planLines, planPictures } from "../../templates/report/plan-pictures.js";

/** As much of a chosen file as is needed. */
export interface ChosenFile {
  readonly name: string;
  readonly size: number;
  readonly webkitRelativePath?: string;
  readonly arrayBuffer: () => Promise<ArrayBuffer>;
}

export interface PlacedOutcome {
  readonly summary: string;
  /** What a person has to look at, a line each. */
  readonly lines: readonly string[];
}

export async function picturesFrom(port: HostPort, chosen: readonly ChosenFile[]): Promise<Result<PlacedOutcome>> {
  const boxes = await port.pictureBoxes();
  if (!boxes.ok) return boxes;
  if (boxes.value.length === 0) return { ok: false, reason: "missing", message: NO_BOXES };
  // Of a folder only what lies in it itself: cameras begin their numbers again in the next one.
  const files = chosen.filter(
    ({ name, webkitRelativePath = "" }) => isPictureName(name) && webkitRelativePath.split("/").length <= 2,
  );
  const byName = new Map(files.map((file) => [file.name, file]));
  const wanted = boxes.value.map(({ at, shown, ...box }) => ({
    ...box,
    shown,
    at: `${at.sheet}!${columnLetters(at.column)}${at.row + 1}`,
    ...(shown.startsWith("#") ? { unsure: shown } : {}),
  }));
  const plan = await planPictures<PlainPicture>(wanted, [...byName.keys()].sort(), (name) => opened(byName.get(name)!));
  const pictures: readonly PlacedPicture[] = plan.placed;
  const placed = await port.placePictures(pictures, plan.keeps);
  return placed.ok ? { ok: true, value: { summary: `${countsText(plan)}.`, lines: planLines(plan) } } : placed;
}

const NO_BOXES = "This workbook has no boxes for pictures: the sheet Exception pages of a new route has them.";

async function opened(file: ChosenFile): Promise<PlainPicture | string> {
  try {
    requirePictureBytes(file.size);
    const picture = plainPicture(new Uint8Array(await file.arrayBuffer()));
    const { flipX, flipY } = turnedBy(picture.orientation);
    if (flipX || flipY)
      return "The picture is stored mirrored, which Excel lets no pane draw: save it anew, or use `greybody pictures`.";
    return picture;
  } catch (error) {
    return error instanceof PictureRefused ? error.message : "The file cannot be read.";
  }
}
