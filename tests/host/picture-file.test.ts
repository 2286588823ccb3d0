/** Pictures of a folder: what is taken, what of it goes into a report, and what is refused in words. */
import { turnedBy, type Orientation } from "../../src/host/picture-orientation.js";
import { plainPicture } from "../../src/host/picture-file.js";
import { exif, jpegWith, plainJpegFile, png, pngWith, segment, tiffWith } from "../support/picture.js";

const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

test("of a JPEG the pixels are taken as they are, and nothing of what a camera wrote beside them", () => {
  const gps = segment(0xe1, "http://ns.adobe.com/xap/1.0/\0<x>SERIAL 4711</x>");
  const camera = segment(0xe1, "OTHER\0RAWDATA 4711");
  const extras = [
    exif(tiffWith(1)),
    gps,
    camera,
    segment(0xe2, "ICC_PROFILE\0\u0001\u00014711"),
    segment(0xfe, "taken at 4711"),
  ];
  const { bytes, ...facts } = plainPicture(jpegWith(extras, segment(0xd8, "another image 4711")));
  expect(facts).toEqual({ kind: "jpeg", width: 48, height: 32, orientation: 1 });
  // Byte for byte what it was before anything was put in.
  expect(text(bytes)).toBe(text(plainJpegFile()));
});

test("a thumbnail in the JFIF head goes, and Adobe's word on how colours are stored stays", () => {
  const plain = plainJpegFile();
  const thumbnail = segment(0xe0, `JFIF\0\u0001\u0002\0\0\u0001\0\u0001\u0001\u0001RGB`);
  const adobe = segment(0xee, "Adobe\0\u0064\0\0\0\0\u0001");
  const { bytes } = plainPicture(
    new Uint8Array(Buffer.concat([plain.subarray(0, 2), thumbnail, adobe, plain.subarray(20)])),
  );
  expect(text(bytes)).not.toContain("RGB");
  expect(text(bytes)).toContain("Adobe\0\u0064\0\0\0\0\u0001");
  // JFIF 1.02: the two last bytes of the head say how large the thumbnail is.
  expect([...bytes.subarray(2, 20)].slice(-2)).toEqual([0, 0]);
});

/**
 * EXIF 2.32, 4.6.4 A: where row 0 and column 0 of the stored pixels are as seen. The shape is mirrored first and turned
 * clockwise then; where its upper left corner and its upper right one come to lie is reckoned here by hand.
 */
test.each([
  [1, "top", "left"],
  [2, "top", "right"],
  [3, "bottom", "right"],
  [4, "bottom", "left"],
  [5, "left", "top"],
  [6, "right", "top"],
  [7, "right", "bottom"],
  [8, "left", "bottom"],
])("orientation %i: row 0 is at the %s, column 0 at the %s", (value, row, column) => {
  for (const order of ["II", "MM"] as const) {
    const picture = plainPicture(jpegWith([exif(tiffWith(value, order))]));
    expect(picture.orientation).toBe(value);
  }
  const { degrees, flipX, flipY } = turnedBy(value as Orientation);
  const sides = ["top", "right", "bottom", "left"];
  const turned = (side: string): string => sides[(sides.indexOf(side) + degrees / 90) % 4]!;
  expect([turned(flipY ? "bottom" : "top"), turned(flipX ? "right" : "left")]).toEqual([row, column]);
});

test.each([
  ["an orientation that there is not", exif(tiffWith(9))],
  ["of another type", exif(tiffWith(6, "II", 4))],
  ["two of them", exif(tiffWith(6, "II", 3, 2))],
  ["a directory beyond the end", exif(tiffWith(6).slice(0, 20))],
  ["no order of bytes", exif(new Uint8Array(34))],
  ["nothing", exif(new Uint8Array(0))],
])("%s is no orientation: pixels are shown as stored", (_, part) => {
  expect(plainPicture(jpegWith([part])).orientation).toBe(1);
});

test("of a PNG pixels and colours stay, texts and places go; its orientation counts", () => {
  const { bytes, ...facts } = plainPicture(
    pngWith(6, 4, [
      ["gAMA", "\0\0\u00b1\u008f"],
      ["tEXt", "Comment\0at 4711"],
      ["eXIf", tiffWith(6)],
      ["tIME", "1234567"],
    ]),
  );
  expect(facts).toEqual({ kind: "png", width: 6, height: 4, orientation: 6 });
  expect(text(bytes)).toBe(text(pngWith(6, 4, [["gAMA", "\0\0\u00b1\u008f"]])));
  expect(plainPicture(new Uint8Array([...png(3, 2), 1, 2, 3])).bytes).toEqual(png(3, 2));
});

const changed = (bytes: Uint8Array, at: number, value: number): Uint8Array => {
  const copy = bytes.slice();
  copy[at] = value;
  return copy;
};
const sof = (bytes: Uint8Array): number => text(bytes).indexOf("\u00ff\u00c0");
const plain = plainJpegFile();

test.each([
  ["an empty file", new Uint8Array(0), /empty/],
  ["a JPEG cut in its pixels", plain.slice(0, -10), /JPEG file is cut short/],
  ["a JPEG cut in its head", plain.slice(0, 60), /JPEG file is cut short/],
  ["a JPEG without its end", plain.slice(0, -2), /JPEG file is cut short/],
  ["a JPEG without a scan", Uint8Array.from([...plain.slice(0, 20), 0xff, 0xd9]), /no image in it/],
  ["an arithmetic JPEG", changed(plain, sof(plain) + 1, 0xc9), /rare kind/],
  ["a JPEG of 12 bits", changed(plain, sof(plain) + 4, 12), /12 bits a colour/],
  ["a JPEG of no height", changed(changed(plain, sof(plain) + 5, 0), sof(plain) + 6, 0), /how large/],
  [
    "a huge JPEG",
    changed(changed(plain, sof(plain) + 5, 0xf0), sof(plain) + 7, 0xf0),
    /61488 × 61472 pixels; at most 100 million/,
  ],
  ["a PNG cut short", png(9, 9).slice(0, -14), /PNG file is cut short/],
  ["a PNG that was damaged", changed(png(9, 9), 45, 77), /check sum of IDAT/],
  ["a PNG without a size", pngWith(0, 9, []), /no size/],
  ["a PNG with an unknown part", pngWith(2, 2, [["ABCD", "x"]]), /part ABCD/],
  ["TIFF", tiffWith(1), /is TIFF or a raw image, not JPEG or PNG: save it as JPEG or PNG/],
  ["HEIC", Buffer.from("\0\0\0\u0018ftypheic....", "latin1"), /is HEIC \(as phones save photos\)/],
  ["WebP", Buffer.from("RIFF....WEBPVP8 ", "latin1"), /is WebP/],
  ["BMP", Buffer.from("BM..........", "latin1"), /is BMP/],
  ["GIF", Buffer.from("GIF89a......", "latin1"), /is GIF/],
  ["words", Buffer.from("not a picture at all"), /neither JPEG nor PNG/],
])("%s is refused in words", (_, bytes, words) => {
  expect(() => plainPicture(new Uint8Array(bytes))).toThrow(words);
});

test("more than 32 MB are not looked at", () => {
  expect(() => plainPicture(new Uint8Array(33 * 2 ** 20))).toThrow(/33 MB; at most 32 MB/);
});
