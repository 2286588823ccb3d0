import { ZERO_CELSIUS } from "../../src/core/constants.js";
import { DEFAULT_BAND } from "../../src/core/planck/band.js";
import { monteCarlo } from "../../src/core/uncertainty/monte-carlo.js";
import type { UncertainReading } from "../../src/core/uncertainty/inputs.js";
import { ROWS } from "./columns.js";
import { best, compare } from "./ratio.js";

/** Longest that the draws of one reading may take [ms]. */
const MOST = 50;

const inAir: UncertainReading = {
  apparent: 58 + ZERO_CELSIUS,
  settings: { emissivity: 0.85, reflected: 22 + ZERO_CELSIUS, airTransmission: 0.98, airTemp: 20 + ZERO_CELSIUS },
  uncertainties: {
    apparent: { stated: 0.5 },
    emissivity: { stated: 0.02 },
    reflected: { stated: 1 },
    airTransmission: { stated: 0.005 },
    airTemp: { stated: 1 },
  },
};
const throughWindow: UncertainReading = {
  apparent: inAir.apparent,
  settings: {
    ...inAir.settings,
    windowTransmission: 0.7,
    windowTemp: 30 + ZERO_CELSIUS,
    windowReflectance: 0.1,
    outerReflected: 24 + ZERO_CELSIUS,
    outerAirTransmission: 0.97,
  },
  uncertainties: {
    ...inAir.uncertainties,
    windowTransmission: { stated: 0.02 },
    windowTemp: { stated: 2, distribution: "rectangular" },
    windowReflectance: { stated: 0.02 },
    outerReflected: { stated: 1 },
    outerAirTransmission: { stated: 0.005 },
  },
};
const together: UncertainReading = {
  ...inAir,
  uncertainties: { ...inAir.uncertainties, reflected: { stated: 2, distribution: "rectangular" } },
  correlations: [{ one: "reflected", other: "airTemp", r: 0.9 }],
};
const cases = [
  { name: "five inputs", most: 20, run: () => monteCarlo(inAir, DEFAULT_BAND, { draws: ROWS }) },
  {
    name: "two of them together, one rectangular",
    most: 25,
    run: () => monteCarlo(together, DEFAULT_BAND, { draws: ROWS }),
  },
  {
    name: "ten inputs, through a window",
    most: 30,
    run: () => monteCarlo(throughWindow, DEFAULT_BAND, { draws: ROWS }),
  },
];

await compare("Monte Carlo, one reading", cases);
for (const { name, run } of cases) {
  const time = (await best(run)) / 1e6;
  console.log(
    `  ${name.padEnd(48)} ${time.toFixed(1).padStart(7)} ms (limit ${MOST} ms)${time <= MOST ? "" : "  TOO SLOW"}`,
  );
  if (time > MOST) process.exitCode = 1;
}
