/** The route that the page opens with: a morning in an invented dairy. */
import type { Units } from "../../../functions/units.js";
import type { BookDescription } from "../../contract.js";
import { routeBook } from "../book.js";
import { assets } from "./assets.js";
import { followUp } from "./follow-up.js";
import { plan } from "./plan.js";
import { job, surfaces, windows } from "./plant.js";
import { readings } from "./readings.js";

export function demoRoute(units: Units = "C"): BookDescription {
  return routeBook({
    title: "Electrical route, demo",
    about: ["Demonstration: the plant, the people and every reading are invented."],
    job,
    assets,
    windows,
    surfaces,
    rows: readings,
    followUp,
    plan,
    units,
  });
}
