/** The settings of CORRECTED as a what-if takes them: what each is called, what it measures, what can be. */
import type { Measure } from "../route/sheet-units.js";
import {
  AIR,
  EMISSIVITY,
  type Range,
  REFLECTED,
  WINDOW,
  WINDOW_REFLECTANCE,
  WINDOW_TRANSMISSION,
} from "../route/ranges.js";

export interface Setting {
  readonly key: string;
  readonly label: string;
  readonly measure?: Measure;
  readonly range: Range;
  readonly format: string;
  readonly start?: number;
  readonly note?: string;
}

const AIR_TRANSMISSION: Range = [0.01, 1];
const degrees = { measure: "temperature", format: "0.0" } as const;

/** In the order of CORRECTED's arguments two to ten. */
export const SETTINGS = [
  { key: "emissivity", label: "Emissivity", range: EMISSIVITY, format: "0.00" },
  {
    key: "reflected",
    label: "Reflected",
    range: REFLECTED,
    ...degrees,
    note: "Reflected apparent temperature: not the air, though indoors often close to it.",
  },
  {
    key: "air_transmission",
    label: "Transmission of the air",
    range: AIR_TRANSMISSION,
    format: "0.000",
    start: 1,
    note: "A number, or a formula such as =GREY.AIR_TRANSMISSION(10,20,50).",
  },
  {
    key: "air_temp",
    label: "Air on the path",
    range: AIR,
    ...degrees,
    note: "Needed where a transmission of air is below 1.",
  },
  {
    key: "window_transmission",
    label: "Window, transmission",
    range: WINDOW_TRANSMISSION,
    format: "0.00",
    start: 1,
    note: "1 where there is no window.",
  },
  {
    key: "window_temp",
    label: "Window, temperature",
    range: WINDOW,
    ...degrees,
    note: "Needed where the window's transmission is below 1.",
  },
  {
    key: "window_reflectance",
    label: "Window, reflectance",
    range: WINDOW_REFLECTANCE,
    format: "0.00",
    start: 0,
    note: "On the camera's side.",
  },
  {
    key: "outer_reflected",
    label: "Outer reflected",
    range: REFLECTED,
    ...degrees,
    note: "Reflected on the camera's side: needed where the window reflects.",
  },
  {
    key: "outer_air_transmission",
    label: "Outer transmission of air",
    range: AIR_TRANSMISSION,
    format: "0.000",
    start: 1,
  },
] as const satisfies readonly Setting[];

export type SettingKey = (typeof SETTINGS)[number]["key"];

/** What may be varied: CORRECTED's first ten arguments. */
export const VARIED = ["apparent", ...SETTINGS.map(({ key }) => key)] as const;

/** Of these ten, those that are temperatures. */
export const TEMPERATURES: readonly string[] = [
  "apparent",
  ...SETTINGS.flatMap((one: Setting) => (one.measure === undefined ? [] : [one.key])),
];
