/** The part of PsychroLib (which brings no types) that a test uses. */
declare module "psychrolib" {
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Saturation pressure [Pa] at a temperature [°C]. */
    GetSatVapPres(celsius: number): number;
    /** Vapour pressure [Pa] at a temperature [°C] and a relative humidity [-]. */
    GetVapPresFromRelHum(celsius: number, humidity: number): number;
  }
  const psychrolib: Psychrometrics;
  export = psychrolib;
}
