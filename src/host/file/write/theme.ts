/** The theme part (ECMA-376 part 1, 14.2.7 and 20.1.6.9): our own tones and a type that every system has. */
import { element, XML_HEAD } from "./element.js";
import { looks } from "./looks.js";

const srgb = (colour: string): string => element("a:srgbClr", { val: colour.slice(1).toUpperCase() });

const COLOURS: readonly (readonly [name: string, colour: string])[] = [
  ["dk1", looks.ink],
  ["lt1", "#ffffff"],
  ["dk2", looks.muted],
  ["lt2", looks.paper],
  ["accent1", looks.accent],
  ["accent2", looks.grades[0].fill],
  ["accent3", looks.grades[1].fill],
  ["accent4", looks.grades[2].fill],
  ["accent5", looks.grades[3].fill],
  ["accent6", looks.line],
  ["hlink", looks.accent],
  ["folHlink", looks.muted],
];

export function themeXml(): string {
  const font = (name: string): string =>
    element(
      name,
      {},
      element("a:latin", { typeface: "Arial" }),
      element("a:ea", { typeface: "" }),
      element("a:cs", { typeface: "" }),
    );
  const fill = element("a:solidFill", {}, element("a:schemeClr", { val: "phClr" }));
  const line = element("a:ln", { w: 9525 }, fill);
  const effect = element("a:effectStyle", {}, element("a:effectLst"));
  const three = (one: string): string => one.repeat(3);
  return (
    XML_HEAD +
    element(
      "a:theme",
      { "xmlns:a": "http://schemas.openxmlformats.org/drawingml/2006/main", name: "Greybody" },
      element(
        "a:themeElements",
        {},
        element(
          "a:clrScheme",
          { name: "Greybody" },
          ...COLOURS.map(([name, colour]) => element(`a:${name}`, {}, srgb(colour))),
        ),
        element("a:fontScheme", { name: "Greybody" }, font("a:majorFont"), font("a:minorFont")),
        element(
          "a:fmtScheme",
          { name: "Greybody" },
          element("a:fillStyleLst", {}, three(fill)),
          element("a:lnStyleLst", {}, three(line)),
          element("a:effectStyleLst", {}, three(effect)),
          element("a:bgFillStyleLst", {}, three(fill)),
        ),
      ),
    )
  );
}
