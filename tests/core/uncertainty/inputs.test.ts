import { DEFAULT_BAND } from "../../../src/core/planck/band.js";
import { budget } from "../../../src/core/uncertainty/budget.js";
import { argumentOf, completeReading, INPUT_NAMES, standardUncertainty } from "../../../src/core/uncertainty/inputs.js";
import type { InputName, InputUncertainty, UncertainReading } from "../../../src/core/uncertainty/inputs.js";
import { sensitivities } from "../../../src/core/correction/correct.js";
import { refusal } from "../../support/refusal.js";

const settings = { emissivity: 0.85, reflected: 295.15 };
const reading = (
  uncertainties: Partial<Record<InputName, InputUncertainty>>,
  more: Partial<UncertainReading> = {},
): UncertainReading => ({ apparent: 331.15, settings, uncertainties, ...more });

test("half-widths: a/√3 rectangular, a/√6 triangular", () => {
  expect(standardUncertainty(0.6, "normal")).toBe(0.6);
  expect(standardUncertainty(0.6, "rectangular")).toBeCloseTo(0.346410161513775, 12);
  expect(standardUncertainty(0.6, "triangular")).toBeCloseTo(0.244948974278318, 12);
});

test("the inputs are those that have a sensitivity, in their order, by the names of the arguments", () => {
  expect(INPUT_NAMES).toEqual(Object.keys(sensitivities(331.15, settings, DEFAULT_BAND)));
  expect(argumentOf("outerAirTransmission")).toBe("outer_air_transmission");
});

test("defaults: no uncertainty is exact, infinite degrees of freedom, normal, no correlation", () => {
  const { inputs, correlation } = completeReading(reading({ emissivity: { stated: 0.02 } }));
  expect(inputs).toHaveLength(10);
  expect(inputs[0]).toMatchObject({ value: 331.15, standard: 0, freedom: Infinity, distribution: "normal" });
  expect(inputs[1]).toMatchObject({ value: 0.85, standard: 0.02 });
  expect(inputs[3]).toMatchObject({ value: 1, standard: 0 });
  expect(inputs[4]?.value).toBeNaN();
  expect(correlation.flat().reduce((sum, r) => sum + r, 0)).toBe(10);
});

test.each([
  ["below 0", { emissivity: { stated: -0.01 } }, "INVALID", "emissivity_u", undefined],
  ["per cent for a fraction", { emissivity: { stated: 2 } }, "INVALID", "emissivity_u", "per-cent"],
  ["no number", { apparent: { stated: NaN } }, "INVALID", "apparent_u", undefined],
  ["less than one degree of freedom", { apparent: { stated: 1, freedom: 0.5 } }, "INVALID", "freedom", undefined],
  ["nothing uncertain", { apparent: { stated: 0 } }, "INVALID", "uncertainties", "all-exact"],
  [
    "air of unknown temperature",
    { airTransmission: { stated: 0.01 } },
    "NOT_GIVEN",
    "air_temp",
    "temperature-of-uncertain",
  ],
  ["outer air too", { outerAirTransmission: { stated: 0.01 } }, "NOT_GIVEN", "air_temp", "temperature-of-uncertain"],
  ["a window", { windowTransmission: { stated: 0.01 } }, "NOT_GIVEN", "window_temp", "temperature-of-uncertain"],
  [
    "a window that mirrors",
    { windowReflectance: { stated: 0.01 } },
    "NOT_GIVEN",
    "window_temp",
    "temperature-of-uncertain",
  ],
] as const)("refuses %s", (_, uncertainties, code, argument, key) => {
  const found = refusal(() => completeReading(reading(uncertainties)));
  expect(found).toMatchObject({ code, argument });
  expect(found.hint?.key).toBe(key);
});

test("an uncertain temperature that plays no part adds nothing, and is no fault", () => {
  const alone = budget(reading({ apparent: { stated: 1 } }), 0.95, DEFAULT_BAND);
  const more = budget(reading({ apparent: { stated: 1 }, windowTemp: { stated: 5 } }), 0.95, DEFAULT_BAND);
  expect(more.expanded).toBe(alone.expanded);
});
