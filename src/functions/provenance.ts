import type { Provenance } from "../data/provenance.js";
import { REFERENCES } from "../data/references.js";

/**
 * Source, place and edition of a row as they stand in a cell; what was not read in the document itself says so.
 * @param also further sources of the same number
 */
export function provenanceInWords(row: Provenance, also: readonly string[] = []): string {
  const { source, locator, edition, evidence } = row;
  const short = [source, ...also].map((key) => REFERENCES[key]?.short ?? key).join(" and ");
  if (evidence === "own") return `${short}: ${locator}`;
  const trust =
    evidence === "read"
      ? ""
      : ` (${evidence === "memory" ? "from memory" : evidence === "secondary" ? "read where quoted" : evidence})`;
  // Where there is no document there is no edition to check.
  if (edition === "none") return `${short}, ${locator}${trust}`;
  const where = short.includes(edition) ? locator : `${locator}, ${edition}`;
  return `numbers cited from ${short}, ${where}${trust}; check your edition`;
}
