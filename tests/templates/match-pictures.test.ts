/** Which file is meant by an image number: what fits without doubt is placed, everything else is told. */
import { matchPictures } from "../../src/templates/report/match-pictures.js";

const match = (shown: string, files: readonly string[]) =>
  matchPictures([{ key: "b", kind: "thermogram", shown }], files).boxes.get("b");

test.each([
  ["123", ["IR_0123.jpg", "IR_0012.jpg", "IR_1234.jpg"], "IR_0123.jpg"],
  ["0123", ["123.PNG", "1230.png"], "123.PNG"],
  ["12", ["IR_0123.jpg", "IR_012.jpg"], "IR_012.jpg"],
  ["IR_0123", ["ir-123.JPG", "DC_0123.jpg"], "ir-123.JPG"],
  ["IR_0123", ["IR_0123.jpg", "IR_123.jpg"], "IR_0123.jpg"],
  ["IR_0123.jpg", ["IR_0123.jpg", "IR_0123.png"], "IR_0123.jpg"],
  ["ir_0123.JPG", ["IR_0123.jpg", "IR_0123.png"], "IR_0123.jpg"],
  ["2026-09-14_12", ["2026-09-14_012.jpg", "2026-09-14_013.jpg"], "2026-09-14_012.jpg"],
  // A raw file beside its JPEG is no second picture.
  ["123", ["IR_0123.tiff", "IR_0123.jpg"], "IR_0123.jpg"],
  // By itself it is placed, and then refused for what it is.
  ["123", ["IR_0123.heic"], "IR_0123.heic"],
  ["0", ["IR_000.jpg"], "IR_000.jpg"],
  // As a Mac writes the name: u and a mark above.
  ["Kühler_7", ["Ku\u0308hler_7.jpg", "Koller_7.jpg"], "Ku\u0308hler_7.jpg"],
  ["Kühler_7.jpg", ["Ku\u0308hler_7.jpg"], "Ku\u0308hler_7.jpg"],
])("%s among %j is %s", (shown, files, file) => {
  expect(match(shown, files)).toEqual({ outcome: "placed", file });
});

test.each([
  ["123", ["IR_0123.jpg", "DC_0123.jpg"], ["IR_0123.jpg", "DC_0123.jpg"], /2 files fit "123"/],
  ["123", ["123.jpg", "IR_0123.jpg"], ["123.jpg", "IR_0123.jpg"], /2 files fit/],
  ["IR_0123", ["IR_0123.jpg", "IR_0123.png"], ["IR_0123.jpg", "IR_0123.png"], /2 files fit/],
  ["123", ["20260914_0123.jpg"], ["20260914_0123.jpg"], /only a part/],
  ["IR_0123", ["DC_0123.jpg"], ["DC_0123.jpg"], /only a part/],
  ["IR_0123.png", ["IR_0123.jpg"], ["IR_0123.jpg"], /only a part/],
  ["123, 124", ["IR_0123.jpg", "IR_0124.jpg"], [], /more than one image/],
  ["123 124", ["IR_0123.jpg"], [], /more than one image/],
])("%s among %j is doubtful", (shown, files, named, why) => {
  const matched = match(shown, files);
  expect(matched).toMatchObject({ outcome: "doubtful", files: named });
  expect(matched).toHaveProperty("why", expect.stringMatching(why));
});

test.each([
  ["123", ["IR_1230.jpg", "IR_0012.jpg", "IR_4123.jpg"], /no file of this folder has the number 123/],
  ["IR_0123", [], /number 123/],
  ["no number", ["no_0001.jpg"], /"no number" is no image number/],
])("%s among %j is missing", (shown, files, why) => {
  const matched = match(shown, files);
  expect(matched?.outcome).toBe("missing");
  expect(matched).toHaveProperty("why", expect.stringMatching(why));
});

test("one number for a thermogram and a photo, one file: neither is placed", () => {
  const box = (key: string, kind: "thermogram" | "photo", shown: string) => ({ key, kind, shown });
  const files = ["IR_0007.jpg", "IR_0008.jpg", "IR_0009.jpg"];
  const { boxes, unused } = matchPictures(
    [
      box("a", "thermogram", "7"),
      box("b", "photo", "7"),
      // Two exceptions in one image are usual.
      box("c", "thermogram", "8"),
      box("d", "thermogram", "8"),
      box("e", "photo", ""),
    ],
    files,
  );
  expect([...boxes].map(([key, { outcome }]) => [key, outcome])).toEqual([
    ["a", "doubtful"],
    ["b", "doubtful"],
    ["c", "placed"],
    ["d", "placed"],
  ]);
  expect(unused).toEqual(["IR_0009.jpg"]);
});
