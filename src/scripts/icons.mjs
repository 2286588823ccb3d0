/** Draws the add-in's icons: a grey body with a band from sand to plum across it, and the same with a tick or a plus. */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { encodePng } from "./png.mjs";

export const iconSizes = [16, 32, 64, 80, 128];

/** Samples along one side of a pixel: enough for even edges. */
const samples = 8;
const grey = { light: [0x8a, 0x93, 0xa0], dark: [0x5b, 0x64, 0x72] };
const band = ["f3e3bd", "e0a96d", "a4502f", "541f3f"].map(hex);
const accent = hex("0b5c63");
const paper = hex("fbfaf7");

function hex(text) {
  return [0, 2, 4].map((at) => parseInt(text.slice(at, at + 2), 16));
}

/** Colour at a point of the unit square, undefined where nothing is drawn. */
const drawings = {
  greybody: (x, y) => body(x, y),
  check: (x, y) => badge(x, y, tick) ?? body(x, y),
  route: (x, y) => badge(x, y, plus) ?? body(x, y),
};

function body(x, y) {
  const [dx, dy] = [x - 0.5, y - 0.5];
  if (Math.hypot(dx, dy) > 0.46) return undefined;
  // The band runs a little uphill, hottest at the right.
  const across = dy + 0.22 * dx;
  if (Math.abs(across) < 0.13) return band[Math.min(3, Math.max(0, Math.floor(((dx + 0.46) / 0.92) * 4)))];
  return across < 0 ? grey.light : grey.dark;
}

/** A disc at the lower right with a mark; false in the clear ring that sets it apart, undefined outside. */
function badge(x, y, mark) {
  const distance = Math.hypot(x - 0.72, y - 0.72);
  if (distance > 0.32) return undefined;
  if (distance > 0.27) return false;
  return mark(x, y) < 0.042 ? paper : accent;
}

/** Distances from the strokes of a mark. */
function tick(x, y) {
  return Math.min(segment(x, y, [0.6, 0.73], [0.69, 0.82]), segment(x, y, [0.69, 0.82], [0.85, 0.62]));
}

function plus(x, y) {
  return Math.min(segment(x, y, [0.58, 0.72], [0.86, 0.72]), segment(x, y, [0.72, 0.58], [0.72, 0.86]));
}

/** Distance of a point from a line between two points. */
function segment(x, y, [ax, ay], [bx, by]) {
  const [ex, ey] = [bx - ax, by - ay];
  const along = Math.min(1, Math.max(0, ((x - ax) * ex + (y - ay) * ey) / (ex * ex + ey * ey)));
  return Math.hypot(x - ax - along * ex, y - ay - along * ey);
}

/** The pixels of a drawing, each the mean of its samples. */
function draw(colourAt, size) {
  const rgba = new Uint8Array(size * size * 4);
  for (let py = 0; py < size; py++) {
    for (let px = 0; px < size; px++) {
      const sum = [0, 0, 0];
      let covered = 0;
      for (let sample = 0; sample < samples * samples; sample++) {
        const x = (px + ((sample % samples) + 0.5) / samples) / size;
        const y = (py + (Math.floor(sample / samples) + 0.5) / samples) / size;
        const colour = colourAt(x, y);
        if (!colour) continue;
        covered++;
        colour.forEach((value, channel) => (sum[channel] += value));
      }
      if (covered === 0) continue;
      const opacity = Math.round((covered / (samples * samples)) * 255);
      rgba.set([...sum.map((total) => Math.round(total / covered)), opacity], (py * size + px) * 4);
    }
  }
  return rgba;
}

/** Writes NAME-SIZE.png for each drawing and size. */
export function writeIcons(folder) {
  mkdirSync(folder, { recursive: true });
  for (const [name, colourAt] of Object.entries(drawings)) {
    for (const size of iconSizes)
      writeFileSync(path.join(folder, `${name}-${size}.png`), encodePng(size, draw(colourAt, size)));
  }
}
