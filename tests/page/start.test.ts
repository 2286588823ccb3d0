import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

describeInBrowser("Opening the page", () => {
  test("the workbook as described: values, spills, forms and notes; nothing leaves the origin", async () => {
    const page = await (await OpenPage.open("small")).ready();
    try {
      expect(await page.page.evaluate(() => globalThis.greybody!.sheets())).toEqual(["Readings", "Job", "Notes"]);
      expect(await page.shown(["A5", "C7", "G5", "G8", "I5", "I6"])).toEqual([
        "Pump 1",
        "70.3",
        "1.5",
        "-0.5",
        "",
        "yes",
      ]);
      expect(await page.shown(["H5", "H6", "H7", "H8"])).toEqual(["▁ 1 of 4", "▄ 3 of 4", "█ 4 of 4", "– 0 of 4"]);
      // The lines above stand beside the frozen column: from within it they would be cut by its edge once scrolled.
      expect(await page.shown(["A1", "A2", "B1", "B2"])).toEqual(["", "", "Readings", "Rows: 4"]);
      expect((await page.cell("G5")).header).toBe("Rise, K");
      expect(await page.shown(["A4", "B4", "C4", "B5"], "Job")).toEqual(["Limit", "55.0", "°C", "199.75"]);
      expect(await page.shown(["A3"], "Notes")).toEqual(["One line."]);
      expect(await page.page.title()).toBe("A small book – Greybody");
      expect(page.faults).toEqual([]);
    } finally {
      await page.close();
    }
  });

  test("without a name, the demo route: at least 24 rows, no error value anywhere, and it grows", async () => {
    const page = await (await OpenPage.open()).ready();
    try {
      const { first, last } = await page.table("Readings");
      expect(last - first + 1).toBeGreaterThanOrEqual(24);
      const errors = await page.page.evaluate(() => {
        const letters = (column: number): string =>
          (column < 26 ? "" : letters(Math.floor(column / 26) - 1)) + String.fromCharCode(65 + (column % 26));
        const found: string[] = [];
        for (const sheet of globalThis.greybody!.sheets()) {
          for (let row = 1; row <= 60; row++) {
            for (let column = 0; column < globalThis.greybody!.columns(sheet); column++) {
              const address = `${letters(column)}${row}`;
              const { shown } = globalThis.greybody!.cell(sheet, address);
              if (shown.startsWith("#")) found.push(`${sheet}!${address} ${shown}`);
            }
          }
        }
        return found;
      });
      expect(errors).toEqual([]);
      await page.type(`A${last + 1}`, "MSB-Q3", "Route");
      expect(await page.table("Readings")).toEqual({ first, last: last + 1 });
      expect(page.faults).toEqual([]);
    } finally {
      await page.close();
    }
  });

  test.each([
    ["no-such", "There is no book"],
    ["..%2Fx", "is no name of a book"],
    ["broken", "[nowhere] not found"],
  ])("a book that cannot be opened (%s) leaves a line to read, not a blank page", async (book, reason) => {
    const page = await OpenPage.open();
    try {
      await page.page.route("**/books/no-such.json", (route) => route.fulfill({ status: 404 }));
      await page.page.goto(`${new URL(page.page.url()).origin}/?book=${book}`);
      const line = page.page.getByRole("alert");
      await line.waitFor();
      expect(await line.innerText()).toContain("could not be opened");
      expect(await line.innerText()).toContain(reason);
    } finally {
      await page.close();
    }
  });

  test("a worker that cannot start is told", async () => {
    const page = await OpenPage.open();
    try {
      await page.page.route("**/worker.js*", (route) =>
        route.fulfill({ contentType: "text/javascript", body: "throw new Error('no engine')" }),
      );
      await page.page.goto(`${new URL(page.page.url()).origin}/?book=small`);
      const line = page.page.getByRole("alert");
      await line.waitFor();
      expect(await line.innerText()).toContain("no engine");
    } finally {
      await page.close();
    }
  });
});
