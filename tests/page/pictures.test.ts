/** Pictures of a file in the page: drawn in their boxes, saved again, and never under another exception's number. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readContents } from "../../src/host/file/read/contents.js";
import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";
import { root } from "../support/run.js";

const FILE = path.join(root, "workbooks/demo-route.xlsx");

/** How many colours of the page stand in the middle of a picture's box. */
async function colours(page: OpenPage, from: string, to: string): Promise<number> {
  const [first, last] = [await page.middle(from), await page.middle(to)];
  const clip = { x: first.x, y: first.y, width: last.x - first.x, height: last.y - first.y };
  const shot = (await page.page.screenshot({ clip })).toString("base64");
  return page.page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height).getContext("2d")!;
    canvas.drawImage(image, 0, 0);
    return new Set(new Uint32Array(canvas.getImageData(0, 0, image.width, image.height).data.buffer)).size;
  }, shot);
}

describeInBrowser("Pictures of a file that is opened", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await (await OpenPage.open("small")).ready();
    const [chooser] = await Promise.all([
      page.page.waitForEvent("filechooser"),
      page.page.getByRole("button", { name: "Open", exact: true }).click(),
    ]);
    await chooser.setFiles(FILE);
    await page.page.getByRole("tab", { name: "Exception pages" }).waitFor();
    await page.settled();
  }, 120_000);

  afterAll(() => page.close());

  const save = async (): Promise<Uint8Array> => {
    const download = page.page.waitForEvent("download");
    await page.page.getByRole("button", { name: "Save as .xlsx" }).click();
    return new Uint8Array(readFileSync(await (await download).path()));
  };

  test("are drawn in their boxes and saved with them", async () => {
    // The demo's first page: heading of four lines, a free one, then page line 4 is where the boxes begin.
    await page.select("F8", "Exception pages");
    await page.page.waitForTimeout(500);
    // A field of temperatures and its scale, not one ground.
    expect(await colours(page, "F11", "G15")).toBeGreaterThan(30);
    expect(await colours(page, "H11", "I15")).toBeGreaterThan(4);
    const { held } = readContents(new Uint8Array(readFileSync(FILE)));
    // The demo's exceptions: each has both.
    expect(held.length).toBeGreaterThan(10);
    expect(readContents(await save()).held).toEqual(held);
  }, 120_000);

  test("are placed from a folder by the pane: what fits takes its box, what the folder lacks stays", async () => {
    const before = readContents(await save()).held;
    const of = (held: typeof before, kind: string) => held.filter(({ key }) => key.endsWith(kind));
    const [first, other] = of(before, "thermogram");
    // Another exception's thermogram under the first one's number, and a file that is no picture.
    const folder = mkdtempSync(path.join(tmpdir(), "greybody-page-pictures-"));
    writeFileSync(path.join(folder, `${first!.shown}.png`), Buffer.from(other!.base64, "base64"));
    writeFileSync(path.join(folder, "notes.txt"), "none");
    const [chooser] = await Promise.all([
      page.page.waitForEvent("filechooser"),
      page.page.getByRole("button", { name: "Choose the folder" }).click(),
    ]);
    await chooser.setFiles(folder);
    await page.page.locator(".gp-said", { hasText: "Pictures:" }).waitFor();
    rmSync(folder, { recursive: true });
    const after = readContents(await save()).held;
    expect(after).toHaveLength(before.length);
    expect(of(after, "thermogram").find(({ shown }) => shown === first!.shown)?.base64).toBe(other!.base64);
    expect(of(after, "photo")).toEqual(of(before, "photo"));
    // Where nothing fits, nothing that stands is taken away.
    expect(of(after, "thermogram").find(({ shown }) => shown === other!.shown)?.base64).toBe(other!.base64);
  }, 120_000);

  test("follow their number; a number without one says so, and what nobody asks for is told before it is lost", async () => {
    const asked = await page.cell("G9", "Exception pages");
    const other = await page.cell("G29", "Exception pages");
    const table = await page.page.evaluate(async (image) => {
      const read = await globalThis.greybody!.port.readTable("Readings");
      if (!read.ok) throw new Error(read.message);
      return { at: read.value.rows.findIndex((row) => row.thermal_image === image), table: read.value.table };
    }, asked.shown);
    const column = table.table.columns.find(({ key }) => key === "thermal_image")!.column;
    const cell = `${String.fromCharCode(65 + column)}${table.table.firstRow + table.at + 1}`;
    await page.type(cell, "IR-9999", "Route");
    await page.select("F8", "Exception pages");
    await page.page.waitForTimeout(500);
    expect((await page.cell("F10", "Exception pages")).painted).toBe("IR-9999 is not in this workbook");
    await page.page.getByRole("button", { name: "Save as .xlsx" }).click();
    const notice = page.page.getByRole("region", { name: "About the file" });
    await notice.waitFor();
    expect(await notice.innerText()).toContain(
      `A picture is not saved, since no exception has its number any more: thermogram ${asked.shown}.`,
    );
    await notice.getByRole("button", { name: "Do not save" }).click();
    // Another exception's picture under the first one's number: it is the number that counts, not the box.
    await page.type(cell, other.shown, "Route");
    await page.select("F8", "Exception pages");
    await page.page.waitForTimeout(500);
    expect(await colours(page, "F11", "G15")).toBeGreaterThan(30);
  }, 120_000);
});
