/** Workbooks as files in the page: what is opened shows the numbers that recalc gives, what is saved needs no recalculation. */
import { readFileSync } from "node:fs";
import type { TableContent } from "../../src/host/port.js";
import { readContents } from "../../src/host/file/read/contents.js";
import { recordsIn, type RowRecord } from "../../src/templates/refill/records.js";
import { refill } from "../../src/templates/refill/refill.js";
import { describeInBrowser } from "../support/browser.js";
import { CLI } from "../support/calc.js";
import { fillFile, manyRows } from "../support/fill-file.js";
import { OpenPage } from "../support/page.js";
import { Folder, recalc } from "../support/recalc.js";
import { runNode } from "../support/run.js";

/** A route as the command line makes it, filled by a script, recalculated. */
async function filled(folder: Folder, rows: number, units = "C"): Promise<{ file: string; records: RowRecord[] }> {
  const made = await runNode([
    CLI,
    "new",
    "route",
    "--rows",
    String(rows),
    "--units",
    units,
    "-o",
    folder.at("empty.xlsx"),
  ]);
  expect(made.stderr).toBe("");
  folder.put("filled.xlsx", fillFile(folder.read("empty.xlsx"), manyRows(rows)));
  const { status, stdout } = await recalc([folder.at("filled.xlsx"), "-o", folder.at("route.xlsx")]);
  expect([status, stdout]).toEqual([0, expect.stringMatching(/, 0 kept; written to/)]);
  const contents = readContents(folder.read("route.xlsx"));
  return { file: folder.at("route.xlsx"), records: recordsIn(contents, refill(contents).book, "Readings") };
}

async function openFile(page: OpenPage, file: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.page.waitForEvent("filechooser"),
    page.page.getByRole("button", { name: "Open", exact: true }).click(),
  ]);
  await chooser.setFiles(file);
  await page.says("is open");
  await page.settled();
}

const readings = (page: OpenPage): Promise<TableContent> =>
  page.page.evaluate(async () => {
    const table = await globalThis.greybody!.port.readTable("Readings");
    if (!table.ok) throw new Error(table.message);
    return table.value;
  });

/** Cells that differ: the page's and the file's. */
function differences({ table, rows }: TableContent, records: readonly RowRecord[]): string[] {
  const found: string[] = [];
  expect(rows).toHaveLength(records.length);
  rows.forEach((row, at) => {
    for (const { key } of table.columns) {
      const [is, wanted] = [row[key] ?? null, records[at]![key] ?? null];
      const isSame =
        typeof is === "number" && typeof wanted === "number"
          ? Math.abs(is - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted))
          : is === wanted;
      if (!isSame) found.push(`${at} ${key}: ${JSON.stringify(is)}, in the file ${JSON.stringify(wanted)}`);
    }
  });
  return found;
}

async function saved(page: OpenPage, press: () => Promise<void>): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([page.page.waitForEvent("download"), press()]);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(await download.path())) };
}

const saveButton = (page: OpenPage) => page.page.getByRole("button", { name: "Save as .xlsx" });
/** A download is fetched from the page itself. */
const others = (page: OpenPage): string[] => page.faults.filter((fault) => !fault.startsWith("request: blob:"));

describeInBrowser("Files in the page", () => {
  let folder: Folder;
  let page: OpenPage;

  beforeEach(async () => {
    folder = new Folder();
    page = await (await OpenPage.open()).ready();
  });

  afterEach(async () => {
    await page.close();
    folder.remove();
  });

  test.each(["C", "F"])(
    "a filled route opens with the same numbers, is changed, saved and sound (°%s)",
    async (units) => {
      const { file, records } = await filled(folder, 12, units);
      await openFile(page, file);
      const open = await readings(page);
      expect(differences(open, records)).toEqual([]);
      expect(await page.page.locator(".gb-saved").innerText()).toBe("saved");

      await page.type(`A${open.table.lastRow + 2}`, "A-1", "Route");
      expect(await page.page.locator(".gb-saved").innerText()).toBe("changed, not saved");
      const after = await readings(page);
      const { name, bytes } = await saved(page, () => saveButton(page).click());
      expect(name).toBe("route.xlsx");
      expect(await page.page.locator(".gb-saved").innerText()).toBe("saved");
      folder.put("saved.xlsx", bytes);
      const check = await recalc([folder.at("saved.xlsx"), "--check", "--all"]);
      expect([check.status, check.stdout]).toEqual([0, expect.stringMatching(/ 0 different, 0 kept; no difference/)]);
      const contents = readContents(bytes);
      const { book, left } = refill(contents);
      expect([left, book.template]).toEqual([[], { name: "route", units }]);
      expect(differences(after, recordsIn(contents, book, "Readings"))).toEqual([]);
      expect(after.rows).toHaveLength(13);
      expect(others(page)).toEqual([]);
    },
    120_000,
  );

  test("what is no workbook of ours stays out, in a sentence; the open book stands", async () => {
    folder.put("text.xlsx", new TextEncoder().encode("no workbook"));
    const [chooser] = await Promise.all([
      page.page.waitForEvent("filechooser"),
      page.page.getByRole("button", { name: "Open", exact: true }).click(),
    ]);
    await chooser.setFiles(folder.at("text.xlsx"));
    const notice = page.page.getByRole("region", { name: "About the file" });
    await notice.waitFor();
    expect(await notice.innerText()).toMatch(/text\.xlsx was not opened\. The file is not an Excel workbook/);
    expect(await page.page.title()).toContain("Electrical route, demo");
    await notice.getByRole("button", { name: "Close" }).click();
    expect(await notice.count()).toBe(0);
  }, 60_000);

  test("what a file would not hold is told before it is saved; a changed book is asked for before another takes its place", async () => {
    const { file } = await filled(folder, 3);
    const { last } = await page.table("Readings");
    // Far below the table, and no part of it.
    await page.type(`C${last + 9}`, "a remark", "Route");
    await saveButton(page).click();
    const notice = page.page.getByRole("region", { name: "About the file" });
    await notice.waitFor();
    expect(await notice.innerText()).toContain(`A cell beside the sheet's own cannot be saved: Route!C${last + 9}.`);
    await notice.getByRole("button", { name: "Do not save" }).click();
    const [chooser] = await Promise.all([
      page.page.waitForEvent("filechooser"),
      page.page.getByRole("button", { name: "Open", exact: true }).click(),
    ]);
    await chooser.setFiles(file);
    await notice.waitFor();
    expect(await notice.innerText()).toContain("has changes that are not saved");
    await notice.getByRole("button", { name: "Open all the same" }).click();
    await page.says("is open");
    expect((await readings(page)).rows).toHaveLength(3);
  }, 60_000);

  test("a file that is dropped on the page opens; Ctrl+S saves", async () => {
    const { file } = await filled(folder, 3);
    const bytes = readFileSync(file).toString("base64");
    await page.page.evaluate((base64) => {
      const data = new DataTransfer();
      data.items.add(new File([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], "dropped.xlsx"));
      document
        .querySelector(".gb-grid")!
        .dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
    }, bytes);
    await page.says("dropped.xlsx is open");
    const { name } = await saved(page, () => page.page.keyboard.press("Control+s"));
    expect(name).toBe("dropped.xlsx");
  }, 60_000);

  // How long that takes is the bench's matter (npm run bench -- route).
  test("2,000 rows that a script filled recalculate and open with the same numbers", async () => {
    const { file, records } = await filled(folder, 2000);
    await openFile(page, file);
    expect(differences(await readings(page), records)).toEqual([]);
  }, 300_000);
});
