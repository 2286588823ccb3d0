/**
 * Cases for the audit, and what each usual slip comes to: written apart from the code under test, straight from the
 * measurement equation, over the exact radiance (which has its own tests against references).
 */
import { airTransmission } from "../../src/core/air/transmission.js";
import { flatBand, type Band } from "../../src/core/planck/band.js";
import { radiance, temperature } from "../../src/core/planck/exact.js";

/** Numbers from 0 to 1, the same for the same seed: Park and Miller's generator (1988), from memory. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

/** In °C and fractions; as CORRECTED takes them. */
export interface AuditCase {
  readonly a: number;
  readonly e: number;
  readonly r: number;
  readonly t1: number;
  readonly ta: number | undefined;
  readonly tw: number;
  readonly win: number | undefined;
  readonly rho: number;
  readonly rc: number | undefined;
  readonly t2: number;
  readonly band: readonly [from: number, to: number];
  readonly units: "C" | "F";
}

interface Terms {
  readonly emits?: 0 | 1;
  readonly mirrors?: 0 | 1;
  readonly reflects?: 0 | 1;
}

const K = 273.15;
const bandOf = ([from, to]: readonly [number, number]): Band => flatBand(from, to);

/** The measurement equation solved for the object, term by term; NaN where there is no answer. */
export function object(g: AuditCase, { emits = 1, mirrors = 1, reflects = 1 }: Terms = {}): number {
  const L = (t = 0): number => radiance(bandOf(g.band), t + K);
  const outside = (L(g.a) - (1 - g.t2) * L(g.ta)) / g.t2;
  const inside = (outside - emits * (1 - g.tw - g.rho) * L(g.win) - mirrors * g.rho * L(g.rc)) / g.tw;
  const leaving = (inside - (1 - g.t1) * L(g.ta)) / g.t1;
  const own = (leaving - reflects * (1 - g.e) * L(g.r)) / g.e;
  return own > 0 ? temperature(bandOf(g.band), own) - K : NaN;
}

function shows(objectTemp: number, g: AuditCase): number {
  const L = (t = 0): number => radiance(bandOf(g.band), t + K);
  const inside = g.t1 * (g.e * L(objectTemp) + (1 - g.e) * L(g.r)) + (1 - g.t1) * L(g.ta);
  const outside = g.tw * inside + (1 - g.tw - g.rho) * L(g.win) + g.rho * L(g.rc);
  return temperature(bandOf(g.band), g.t2 * outside + (1 - g.t2) * L(g.ta)) - K;
}

function fourthPower(g: AuditCase): number {
  const F = (t = 0): number => (t + K) ** 4;
  const outside = (F(g.a) - (1 - g.t2) * F(g.ta)) / g.t2;
  const inside = (outside - (1 - g.tw - g.rho) * F(g.win) - g.rho * F(g.rc)) / g.tw;
  const leaving = (inside - (1 - g.t1) * F(g.ta)) / g.t1;
  return ((leaving - (1 - g.e) * F(g.r)) / g.e) ** 0.25 - K;
}

const up = (t: number): number => 1.8 * t + 32;
const down = (t: number): number => (t - 32) / 1.8;
export const inSheet = (t: number, { units }: AuditCase): number => (units === "F" ? up(t) : t);
const fromSheet = (t: number, { units }: AuditCase): number => (units === "F" ? down(t) : t);
const NO_AIR = { t1: 1, t2: 1 };
const NO_WINDOW = { tw: 1, rho: 0 };

