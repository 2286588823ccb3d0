/** One axis of the picture: a line an exception, its dot over the bands of the criteria, its uncertainty as a bar. */
import * as Plot from "@observablehq/plot";
import { gradeBars, type Tones } from "../../host/tones.js";
import type { Band } from "./bands.js";
import { type Axis, perCent, type Point, valueInWords } from "./points.js";

export interface ChartOptions {
  readonly axis: Axis;
  readonly points: readonly Point[];
  readonly bands: readonly Band[];
  /** "K", "°F"; a share has none. */
  readonly unit: string;
  readonly width: number;
  readonly tones: Tones;
  readonly title: string;
  readonly alternative: string;
}

const lineHeight = 26;
const marginRight = 56;
/** What a band's sign and number take. */
const labelWidth = 24;

export function chart(options: ChartOptions): SVGSVGElement {
  const { points, bands, width, tones, axis, unit } = options;
  const share = axis === "limit";
  const highest = Math.max(...points.map(({ value, u = 0 }) => value + u), bands.at(-1)?.from ?? 0);
  const lowest = Math.min(0, ...points.map(({ value, u = 0 }) => value - u));
  const end = highest * 1.05 || 1;
  const lines = points.map((point) => ({ ...point, line: lineOf(point) }));
  const places = bands.map((band) => ({ ...band, to: Math.min(band.to ?? end, end), middle: band.from }));
  const marginLeft = Math.min(110, 16 + 7.2 * Math.max(...lines.map(({ line }) => line.length)));
  const svg = Plot.plot({
    width,
    height: 62 + lineHeight * points.length,
    marginLeft,
    marginRight,
    marginTop: 28,
    marginBottom: 34,
    ariaLabel: options.title,
    ariaDescription: options.alternative,
    style: { background: tones.paper, color: tones.ink, fontFamily: "system-ui, sans-serif", fontSize: "12px" },
    // Most rises are small and one may be large: over a root both can be read, and so can the narrow bands.
    x: {
      type: "sqrt",
      domain: [lowest, end],
      ticks: ticksOf(bands, end),
      tickFormat: share ? perCent : (value: number) => String(value),
      label: `${share ? "share of limit" : `rise, ${unit}`} (square-root scale) →`,
    },
    y: { domain: lines.map(({ line }) => line), label: null, type: "point", padding: 0.6, tickSize: 0 },
    marks: [
      Plot.rectX(places, { x1: "from", x2: "to", fill: (band: Band) => fillOf(tones, band.grade), fillOpacity: 0.25 }),
      Plot.text(labelled(places, width - marginLeft - marginRight, lowest, end), {
        x: "middle",
        frameAnchor: "top",
        textAnchor: "start",
        dx: 2,
        dy: -16,
        text: (band: Band) => `${gradeBars[band.grade] ?? ""}${String(band.grade)}`,
        fill: tones.ink,
      }),
      Plot.ruleX(places, { x: "from", stroke: tones.line }),
      Plot.ruleY(
        lines.filter(({ u }) => u !== undefined),
        {
          y: "line",
          x1: (point: Point) => point.value - (point.u ?? 0),
          x2: (point: Point) => point.value + (point.u ?? 0),
          stroke: tones.muted,
          strokeWidth: 2,
        },
      ),
      Plot.dot(lines, {
        x: "value",
        y: "line",
        r: 4.5,
        fill: (point: Point) => fillOf(tones, point.grade),
        stroke: tones.ink,
        strokeWidth: 1.25,
      }),
      Plot.text(lines, {
        x: (point: Point) => point.value + (point.u ?? 0),
        y: "line",
        dx: 9,
        textAnchor: "start",
        text: (point: Point) => `${point.atLeast ? "≥ " : ""}${valueInWords(point)}`,
        fill: tones.ink,
        stroke: tones.paper,
        strokeWidth: 3,
      }),
    ],
  });
  // As one image it has its alternative; the names of its parts would say "dot" and "rule".
  for (const part of svg.querySelectorAll("g[aria-label]")) part.removeAttribute("aria-label");
  svg.setAttribute("role", "img");
  return svg as SVGSVGElement;
}

/** Bands with room for their label; the list below the picture has them all. */
function labelled<B extends { from: number; to: number }>(
  bands: readonly B[],
  room: number,
  low: number,
  end: number,
): B[] {
  const at = (value: number): number =>
    (Math.sign(value) * Math.sqrt(Math.abs(value)) * room) / (Math.sqrt(end) + Math.sqrt(-low));
  return bands.filter(({ from, to }) => at(to) - at(from) >= labelWidth);
}

/** The edges of the bands, and round numbers beyond the last of them. */
function ticksOf(bands: readonly Band[], end: number): number[] {
  const edges = bands.map(({ from }) => from);
  const last = edges.at(-1) ?? 0;
  const round = [1, 10, 100, 1000].flatMap((power) => [power, 2 * power, 5 * power]);
  return [0, ...edges, ...round.filter((tick) => tick > last * 1.6 && tick <= end)];
}

/** Two rows may be of one asset. */
function lineOf({ asset, sheetRow }: Point): string {
  return `${asset} · ${String(sheetRow)}`;
}

function fillOf(tones: Tones, grade: number): string {
  return tones.grades[grade - 1]?.fill ?? tones.paper;
}
