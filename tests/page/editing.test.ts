import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

describeInBrowser("What may be typed where", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await (await OpenPage.open("small")).ready();
  });

  afterAll(async () => {
    expect(page.faults).toEqual([]);
    await page.close();
  });

  test("what is worked out cannot be typed over or cleared, and that is said", async () => {
    for (const keys of [["5"], ["Delete"], ["F2"]]) {
      await page.select("G6");
      await page.press(...keys);
      expect(await page.status()).toContain('"Rise" is worked out');
      await page.press("Escape");
    }
    await page.select("C4");
    await page.press("x");
    expect(await page.status()).toContain("headings are fixed");
    expect(await page.shown(["G5", "G6", "G7", "G8"])).toEqual(["1.5", "17.0", "29.8", "-0.5"]);
  });

  test("a paste over worked-out cells leaves them as they are", async () => {
    await page.paste("F6", "1\t2\t3");
    expect(await page.status()).toContain("stay as they are");
    expect(await page.shown(["G5", "G6", "H6"])).toEqual(["1.5", "17.0", "▄ 3 of 4"]);
    await page.press("Control+z");
  });

  const cut = async (from: string, to: string): Promise<void> => {
    await page.select(from);
    await page.press("Control+x");
    await page.page.waitForTimeout(300);
    await page.select(to);
    await page.press("Control+v");
    await page.page.waitForTimeout(200);
    await page.settled();
  };

  test("what was cut is pasted neither over headings nor over what is worked out, and neither is cut away", async () => {
    const before = await page.shown(["C4", "C5", "G5", "G6"]);
    await cut("C5", "C4");
    expect(await page.status()).toContain("headings are fixed");
    await cut("C5", "G6");
    expect(await page.status()).toContain('"Rise" is worked out');
    await cut("C4", "K20");
    expect(await page.status()).toContain("headings are fixed");
    await cut("G5", "K20");
    expect(await page.status()).toContain('"Rise" is worked out');
    expect(await page.shown(["C4", "C5", "G5", "G6", "K20"])).toEqual([...before, ""]);
  });

  test("what was cut leaves the sheet's own looks behind: a number typed there is shown as before", async () => {
    await cut("D5", "D8");
    expect(await page.shown(["D5", "D8"])).toEqual(["", "40.0"]);
    await page.type("D5", "40");
    expect(await page.shown(["D5"])).toEqual(["40.0"]);
    await page.press("Control+z");
    await page.press("Control+z");
    expect(await page.shown(["D5", "G5"])).toEqual(["40.0", "1.5"]);
  });

  test("a whole column drawn elsewhere takes no formula of the sheet along", async () => {
    await page.select("C5");
    for (let row = 6; row <= 8; row++) await page.press("Shift+ArrowDown");
    const formula = (await page.cell("G5")).formula;
    const [from, to] = await page.page.evaluate(() => ["C6", "D6"].map((at) => globalThis.greybody!.box(at)!));
    await page.page.mouse.move(from!.x + 0.5, from!.y + 12);
    await page.page.mouse.down();
    await page.page.mouse.move(from!.x + 20, from!.y + 12, { steps: 4 });
    await page.page.mouse.move(to!.x + 30, to!.y + 12, { steps: 6 });
    await page.page.mouse.up();
    await page.page.waitForTimeout(200);
    await page.settled();
    expect(await page.shown(["C6", "D6"])).toEqual(["", "58.0"]);
    expect((await page.cell("G5")).formula).toBe(formula);
    await page.press("Control+z");
    expect(await page.shown(["C6", "D6", "G6"])).toEqual(["58.0", "41.0", "17.0"]);
    expect((await page.cell("G5")).formula).toBe(formula);
  });

  test("choices by keyboard: Alt+Down, arrows, Enter; Escape leaves", async () => {
    await page.select("B5");
    expect(await page.status()).toContain("Alt+↓ shows the choices");
    await page.press("Alt+ArrowDown");
    const list = page.page.getByRole("listbox");
    await list.waitFor();
    expect(await list.getByRole("option").allInnerTexts()).toEqual(["fine", "exception", "not inspected"]);
    await page.press("ArrowDown", "Enter");
    expect((await page.cell("B5")).value).toBe("exception");
    // The grid has the keys again.
    await page.press("ArrowDown", "Alt+ArrowDown", "End", "Escape");
    expect(await list.isVisible()).toBe(false);
    expect((await page.cell("B6")).value).toBe("exception");
    await page.press("Control+z");
    expect((await page.cell("B5")).value).toBe("fine");
  });

  test("choices by pointer, on the row below the last one as well: the table grows", async () => {
    await page.select("B9");
    await page.page.locator(".gb-choice-button").click();
    await page.page.getByRole("option", { name: "not inspected" }).click();
    await page.settled();
    expect((await page.cell("B9")).value).toBe("not inspected");
    expect(await page.table()).toEqual({ first: 5, last: 9 });
    await page.press("Control+z");
    expect(await page.table()).toEqual({ first: 5, last: 8 });
  });

  test("anything else may be typed, and is marked in words", async () => {
    await page.type("B7", "odd");
    await page.select("B7");
    expect(await page.status()).toContain("Not one of the choices: fine, exception, not inspected.");
    await page.press("Control+z");
  });

  test("what is not a choice keeps the lines of a form", async () => {
    await page.rowMenu(5, "Delete Selected Row");
    await page.press("Control+z");
    await page.select("B6", "Job");
    await page.rowMenu(4, "Delete Selected Row").catch(() => undefined);
    expect((await page.cell("A4", "Job")).shown).toBe("Limit");
  });
});
