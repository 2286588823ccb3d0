/** What a claim's readings and settings give: temperatures with their tolerance, and what is missing for them. */
import { airTransmission } from "../../air/transmission.js";
import { correct } from "../../correction/correct.js";
import type { Settings } from "../../correction/settings.js";
import { ZERO_CELSIUS } from "../../constants.js";
import { GreybodyError } from "../../errors.js";
import { flatBand } from "../../planck/band.js";
import type { TemperatureCase } from "../temperature-case.js";
import type { Claim, Printed } from "./claim.js";

/** Over which a setting that a report does not give is varied: reflected about the air, emissivity of what is no metal, air. */
const REFLECTED_SPAN = 10;
const EMISSIVITY_SPAN: readonly [number, number] = [0.85, 0.98];
const AIR_SPAN: readonly [number, number] = [0.97, 1];
/** Where a report names no air at all. */
const USUAL_AIR = 20 + ZERO_CELSIUS;

export type Missing =
  | "apparent"
  | "emissivity"
  | "reflected"
  | "air_transmission"
  | "path_air"
  | "window_transmission"
  | "window_temp"
  | "outer_reflected"
  | "reference"
  | "reference_apparent"
  | "surrounding_air"
  | "load"
  | "load above 0"
  | "load_of_reference above 0"
  | "reference_load"
  | "exponent";

export interface Recomputed {
  /** [K]; undefined where it cannot be said. */
  readonly value: number | undefined;
  /** Of the inputs: what their printed digits and the band may move it [K]. */
  readonly inputTolerance: number;
  readonly missing: readonly Missing[];
  /** Over the plausible spans of what is missing [K]. */
  readonly span: readonly [number, number] | undefined;
  /** No object gives this reading under these settings. */
  readonly impossible: boolean;
}

export interface RecomputedTemperature extends Recomputed {
  /** The part of inputTolerance that is the reading's digits [K]. */
  readonly ofDigits: number;
  /** How much the other usual long-wave band would give more [K]. */
  readonly bandShift: number;
  /** The case at each corner of the plausible spans, in one order for all readings of a claim; none where nothing is missing. */
  readonly corners: readonly TemperatureCase[];
  /** The corrected temperature at each of them [K]. */
  readonly cornerTemps: readonly number[];
  /** The case that slips are looked for in. */
  readonly given: TemperatureCase | undefined;
}

const nothing = (missing: readonly Missing[]): RecomputedTemperature => ({
  value: undefined,
  inputTolerance: NaN,
  ofDigits: NaN,
  bandShift: NaN,
  missing,
  span: undefined,
  corners: [],
  cornerTemps: [],
  given: undefined,
  impossible: false,
});

/** What was worked out already: each verdict of a row asks for the same readings. */
const known = new WeakMap<Claim, WeakMap<Printed, RecomputedTemperature>>();

/** The corrected temperature of a reading under the claim's settings. */
export function recompute(claim: Claim, reading: Printed | undefined): RecomputedTemperature {
  if (reading === undefined) return anew(claim, undefined);
  const ofClaim = known.get(claim) ?? new WeakMap<Printed, RecomputedTemperature>();
  known.set(claim, ofClaim);
  const found = ofClaim.get(reading) ?? anew(claim, reading);
  ofClaim.set(reading, found);
  return found;
}

