import { TEMPERATURE } from "../core/limits.js";
import { ACCURACY, ACCURACY_SHARE, cameraUncertainty } from "../core/uncertainty/camera.js";
import { RULES } from "../data/rules.js";
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
      help: "accuracy as a half-width, by the certificate; 0 where only per cent are stated; its default is what the trade commonly states, from memory",
      optional: true,
      default: RULES.camera_accuracy.value,
      range: ACCURACY,
    },
    {
      name: "percent",
      quantity: "percent",
      help: "accuracy in per cent of the reading in °C, also in °F sheets; 0 where none is stated; its default is from memory too",
      optional: true,
      default: 100 * RULES.camera_accuracy_share.value,
      range: ACCURACY_SHARE,
    },
    UNITS_ARGUMENT,
  ],
  result: "difference",
  cell: (values) => cameraUncertainty(values.number("reading"), values.number("absolute"), values.number("percent")),
  example: { formula: "=GREY.CAMERA_UNCERTAINTY(150)", shows: "1.73" },
  sources: ["jcgm-100-2008"],
});
