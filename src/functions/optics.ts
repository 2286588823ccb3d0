import { farthest, IFOV, PIXELS, SPOT_DISTANCE, spotSize, TARGET } from "../core/optics/spot.js";
import { RULES } from "../data/rules.js";
import type { ArgumentSpec, FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";

const IFOV_ARGUMENT: ArgumentSpec = {
  name: "ifov",
  quantity: "angle",
  help: "angle that one pixel sees with the lens in use",
  range: IFOV,
  zeroIsBlank: true,
};
const PIXELS_ARGUMENT: ArgumentSpec = {
  name: "pixels",
  quantity: "number",
  help: "pixels across that a target has to fill to be measured; 1 gives what one pixel covers",
  optional: true,
  default: RULES.spot_pixels.value,
  range: PIXELS,
  zeroIsBlank: true,
};

const SPOT_SIZE = defineCells({
  name: "SPOT_SIZE",
  topic: "Measured inputs",
  summary: "Smallest target that can be measured from a distance: pixels·ifov·distance.",
  returns: "length in mm, with F in inches",
  args: [
    {
      name: "distance",
      quantity: "distance",
      help: "from the camera to the target",
      range: SPOT_DISTANCE,
      zeroIsBlank: true,
    },
    IFOV_ARGUMENT,
    PIXELS_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "length",
  cell: (values) =>
    spotSize({ distance: values.number("distance"), ifov: values.number("ifov"), pixels: values.number("pixels") }),
  example: { formula: "=GREY.SPOT_SIZE(3,1.36)", shows: "12.24" },
  sources: ["infrared-handbook"],
});

const FARTHEST = defineCells({
  name: "FARTHEST",
  topic: "Measured inputs",
  summary: "Largest distance from which a target can be measured: SPOT_SIZE the other way round.",
  returns: "distance in m, with F in ft",
  args: [
    {
      name: "target",
      quantity: "length",
      help: "what the target measures across, its smaller side",
      range: TARGET,
      zeroIsBlank: true,
    },
    IFOV_ARGUMENT,
    PIXELS_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "distance",
  cell: (values) =>
    farthest({ target: values.number("target"), ifov: values.number("ifov"), pixels: values.number("pixels") }),
  example: { formula: "=GREY.FARTHEST(12,2)", shows: "2.0" },
  sources: ["infrared-handbook"],
});

export const opticsFunctions: readonly FunctionSpec[] = [SPOT_SIZE, FARTHEST];
