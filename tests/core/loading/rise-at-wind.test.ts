import { riseAtWind } from "../../../src/core/loading/rise-at-wind.js";
import { refusal } from "../../support/refusal.js";

it("answers at 1 and at 7 m/s, also where they come from mph", () => {
  expect(riseAtWind({ rise: 10, wind: 1 })).toBe(10);
  // 2.2369362920544 mph and 15.658554044381 mph, as a sheet holds them.
  expect(riseAtWind({ rise: 10, wind: 2.2369362920544 * 0.44704 })).toBeCloseTo(10, 9);
  expect(riseAtWind({ rise: 10, wind: 15.658554044381 * 0.44704, exponent: 0.5 })).toBeCloseTo(10 * Math.sqrt(7), 9);
});

it("no wind changes no rise of 0", () => {
  expect(riseAtWind({ rise: 0, wind: 5 })).toBe(0);
});

it.each([
  ["calm", { wind: 0 }, "REFUSED", "wind", "wind-too-little"],
  ["0.99 m/s", { wind: 0.99 }, "REFUSED", "wind", "wind-too-little"],
  ["7.01 m/s", { wind: 7.01 }, "REFUSED", "wind", "wind-too-strong"],
  ["to calm", { wind: 3, referenceWind: 0 }, "REFUSED", "reference_wind", "wind-too-little"],
  ["to 8 m/s", { wind: 3, referenceWind: 8 }, "REFUSED", "reference_wind", "wind-too-strong"],
  ["a wind below 0", { wind: -1 }, "INVALID", "wind", undefined],
  ["a hurricane", { wind: 31 }, "INVALID", "wind", undefined],
  ["the slogan 1/v", { wind: 3, exponent: 1 }, "INVALID", "exponent", undefined],
  ["a rise of -4 K", { rise: -4, wind: 3 }, "REFUSED", "rise", "negative-rise"],
  ["no number", { rise: NaN, wind: 3 }, "INVALID", "rise", undefined],
])("refuses %s", (_, inputs, code, argument, hint) => {
  const error = refusal(() => riseAtWind({ rise: 10, ...inputs }));
  expect(error).toMatchObject({ code, argument });
  expect(error.hint?.key).toBe(hint);
});
