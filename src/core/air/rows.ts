import { AIR_MODEL } from "../../data/air-model.js";
import { exp2InPlace } from "./exp2.js";
import { saturationPressureOf, vapourDensityOf } from "./humidity.js";
import type { AirBand, Weights } from "./subbands.js";

const { T0_K: T0, P0_kPa } = AIR_MODEL.constants;
/** Pressure of the model's amounts [Pa]. */
export const P0 = P0_kPa * 1000;
const PASCAL_PER_KILOPASCAL = 1000;
const METRES_PER_KILOMETRE = 1000;
/** The model's own cap of an optical depth. */
const DEEPEST = 90;

/**
 * A run of rows on the way through the sub-bands of a band. Each step is a plain loop over the rows: what a compiler
 * makes of one long expression with five powers in it is a third slower.
 */
export class AirRows {
  private readonly logTheta: Float64Array;
  private readonly pressure: Float64Array;
  /** Amounts over what broadens their lines: u/B but for the sub-band's own numbers. */
  private readonly waterRatio: Float64Array;
  private readonly gasRatio: Float64Array;
  private readonly selfDensity: Float64Array;
  private readonly foreignDensity: Float64Array;
  private readonly water: Float64Array;
  private readonly gas: Float64Array;
  private readonly self: Float64Array;
  private airTemp = NaN;
  private vapour = NaN;
  private theta = NaN;
  private oneTemperature = true;
  private count = 0;

  constructor(
    private readonly band: AirBand,
    /** Carbon dioxide over the model's, less 1. */
    private readonly excessCo2: number,
    readonly capacity: number,
  ) {
    const column = (): Float64Array => new Float64Array(capacity);
    this.logTheta = column();
    this.pressure = column();
    this.waterRatio = column();
    this.gasRatio = column();
    this.selfDensity = column();
    this.foreignDensity = column();
    this.water = column();
    this.gas = column();
    this.self = column();
  }

  /** Takes a row in, valid, at the end of the run; the run is emptied by `transmissions`. */
  add(distance: number, airTemp: number, humidity: number, pressure: number): void {
    const i = this.count++;
    if (airTemp !== this.airTemp) {
      if (i > 0) this.oneTemperature = false;
      this.airTemp = airTemp;
      this.vapour = saturationPressureOf(airTemp);
      this.theta = T0 / airTemp;
    }
    const vapour = this.vapour * humidity;
    const p = pressure / P0;
    const w = vapourDensityOf(vapour, airTemp) * distance;
    this.logTheta[i] = Math.log2(this.theta);
    this.pressure[i] = p;
    this.waterRatio[i] = w / p;
    // The pressure of the gases' amount and the one that broadens their lines cancel.
    this.gasRatio[i] = (distance / METRES_PER_KILOMETRE) * this.theta;
    this.selfDensity[i] = (vapour / PASCAL_PER_KILOPASCAL) * w;
    this.foreignDensity[i] = p * w;
  }

  /** τ = Σ W·exp(−k) / Σ W of each row taken in, written from `at` on; k from water lines, continuum and mixed gases. */
  transmissions(weights: Weights, out: Float64Array, at: number): void {
    const { count } = this;
    out.fill(0, at, at + count);
    for (let band = 0; band < this.band.count; band++) {
      this.warm(band);
      this.grow(band);
      this.depthsToTransmissions(band);
      const weight = weights.each[band]!;
      for (let i = 0; i < count; i++) out[at + i]! += weight * this.water[i]!;
    }
    // Divided once, at the end: without a path the quotient is exactly 1.
    for (let i = 0; i < count; i++) out[at + i]! /= weights.total;
    this.count = 0;
    this.oneTemperature = true;
  }

  /** The powers of θ: into water, gas and self. */
  private warm(band: number): void {
    const { waterTemperature, gasTemperature, selfTemperature } = this.band;
    this.powers(this.water, waterTemperature[band]!);
    this.powers(this.gas, gasTemperature[band]!);
    this.powers(this.self, selfTemperature[band]!);
  }

  private powers(to: Float64Array, exponent: number): void {
    const { logTheta, count } = this;
    const computed = this.oneTemperature ? Math.min(count, 1) : count;
    for (let i = 0; i < computed; i++) to[i] = exponent * logTheta[i]!;
    exp2InPlace(to, computed);
    if (computed < count) to.fill(to[0]!, computed, count);
  }

  /** (1 + u/(B·γ))^γ of water and gases. */
  private grow(band: number): void {
    const { water, gas, waterRatio, gasRatio, count } = this;
    const waterAmount = this.band.waterAmount[band]!;
    const waterExponent = this.band.waterExponent[band]!;
    const gasAmount = this.band.gasAmount[band]! * (1 + this.band.carbonDioxide[band]! * this.excessCo2);
    const gasExponent = this.band.gasExponent[band]!;
    for (let i = 0; i < count; i++) {
      water[i] = waterExponent * Math.log(1 + waterAmount * water[i]! * waterRatio[i]!);
      gas[i] = gasExponent * Math.log(1 + gasAmount * gas[i]! * gasRatio[i]!);
    }
    exp2InPlace(water, count);
    exp2InPlace(gas, count);
  }

  /** exp(−k), into water. */
  private depthsToTransmissions(band: number): void {
    const { water, gas, self, pressure, selfDensity, foreignDensity, count } = this;
    const waterGrowth = this.band.waterGrowth[band]!;
    const gasGrowth = this.band.gasGrowth[band]!;
    const selfContinuum = this.band.selfContinuum[band]!;
    const foreignContinuum = this.band.foreignContinuum[band]!;
    for (let i = 0; i < count; i++) {
      const lines = pressure[i]! * (waterGrowth * (water[i]! - 1) + gasGrowth * (gas[i]! - 1));
      const continuum = selfContinuum * self[i]! * selfDensity[i]! + foreignContinuum * foreignDensity[i]!;
      const depth = lines + continuum;
      water[i] = -Math.LOG2E * (depth > DEEPEST ? DEEPEST : depth);
    }
    exp2InPlace(water, count);
  }
}
