/** Stand-ins for the pictures of a demo, drawn and saying so: an invented temperature field and a plain drawing of the same part. */
import { encodeIndexedPng } from "./png.mjs";

const WIDTH = 236;
const HEIGHT = 178;
/** Below the picture: the words. */
const FOOT = 14;
const WORDS = "DRAWN, NOT MEASURED";

/**
 * Cividis: as light for every step, and alike for whoever sees fewer colours. Nuñez, Anderton, Renslow, PLoS ONE 13(7),
 * 2018; its ninths from memory.
 */
const CIVIDIS = [
  [0, 32, 77],
  [0, 51, 111],
  [57, 72, 107],
  [87, 92, 109],
  [112, 113, 115],
  [138, 135, 121],
  [166, 157, 117],
  [196, 181, 108],
  [228, 207, 91],
  [255, 234, 70],
];
const LEVELS = 64;
const scale = Array.from({ length: LEVELS }, (_, level) => {
  const at = (level / (LEVELS - 1)) * (CIVIDIS.length - 1);
  const lower = Math.min(CIVIDIS.length - 2, Math.floor(at));
  return CIVIDIS[lower].map((from, i) => Math.round(from + (at - lower) * (CIVIDIS[lower + 1][i] - from)));
});

/** Rows of five points a letter, as far as the words need them. */
const LETTERS = {
  A: "01110 10001 10001 11111 10001 10001 10001",
  D: "11110 10001 10001 10001 10001 10001 11110",
  E: "11111 10000 10000 11110 10000 10000 11111",
  G: "01110 10001 10000 10111 10001 10001 01110",
  H: "10001 10001 10001 11111 10001 10001 10001",
  I: "01110 00100 00100 00100 00100 00100 01110",
  L: "10000 10000 10000 10000 10000 10000 11111",
  M: "10001 11011 10101 10101 10001 10001 10001",
  N: "10001 11001 10101 10011 10001 10001 10001",
  O: "01110 10001 10001 10001 10001 10001 01110",
  R: "11110 10001 10001 11110 10100 10010 10001",
  S: "01111 10000 10000 01110 00001 00001 11110",
  T: "11111 00100 00100 00100 00100 00100 00100",
  U: "10001 10001 10001 10001 10001 10001 01110",
  W: "10001 10001 10001 10101 10101 11011 10001",
  ",": "00000 00000 00000 00000 00110 00100 01000",
};

class Drawing {
  constructor(palette) {
    this.palette = palette;
    this.points = new Uint8Array(WIDTH * HEIGHT);
  }

  fill(x, y, width, height, colour) {
    for (let row = y; row < y + height; row++) this.points.fill(colour, row * WIDTH + x, row * WIDTH + x + width);
  }

  disc(x, y, radius, colour) {
    for (let row = y - radius; row <= y + radius; row++)
      for (let column = x - radius; column <= x + radius; column++)
        if ((row - y) ** 2 + (column - x) ** 2 <= radius ** 2) this.points[row * WIDTH + column] = colour;
  }

  write(x, y, words, colour) {
    [...words].forEach((letter, i) =>
      (LETTERS[letter] ?? "").split(" ").forEach((line, row) =>
        [...line].forEach((point, column) => {
          if (point === "1") this.points[(y + row) * WIDTH + x + i * 6 + column] = colour;
        }),
      ),
    );
  }

  png() {
    return encodeIndexedPng(WIDTH, HEIGHT, this.palette, this.points);
  }
}

/** Where the part is and how it is tilted: the same for a thermogram and the photo of the same number. */
function part(number) {
  const pick = (factor, count) => ((number * factor) % 101) % count;
  return { x: 80 + pick(37, 50), y: 62 + pick(53, 40), width: 44 + pick(29, 16), lean: (pick(43, 21) - 10) / 60 };
}

const middle = ({ x, y, lean }, row) => Math.round(x + (row - y) * lean);

/** Two straps joined by a bolt: warm at the bolt, less so along the strap, air around. */
function thermogram(number) {
  const shape = part(number);
  const [white, dark] = [LEVELS, LEVELS + 1];
  const drawing = new Drawing([...scale, [255, 255, 255], [28, 36, 48]]);
  const picture = HEIGHT - FOOT;
  for (let row = 0; row < picture; row++)
    for (let column = 0; column < WIDTH; column++) {
      const along = (row - shape.y) / 34;
      const across = (column - middle(shape, row)) / (shape.width / 2);
      const inside = 1 / (1 + Math.exp(9 * (Math.abs(across) - 1)));
      const spot = Math.exp(-((column - shape.x) ** 2 + (row - shape.y) ** 2) / 420);
      const field = 0.1 + 0.06 * (row / picture) + inside * (0.22 + 0.3 * Math.exp(-(along ** 2))) + 0.36 * spot;
      drawing.points[row * WIDTH + column] = Math.max(0, Math.min(LEVELS - 1, Math.round(field * (LEVELS - 1))));
    }
  drawing.fill(WIDTH - 16, 22, 10, picture - 44, white);
  for (let row = 24; row < picture - 24; row++) {
    const level = Math.round(((picture - 25 - row) / (picture - 49)) * (LEVELS - 1));
    drawing.fill(WIDTH - 15, row, 8, 1, level);
  }
  drawing.write(WIDTH - 29, 10, "HIGH", white);
  drawing.write(WIDTH - 23, picture - 17, "LOW", white);
  drawing.fill(0, picture, WIDTH, FOOT, dark);
  drawing.write(6, picture + 4, WORDS, white);
  return drawing.png();
}

const [WALL, SHADE, STRAP, EDGE, BOLT, CABLE, PAPER, INK] = [0, 1, 2, 3, 4, 5, 6, 7];
const PHOTO = [
  [222, 224, 226],
  [204, 207, 210],
  [176, 132, 92],
  [130, 94, 62],
  [96, 104, 112],
  [58, 62, 68],
  [255, 255, 255],
  [28, 36, 48],
];

function photo(number) {
  const shape = part(number);
  const drawing = new Drawing(PHOTO);
  const picture = HEIGHT - FOOT;
  drawing.fill(0, 0, WIDTH, picture, WALL);
  for (const x of [24, WIDTH - 30]) drawing.fill(x, 0, 6, picture, SHADE);
  const half = Math.round(shape.width / 2);
  for (let row = 0; row < picture; row++) {
    const from = middle(shape, row) - half;
    const isCable = row > shape.y + 44;
    drawing.fill(from, row, 2 * half, 1, isCable ? CABLE : STRAP);
    drawing.fill(from, row, 3, 1, EDGE);
  }
  drawing.fill(middle(shape, shape.y - 30) - half, shape.y - 30, 2 * half, 2, EDGE);
  drawing.disc(shape.x, shape.y, 13, EDGE);
  drawing.disc(shape.x, shape.y, 11, BOLT);
  drawing.fill(shape.x - 8, shape.y - 1, 17, 3, INK);
  drawing.fill(0, picture, WIDTH, FOOT, INK);
  drawing.write(6, picture + 4, WORDS, PAPER);
  return drawing.png();
}

/** The file of a box that shows such a number; undefined where it shows none. */
export function standIn(kind, shown) {
  const digits = /\d+/.exec(shown)?.[0];
  if (digits === undefined) return undefined;
  return kind === "thermogram" ? thermogram(Number(digits)) : photo(Number(digits));
}
