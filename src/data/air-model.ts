import model from "./air-model.json";

/**
 * Fitted numbers of one stretch of wavenumbers [cm⁻¹]: water lines (w), their continuum (s: self, f: foreign) and the
 * uniformly mixed gases (g). Names as in the model file's own formulae.
 */
export interface SubBand {
  readonly nu1: number;
  readonly nu2: number;
  readonly a_w: number;
  readonly B_w: number;
  readonly c_s: number;
  readonly c_f: number;
  readonly a_g: number;
  readonly B_g: number;
  readonly gamma_w: number;
  readonly gamma_g: number;
  readonly n_w: number;
  readonly n_s: number;
  readonly n_g: number;
  readonly phi_co2: number;
}

/** The transmission of air near the ground, as air-model.json has it; its provenance stands in the file. */
export interface AirModel {
  readonly name: string;
  readonly provenance: string;
  /** Each a pair from, to. */
  readonly validity: Readonly<Record<"d_m" | "T_air_C" | "RH_pct" | "P_kPa" | "nu_cm1", readonly number[]>>;
  readonly constants: {
    readonly T0_K: number;
    readonly P0_kPa: number;
    readonly Rv_J_kgK: number;
    readonly CO2_ref_ppm: number;
    readonly magnus: { readonly A_hPa: number; readonly b: number; readonly c_C: number; readonly source: string };
  };
  readonly subbands: readonly SubBand[];
}

export const AIR_MODEL: AirModel = model;
