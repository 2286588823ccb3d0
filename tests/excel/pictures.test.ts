/** Pictures in Excel from the pane: boxes found by their names, shapes that take the place of the last ones, over a fake of its API. */
import { excelHost } from "../../src/host/excel/host.js";
import { KeptMessages } from "../../src/host/excel/messages.js";
import { picturesFrom } from "../../src/pane/start/pictures.js";
import type { BookDescription, PictureBox } from "../../src/templates/contract.js";
import { Queue } from "../support/excel-fake/client.js";
import { BookModel } from "../support/excel-fake/model.js";
import { workbook, type Events } from "../support/excel-fake/workbook.js";
import { exif, jpegWith, plainJpegFile, png, segment, tiffWith } from "../support/picture.js";

const box = (n: number, kind: PictureBox["kind"], column: number): PictureBox => ({
  key: `exception-${n}-${kind}`,
  row: 1,
  column,
  rows: 8,
  columns: 2,
  numberAt: { row: 0, column },
  kind,
});
const book: BookDescription = {
  title: "Boxes",
  sheets: [
    {
      kind: "free",
      name: "Bob's pages",
      heading: ["Pages"],
      widths: [64, 64, 64, 64],
      cells: ["7", "DC_8", "9"].map((value, i) => ({ row: 0, column: 2 * i, value, look: "typed" })),
      pictures: [box(1, "thermogram", 0), box(1, "photo", 2), box(2, "thermogram", 4)],
    },
  ],
};

function open() {
  const model = new BookModel(new KeptMessages());
  const events: Events = { selection: new Set(), activated: new Set(), calculated: new Set() };
  (globalThis as unknown as { Excel: unknown }).Excel = {
    run: (work: (context: unknown) => Promise<unknown>) => {
      const queue = new Queue();
      return work({ workbook: workbook(queue, model, events, () => undefined), sync: () => queue.sync() });
    },
  };
  return { model, port: excelHost(new KeptMessages(), false) };
}

const file = (name: string, bytes: Uint8Array, webkitRelativePath = `folder/${name}`) => ({
  name,
  size: bytes.length,
  webkitRelativePath,
  arrayBuffer: () => Promise.resolve(Uint8Array.from(bytes).buffer),
});

test("pictures stand in their boxes, turned, with nothing but pixels; another run takes their place", async () => {
  const { model, port } = open();
  expect(await port.makeBook(book)).toMatchObject({ ok: true });
  expect(model.formulas.get("GREYBODY_PICTURE_exception_1_photo")).toEqual({
    formula: "='Bob''s pages'!$C$4:$D$11,'Bob''s pages'!$C$3",
    visible: false,
  });
  const shot = jpegWith([exif(tiffWith(8)), segment(0xfe, "SERIAL 4711")]);
  const files = [
    file("IR_0007.jpg", shot),
    file("DC_8.jpg", plainJpegFile()),
    file("DC_8.jpg", png(3, 3), "folder/within/DC_8.jpg"),
    file("9.jpg", jpegWith([exif(tiffWith(2))])),
    file("list.txt", Uint8Array.of(1)),
  ];
  const placed = await picturesFrom(port, files);
  expect(placed).toEqual({
    ok: true,
    value: {
      summary: "2 placed, 1 not taken.",
      lines: [expect.stringMatching(/^not taken: thermogram 9 at Bob's pages!E4: .*stored mirrored.* \[9.jpg\]$/)],
    },
  });
  const { shapes } = model.sheet("Bob's pages")!;
  const plain = Buffer.from(plainJpegFile()).toString("base64");
  // The box has 128 × 160 pixels, 4 free at each side. 48 × 32 on its side is 32 × 48, fitted 101 × 152 pixels: the
  // shape itself is 152 × 101, a quarter turn back, its middle where the picture's is. 3/4 point a pixel.
  expect(shapes).toEqual([
    {
      name: "GREYBODY_PICTURE_exception_1_thermogram 7",
      altTextDescription: "thermogram 7",
      left: (4 + (101 - 152) / 2) * 0.75,
      top: 45 + (4 + (152 - 101) / 2) * 0.75,
      width: 114,
      height: 75.75,
      rotation: 270,
      lockAspectRatio: true,
      placement: "OneCell",
      image: plain,
    },
    // 48 × 32 fitted: 120 × 80.
    expect.objectContaining({ left: 96 + 3, top: 45 + 3, width: 90, height: 60, rotation: 0, image: plain }),
  ]);
  await picturesFrom(port, [file("7.png", png(6, 6))]);
  // DC_8 is not in this folder, and its box still shows it.
  expect(model.sheet("Bob's pages")!.shapes.map(({ name, rotation }) => [name, rotation])).toEqual([
    ["GREYBODY_PICTURE_exception_1_photo DC_8", 0],
    ["GREYBODY_PICTURE_exception_1_thermogram 7", 0],
  ]);
});

test("what was typed meanwhile, and a workbook without boxes, are told", async () => {
  const { model, port } = open();
  expect(await picturesFrom(port, [])).toMatchObject({ ok: false, reason: "missing" });
  await port.makeBook(book);
  const picture = { kind: "png", width: 3, height: 3, orientation: 1, bytes: png(3, 3) } as const;
  const answer = await port.placePictures([{ key: "exception_1_thermogram", shown: "8", picture }], new Set());
  expect(answer).toMatchObject({ ok: false, message: expect.stringMatching(/No box shows 8 any more/) as unknown });
  expect(model.sheet("Bob's pages")!.shapes).toEqual([]);
});
