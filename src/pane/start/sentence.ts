import type { Book } from "../book.js";
import { count } from "../words.js";
import { isFilled, words } from "../route.js";

/** What is open, and what can be begun. */
export function startSentence({ route, fields, trouble }: Book): string {
  if (trouble !== undefined) return trouble;
  if (route === undefined) return "No route is open here: make one, and type the readings into its sheet.";
  const filled = route.rows.filter((row) => isFilled(row, route.table)).length;
  const criteria = words(fields.find(({ name }) => name === "job_criteria")?.value);
  const by = criteria === "" ? "" : `, by ${criteria}`;
  const units = route.table.units === "F" ? "°F" : "°C";
  return `The sheet ${route.table.sheet} holds a route in ${units}${by}: ${count(filled, "row")} of ${String(route.rows.length)} filled. A new one can be made below.`;
}
