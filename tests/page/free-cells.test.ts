import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

describeInBrowser("Cells beside what the book describes", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await (await OpenPage.open("small")).ready();
  });

  afterAll(async () => {
    expect(page.faults).toEqual([]);
    await page.close();
  });

  const clipboard = (): Promise<string> => page.page.evaluate(() => navigator.clipboard.readText());

  async function copy(from: string, sheet: string, down: number): Promise<void> {
    await page.select(from, sheet);
    await page.press(...Array.from({ length: down }, () => "Shift+ArrowDown"), "Control+c");
    await page.page.waitForTimeout(200);
  }

  test("all cells of a spill are copied, in full, and pasted as values", async () => {
    await page.type("F20", "=SEQUENCE(3)/4", "Job");
    await page.cellOnce("F22", ({ shown }) => shown === "0.75", "Job");
    await copy("F20", "Job", 2);
    expect(await clipboard()).toBe("0.25\n0.5\n0.75");
    await page.select("H20", "Job");
    await page.press("Control+v");
    await page.cellOnce("H22", ({ value }) => value === 0.75, "Job");
    for (const [address, value] of [
      ["H20", 0.25],
      ["H21", 0.5],
      ["H22", 0.75],
    ] as const) {
      expect(await page.cell(address, "Job")).toMatchObject({ value, formula: null });
    }
    await copy("F21", "Job", 0);
    expect(await clipboard()).toBe("0.5");
  });

  test("the first cell of a spill alone is copied as the formula it holds", async () => {
    await copy("F20", "Job", 0);
    await page.select("J20", "Job");
    await page.press("Control+v");
    expect((await page.cellOnce("J22", ({ shown }) => shown === "0.75", "Job")).shown).toBe("0.75");
    expect((await page.cell("J20", "Job")).formula).toBe("=SEQUENCE(3)/4");
  });

  test("every sheet has room; a spill over its end is told as such, a place beyond is not chosen", async () => {
    for (const sheet of ["Readings", "Job", "Notes"]) {
      expect(await page.page.evaluate((name) => globalThis.greybody!.columns(name), sheet)).toBeGreaterThanOrEqual(31);
    }
    await page.type("AQ5", '=GREY.CRITERIA("NETA-100.18")', "Job");
    const told = await page.cellOnce("AQ5", ({ message, shown }) => message !== undefined && shown !== "", "Job");
    expect(told.shown).toBe("#SPILL!");
    expect(told.message).toContain("beyond the end of the sheet");
    await page.type("J25", '=GREY.CRITERIA("NETA-100.18")', "Job");
    expect((await page.cellOnce("J25", ({ shown }) => shown !== "", "Job")).shown).not.toMatch(/^#/);
    await page.select("A4", "Job");
    const name = page.page.locator("[data-u-comp=formula-bar] input");
    await name.fill("ZZ5");
    await name.press("Enter");
    await page.says("there is no cell beyond");
    expect(await page.status()).toContain("A4");
    await page.press("Escape");
  });

  test("a number without a format is never cut: fewer digits, all of them when it is edited or copied", async () => {
    await page.paste("F2", "64.1319672049731", "Job");
    await page.type("F3", "=6.62607015E-34*1", "Job");
    await page.cellOnce("F3", ({ value }) => value !== null, "Job");
    const pasted = await page.cellOnce("F2", ({ painted }) => painted !== "", "Job");
    const tiny = await page.cellOnce("F3", ({ painted }) => painted !== "", "Job");
    expect(pasted.painted).toMatch(/^64\.13196720?\d?$/);
    expect(tiny.painted).toMatch(/^6\.6\d*e-34$/);
    expect(tiny.shown).toBe("6.62607015e-34");
    await page.select("F2", "Job");
    expect(await page.status()).toContain("64.1319672049731");
    await page.press("F2", "Enter");
    expect((await page.cell("F2", "Job")).value).toBe(64.1319672049731);
    await copy("F2", "Job", 0);
    expect(await clipboard()).toBe("64.1319672049731");
  });

  test("what comes from elsewhere takes the looks of the cell", async () => {
    const html = "<table><tr><td style='font-size:20pt;color:red'>58.25</td></tr></table>";
    await page.page.evaluate(async (table) => {
      const part = (type: string, text: string): Record<string, Blob> => ({ [type]: new Blob([text], { type }) });
      const item = new ClipboardItem({ ...part("text/html", table), ...part("text/plain", "58.25") });
      await navigator.clipboard.write([item]);
    }, html);
    await page.select("F5", "Job");
    await page.press("Control+v");
    expect((await page.cellOnce("F5", ({ value }) => value !== null, "Job")).value).toBe(58.25);
    await copy("F5", "Job", 0);
    const copied = await page.page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      return (await item!.getType("text/html")).text();
    });
    expect(copied).toContain("font-size: 10pt");
    expect(copied).not.toContain("20pt");
  });

  test("a row typed with a gap below the table is told at once", async () => {
    await page.type("A11", "Fan 7");
    await page.says("Row 11 is not part of the table: type in the row directly below it, row 9.");
    await page.press("Control+z");
    expect(await page.table()).toEqual({ first: 5, last: 8 });
  });

  test("columns are shown and hidden without another cell being chosen", async () => {
    await page.select("B6");
    await page.page.locator(".gb-folded").click();
    await page.settled();
    expect(await page.status()).toContain("B6");
    await page.page.locator(".gb-folded").click();
    await page.settled();
    expect(await page.status()).toContain("B6");
  });
});

