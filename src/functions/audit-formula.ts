/** The formula that gives a recomputed temperature, with its values in it, for an auditor to paste. */
import { recompute } from "../core/audit/verdict/recompute.js";
import type { Claim } from "../core/audit/verdict/claim.js";
import { ZERO_CELSIUS } from "../core/constants.js";
import { NAMESPACE } from "./describe.js";
import { fromSI, readable, unitOf, type Units } from "./units.js";

/** Digits enough that the cell shows what was recomputed. */
const DIGITS = 7;

/** "" where nothing was recomputed from a reading. */
export function temperatureFormula(claim: Claim, units: Units): string {
  const { given } = recompute(claim, claim.apparent);
  if (given === undefined) return "";
  const { settings, apparent } = given;
  const temp = (si: number | undefined): string =>
    si === undefined ? "" : readable(fromSI(si, unitOf("temperature", units)), DIGITS);
  const plain = (si: number | undefined): string => (si === undefined ? "" : readable(si, DIGITS));
  const inOrder = [
    temp(apparent),
    plain(settings.emissivity),
    temp(settings.reflected),
    plain(settings.airTransmission),
    settings.airTransmission === undefined ? "" : temp(settings.airTemp ?? ZERO_CELSIUS + 20),
    plain(settings.windowTransmission),
    temp(settings.windowTemp),
    plain(settings.windowReflectance),
    temp(settings.outerReflected),
    plain(settings.outerAirTransmission),
    /^[\d.]+-[\d.]+$/.test(given.band.key) ? `"${given.band.key}"` : "",
    units === "F" ? '"F"' : "",
  ];
  while (inOrder.at(-1) === "") inOrder.pop();
  return `=${NAMESPACE}.CORRECTED(${inOrder.join(",")})`;
}
