import { airTransmissionBlock } from "../../src/core/air/transmission.js";
import { flatBand } from "../../src/core/planck/band.js";
import { column, ROWS } from "./columns.js";
import { compare } from "./ratio.js";

const distance = column(0.5, 50);
const airTemp = column(263, 313);
const humidity = column(0.1, 0.95);
const out = new Float64Array(ROWS);
const air = (from: number, to: number) => () =>
  airTransmissionBlock({ distance, airTemp, humidity }, flatBand(from, to), out);

await compare("Transmission of air, one source temperature", [
  { name: "7.5 to 14 µm", most: 120, run: air(7.5, 14) },
  { name: "3 to 5 µm", most: 250, run: air(3, 5) },
]);