describeInBrowser("Leaving the page", () => {
  test("asks once something was typed, not before", async () => {
    const page = await (await OpenPage.open("small")).ready();
    try {
      const asked: string[] = [];
      page.page.on("dialog", (dialog) => {
        asked.push(dialog.type());
        void dialog.accept();
      });
      await page.page.locator(".gb-folded").click();
      await page.press("F6", "F6");
      await page.page.reload();
      await page.ready();
      expect(asked).toEqual([]);
      await page.type("C5", "44");
      await page.page.reload();
      expect(asked).toEqual(["beforeunload"]);
    } finally {
      await page.close();
    }
  });
});

describeInBrowser("The chosen cell is fully in view", () => {
  test.each([1280, 320])("at %i px, by the keys and by its name", async (width) => {
    const page = await (await OpenPage.open(undefined, { viewport: { width, height: 640 } })).ready();
    try {
      /** Left, top, right and bottom of what is not frozen, and of the cell. */
      const inside = async (): Promise<void> => {
        await page.page.waitForTimeout(150);
        const address = /^[A-Z]+\d+/.exec(await page.status())?.[0] ?? "";
        const seen = await page.page.evaluate((at) => {
          const canvas = document.querySelector("canvas[id*=sheet-main]")!.getBoundingClientRect();
          const [frozen, cell] = [globalThis.greybody!.box("A5")!, globalThis.greybody!.box(at)!];
          return { canvas, left: frozen.x + frozen.width, top: frozen.y + frozen.height, cell };
        }, address);
        const { cell, left, top, canvas } = seen;
        expect([address, cell.x >= left - 1, cell.y >= top - 1]).toEqual([address, true, true]);
        expect([address, cell.x + cell.width <= canvas.right + 1]).toEqual([address, true]);
        expect([address, cell.y + cell.height <= canvas.bottom + 1]).toEqual([address, true]);
      };
      for (const address of ["P20", "C7", "AQ34", "D6"]) {
        await page.select(address, "Route");
        await inside();
      }
      await page.press(...Array.from({ length: 9 }, () => "ArrowRight"));
      await inside();
      const { x, y } = await page.middle("A6");
      await page.page.mouse.move(x + 150, y);
      await page.page.mouse.wheel(37, 0);
      await page.page.mouse.wheel(0, 13);
      await page.page.waitForTimeout(200);
      await page.press(...Array.from({ length: 5 }, () => "ArrowLeft"));
      await inside();
      await page.press(...Array.from({ length: 25 }, () => "ArrowDown"));
      await inside();
    } finally {
      await page.close();
    }
  });
});
