import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

/** Tab until the focus is on what is wanted, as a person without a mouse goes. */
async function tabTo(page: OpenPage, name: string): Promise<void> {
  for (let step = 0; step < 40; step++) {
    const here = await page.page.evaluate(() => {
      const { activeElement: element } = document;
      const label = element instanceof HTMLInputElement || element instanceof HTMLSelectElement ? element.labels : null;
      return label?.[0]?.textContent ?? element?.textContent ?? "";
    });
    if (here.startsWith(name)) return;
    await page.page.keyboard.press("Tab");
  }
  throw new Error(`Tab does not reach "${name}".`);
}

/** From the grid into the pane, to one of its ways. */
async function wayByKey(page: OpenPage, way: string): Promise<void> {
  const inPane = (): Promise<boolean> => page.page.evaluate(() => document.activeElement?.closest(".gp-pane") !== null);
  for (let step = 0; step < 5 && !(await inPane()); step++) await page.press("F6");
  // F6 comes back to where one was; the ways are the first stop of the pane.
  await page.page.locator(".gp-way[aria-selected=true]").focus();
  const names = ["Start", "Check", "Look", "Functions", "Sources"];
  await page.press("Home");
  for (let step = 0; step < names.indexOf(way); step++) await page.press("ArrowRight");
  await page.press("Enter");
}

async function intoGrid(page: OpenPage): Promise<void> {
  const inGrid = (): Promise<boolean> =>
    page.page.evaluate(() => document.activeElement?.closest(".gb-stage") !== null);
  for (let step = 0; step < 5 && !(await inGrid()); step++) await page.press("F6");
}

/** Cell by cell. */
async function typeRow(page: OpenPage, cells: readonly string[]): Promise<void> {
  for (const text of cells) {
    if (text !== "") await page.page.keyboard.type(text);
    await page.page.keyboard.press("Tab");
  }
  await page.settled();
}

describeInBrowser("A new route in °F, without a mouse", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await (await OpenPage.open("small")).ready();
    await page.page.locator(".gp-pane").waitFor();
  });

  afterAll(() => page.close());

  test("is made from the pane: 50 rows; what is open goes only after a second press", async () => {
    await wayByKey(page, "Start");
    await tabTo(page, "Title");
    await page.press("Control+a");
    await page.page.keyboard.type("Route of the test");
    await tabTo(page, "°C");
    await page.press("ArrowRight");
    await tabTo(page, "Rows to begin with");
    await page.press("Control+a");
    await page.page.keyboard.type("0");
    expect(await page.page.getByText("A whole number from 1 to").count()).toBe(1);
    await page.press("Control+a");
    await page.page.keyboard.type("50");
    await tabTo(page, "Make the route");
    await page.press("Enter");
    expect(await page.page.locator(".gp-asking").innerText()).toContain("takes the place of the open workbook");
    expect(await page.page.evaluate(() => globalThis.greybody!.sheets())).toContain("Notes");
    await page.press("Enter");
    await page.settled();
    const { first, last } = await page.table("Readings");
    expect(last - first + 1).toBe(50);
    expect((await page.cell(`G${first}`, "Route")).header).toBe("left, °F");
    expect(await page.page.locator(".gp-said").innerText()).toContain("50 rows in °F, by NETA-100.18");
  });

  test("is filled by typing and checked: the sentence counts, a line leads to its cell", async () => {
    await intoGrid(page);
    await page.type("A5", "Q3", "Assets");
    await page.type("E5", "tape", "Assets");
    await page.type("A5", "tape", "Surfaces");
    await page.type("B5", "0.95", "Surfaces");
    const { first } = await page.table("Readings");
    await page.select(`A${first}`, "Route");
    await typeRow(page, [
      "Q3",
      "exception",
      "",
      "IR-1",
      "",
      "08:40",
      "104",
      "104",
      "158",
      "",
      "100",
      "100",
      "100",
      "",
      "77",
    ]);
    await page.select(`A${first}`, "Route");
    await wayByKey(page, "Check");
    const sentence = page.page.locator(".gp-sentence");
    await page.page.getByText("Needs reflected").first().waitFor();
    expect(await sentence.innerText()).toContain(`Row ${first}: Q3. `);
    await tabTo(page, "Go to the first");
    await page.press("Enter");
    await page.settled();
    expect(await page.page.locator(".gb-status-cell").innerText()).toContain("Reflected, indoors");
  });

  test("is looked at: the dot, its words and its table, once the job says what is reflected", async () => {
    // The focus has gone to the cell with the selection.
    await page.page.keyboard.type("72");
    await page.page.keyboard.press("Enter");
    await page.settled();
    await wayByKey(page, "Look");
    const picture = page.page.locator(".gp-picture svg").first();
    await picture.waitFor();
    // 54 °F of reading between the phases: above 27 °F, so the table's last band.
    expect(await page.page.locator("figcaption").first().innerText()).toMatch(
      /1 exception over a similar part: 1 at 4 of 4/,
    );
    expect(await picture.getAttribute("aria-description")).toMatch(/^Q3: 5\d\.\d ± .* °F, 4 of 4/);
    await tabTo(page, "Table behind");
    await page.press("Enter");
    expect(await page.page.locator("details[open] tbody tr").first().innerText()).toContain("right");
    expect(page.faults).toEqual([]);
  });
});