/** What each slip gives [°C], NaN where the case has no room for it; by the words that EXPLAIN has for it. */
export const SLIPS: Readonly<Record<string, (g: AuditCase) => number>> = {
  "the reading itself, not corrected": (g) => g.a,
  "emissivity 0.95 as at start-up, all else as stated": (g) => object({ ...g, e: 0.95 }),
  "1 m (3.3 ft) of air as at start-up, all else as stated": (g) => {
    if (g.t1 * g.t2 === 1) return NaN;
    const t1 = airTransmission({ distance: 1, airTemp: (g.ta ?? NaN) + K, humidity: 0.5 }, bandOf(g.band));
    return object({ ...g, t1, t2: 1 });
  },
  "window temperature taken as the air's": (g) =>
    g.ta === undefined || g.tw === 1 ? NaN : object({ ...g, win: g.ta }),
  "emissivity 1": (g) => object({ ...g, e: 1 }),
  "air left out": (g) => object({ ...g, ...NO_AIR }),
  "window left out": (g) => object({ ...g, ...NO_WINDOW }),
  "air and window left out": (g) => (g.t1 * g.t2 < 1 && g.tw < 1 ? object({ ...g, ...NO_AIR, ...NO_WINDOW }) : NaN),
  "window taken as not reflecting": (g) => object({ ...g, rho: 0 }),
  "what the window emits not subtracted": (g) => object(g, { emits: 0 }),
  "what the object reflects not subtracted": (g) => object(g, { reflects: 0 }),
  "reflected temperature taken as the air's": (g) => (g.ta === undefined ? NaN : object({ ...g, r: g.ta })),
  "reflected temperature 20 °C (68 °F)": (g) => object({ ...g, r: 20 }),
  "reflected temperature 0 °C (32 °F)": (g) => object({ ...g, r: 0 }),
  "reflected temperature 0 °F (−17.8 °C)": (g) => (g.units === "F" ? object({ ...g, r: down(0) }) : NaN),
  "the two reflected temperatures swapped": (g) => (g.rc === undefined ? NaN : object({ ...g, r: g.rc, rc: g.r })),
  "the camera's start-up settings (emissivity 0.95, reflected 20 °C / 68 °F), no air, no window": (g) =>
    object({ ...g, ...NO_AIR, ...NO_WINDOW, e: 0.95, r: 20 }),
  "the camera's start-up settings (emissivity 0.95, reflected 20 °C / 68 °F, 1 m / 3.3 ft of air), no window": (g) => {
    const ta = g.ta ?? 20;
    const t1 = airTransmission({ distance: 1, airTemp: ta + K, humidity: 0.5 }, bandOf(g.band));
    return object({ ...g, ...NO_WINDOW, e: 0.95, r: 20, ta, t1, t2: 1 });
  },
  "corrected twice": (g) => object({ ...g, a: object(g) }),
  "corrected the wrong way round": (g) => shows(g.a, g),
  "emissivity × window transmission as one emissivity": (g) =>
    g.tw < 1 ? object({ ...g, ...NO_WINDOW, e: g.e * g.tw }) : NaN,
  "emissivity × all transmissions as one emissivity": (g) =>
    g.t1 * g.t2 === 1 ? NaN : object({ ...g, ...NO_WINDOW, ...NO_AIR, e: g.e * g.tw * g.t1 * g.t2 }),
  "1 − emissivity in place of emissivity": (g) => (g.e < 1 ? object({ ...g, e: 1 - g.e }) : NaN),
  "T⁴ in place of the camera's band": fourthPower,
  "the band 8-14 µm": (g) => object({ ...g, band: [8, 14] }),
  "the band 3-5 µm": (g) => object({ ...g, band: [3, 5] }),
  "degrees in place of radiance: reflected + (reading − reflected) / emissivity": (g) => g.r + (g.a - g.r) / g.e,
  "degrees in place of radiance: air + (reading − air) / emissivity": (g) =>
    g.ta === undefined ? NaN : g.ta + (g.a - g.ta) / g.e,
  "reading / emissivity, in degrees": (g) => fromSheet(inSheet(g.a, g) / g.e, g),
  "absolute reading / emissivity^¼, nothing reflected": (g) => (g.a + K) / g.e ** 0.25 - K,
  "result × 1.8 + 32: °C to °F once too often": (g) => up(object(g)),
  "(result − 32) / 1.8: °F to °C once too often": (g) => down(object(g)),
  "reading × 1.8 + 32, not corrected": (g) => up(g.a),
  "reading in °F corrected as if °C, the result brought back": (g) => down(object({ ...g, a: up(g.a) })),
  "reflected temperature × 1.8 + 32: °F taken for °C": (g) => object({ ...g, r: up(g.r) }),
  "(reflected temperature − 32) / 1.8: °C taken for °F": (g) => object({ ...g, r: down(g.r) }),
  "air temperature × 1.8 + 32: °F taken for °C": (g) => (g.ta === undefined ? NaN : object({ ...g, ta: up(g.ta) })),
  "(air temperature − 32) / 1.8: °C taken for °F": (g) => (g.ta === undefined ? NaN : object({ ...g, ta: down(g.ta) })),
  "273.15 added to the result": (g) => object(g) + K,
  "273.15 taken from the result": (g) => object(g) - K,
};

const round = (value: number, step: number): number => Math.round(value / step) * step;

/**
 * A case as found in practice, within the hard ranges of the sheets: object −30…150 °C (one in ten to 600), emissivity
 * .55–.98 (one in five .1–.55), reflected −40…60, path air −20…50, transmission .75–1 where there is air to speak of
 * (two in three), a window in two of five (transmission .3–.95, −10…60 °C, half of them reflecting .02–.2 with 0…40 °C on
 * the camera's side and outer air .9–1), °F in one of four, 8–14 and 3–5 µm in one of five each. The reading to 0.1, the
 * settings as they are printed.
 */
export function caseFrom(random: () => number): AuditCase {
  const between = (from: number, to: number): number => from + (to - from) * random();
  const units = random() < 0.25 ? "F" : "C";
  const printed = (t: number, step: number): number => (units === "F" ? down(round(up(t), step)) : round(t, step));
  const air = random() < 2 / 3;
  const window = random() < 0.4;
  const mirrors = window && random() < 0.5;
  const outer = mirrors && air;
  const tw = window ? round(between(0.3, 0.95), 0.01) : 1;
  const rho = mirrors ? Math.min(round(between(0.02, 0.2), 0.01), round(1 - tw, 0.01)) : 0;
  const pick = random();
  const settings: AuditCase = {
    a: 0,
    e: round(random() < 0.2 ? between(0.1, 0.55) : between(0.55, 0.98), 0.01),
    r: printed(between(-40, 60), 0.5),
    t1: air ? round(between(0.75, 1), 0.01) : 1,
    ta: air || random() < 0.3 ? printed(between(-20, 50), 0.5) : undefined,
    tw,
    win: window ? printed(between(-10, 60), 0.5) : undefined,
    rho,
    rc: mirrors ? printed(between(0, 40), 0.5) : undefined,
    t2: outer ? round(between(0.9, 1), 0.01) : 1,
    band: pick < 0.2 ? [8, 14] : pick < 0.4 ? [3, 5] : [7.5, 14],
    units,
  };
  const objectTemp = random() < 0.1 ? between(150, 600) : between(-30, 150);
  return { ...settings, a: printed(shows(objectTemp, settings), 0.1) };
}

/** One row of CORRECTED's arguments in the sheet's units. */
export function settingsRow(g: AuditCase): (number | null)[] {
  const t = (value: number | undefined): number | null =>
    value === undefined ? null : Number(inSheet(value, g).toFixed(9));
  return [t(g.a), g.e, t(g.r), g.t1, t(g.ta), g.tw, t(g.win), g.rho, t(g.rc), g.t2];
}

/** A temperature of °C as the sheet prints it. */
export const stated = (t: number, g: AuditCase): number => Math.round(inSheet(t, g) * 10) / 10;
