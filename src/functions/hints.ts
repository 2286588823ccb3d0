/** How a hint's values are written in the units of the sheet. */
export interface HintWords {
  readonly temperature: (name: string) => string;
  readonly difference: (name: string) => string;
  readonly number: (name: string) => string;
}

/** What each hint key of the core says to the person at the sheet. */
export const HINTS: Readonly<Record<string, (w: HintWords) => string>> = {
  "per-cent": (w) => `A fraction is wanted, not per cent: ${w.number("meant")}?`,
  "absolute-zero": () => "Nothing is at or below absolute zero: check value and units.",
  "not-a-number": () => "A number is wanted, with a point for decimals and nothing else in the cell.",
  "window-sum": (w) => `Transmission ${w.number("window_transmission")} and reflectance of a window are at most 1 together.`,
  "air-temp-needed": () => "The temperature of the air on the path is needed where a transmission of air is below 1.",
  "window-temp-needed": () => "The temperature of the window is needed where its transmission is below 1.",
  "outer-reflected-needed": () => "The reflected temperature on the camera's side is needed where the window reflects.",
  "surroundings-alone": (w) =>
    `No object gives this reading: with emissivity ${w.number("emissivity")} the surroundings alone would show ${w.temperature("temperature")}. Check reading, emissivity and reflected.`,
  "band-wavelengths": () => "A band is two wavelengths in µm, shorter first, such as 7.5-14.",
  "band-date": () => "Excel read the band as a date: format the cell as text.",
  "band-order": () => "The shorter wavelength comes first, such as 7.5-14.",
  "band-response": (w) => `Row ${w.number("row")} of the response table: a response is a number from 0 up.`,
  "band-rising": (w) => `Row ${w.number("row")} of the response table: wavelengths rise from row to row.`,
  "band-empty": () => "A response table has at least two rows and a response above 0.",
};
