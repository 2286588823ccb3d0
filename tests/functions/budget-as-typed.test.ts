/** BUDGET shows an input as it was typed, not what is left of it after kelvin and back (71.39999999999998). */
import { call, specOf } from "./fixture.js";

test.each([
  ["C", 71.4],
  ["F", 160.5],
])("in °%s", (units, apparent) => {
  const table = call(specOf("BUDGET"), { inputs: [[apparent, 0.93, 23]], uncertainties: [[1, 0.02, 2]], units });
  expect(table[1]?.slice(0, 2)).toEqual(["apparent", apparent]);
});
