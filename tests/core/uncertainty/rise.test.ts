import { apparent, correct } from "../../../src/core/correction/correct.js";
import { DEFAULT_BAND, flatBand } from "../../../src/core/planck/band.js";
import { budget } from "../../../src/core/uncertainty/budget.js";
import { cameraUncertainty } from "../../../src/core/uncertainty/camera.js";
import { normal } from "../../../src/core/uncertainty/generator/normal.js";
import type { UncertainReading } from "../../../src/core/uncertainty/inputs.js";
import { propagate } from "../../../src/core/uncertainty/propagate.js";
import { RELATIONS, riseUncertainty } from "../../../src/core/uncertainty/rise.js";
import { kelvin } from "../../support/radiometry.js";
import { refusal } from "../../support/refusal.js";

const BAND = flatBand(8, 14);
/** What k = 2 holds of a normal distribution. */
const TWO = 0.954499736103642;

interface Surface {
  readonly emissivity: number;
  readonly emissivityU: number;
}
const SURFACES = { sharp: { emissivity: 0.95, emissivityU: 0.02 }, dull: { emissivity: 0.85, emissivityU: 0.05 } };

/** A reading of an object in surroundings of 25 ± 3 °C, camera ±2 K, all rectangular. */
function seen(objectTemp: number, { emissivity, emissivityU }: Surface): UncertainReading {
  const settings = { emissivity, reflected: kelvin(25) };
  const rectangle = (stated: number) => ({ stated, distribution: "rectangular" as const });
  return {
    apparent: apparent(kelvin(objectTemp), settings, BAND),
    settings,
    uncertainties: { apparent: rectangle(2), emissivity: rectangle(emissivityU), reflected: rectangle(3) },
  };
}

const expanded = (relation: string, surface: Surface, coverage: number): number => {
  const reference = relation === "air by thermometer" ? { temperature: kelvin(50) } : seen(50, surface);
  return riseUncertainty(seen(70, surface), reference, relation, coverage, BAND).expanded;
};

describe("the figures of the house for a rise of 20 K over 50 °C (computed there)", () => {
  test.each([
    ["ε 0.95 ± 0.02", SURFACES.sharp, ["0.96", "1.4", "3.6", "2.8"]],
    ["ε 0.85 ± 0.05", SURFACES.dull, ["1.4", "3.2", "4.8", "3.9"]],
  ])("%s: all four with k = 2, within 3 %% with the 1.96 of a coverage of 0.95", (_, surface, figures) => {
    for (const [i, figure] of figures.entries()) {
      const digits = figure.split(".")[1]?.length ?? 0;
      const relation = RELATIONS[i] ?? "";
      expect(expanded(relation, surface, TWO).toFixed(digits)).toBe(figure);
      expect(Math.abs(expanded(relation, surface, 0.95) / Number(figure) - 1)).toBeLessThan(0.03);
    }
  });
});

describe("what both share", () => {
  const hot = seen(70, SURFACES.sharp);
  const reference = seen(50, SURFACES.sharp);
  const air = { airTransmission: 0.9, airTemp: kelvin(20) };
  const through = (reading: UncertainReading): UncertainReading => ({
    ...reading,
    settings: { ...reading.settings, ...air },
    uncertainties: { ...reading.uncertainties, airTransmission: { stated: 0.01 }, airTemp: { stated: 1 } },
  });
  const standard = (relation: string, one = hot, other = reference): number =>
    riseUncertainty(one, other, relation, 0.95, BAND).standard;

  test("is nothing in two images: the root of both squares", () => {
    const both = [hot, reference].map((reading) => budget(reading, 0.95, BAND).combined);
    expect(standard("two images")).toBeCloseTo(Math.hypot(...both), 12);
  });

  test("leaves repeatability alone between two spots that are alike", () => {
    const { sensitivities } = budget(hot, 0.95, BAND);
    expect(standard("same image, same surface", hot, hot)).toBeCloseTo(Math.SQRT2 * 0.3 * sensitivities.apparent, 12);
  });

  test("is no offset where the reading's uncertainty is all repeatability", () => {
    const sure = (reading: UncertainReading): UncertainReading => ({
      ...reading,
      uncertainties: { apparent: { stated: 0.2 } },
    });
    expect(standard("same image, other surface", sure(hot), sure(reference))).toBeCloseTo(
      standard("two images", sure(hot), sure(reference)),
      12,
    );
  });

  test("agrees with draws of the two temperatures from inputs that are the same ones, or are not", () => {
    const [one, other] = [through(hot), through(reference)];
    const u = (name: keyof UncertainReading["uncertainties"]): number => {
      const { stated = 0, distribution } = one.uncertainties[name] ?? {};
      return distribution === "rectangular" ? stated / Math.sqrt(3) : stated;
    };
    const draw = (own: boolean): number =>
      propagate(
        9,
        (generator, columns) => {
          for (const column of columns) for (let k = 0; k < column.length; k++) column[k] = normal(generator);
        },
        (columns, out) => {
          const offset = Math.sqrt(u("apparent") ** 2 - 0.3 ** 2);
          for (let k = 0; k < out.length; k++) {
            const z = columns.map((column) => column[k]!);
            const temperature = (reading: UncertainReading, noise: number, e: number, r: number): number =>
              correct(
                reading.apparent + offset * z[0]! + 0.3 * noise,
                {
                  emissivity: reading.settings.emissivity + u("emissivity") * e,
                  reflected: reading.settings.reflected + u("reflected") * r,
                  airTransmission: air.airTransmission + u("airTransmission") * z[7]!,
                  airTemp: air.airTemp + u("airTemp") * z[8]!,
                },
                BAND,
              ).temperature;
            const [e, r] = own ? [z[5]!, z[6]!] : [z[3]!, z[4]!];
            out[k] = temperature(one, z[1]!, z[3]!, z[4]!) - temperature(other, z[2]!, e, r);
          }
        },
        { draws: 40_000, seed: 12 },
      ).standardDeviation;
    // 40,000 draws tell a deviation to 0.35 %; the rest is what first order leaves out.
    expect(standard("same image, same surface", one, other) / draw(false)).toBeCloseTo(1, 1.5);
    expect(standard("same image, other surface", one, other) / draw(true)).toBeCloseTo(1, 1.5);
  });

  test("by thermometer: its own uncertainty, else that of ±1 K", () => {
    const { combined } = budget(hot, 0.95, BAND);
    const by = (standardU?: number): number =>
      riseUncertainty(
        hot,
        { temperature: kelvin(50), ...(standardU !== undefined && { standard: standardU }) },
        "air by thermometer",
        0.95,
        BAND,
      ).standard;
    expect(by()).toBeCloseTo(Math.hypot(combined, 1 / Math.sqrt(3)), 12);
    expect(by(0.1)).toBeCloseTo(Math.hypot(combined, 0.1), 12);
    expect(by(0)).toBeCloseTo(combined, 12);
  });

  test.each([
    ["no such relation", reference, "INVALID relation no such relation"],
    ["air by thermometer", reference, "INVALID reference reference-air"],
    ["two images", { temperature: kelvin(50) }, "INVALID reference reference-reading"],
    ["same image, same surface", seen(50, SURFACES.dull), "INVALID relation same image, same surface other-surface"],
    ["air by thermometer", { temperature: -1 }, "INVALID reference"],
  ])("%s with another reference is refused", (relation, other, told) => {
    expect(() => riseUncertainty(hot, other, relation, 0.95, BAND)).toThrow(told);
  });
});

