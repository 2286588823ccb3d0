import { SECOND_RADIATION_CONSTANT } from "../../src/core/constants.js";
import { AIR_MODEL } from "../../src/data/air-model.js";

/**
 * The sub-band model as its file prints the formulae, for a flat band and with nothing hoisted: what the core's fast form
 * is held against. c₂ follows from the SI, as in the core: the file rounds it to ten digits. Units of the file: °C, %, kPa, m, K, µm, ppm.
 */
export function plainAir(
  d: number,
  t: number,
  rh: number,
  kPa: number,
  source: number,
  from: number,
  to: number,
  co2 = 420,
): number {
  const growth = (u: number, b: number, g: number): number => b * (Math.pow(1 + u / (b * g), g) - 1);
  const e = (6.112 * Math.exp((17.62 * t) / (243.12 + t)) * rh) / 100;
  const kelvin = t + 273.15;
  const w = (((1e5 * e) / (461.522 * kelvin)) * d) / 1000;
  const theta = 296 / kelvin;
  const p = kPa / 101.325;
  const g = (d / 1000) * p * theta;
  let sum = 0;
  let total = 0;
  for (const s of AIR_MODEL.subbands) {
    const lo = Math.max(s.nu1, 1e4 / to);
    const hi = Math.min(s.nu2, 1e4 / from);
    if (hi <= lo) continue;
    const step = (hi - lo) / 20;
    let weight = 0;
    for (let i = 0; i <= 20; i++) {
      const nu = lo + i * step;
      weight +=
        ((i % 20 === 0 ? 1 : i % 2 === 1 ? 4 : 2) * step * nu ** 3) /
        3 /
        (Math.exp((100 * SECOND_RADIATION_CONSTANT * nu) / source) - 1);
    }
    const k =
      growth(s.a_w * Math.pow(theta, s.n_w) * w, s.B_w * p, s.gamma_w) +
      w * (s.c_s * (e / 10) * Math.pow(theta, s.n_s) + s.c_f * p) +
      growth(s.a_g * Math.pow(theta, s.n_g) * g * (1 + s.phi_co2 * (co2 / 420 - 1)), s.B_g * p, s.gamma_g);
    sum += weight * Math.exp(-Math.min(k, 90));
    total += weight;
  }
  return sum / total;
}
