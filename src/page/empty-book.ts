/** A sheet to calculate on, where no description is given. */
import type { BookDescription } from "../templates/contract.js";

export const emptyBook: BookDescription = {
  title: "New workbook",
  sheets: [{ kind: "notes", name: "Sheet 1", heading: [], lines: [] }],
};
