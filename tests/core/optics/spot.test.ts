import { farthest, spotSize } from "../../../src/core/optics/spot.js";
import { refusal } from "../../support/refusal.js";

it("needs three pixels where nothing else is said", () => {
  expect(spotSize({ distance: 2, ifov: 1e-3 })).toBe(spotSize({ distance: 2, ifov: 1e-3, pixels: 3 }));
  expect(farthest({ target: 0.006, ifov: 1e-3 })).toBeCloseTo(2, 12);
});

it.each([
  ["no distance", () => spotSize({ distance: 0, ifov: 1e-3 }), "distance", undefined],
  ["a distance beyond a kilometre", () => spotSize({ distance: 1001, ifov: 1e-3 }), "distance", undefined],
  ["no target", () => farthest({ target: 0, ifov: 1e-3 }), "target", undefined],
  ["0.00136 typed where mrad are wanted", () => spotSize({ distance: 3, ifov: 1.36e-6 }), "ifov", "ifov-radians"],
  ["a field of view of 436 mrad", () => farthest({ target: 0.01, ifov: 0.436 }), "ifov", "ifov-of-picture"],
  ["an angle of 0", () => spotSize({ distance: 3, ifov: 0 }), "ifov", undefined],
  ["half a pixel", () => spotSize({ distance: 3, ifov: 1e-3, pixels: 0.5 }), "pixels", undefined],
  ["pixels that are no number", () => farthest({ target: 1, ifov: 1e-3, pixels: NaN }), "pixels", undefined],
])("refuses %s", (_, call, argument, hint) => {
  const error = refusal(call);
  expect(error).toMatchObject({ code: "INVALID", argument });
  expect(error.hint?.key).toBe(hint);
});

it("radians are told in mrad", () => {
  expect(refusal(() => spotSize({ distance: 3, ifov: 1.36e-6 })).hint?.values?.meant).toBeCloseTo(1.36, 12);
});
