/** A heat-transfer exercise on a window that emits and reflects: inputs from print, answers computed elsewhere. */
import { apparent, correct } from "../../src/core/correction/correct.js";
import { expectCited, kelvinsIn, namedBand } from "../support/radiometry.js";
import { inputOf, publishedChecks } from "../support/rows.js";

it.each(publishedChecks("WIN-").map((check) => [check.cited, check] as const))("%s", (_, check) => {
  const settings = {
    emissivity: inputOf(check, "emissivity"),
    // A black surface reflects nothing: any temperature will do.
    reflected: 300,
    windowTransmission: inputOf(check, "window_transmission"),
    windowReflectance: inputOf(check, "window_reflectance"),
    windowTemp: kelvinsIn(check, "window_temp"),
    outerReflected: kelvinsIn(check, "camera_reflected"),
  };
  const object = kelvinsIn(check, "object");
  const reading = apparent(object, settings, namedBand(check));
  expectCited(check, reading);
  expect(Math.abs(correct(reading, settings, namedBand(check)).temperature - object)).toBeLessThanOrEqual(1e-6);
});
