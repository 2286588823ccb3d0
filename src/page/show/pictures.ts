/**
 * Pictures of the sheet in front, drawn into its boxes by the grid's own canvas, so that they scroll, freeze and grow with
 * the cells; of a sheet that is not in front nothing is made. A box that asks for a picture which the book does not hold
 * says so.
 */
import { type ICellDataForSheetInterceptor, InterceptorEffectEnum, type Nullable } from "@univerjs/core";
import { DRAWING_OBJECT_LAYER_INDEX, Image, IRenderManagerService, type IRender } from "@univerjs/engine-render";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import { SheetSkeletonManagerService } from "@univerjs/sheets-ui";
import { fitted, PICTURE_MARGIN } from "../../host/picture-boxes.js";
import { isOnItsSide, turnedBy } from "../../host/picture-orientation.js";
import { type FilledBox, filledBoxes } from "../book/pictures.js";
import type { FreeLayout } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import type { Calculating } from "./calculating.js";

export function showPictures(book: LiveBook, calculating: Calculating): void {
  const renders = book.injector.get(IRenderManagerService);
  let drawn: Image[] = [];
  let key = "";
  let words = new Map<string, string>();

  book.injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: 6,
    effect: InterceptorEffectEnum.Value,
    handler: (cell, { subUnitId, row, col }, next) => {
      const said = words.size === 0 ? undefined : words.get(placeKey(subUnitId, row, col));
      return next(said === undefined ? cell : withWords(cell, said));
    },
  });

  const follow = (render: Nullable<IRender>): void => {
    render?.with(SheetSkeletonManagerService).currentSkeleton$.subscribe(() => {
      // The sheet in front is told after its skeleton.
      setTimeout(draw);
    });
  };
  renders.created$.subscribe((render) => {
    if (render.unitId === bookId) follow(render);
  });
  follow(renders.getRenderById(bookId));
  calculating.onDone(draw);
  book.onPictures(draw);
  draw();

  function draw(): void {
    const render = renders.getRenderById(bookId);
    const sheet = book.isOpen() && render ? book.sheet(book.activeSheetId()) : undefined;
    const boxes = sheet?.kind === "free" && sheet.sheet.pictures !== undefined ? filledBoxes(book, sheet) : [];
    const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
    const free = sheet as FreeLayout;
    const wanted = boxes.flatMap((filled, at) => {
      if (filled.picture === undefined || !skeleton) return [];
      const { row, column, rows, columns } = filled.box;
      const first = skeleton.getCellWithCoordByIndex(free.first + row, column);
      const last = skeleton.getCellWithCoordByIndex(free.first + row + rows - 1, column + columns - 1);
      const area = { left: first.startX, top: first.startY, right: last.endX, bottom: last.endY };
      return [{ at, picture: filled.picture, area }];
    });
    const now = JSON.stringify([
      sheet?.id,
      boxes.map(({ asks }) => asks),
      wanted.map(({ at, picture, area }) => [at, picture.key, picture.shown, picture.base64?.length, area]),
    ]);
    if (now === key) return;
    key = now;
    for (const one of drawn) one.dispose();
    words = new Map(
      boxes
        .filter(isMissing)
        .map(({ box, asks }) => [placeKey(free.id, free.first + box.row, box.column), lacks(asks)]),
    );
    drawn = wanted.map(({ at, picture, area }) => pictureIn(`greybody-picture-${String(at)}`, picture, area));
    render?.scene.addObjects(drawn, DRAWING_OBJECT_LAYER_INDEX);
    if (boxes.length > 0) render?.mainComponent?.makeForceDirty(true);
  }
}

const placeKey = (sheetId: string, row: number, column: number): string =>
  `${sheetId} ${String(row)} ${String(column)}`;

const isMissing = ({ asks, picture }: FilledBox): boolean => picture === undefined && asks !== "";

const lacks = (asks: string): string => `${asks} is not in this workbook`;

function withWords(cell: Nullable<ICellDataForSheetInterceptor>, said: string): ICellDataForSheetInterceptor {
  return { ...cell, v: said };
}

interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** As the file has it: as large as the box allows, at its upper left, drawn as turned. */
function pictureIn(id: string, picture: NonNullable<FilledBox["picture"]>, area: Edges): Image {
  const { degrees, flipX, flipY } = turnedBy(picture.orientation ?? 1);
  const kind = picture.base64!.startsWith("iVBOR") ? "png" : "jpeg";
  const image = new Image(id, {
    url: `data:image/${kind};base64,${picture.base64!}`,
    // Its size is known when it is read.
    ...{ left: area.left, top: area.top, width: 1, height: 1 },
    // The cells below are chosen as ever.
    evented: false,
    success: () => {
      const native = image.getNative();
      if (native === null || native === undefined) return;
      const stored = { width: native.naturalWidth, height: native.naturalHeight };
      const lies = isOnItsSide(picture.orientation ?? 1);
      const turned = lies ? { width: stored.height, height: stored.width } : stored;
      const seen = fitted(turned, { width: area.right - area.left, height: area.bottom - area.top });
      const own = lies ? { width: seen.height, height: seen.width } : seen;
      image.transformByState({
        left: area.left + PICTURE_MARGIN + (seen.width - own.width) / 2,
        top: area.top + PICTURE_MARGIN + (seen.height - own.height) / 2,
        ...own,
        angle: degrees,
        flipX,
        flipY,
      });
      image.makeDirty(true);
    },
  });
  return image;
}
