import type { Hints } from "./words.js";

/** Of the transmission of air. */
export const AIR_HINTS: Hints = {
  "air-band": () => "The transmission of air is known for bands within 3.0 to 14.7 µm.",
  "air-band-narrow": () => "So narrow a band holds nothing: its two wavelengths are all but the same.",
  "air-outside-fit": (w) =>
    `In air of ${w.temperature("air_temp")} the path may be ${w.length("short")} at most; ${w.temperature("from")} to ${w.temperature("to")} allow ${w.length("long")}.`,
  "pressure-unit": (w) => `Pressure is in kPa: was ${w.pressure("meant")} meant?`,
  "humidity-fraction": (w) =>
    `Humidity is in per cent: ${w.number("meant")}? From 0.05 to below 1 a fraction is meant; 1 and more, and the dry gas below 0.05, are taken as they are.`,
};
