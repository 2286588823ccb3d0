/** What can be typed at all, in metric units: beyond it a slip is certain. Trade usage; the window's from coated and polymer panes. */
export type Range = readonly [low: number, high: number];

export const READING: Range = [-40, 1500];
export const REFLECTED: Range = [-80, 500];
export const AIR: Range = [-45, 65];
/** A window's temperature. */
export const WINDOW: Range = [-40, 100];
export const WINDOW_TRANSMISSION: Range = [0.05, 1];
export const WINDOW_REFLECTANCE: Range = [0, 0.6];
export const EMISSIVITY: Range = [0.01, 1];
export const DISTANCE: Range = [0.05, 1000];
/** In per cent. */
export const HUMIDITY: Range = [1, 100];
export const CURRENT: Range = [0, 500_000];
export const WIND: Range = [0, 30];
