import { readContents } from "../../src/host/file/read/contents.js";
import { packBook } from "../../src/host/file/write/package.js";
import { describedBook } from "../../src/host/file/write/described.js";
import { orientationOf } from "../../src/host/picture-orientation.js";
import type { BookDescription, PictureBox } from "../../src/templates/contract.js";
import { withPictures } from "../../src/templates/refill/pictures.js";
import { png } from "../support/picture.js";

const ORIENTATIONS = [1, 2, 3, 4, 5, 6, 7, 8] as const;

const boxes = ORIENTATIONS.map((orientation): PictureBox => ({
  key: `exception-${orientation}-thermogram`,
  row: 2 + 6 * orientation,
  column: 0,
  rows: 5,
  columns: 2,
  numberAt: { row: 1 + 6 * orientation, column: 0 },
  kind: "thermogram",
  shown: `IR ${orientation}`,
  orientation,
  base64: Buffer.from(png(30, 10 + orientation)).toString("base64"),
}));

const book = (pictures: readonly PictureBox[]): BookDescription => ({
  title: "Boxes",
  sheets: [{ kind: "free", name: "Pages", heading: ["Pages"], widths: [100, 100], cells: [], pictures }],
});

test("a picture that was saved comes back in its box, as it was turned, with the number that it shows", () => {
  const contents = readContents(packBook(describedBook(book(boxes))));
  expect(contents.held.map(({ shown }) => shown)).toEqual(ORIENTATIONS.map((number) => `IR ${number}`));
  const empty = boxes.map(({ key, row, column, rows, columns, numberAt, kind }): PictureBox => {
    return { key, row, column, rows, columns, numberAt, kind };
  });
  const [sheet] = book(empty).sheets;
  if (sheet?.kind !== "free") throw new Error("No free sheet.");
  expect(withPictures(sheet, contents).pictures).toEqual(boxes);
});

test("other people's pictures are no pictures of a box", () => {
  const [first] = boxes;
  const { shown, ...plan } = first!;
  expect(shown).toBe("IR 1");
  expect(readContents(packBook(describedBook(book([{ ...plan, alternative: "the plan" }])))).held).toEqual([]);
});

/** ECMA-376 part 1, 20.1.7.6: mirrored both ways is turned by half; what no camera writes is shown as it is stored. */
test.each([
  [{ degrees: 0, flipX: true, flipY: true }, 3],
  [{ degrees: 90, flipX: true, flipY: true }, 8],
  [{ degrees: 30, flipX: false, flipY: false }, 1],
])("%j is orientation %i", (turned, orientation) => {
  expect(orientationOf(turned)).toBe(orientation);
});
