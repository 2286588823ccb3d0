/** A route as it was worked out, read for the next one. */
import type { BookContents } from "../contents.js";
import type { BookDescription } from "../contract.js";
import { recordsIn } from "../refill/records.js";
import { sameName } from "../refill/which.js";
import { type LastRoute, numberIn } from "./next-last.js";

/** @param book the description of the route, whose keys the rows go by */
export function lastRoute(contents: BookContents, book: BookDescription): LastRoute {
  const place = contents.names.find(({ name }) => sameName(name, "job_date"));
  const sheet = place && contents.sheets.find(({ name }) => name === place.sheet);
  const value = place && sheet?.at(place.startRow, place.startColumn).value;
  return {
    readings: recordsIn(contents, book, "Readings"),
    assets: recordsIn(contents, book, "AssetList"),
    followUp: recordsIn(contents, book, "FollowUp"),
    date: numberIn(value),
  };
}
