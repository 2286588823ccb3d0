/** The reports of the demo route in the page: what a page of an exception looks up has itself spilled from another sheet. */
import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

describeInBrowser("Reports in the page", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await (await OpenPage.open()).ready();
  });

  afterAll(async () => {
    expect(page.faults).toEqual([]);
    await page.close();
  });

  const shown = async (sheet: string, ...addresses: readonly string[]): Promise<string[]> => {
    const cells: string[] = [];
    for (const address of addresses) cells.push((await page.cell(address, sheet)).shown);
    return cells;
  };

  test("a page of an exception shows the words and numbers of its row", async () => {
    // The only reading of the demo at the camera's limit: typed 58.7, 150 and 60.3 °C at 58, 60 and 59 A.
    expect(await shown("Exception pages", "A6")).toEqual([
      "1 of 21: BLR-CB1, Boiler house, Burner control, contactor, 10:41",
    ]);
    expect(await shown("Exception pages", "B9", "C9", "D9", "F9", "G9", "H9", "I9")).toEqual([
      ...["left", "middle", "right"],
      ...["thermogram", "IR-0112", "photo", "P-0112"],
    ]);
    expect(await shown("Exception pages", "B10", "C10", "D10", "B13", "C13", "D13")).toEqual([
      ...["58.7", "150.0", "60.3"],
      ...["58", "60", "59"],
    ]);
  });

  test("a number that only formulas read is hidden by its format, as in print", async () => {
    const { value, painted } = await page.cell("K6", "Exception pages");
    expect(value).toBeGreaterThan(100);
    expect(painted).toBe("");
  });

  test("what is not overdue shows nothing", async () => {
    expect(await shown("Due", "A10", "E10", "A11", "E11")).toEqual(["CS-EV3", "180", "DB-LAB", ""]);
  });
});
