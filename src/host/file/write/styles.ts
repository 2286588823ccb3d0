/** Collects the looks of cells and writes the styles part (ECMA-376 part 1, 18.8). */
import { counted, element, MAIN, XML_HEAD } from "./element.js";
import type { CellStyle, Colour, Conditional, Edge } from "./model.js";

const FONT = "Arial";
/** Excel's own begin below; those of a workbook at 164 (18.8.30). */
const FIRST_FORMAT = 164;
/** Number formats that every Excel knows by number (18.8.30). */
const BUILT_IN: Readonly<Record<string, number>> = { General: 0, "0": 1, "0.00": 2, "0%": 9, "@": 49 };

const SIDES = ["left", "right", "top", "bottom"] as const;

/** Each text once, in the order of first use. */
class Registry {
  readonly items: string[] = [];
  private readonly places = new Map<string, number>();

  place(item: string): number {
    let place = this.places.get(item);
    if (place === undefined) {
      place = this.items.push(item) - 1;
      this.places.set(item, place);
    }
    return place;
  }
}

const argb = (colour: Colour): string => `FF${colour.slice(1).toUpperCase()}`;
const colourOf = (name: string, colour: Colour): string => element(name, { rgb: argb(colour) });

export class Styles {
  private readonly fonts = new Registry();
  private readonly fills = new Registry();
  private readonly borders = new Registry();
  private readonly formats = new Registry();
  private readonly cells = new Registry();
  private readonly looks = new Registry();
  private readonly known = new WeakMap<CellStyle, number>();

  /** @param ordinary the look of cells that have none */
  constructor(ordinary: CellStyle) {
    // The first two fills are set (18.8.20), and so is the first of everything else.
    this.fills.place(element("fill", {}, element("patternFill", { patternType: "none" })));
    this.fills.place(element("fill", {}, element("patternFill", { patternType: "gray125" })));
    this.index(ordinary);
  }

  /** The number by which a cell names its look. */
  index(style: CellStyle): number {
    let index = this.known.get(style);
    if (index === undefined) this.known.set(style, (index = this.newIndex(style)));
    return index;
  }

  private newIndex(style: CellStyle): number {
    const font = this.fonts.place(fontOf(style));
    const fill = style.fill === undefined ? 0 : this.fills.place(fillOf(style.fill));
    const border = this.borders.place(borderOf(style.border ?? {}));
    const format = this.formatNumber(style.format);
    const alignment = alignmentOf(style);
    const protection = style.unlocked === true ? element("protection", { locked: false }) : "";
    const attributes = {
      numFmtId: format,
      fontId: font,
      fillId: fill,
      borderId: border,
      xfId: 0,
      applyNumberFormat: format === 0 ? undefined : true,
      applyFont: font === 0 ? undefined : true,
      applyFill: fill === 0 ? undefined : true,
      applyBorder: border === 0 ? undefined : true,
      applyAlignment: alignment === "" ? undefined : true,
      applyProtection: protection === "" ? undefined : true,
    };
    const inside = [alignment, protection].filter((part) => part !== "");
    return this.cells.place(element("xf", attributes, ...inside));
  }

  /** The number by which a conditional format names its look. */
  lookIndex({ bold, colour, fill, format }: Conditional["look"]): number {
    const font = [bold === true ? element("b") : "", colour === undefined ? "" : colourOf("color", colour)].join("");
    const parts = [
      font === "" ? "" : element("font", {}, font),
      format === undefined ? "" : element("numFmt", { numFmtId: this.formatNumber(format), formatCode: format }),
      // A conditional format takes its colour from the background of a solid fill.
      fill === undefined
        ? ""
        : element("fill", {}, element("patternFill", { patternType: "solid" }, colourOf("bgColor", fill))),
    ];
    return this.looks.place(element("dxf", {}, parts.join("")));
  }

  xml(): string {
    const formats = this.formats.items.map((formatCode, place) =>
      element("numFmt", { numFmtId: FIRST_FORMAT + place, formatCode }),
    );
    return (
      XML_HEAD +
      element(
        "styleSheet",
        { xmlns: MAIN },
        counted("numFmts", formats),
        counted("fonts", this.fonts.items),
        counted("fills", this.fills.items),
        counted("borders", this.borders.items),
        counted("cellStyleXfs", [element("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 })]),
        counted("cellXfs", this.cells.items),
        counted("cellStyles", [element("cellStyle", { name: "Normal", xfId: 0, builtinId: 0 })]),
        element("dxfs", { count: this.looks.items.length }, ...this.looks.items),
        element("tableStyles", {
          count: 0,
          defaultTableStyle: "TableStyleMedium2",
          defaultPivotStyle: "PivotStyleLight16",
        }),
      )
    );
  }

  private formatNumber(format = "General"): number {
    return BUILT_IN[format] ?? FIRST_FORMAT + this.formats.place(format);
  }
}

function fontOf({ size = 10, bold, italic, colour }: CellStyle): string {
  return element(
    "font",
    {},
    bold === true ? element("b") : "",
    italic === true ? element("i") : "",
    element("sz", { val: size }),
    colour === undefined ? "" : colourOf("color", colour),
    element("name", { val: FONT }),
    element("family", { val: 2 }),
  );
}

function fillOf(colour: Colour): string {
  const colours = [colourOf("fgColor", colour), element("bgColor", { indexed: 64 })];
  return element("fill", {}, element("patternFill", { patternType: "solid" }, ...colours));
}

function borderOf(border: NonNullable<CellStyle["border"]>): string {
  const side = (name: (typeof SIDES)[number]): string => {
    const edge: Edge | undefined = border[name];
    return edge === undefined ? element(name) : element(name, { style: edge.weight }, colourOf("color", edge.colour));
  };
  return element("border", {}, ...SIDES.map(side), element("diagonal"));
}

function alignmentOf({ align, vertical, wrap, indent }: CellStyle): string {
  if (align === undefined && vertical === undefined && wrap === undefined && indent === undefined) return "";
  return element("alignment", { horizontal: align, vertical, wrapText: wrap, indent });
}
