import { TEMPERATURE } from "../core/limits.js";
import { ACCURACY, ACCURACY_SHARE, cameraUncertainty } from "../core/uncertainty/camera.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";

export const CAMERA_UNCERTAINTY = defineCells({
  name: "CAMERA_UNCERTAINTY",
  topic: "Uncertainty",
  summary:
    "Standard uncertainty of a camera's reading from its stated accuracy: the greater of two half-widths, divided by √3.",
  returns: "standard uncertainty (k = 1)",
  args: [
    {
      name: "reading",
      quantity: "temperature",
      help: "apparent temperature: the camera's reading with emissivity and transmission at 1",
      range: TEMPERATURE,
    },
    {
      name: "absolute",
      quantity: "difference",
      help: "accuracy as a half-width; 0 where only per cent are stated",
      optional: true,
      default: 2,
      range: ACCURACY,
    },
    {
      name: "percent",
      quantity: "percent",
      help: "accuracy in per cent of the reading in °C, also in °F sheets; 0 where none is stated",
      optional: true,
      default: 2,
      range: ACCURACY_SHARE,
    },
    UNITS_ARGUMENT,
  ],
  result: "difference",
  cell: (values) => cameraUncertainty(values.number("reading"), values.number("absolute"), values.number("percent")),
  example: { formula: "=GREY.CAMERA_UNCERTAINTY(150)", shows: "1.73" },
  sources: ["jcgm-100-2008"],
});
