/** Exact constants of the SI (2019), CODATA 2018; what follows from them is computed, never typed. */

/** Planck constant h [J·s], exact. */
export const PLANCK_CONSTANT = 6.62607015e-34;
/** Speed of light in vacuum c [m/s], exact. */
export const SPEED_OF_LIGHT = 299792458;
/** Boltzmann constant k [J/K], exact. */
export const BOLTZMANN_CONSTANT = 1.380649e-23;
/** First radiation constant for spectral radiance c1L = 2hc² [W·m²/sr]. */
export const FIRST_RADIATION_CONSTANT = 2 * PLANCK_CONSTANT * SPEED_OF_LIGHT * SPEED_OF_LIGHT;
/** Second radiation constant c2 = hc/k [m·K]. */
export const SECOND_RADIATION_CONSTANT = (PLANCK_CONSTANT * SPEED_OF_LIGHT) / BOLTZMANN_CONSTANT;
/** Stefan–Boltzmann constant σ = 2π⁵k⁴/(15h³c²) [W/(m²·K⁴)]. */
export const STEFAN_BOLTZMANN_CONSTANT =
  (2 * Math.PI ** 5 * BOLTZMANN_CONSTANT ** 4) / (15 * PLANCK_CONSTANT ** 3 * SPEED_OF_LIGHT ** 2);
/** 0 °C in kelvin. */
export const ZERO_CELSIUS = 273.15;
