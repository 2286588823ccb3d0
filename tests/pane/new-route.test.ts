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

/** From the grid into the pane, to one of its ways: F6, Shift+Tab, arrows. */
async function wayByKey(page: OpenPage, way: string): Promise<void> {
  const inPane = (): Promise<boolean> => page.page.evaluate(() => document.activeElement?.closest(".gp-pane") !== null);
  for (let step = 0; step < 5 && !(await inPane()); step++) await page.page.keyboard.press("F6");
  // F6 comes back to where one was; the ways are the first stop of the pane.
  const onTab = (): Promise<boolean> =>
    page.page.evaluate(() => document.activeElement?.classList.contains("gp-way") === true);
  for (let step = 0; step < 60 && !(await onTab()); step++) await page.page.keyboard.press("Shift+Tab");
  const names = ["Start", "Check", "Look", "Functions", "Sources"];
  await page.page.keyboard.press("Home");
  for (let step = 0; step < names.indexOf(way); step++) await page.page.keyboard.press("ArrowRight");
  await page.press("Enter");
}

async function intoGrid(page: OpenPage): Promise<void> {
  const inGrid = (): Promise<boolean> =>
    page.page.evaluate(() => document.activeElement?.closest(".gb-stage") !== null);
  for (let step = 0; step < 5 && !(await inGrid()); step++) await page.press("F6");
}

/** Cell by cell, then to the beginning of the next row. */
async function typeRow(page: OpenPage, cells: readonly string[]): Promise<void> {
  for (const text of cells) {
    if (text !== "") await page.page.keyboard.type(text);
    await page.page.keyboard.press("Tab");
  }
  await page.page.keyboard.press("Home");
  await page.page.keyboard.press("ArrowDown");
}

/** One below the other, from the selected cell. */
async function typeDown(page: OpenPage, texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    await page.page.keyboard.type(text);
    await page.page.keyboard.press("Enter");
  }
  await page.settled();
}

/** From one sheet to another by the keys, then to its first cell. */
async function toSheet(page: OpenPage, from: string, to: string): Promise<void> {
  const sheets = await page.page.evaluate(() => globalThis.greybody!.sheets());
  const steps = sheets.indexOf(to) - sheets.indexOf(from);
  await pressed(page, steps > 0 ? "Control+PageDown" : "Control+PageUp", Math.abs(steps));
  await page.press("Control+Home");
}

async function pressed(page: OpenPage, key: string, times: number): Promise<void> {
  for (let time = 0; time < times; time++) await page.page.keyboard.press(key);
}

const chosen = (page: OpenPage): Promise<string> => page.page.locator(".gb-status-cell").innerText();

