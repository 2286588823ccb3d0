/** Headers as reports have them: invented tables of invented clients. */
import { mapHeaders } from "../../../src/functions/claims/map-headers.js";
import type { Cell } from "../../../src/functions/contract.js";

const map = (headers: readonly string[], cells: readonly (readonly Cell[])[] = []) =>
  mapHeaders(headers.map((header, c) => ({ header, unit: undefined, cells: cells[c] ?? [], told: undefined })));
const shortly = (headers: readonly string[], cells: readonly (readonly Cell[])[] = []) =>
  map(headers, cells).map(({ column, over }) => (over === undefined ? (column ?? "-") : `${column}:${over}`));

test.each([
  ["Equipment", "item"],
  ["IR image no.", "image"],
  ["Hot spot temp. (°C)", "stated_temp"],
  ["Tmax [°C]", "stated_temp"],
  ["Max. Temperature, °F", "stated_temp"],
  ["Reference temperature °C", "stated_reference_temp"],
  ["ΔT (K)", "stated_rise"],
  ["dT", "stated_rise"],
  ["Delta-T over ambient (°C)", "stated_rise:ambient"],
  ["Rise above similar component [K]", "stated_rise:similar"],
  ["Temperature rise at full load (K)", "stated_rise_at_load"],
  ["Load-corrected ΔT", "stated_rise_at_load"],
  ["Severity", "stated_grade"],
  ["Severity number", "stated_grade"],
  ["Equipment no.", "item"],
  ["n", "exponent"],
  ["Apparent temp (°C)", "apparent"],
  ["Indicated hot spot reading", "apparent"],
  ["Apparent reference temp", "reference_apparent"],
  ["ε", "emissivity"],
  ["Emiss.", "emissivity"],
  ["Reflected apparent temperature (°C)", "reflected"],
  ["T refl", "reflected"],
  ["Distance (ft)", "distance"],
  ["RH %", "humidity"],
  ["Relative humidity [%]", "humidity"],
  ["Ambient (°C)", "surrounding_air"],
  ["Load (A)", "load"],
  ["% load", "load"],
  ["Max load, A", "reference_load"],
  ["Rated current A", "rated_load"],
  ["Rating (A)", "rated_load"],
  ["Spot (F)", "stated_temp"],
  ["Ref (°C)", "stated_reference_temp"],
  ["FLA", "rated_load"],
  ["Surface material", "material"],
  ["stated_temp\n°C", "stated_temp"],
  ["reference_load", "reference_load"],
])("%s is %s", (header, name) => {
  expect(shortly([header])).toEqual([name]);
});

test.each([
  ["Temp (°C)", /stated_temp or apparent/],
  ["Reference load (A)", /reference_load or load_of_reference/],
  ["Transmission", /air_transmission or window_transmission/],
  ["Priority", /stated_grade/],
  ["Phase A temp (°C)", /one hot spot/],
  ["Remarks", /nothing of ours/],
  ["Hot spot no.", /stated_temp/],
  ["Hot spot #", /stated_temp/],
  ["N°", /exponent/],
  ["% of rated", /unit % is none of rated_load/],
  ["Load number", /load/],
  ["Distance (°C)", /unit °C is none of distance/],
  ["Ambient noise temperature", /may be .*surrounding_air/],
])("%s is not taken", (header, why) => {
  const [one] = map([header]);
  expect(one?.column).toBeUndefined();
  expect(one?.why).toMatch(why);
});

test("what stands below decides where the name leaves it open, and speaks against a name", () => {
  expect(shortly(["Reference"], [["adjacent phase", "ambient air"]])).toEqual(["reference"]);
  expect(shortly(["Reference"], [[45.1, 46.2]])).toEqual(["stated_reference_temp"]);
  expect(shortly(["Severity"], [["minor", "serious"]])).toEqual(["stated_grade"]);
  // Rows that are only numbered are not named by that.
  expect(
    shortly(
      ["Item", "Equipment"],
      [
        [1, 2, 3],
        ["Pump", "Fan", "Fan"],
      ],
    ),
  ).toEqual(["-", "item"]);
  expect(shortly(["Emissivity"], [["see note", "paint"]])).toEqual(["-"]);
});

test("two that may be one are both left; names of a row take the first; two rises over different things both stand", () => {
  expect(shortly(["Max temp", "Spot temp"])).toEqual(["-", "-"]);
  expect(shortly(["stated_temp", "Spot temp"])).toEqual(["stated_temp", "-"]);
  expect(shortly(["Location", "Equipment"])).toEqual(["item", "-"]);
  expect(shortly(["ΔT ambient", "ΔT similar"])).toEqual(["stated_rise:ambient", "stated_rise:similar"]);
});

test("what is told goes before what is found", () => {
  const mapped = mapHeaders([
    { header: "Temp", unit: "°C", cells: [58], told: { column: "apparent" } },
    { header: "Emissivity", unit: undefined, cells: [0.9], told: { column: undefined } },
    { header: "Apparent temp", unit: "°C", cells: [59], told: undefined },
  ]);
  expect(mapped.map(({ column }) => column)).toEqual(["apparent", undefined, undefined]);
  expect(mapped[2]?.why).toMatch(/as told/);
});