function anew(claim: Claim, reading: Printed | undefined): RecomputedTemperature {
  const { settings, band } = claim;
  const missing: Missing[] = [];
  if (reading === undefined) missing.push("apparent");
  const lacking = needed(claim);
  missing.push(...lacking);
  // What cannot be varied over any span that means something.
  const hopeless = missing.some((name) => !["reflected", "emissivity", "air_transmission"].includes(name));
  if (reading === undefined || hopeless || (missing.includes("emissivity") && claim.isMetal)) return nothing(missing);
  const air = airOf(claim);
  const reflectedAbout = settings.airTemp ?? claim.surroundingAir?.value ?? USUAL_AIR;
  const spans: Readonly<Record<string, readonly [number, number]>> = {
    reflected: [reflectedAbout - REFLECTED_SPAN, reflectedAbout + REFLECTED_SPAN],
    emissivity: EMISSIVITY_SPAN,
    airTransmission: AIR_SPAN,
  };
  const middle = (name: string): number => (spans[name]![0] + spans[name]![1]) / 2;
  const complete: Settings = {
    ...settings,
    emissivity: settings.emissivity ?? middle("emissivity"),
    reflected: settings.reflected ?? middle("reflected"),
    ...(air === undefined ? {} : { airTransmission: air }),
  };
  const given: TemperatureCase = {
    apparent: reading.value,
    settings: complete,
    band,
    degrees: claim.degrees,
    ...(claim.distance === undefined || claim.humidity === undefined
      ? {}
      : {
          path: {
            distance: claim.distance,
            humidity: claim.humidity,
            ...(claim.pressure === undefined ? {} : { pressure: claim.pressure }),
          },
        }),
  };
  const value = answer(given);
  if (value === undefined) return { ...nothing(missing), impossible: true };
  // The air alone is varied: beside what moves the number more it is taken as 1, as reports without any air do.
  const others = missing.filter((name) => name !== "air_transmission");
  const varied = others.length > 0 ? others : missing.map(() => "airTransmission");
  const corners = varied.length === 0 ? [] : cornersOf(given, varied, spans);
  const cornerTemps = corners.map((corner) => answer(corner) ?? value);
  const [digits, bandShift] = [ofDigits(given, reading.half, value), shiftOfBand(given, value)];
  return {
    value,
    inputTolerance: digits + Math.abs(bandShift),
    ofDigits: digits,
    bandShift,
    missing,
    span: corners.length === 0 ? undefined : [Math.min(...cornerTemps), Math.max(...cornerTemps)],
    corners,
    cornerTemps,
    given,
    impossible: false,
  };
}

/** Settings that are neither given nor have a value by themselves. */
function needed({ settings, distance, isThroughWindow, humidity }: Claim): Missing[] {
  const missing: Missing[] = [];
  if (settings.emissivity === undefined) missing.push("emissivity");
  if (settings.reflected === undefined && settings.emissivity !== 1) missing.push("reflected");
  const throughAir = (settings.airTransmission ?? 1) < 1 || distance !== undefined;
  if (throughAir && settings.airTemp === undefined) missing.push("path_air");
  if (settings.airTransmission === undefined && (distance === undefined || humidity === undefined))
    missing.push("air_transmission");
  if (isThroughWindow && settings.windowTransmission === undefined) missing.push("window_transmission");
  if ((settings.windowTransmission ?? 1) < 1 && settings.windowTemp === undefined) missing.push("window_temp");
  if ((settings.windowReflectance ?? 0) > 0 && settings.outerReflected === undefined) missing.push("outer_reflected");
  // A distance without the rest of the path: only the air's temperature stands in the way, and it is varied with the air.
  return missing.includes("path_air") && missing.includes("air_transmission")
    ? missing.filter((name) => name !== "path_air")
    : missing;
}

/** The air's transmission as given or worked out from its path; 1 where the report leaves it out. */
function airOf({ settings, distance, humidity, pressure, band }: Claim): number | undefined {
  if (settings.airTransmission !== undefined) return settings.airTransmission;
  if (distance === undefined || humidity === undefined || settings.airTemp === undefined) return undefined;
  try {
    return airTransmission(
      { distance, humidity, airTemp: settings.airTemp, ...(pressure === undefined ? {} : { pressure }) },
      band,
    );
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

/** What the case gives, or undefined where there is no answer. */
function answer({ apparent, settings, band }: TemperatureCase): number | undefined {
  try {
    return correct(apparent, settings, band).temperature;
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

function ofDigits(given: TemperatureCase, half: number, value: number): number {
  const moved = [given.apparent - half, given.apparent + half].map(
    (apparent) => answer({ ...given, apparent }) ?? value,
  );
  return Math.max(...moved.map((temp) => Math.abs(temp - value)));
}

/** Wavelengths [m] above which a camera is a long-wave one. */
const LONG_WAVE = 6e-6;

/** Which of the usual long-wave bands a report went by is seldom said: it may have been the other. */
function shiftOfBand(given: TemperatureCase, value: number): number {
  if ((given.band.segments[0]?.lo ?? 0) < LONG_WAVE) return 0;
  return (answer({ ...given, band: flatBand(8, 14) }) ?? value) - value;
}

function cornersOf(
  given: TemperatureCase,
  varied: readonly string[],
  spans: Readonly<Record<string, readonly [number, number]>>,
): TemperatureCase[] {
  let corners: Partial<Settings>[] = [{}];
  for (const name of varied) corners = corners.flatMap((one) => spans[name]!.map((end) => ({ ...one, [name]: end })));
  const airTemp = given.settings.airTemp ?? USUAL_AIR;
  return corners.map((change) => ({ ...given, settings: { ...given.settings, airTemp, ...change } }));
}
