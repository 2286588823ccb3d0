import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

describeInBrowser("Keys that go far in the grid", () => {
  let page: OpenPage;
  beforeAll(async () => {
    page = await (await OpenPage.open()).ready();
  });
  afterAll(async () => {
    await page.close();
    expect(page.faults).toEqual([]);
  });

  const at = async (): Promise<string> => (await page.page.locator(".gb-status-cell").innerText()).split(" · ")[0]!;

  test("Ctrl+End, Ctrl+Home and Home go round the table, never into a hidden column", async () => {
    const { first, last } = await page.table("Readings");
    await page.select(`G${first + 3}`, "Route");
    await page.press("Home");
    expect(await at()).toBe(`A${first + 3}`);
    await page.press("Control+End");
    expect(await at()).toMatch(new RegExp(`^[A-Z]+${last}$`));
    const letter = (await at()).replace(/\d+/, "");
    // The last shown one is among the grades; what is only worked with is hidden.
    expect((await page.cell(`${letter}${last}`, "Route")).header).toContain("± U");
    await page.press("Control+Home");
    expect(await at()).toBe(`A${first}`);
    // In view again, and typed into.
    expect(await page.page.evaluate((cell) => globalThis.greybody!.box(cell)!.x >= 0, `A${first}`)).toBe(true);
  });

  test("Page down and up go as far as is in view", async () => {
    const { first } = await page.table("Readings");
    await page.select(`C${first}`, "Route");
    await page.press("PageDown");
    const [, down = "0"] = /^C(\d+)$/.exec(await at()) ?? [];
    expect(Number(down) - first).toBeGreaterThan(8);
    expect(Number(down) - first).toBeLessThan(30);
    await page.press("PageUp");
    expect(await at()).toBe(`C${first}`);
  });

  test("Ctrl+Page down and up turn to the next sheet, and stay at the last", async () => {
    const sheet = (): Promise<string> => page.page.locator(".gb-tabs [aria-selected=true]").innerText();
    await page.press("Control+PageDown", "Control+PageDown");
    expect(await sheet()).toBe("Exception pages");
    for (let step = 0; step < 15; step++) await page.press("Control+PageDown");
    expect(await sheet()).toBe("Cautions");
    for (let step = 0; step < 15; step++) await page.press("Control+PageUp");
    expect(await sheet()).toBe("Route");
  });

  test("while a cell is typed into, the keys are the editor's: nobody is taken from the cell", async () => {
    const { last } = await page.table("Readings");
    await page.select(`B${last + 3}`, "Route");
    await page.page.keyboard.type("ab");
    for (const key of ["Home", "PageDown", "Control+Home"]) await page.page.keyboard.press(key);
    await page.page.keyboard.type("c");
    await page.press("Enter");
    expect(String((await page.cell(`B${last + 3}`, "Route")).value)).toMatch(/^(?:abc|cab)$/);
    await page.press("Control+z");
  });
});
