/** Pictures in Excel: boxes by their hidden names, shapes that bear the names of their boxes. */
/// <reference types="office-js" />
import { base64Of } from "../base64.js";
import { boxesIn, type BoxPlace, fitted, ownPicture, PICTURE_MARGIN, pictureName } from "../picture-boxes.js";
import type { PlainPicture } from "../picture-jpeg.js";
import { isOnItsSide, turnedBy } from "../picture-orientation.js";
import type { PictureBoxInfo, PlacedPicture } from "../port.js";
import { refuse } from "./answer.js";

const POINTS_A_PIXEL = 0.75;

interface LoadedBox {
  readonly place: BoxPlace;
  readonly info: PictureBoxInfo;
  readonly range: Excel.Range;
  readonly shapes: Excel.ShapeCollection;
}

/** In the order of the sheets. */
export async function loadBoxes(context: Excel.RequestContext): Promise<LoadedBox[]> {
  const { names, worksheets } = context.workbook;
  names.load("items/name, items/formula");
  worksheets.load("items/name");
  await context.sync();
  const order = worksheets.items.map(({ name }) => name);
  const places = boxesIn(names.items.map(({ name, formula }) => ({ name, formula: String(formula) })))
    .filter(({ sheet }) => order.includes(sheet))
    .sort(
      (a, b) =>
        order.indexOf(a.sheet) - order.indexOf(b.sheet) ||
        a.area.startRow - b.area.startRow ||
        a.area.startColumn - b.area.startColumn,
    );
  const shapesOf = new Map<string, Excel.ShapeCollection>();
  const loaded = places.map((place) => {
    const worksheet = worksheets.getItem(place.sheet);
    const { startRow, startColumn, endRow, endColumn } = place.area;
    const range = worksheet.getRangeByIndexes(
      startRow,
      startColumn,
      endRow - startRow + 1,
      endColumn - startColumn + 1,
    );
    range.load("left, top, width, height");
    const number = worksheet.getRangeByIndexes(place.numberAt.row, place.numberAt.column, 1, 1);
    number.load("values");
    let shapes = shapesOf.get(place.sheet);
    if (shapes === undefined) {
      shapes = worksheet.shapes;
      shapes.load("items/name");
      shapesOf.set(place.sheet, shapes);
    }
    return { place, range, number, shapes };
  });
  await context.sync();
  return loaded.map(({ place, range, number, shapes }) => {
    const held = shapes.items.flatMap(({ name }) => ownPicture(name) ?? []).find(({ key }) => key === place.key);
    const { key, kind, sheet, area } = place;
    const at = { sheet, row: area.startRow, column: area.startColumn };
    const shown = String(number.values[0]?.[0] ?? "").trim();
    return { place, range, shapes, info: { key, kind, at, shown, held: held?.shown } };
  });
}

export async function placePictures(
  context: Excel.RequestContext,
  pictures: readonly PlacedPicture[],
  keeps: ReadonlySet<string>,
): Promise<number> {
  const boxes = await loadBoxes(context);
  const byKey = new Map(boxes.map((box) => [box.place.key, box]));
  const changed = pictures.find(({ key, shown }) => byKey.get(key)?.info.shown !== shown);
  // Between choosing the folder and placing somebody may have typed.
  if (changed !== undefined)
    refuse("missing", `No box shows ${changed.shown} any more: choose the folder again. Nothing was placed.`);
  let stays = 0;
  for (const shapes of new Set(boxes.map((box) => box.shapes)))
    for (const shape of shapes.items) {
      const own = ownPicture(shape.name);
      if (own === undefined) continue;
      if (keeps.has(own.key)) stays++;
      else shape.delete();
    }
  for (const { key, shown, picture } of pictures) add(byKey.get(key)!, shown, picture);
  await context.sync();
  return stays + pictures.length;
}

/** Excel's shapes have the place and size that they had before they are turned. */
function add({ place, range, shapes }: LoadedBox, shown: string, picture: PlainPicture): void {
  const { width, height, orientation } = picture;
  const isTurned = isOnItsSide(orientation);
  const box = { width: range.width / POINTS_A_PIXEL, height: range.height / POINTS_A_PIXEL };
  const seen = fitted(isTurned ? { width: height, height: width } : { width, height }, box);
  const own = isTurned ? { width: seen.height, height: seen.width } : seen;
  const shape = shapes.addImage(base64Of(picture.bytes));
  shape.name = pictureName(place.key, shown);
  shape.altTextDescription = `${place.kind} ${shown}`;
  shape.lockAspectRatio = false;
  shape.width = own.width * POINTS_A_PIXEL;
  shape.height = own.height * POINTS_A_PIXEL;
  shape.left = range.left + (PICTURE_MARGIN + (seen.width - own.width) / 2) * POINTS_A_PIXEL;
  shape.top = range.top + (PICTURE_MARGIN + (seen.height - own.height) / 2) * POINTS_A_PIXEL;
  shape.rotation = turnedBy(orientation).degrees;
  shape.lockAspectRatio = true;
  shape.placement = "OneCell";
}
