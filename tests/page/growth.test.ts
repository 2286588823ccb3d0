import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

/** Rises, from the first body row; what stands below the table is empty. */
const rises = (count: number): string[] => Array.from({ length: count }, (_, index) => `G${5 + index}`);

describeInBrowser("A table grows with what is typed, and every spill and formula with it", () => {
  let page: OpenPage;

  beforeEach(async () => {
    page = await (await OpenPage.open("small")).ready();
  });

  afterEach(async () => {
    expect(page.faults).toEqual([]);
    await page.close();
  });

  test("typing below the table, step by step, and undo", async () => {
    await page.type("K1", "=AVERAGE(C5:C8)");
    await page.type("K2", "=SUM(Readings_table[Left])+C8");
    expect(await page.shown(rises(5))).toEqual(["1.5", "17.0", "29.8", "-0.5", ""]);

    await page.type("A9", "Fan 5");
    expect(await page.table()).toEqual({ first: 5, last: 9 });
    await page.type("C9", "77.0");
    await page.type("D9", "40");
    expect(await page.shown(rises(6))).toEqual(["1.5", "17.0", "29.8", "-0.5", "37.0", ""]);
    expect(await page.shown(["H9", "I9", "B2"])).toEqual(["█ 4 of 4", "yes", "Rows: 5"]);
    // 41.5 + 58 + 70.25 + 30 + 77 = 276.75, on this sheet, on another, and as the mean of the column.
    expect((await page.cell("B5", "Job")).value).toBeCloseTo(276.75, 9);
    expect((await page.cell("K1")).value).toBeCloseTo(55.35, 9);
    expect((await page.cell("K2")).value).toBeCloseTo(306.75, 9);
    expect((await page.cell("K2")).formula).toBe("=SUM($C$5:$C$9)+C8");

    // Three steps in, three steps out.
    await page.press("Control+z", "Control+z", "Control+z");
    expect(await page.table()).toEqual({ first: 5, last: 8 });
    expect(await page.shown(rises(5))).toEqual(["1.5", "17.0", "29.8", "-0.5", ""]);
    expect(await page.shown(["A9", "C9", "B2"])).toEqual(["", "", "Rows: 4"]);
    expect((await page.cell("K1")).formula).toBe("=AVERAGE(C5:C8)");
    expect((await page.cell("B5", "Job")).value).toBeCloseTo(199.75, 9);
    await page.press("Control+y", "Control+y");
    expect(await page.table()).toEqual({ first: 5, last: 9 });
    expect((await page.cell("B5", "Job")).value).toBeCloseTo(276.75, 9);
  });

  test("editing an input works everything out anew", async () => {
    await page.type("C5", "60");
    expect(await page.shown(["G5", "H5", "I5"])).toEqual(["20.0", "▄ 3 of 4", "yes"]);
    await page.type("B4", "90", "Job");
    expect(await page.shown(["I5", "I7"])).toEqual(["", ""]);
  });

  test("pasting rows below, and one step back; row 500 and the one after it", async () => {
    const row = (at: number): string => `Item ${at}\tfine\t${at}.0\t40`;
    await page.paste("A9", [row(9), row(10), row(11)].join("\n"));
    expect(await page.table()).toEqual({ first: 5, last: 11 });
    expect(await page.shown(["G11", "B2"])).toEqual(["-29.0", "Rows: 7"]);
    await page.press("Control+z");
    expect(await page.table()).toEqual({ first: 5, last: 8 });
    expect(await page.shown(["A9", "G9", "B2"])).toEqual(["", "", "Rows: 4"]);

    await page.paste("A9", Array.from({ length: 492 }, (_, index) => row(9 + index)).join("\n"));
    expect(await page.table()).toEqual({ first: 5, last: 500 });
    const full = ["460.0", "Rows: 496"];
    expect(await page.becomes(["G500", "B2"], full)).toEqual(full);
    await page.type("C501", "600");
    await page.type("D501", "100");
    expect(await page.table()).toEqual({ first: 5, last: 501 });
    const one = ["500.0", "█ 4 of 4", "Rows: 497"];
    expect(await page.becomes(["G501", "H501", "B2"], one)).toEqual(one);
  });

  test("whole rows pasted with what was worked out: only what is typed goes in", async () => {
    await page.paste("A9", "Fan 5\tfine\t50\t40\t0.9\t\t99\t99\t99");
    expect(await page.table()).toEqual({ first: 5, last: 9 });
    expect(await page.shown(["G9", "H9", "I9"])).toEqual(["10.0", "▂ 2 of 4", ""]);
  });

  test("rows put in and taken out, also at the top, and back again", async () => {
    await page.type("K1", "=AVERAGE(C5:C8)");
    const start = ["1.5", "17.0", "29.8", "-0.5", ""];
    const steps: [number, string, string[], string][] = [
      [7, "rows above", ["1.5", "17.0", "", "29.8", "-0.5"], "=AVERAGE(C5:C9)"],
      [6, "Delete Selected Row", ["1.5", "29.8", "-0.5", "", ""], "=AVERAGE(C5:C7)"],
      [5, "rows above", ["", "1.5", "17.0", "29.8", "-0.5"], "=AVERAGE(C5:C9)"],
      [5, "Delete Selected Row", ["17.0", "29.8", "-0.5", "", ""], "=AVERAGE(C5:C7)"],
    ];
    for (const [row, entry, shown, average] of steps) {
      await page.rowMenu(row, entry);
      expect(await page.shown(rises(5))).toEqual(shown);
      expect((await page.cell("K1")).formula).toBe(average);
      await page.press("Control+z");
      expect(await page.shown(rises(5))).toEqual(start);
      expect((await page.cell("K1")).formula).toBe("=AVERAGE(C5:C8)");
      await page.press("Control+y");
      expect(await page.shown(rises(5))).toEqual(shown);
      await page.press("Control+z");
    }
    await page.rowMenu(3, "rows above");
    await page.says("New rows go below");
    expect(await page.table()).toEqual({ first: 5, last: 8 });
  });

  test("sorting takes the rows along, the spills follow", async () => {
    const { x, y } = await page.middle("C4");
    // The button stands in the lower right corner of the heading.
    await page.page.mouse.click(x + 31, y + 12);
    await page.page.getByText("Descending").click();
    await page.settled();
    expect(await page.shown(["A5", "A6", "A7", "A8"])).toEqual(["Fan 3", "Pump 2", "Pump 1", "Fan 4"]);
    expect(await page.shown(rises(4))).toEqual(["29.8", "17.0", "1.5", "-0.5"]);
  });
});
