/** Days as clients write them. */
import { withDays } from "../../../src/functions/claims/dates.js";

test("a column tells the day from the month; with points the day stands first; else nothing is guessed", () => {
  expect(withDays(["11/20/2026", "03/04/2026", 46000, null])).toEqual({
    cells: ["2026-11-20", "2026-03-04", 46000, null],
    told: "dates read as month, day, year",
  });
  expect(withDays(["20/11/2026", "03/04/2026"]).cells).toEqual(["2026-11-20", "2026-04-03"]);
  expect(withDays(["3.4.2026"]).cells).toEqual(["2026-04-03"]);
  expect(withDays(["03/04/2026", "05/06/2026"])).toEqual({ cells: ["03/04/2026", "05/06/2026"] });
  expect(withDays(["20/11/2026", "11/20/2026"]).cells).toEqual(["20/11/2026", "11/20/2026"]);
});
