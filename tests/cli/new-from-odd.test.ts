/**
 * The next route of assets with odd names. Black surfaces 5 cm away in dry air: 60 °C over 40 °C is 20 K, grade 4 over
 * similar (above 15 K: ANSI/NETA ATS-2003, table 100.18). 45658 is 2025-01-01; 2025-03-03 is 61 days on.
 */
import { describedBook } from "../../src/host/file/write/described.js";
import { readContents } from "../../src/host/file/read/contents.js";
import { packBook } from "../../src/host/file/write/package.js";
import { recordsIn, type RowRecord } from "../../src/templates/refill/records.js";
import { refill } from "../../src/templates/refill/refill.js";
import { routeBook } from "../../src/templates/route/book.js";
import { CLI } from "../support/calc.js";
import { Folder } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());

const MARCH_2025 = 45_658 + 61;
const good = { surface: "black", physical_condition: "1", criticality: "1", environment: "1" } as const;
const seen = { time: 0.5, surrounding_air: 20, amps_left: 100, amps_middle: 100, amps_right: 100 } as const;

/** Asset ids as people have them: numbers, a space behind, a name twice, text that a sheet would take for a formula. */
const odd = routeBook({
  title: "Odd names (invented)",
  about: [],
  job: { date: MARCH_2025, reflected: 20, distance: 0.05, humidity: 1, u_similar_typed: 1.25 },
  assets: [
    { ...good, asset_id: 101 },
    { ...good, asset_id: "S " },
    { ...good, asset_id: "T" },
    { ...good, asset_id: "t" },
    { ...good, asset_id: " =1+1" },
  ],
  windows: [],
  surfaces: [{ surface: "black", emissivity: 1, known_from: "assumed" }],
  rows: [
    { ...seen, asset_id: 101, status: "exception", thermal_image: "IR-1", left: 60, middle: 40, right: 40 },
    { ...seen, asset_id: "S ", status: "no exception", left: 20.5, middle: 20.5, right: 20.5 },
    { ...seen, asset_id: "T", status: "no exception", left: 20.5, middle: 20.5, right: 20.5 },
    { ...seen, asset_id: "T", status: "no exception", left: 20.5, middle: 20.5, right: 20.5 },
    { ...seen, asset_id: " =1+1", status: " =2+2", left: null, middle: null, right: null },
  ],
  followUp: [{ asset_id: " =1+1", found_on: MARCH_2025 - 9, repair_date: MARCH_2025, repair_found: " =3+3" }],
  units: "C",
});

test("asset ids stay what they are, so that the rows find them; no text becomes a formula; U of the rise goes along", async () => {
  const file = folder.put(
    "odd.xlsx",
    packBook(describedBook(odd, { marks: { GREYBODY_TEMPLATE: "route", GREYBODY_UNITS: "C" } })),
  );
  const made = await runNode([CLI, "new", "route", "--from", file, "-o", folder.at("next.xlsx")]);
  expect(made).toMatchObject({ status: 0, stderr: "" });
  const contents = readContents(folder.read("next.xlsx"));
  const { book } = refill(contents);
  const rows = (table: string): RowRecord[] => recordsIn(contents, book, table);
  const readings = rows("Readings");
  expect(readings.map(({ asset_id }) => asset_id)).toEqual([101, " =1+1", "S ", "T", "T"]);
  expect(readings.filter(({ location }) => location === "not in Assets")).toEqual([]);
  const strange = rows("AssetList").find(({ asset_id }) => asset_id === " =1+1");
  expect([strange?.last_grade, strange?.repaired]).toEqual([" =2+2, seen in part on 2025-03-03", " =3+3, 2025-03-03"]);
  const [added] = rows("FollowUp").filter(({ asset_id }) => asset_id === 101);
  // Typed in Job, as U over similar for every row.
  expect([added?.over, added?.u_found]).toEqual(["similar", 1.25]);
}, 60_000);
