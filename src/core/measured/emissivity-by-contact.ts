import { RULES } from "../../data/rules.js";
import { requireTemperature, requireTransmission, temperatureWhere } from "../correction/settings.js";
import { GreybodyError } from "../errors.js";
import { SUM_SLACK } from "../limits.js";
import type { Band } from "../planck/band.js";
import { radiance } from "../planck/exact.js";
import { requireContrast } from "./contrast.js";

export interface EmissivityByContactInputs {
  /** What the camera shows of the surface with its own settings at 1 [K]. */
  readonly apparent: number;
  /** The surface's temperature by a contact thermometer [K]. */
  readonly contactTemp: number;
  /** Reflected apparent temperature [K]. */
  readonly reflected: number;
  /** Transmission of the air [-], above 0 to 1; 1 where absent. */
  readonly airTransmission?: number;
  /** Temperature of the air on the path [K]; required where its transmission is below 1. */
  readonly airTemp?: number;
}

/**
 * Emissivity of a surface [-], above 0 to 1, from its temperature by contact: (C − L(refl))/(L(contact) − L(refl)) with C
 * the signal that leaves the surface. What rounding alone puts above 1 is 1.
 * @throws INVALID, NOT_GIVEN (which argument), REFUSED (contact and reflected less than 10 K apart), NO_SOLUTION (the
 * readings would take an emissivity above 1, or none)
 * Source: ASTM E1933-14 (contact method), measurement equation of ISO 18434-1.
 */
export function emissivityByContact(inputs: EmissivityByContactInputs, band: Band): number {
  const { apparent, contactTemp, reflected, airTransmission = 1 } = inputs;
  requireTemperature("apparent", apparent);
  requireTemperature("contact_temp", contactTemp);
  requireTemperature("reflected", reflected);
  requireTransmission("air_transmission", airTransmission);
  const airTemp = temperatureWhere(airTransmission < 1, "air_temp", inputs.airTemp, "air-temp-needed");
  const least = RULES.emissivity_contrast_least.value;
  requireContrast("contact_temp", contactTemp, reflected, least, "emissivity-contrast");
  const signal = radiance(band, apparent);
  const leaving =
    airTransmission === 1 ? signal : (signal - (1 - airTransmission) * radiance(band, airTemp)) / airTransmission;
  const mirrored = radiance(band, reflected);
  const emissivity = (leaving - mirrored) / (radiance(band, contactTemp) - mirrored);
  if (!Number.isFinite(emissivity)) throw unphysical("no-radiance", apparent, emissivity);
  if (emissivity > 1 + SUM_SLACK) throw unphysical("emissivity-above-one", apparent, emissivity);
  if (emissivity <= SUM_SLACK) throw unphysical("emissivity-none", apparent, emissivity);
  return Math.min(1, emissivity);
}

function unphysical(key: string, apparent: number, emissivity: number): GreybodyError {
  const hint = { key, values: { emissivity } };
  return new GreybodyError({ code: "NO_SOLUTION", argument: "apparent", given: apparent, hint });
}
