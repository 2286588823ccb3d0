/** greybody new: what it writes and what it refuses, in one line. */
import { strFromU8 } from "fflate";
import { CLI } from "../support/calc.js";
import { all, partsOf, xmlOf } from "../support/package-rules.js";
import { Folder } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());

const make = (...args: string[]) => runNode([CLI, "new", ...args], { cwd: folder.path });

test("a route in °F has its rows, its units and its paper", async () => {
  const outcome = await make("route", "--units", "f", "--rows", "7");
  expect(outcome).toEqual({ status: 0, stdout: "route.xlsx written\n", stderr: "" });
  const parts = partsOf(folder.read("route.xlsx"));
  const table = xmlOf(parts, "xl/tables/table1.xml");
  const [first, last] = table.attributes.ref!.split(":").map((corner) => Number(corner.replace(/\D/g, "")));
  expect(last! - first!).toBe(7);
  const sheet = xmlOf(parts, "xl/worksheets/sheet1.xml");
  // Letter: ECMA-376 part 1, 18.3.1.63.
  expect(all(sheet, "pageSetup")[0]!.attributes).toMatchObject({ paperSize: "1", orientation: "landscape" });
  expect(strFromU8(parts.get("xl/sharedStrings.xml")!)).toMatch(/<t>°F<\/t>/);
  const names = all(xmlOf(parts, "xl/workbook.xml"), "definedName").filter(
    ({ attributes }) => attributes.hidden === "1" && !attributes.name!.startsWith("GREYBODY_PICTURE_"),
  );
  expect(names.map(({ attributes, text }) => [attributes.name, text])).toEqual([
    ["GREYBODY_CATALOGUE", expect.stringMatching(/^\d+$/)],
    ["GREYBODY_TEMPLATE", '"route"'],
    ["GREYBODY_UNITS", '"F"'],
    ["GREYBODY_VERSION", expect.stringMatching(/^"\d+\.\d+\.\d+"$/)],
  ]);
}, 60_000);

test("a file that is there already stays as it is", async () => {
  folder.put("mine.xlsx", Uint8Array.of(1, 2, 3));
  const { status, stderr } = await make("route", "-o", "mine.xlsx");
  expect(status).toBe(2);
  expect(stderr).toBe("greybody: mine.xlsx is there already: choose another name with -o.\n");
  expect([...folder.read("mine.xlsx")]).toEqual([1, 2, 3]);
});

test.each([
  [["rout"], /no template rout, only route, mechanical-route, .*demo-route/],
  [["constructor"], /no template constructor/],
  [["route", "--units", "K"], /--units K: C or F/],
  [["route", "--rows", "0"], /1 to 5000 rows/],
  [["route", "--rows", "2.5"], /1 to 5000 rows/],
  [["route", "-o", "nowhere/route.xlsx"], /there is no folder nowhere to write to/],
  [["demo-route", "--rows", "7"], /demo-route has rows of its own/],
  [["demo-route", "--title", "Mine"], /demo-route has a title of its own/],
  [[], /template/],
])(
  "%j is refused in one line",
  async (args, words) => {
    const { status, stdout, stderr } = await make(...args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(words);
    expect(stderr).toMatch(/^greybody: .+\n$/);
  },
  60_000,
);