/** asset, status, reason, thermal image, photo, time, three readings, reading_is, three currents, their time, air. */
const readingRow = (asset: string, exception: boolean): string[] => [
  asset,
  exception ? "exception" : "no exception",
  "",
  exception ? "IR-1" : "",
  "",
  "08:40",
  ...(exception ? ["104", "104", "158"] : ["78", "78", "78"]),
  "",
  ...["100", "100", "100"],
  "",
  "77",
];

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
    await tabTo(page, "Make the sheets");
    await page.press("Enter");
    expect(await page.page.locator(".gp-asking").innerText()).toContain("take the place of the open workbook");
    expect(await page.page.evaluate(() => globalThis.greybody!.sheets())).toContain("Notes");
    await page.press("Enter");
    await page.settled();
    const { first, last } = await page.table("Readings");
    expect(last - first + 1).toBe(50);
    expect((await page.cell(`G${first}`, "Route")).header).toBe("left, °F");
    expect(await page.page.locator(".gp-said").innerText()).toContain("50 rows in °F, by NETA-100.18");
  });

  const assets = Array.from({ length: 10 }, (_, index) => `Q${String(index + 1).padStart(2, "0")}`);

  test("its assets, surface and job are typed", async () => {
    await intoGrid(page);
    await toSheet(page, "Route", "Assets");
    expect(await chosen(page)).toMatch(/^A\d+ · asset_id/);
    await typeDown(page, assets);
    await page.press("Control+Home");
    await pressed(page, "ArrowRight", 4);
    expect(await chosen(page)).toMatch(/^E\d+ · surface/);
    await typeDown(
      page,
      assets.map(() => "tape"),
    );
    expect(await page.table("AssetList")).toMatchObject({ last: (await page.table("AssetList")).first + 9 });
    await toSheet(page, "Assets", "Surfaces");
    await typeRow(page, ["tape", "0.95"]);
    await page.settled();
    await toSheet(page, "Surfaces", "Job");
    await page.press("ArrowRight");
    for (let line = 0; line < 70 && !(await chosen(page)).includes("Reflected, indoors"); line++)
      await page.page.keyboard.press("ArrowDown");
    await typeDown(page, ["72"]);
  });

  test("ten rows are typed, forty are pasted, and all of them are worked out", async () => {
    await toSheet(page, "Job", "Route");
    const { first, last } = await page.table("Readings");
    expect(await chosen(page)).toMatch(new RegExp(`^A${first} · asset_id`));
    for (const [index, asset] of assets.entries()) await typeRow(page, readingRow(asset, index < 2));
    await page.settled();
    const rest = Array.from({ length: 40 }, (_, index) => readingRow(assets[index % 10]!, false).join("\t"));
    await page.page.evaluate((copied) => navigator.clipboard.writeText(copied), rest.join("\n"));
    await page.press("Control+v");
    await page.page.waitForTimeout(500);
    await page.settled();
    expect(await page.table("Readings")).toEqual({ first, last });
    const grades = await page.page.evaluate(async () => {
      const read = await globalThis.greybody!.port.readTable("Readings");
      return read.ok ? read.value.rows.map(({ grade_found }) => grade_found) : [read.message];
    });
    expect(grades.map((grade) => (typeof grade === "string" ? grade.slice(0, 6) : grade))).toEqual([
      ...Array<string>(2).fill("4 of 4"),
      ...Array<string>(48).fill("0 of 4"),
    ]);
  });

  test("is checked: the sentence counts, the first finding leads to the cell that it is typed in", async () => {
    await page.press("Control+Home");
    const row = /\d+/.exec(await chosen(page))![0];
    await wayByKey(page, "Check");
    await page.page.getByText("Nobody has been told").first().waitFor();
    expect(await page.page.locator(".gp-sentence").innerText()).toContain(`Row ${row}: Q01. `);
    await tabTo(page, "Go to the first");
    await page.press("Enter");
    expect(await chosen(page)).toMatch(new RegExp(`^[A-Z]+${row} · told_to`));
    // The focus has gone to the cell with the selection.
    await typeDown(page, ["shift foreman 08:45"]);
    await page.press("Control+Home");
    await wayByKey(page, "Check");
    await page.page.locator(".gp-sentence", { hasText: `Row ${row}: Q01.` }).waitFor();
    expect(await page.page.getByRole("region", { name: "This row" }).getByText("Nobody has been told").count()).toBe(0);
  });

  test("is looked at: dots, words and the table behind them", async () => {
    await wayByKey(page, "Look");
    const picture = page.page.locator(".gp-picture svg").first();
    await picture.waitFor();
    // 54 °F of reading between the phases: above 27 °F, so the table's last band.
    expect(await page.page.locator("figcaption").first().innerText()).toMatch(
      /2 exceptions over a similar part: 2 at 4 of 4/,
    );
    expect(await picture.getAttribute("aria-description")).toMatch(/^Q01: 5\d\.\d ± .* °F, 4 of 4/);
    await tabTo(page, "Table behind");
    await page.press("Enter");
    expect(await page.page.locator("details[open] tbody tr").first().innerText()).toContain("right");
    expect(page.faults).toEqual([]);
  });

  test("a mechanical one is made beside it in the same way, and its first row is checked", async () => {
    await wayByKey(page, "Start");
    await tabTo(page, "Electrical route");
    await page.press("ArrowRight");
    await tabTo(page, "Make the sheets");
    await page.press("Enter");
    await page.press("Enter");
    await page.settled();
    expect(await page.page.locator(".gp-said").innerText()).toContain("50 rows in °C, by house-mechanical");
    await intoGrid(page);
    await page.press("Control+Home");
    await typeRow(page, ["P1-DE", "exception"]);
    await page.press("Control+Home");
    await wayByKey(page, "Check");
    await page.page.getByText("Needs process load").first().waitFor();
    expect(await page.page.getByText("Needs reading").count()).toBeGreaterThan(0);
    expect(page.faults).toEqual([]);
  });
});