describe("a camera's accuracy", () => {
  test("is the greater of both, of the reading's amount in °C, as a rectangle", () => {
    // 2 % of 100 °C is 2 K: there both are the same.
    for (const t of [-100, 0, 99, 100]) expect(cameraUncertainty(kelvin(t), 2, 0.02)).toBeCloseTo(2 / Math.sqrt(3), 12);
    expect(cameraUncertainty(kelvin(300), 2, 0.02)).toBeCloseTo(6 / Math.sqrt(3), 12);
    expect(cameraUncertainty(kelvin(300), 0, 0.01)).toBeCloseTo(3 / Math.sqrt(3), 12);
  });

  test.each([
    [0, 2, 0.02, "INVALID reading"],
    [300, -1, 0.02, "INVALID absolute"],
    [300, 2, 0.6, "INVALID percent"],
    [300, 2, 0.0002, "INVALID percent 0.0002 percent-meant"],
    [300, 0, 0, "INVALID absolute 0 camera-exact"],
  ])("of %d K, ±%d K, ±%d is refused", (reading, absolute, share, told) => {
    expect(refusal(() => cameraUncertainty(reading, absolute, share)).message).toContain(told);
  });
});

test("inputs that go together: counted in two images, refused within one", () => {
  const together: UncertainReading = {
    ...seen(70, SURFACES.dull),
    correlations: [{ one: "apparent", other: "reflected", r: 0.5 }],
  };
  const of = (relation: string) => () => riseUncertainty(together, seen(50, SURFACES.dull), relation, 0.95, BAND);
  // The two act against each other, so going together takes from the uncertainty.
  const apart = riseUncertainty(seen(70, SURFACES.dull), seen(50, SURFACES.dull), "two images", 0.95, BAND);
  expect(of("two images")().standard).toBeLessThan(apart.standard);
  for (const relation of RELATIONS.slice(0, 2)) {
    expect(of(relation)).toThrow("INVALID correlations correlations-in-one-image");
  }
});

// A black surface, so that a kelvin of the reading is one of the temperature; what is expected is worked out beside it.
describe("the camera's error within one image", () => {
  const black = (celsius: number, standard: number): UncertainReading => ({
    apparent: kelvin(celsius),
    settings: { emissivity: 1, reflected: kelvin(25) },
    uncertainties: { apparent: { stated: standard } },
  });
  const standard = (hot: UncertainReading, reference: UncertainReading): number =>
    riseUncertainty(hot, reference, "same image, same surface", 0.95, BAND).standard;
  const own = 0.3 * Math.SQRT2;

  test("up to 100 °C is an offset and cancels", () => {
    expect(standard(black(100, 1.155), black(44, 1.155))).toBeCloseTo(own, 9);
  });

  test("above may be a gain: 2 % of 171 °C, of which (171 − 44)/171 stays", () => {
    const u = (0.02 * 171) / Math.sqrt(3);
    const stays = (Math.sqrt(u ** 2 - 0.3 ** 2) * (171 - 44)) / 171;
    expect(standard(black(171, u), black(44, u))).toBeCloseTo(Math.hypot(stays, own), 9);
    expect(stays).toBeCloseTo(1.45, 2);
  });

  test("where the two readings have uncertainties of their own, never less than their difference", () => {
    const shared = (u: number): number => Math.sqrt(u ** 2 - 0.3 ** 2);
    expect(standard(black(171, 2), black(44, 0.31))).toBeCloseTo(Math.hypot(shared(2) - shared(0.31), own), 9);
  });
});

test("the band is handed through", () => {
  const one = seen(70, SURFACES.dull);
  const by = (band: typeof BAND): number =>
    riseUncertainty(one, { temperature: kelvin(50) }, "air by thermometer", 0.95, band).rise;
  expect(by(BAND)).not.toBeCloseTo(by(DEFAULT_BAND), 3);
});
