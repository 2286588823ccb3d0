import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

describeInBrowser("Formulas of a person", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await (await OpenPage.open("small")).ready();
  });

  afterAll(async () => {
    expect(page.faults).toEqual([]);
    await page.close();
  });

  test("numbers keep their value however they are written: loaded, typed, pasted", async () => {
    // As loaded: 1 + 2 + 58 + 0.5.
    expect((await page.cell("B7", "Job")).value).toBe(61.5);
    await page.type("K1", "=SUM({1.0;2.0})+58.0+.5+007");
    expect((await page.cell("K1")).value).toBe(68.5);
    expect((await page.cell("K1")).formula).toBe("=SUM({1;2})+58+0.5+7");
    await page.paste("K2", '=SUM(58.0,0.850)&"58.0"');
    expect((await page.cell("K2")).value).toBe("58.8558.0");
  });

  test("columns and names become ranges; what is not there is told", async () => {
    await page.type("K3", "=SUM(Readings_table[Left])-job_limit");
    expect(await page.cell("K3")).toMatchObject({ value: 144.75, formula: "=SUM($C$5:$C$8)-Job!$B$4" });
    await page.type("K6", "=[@Left]*2.0");
    expect(await page.cell("K6")).toMatchObject({ value: 116, formula: "=$C$6*2" });
    await page.type("K8", "=SUM(Readings_table[Middle])");
    expect(await page.status()).toContain("Not found: Readings_table[Middle]");
  });

  test("our functions, in any case, with our message where they refuse", async () => {
    // Worked apart from this code: 58.0 °C, emissivity 0.85, 22 °C reflected, air 0.98 at 20 °C.
    await page.type("L1", "=grey.corrected(58.0,0.850,22.00,.98,20)");
    expect((await page.cell("L1")).value).toBeCloseTo(64.1319672049731, 9);
    await page.type("J2", "=GREY.CORRECTED(58,95,22)");
    const refused = await page.cell("J2");
    expect(refused.shown).toBe("#VALUE!");
    expect(refused.message).toMatch(/emissivity.*95.*0\.95/);
    await page.select("J2");
    expect(await page.status()).toContain(refused.message ?? "");
    const { x, y } = await page.middle("J2");
    await page.page.mouse.move(x, y + 60);
    await page.page.mouse.move(x, y, { steps: 3 });
    await page.page.locator(".gb-hover:visible").waitFor();
    expect(await page.page.locator(".gb-hover").innerText()).toBe(refused.message);
  });

  test("in a spill each row has its own message", async () => {
    await page.type("M5", "=GREY.CORRECTED(C5:C8,E5:E8,22)");
    expect((await page.cellOnce("M7", ({ shown }) => shown !== "")).shown).toMatch(/^7\d\./);
    // Messages come by a way of their own, and may come after the values.
    const refused = await page.cellOnce("M6", ({ message }) => message?.includes("not given") === true);
    expect(refused.message).toContain("emissivity is not given");
    expect((await page.cell("M7")).message).toBeUndefined();
  });

  test("an error of the engine's own is told in a plain sentence, and nothing stops", async () => {
    await page.type("L4", "=GREY.NOTHING(1)");
    const unknown = await page.cellOnce("L4", ({ message }) => message?.includes("GREY.NOTHING") === true);
    expect(unknown.message).toBe("There is no function GREY.NOTHING here.");
    await page.type("K4", "=CORRECTED(58,0.85,22)");
    const near = await page.cellOnce("K4", ({ message }) => message?.includes("Did you mean") === true);
    expect(near.message).toContain("Did you mean GREY.CORRECTED?");
    await page.type("L5", "=SUM(SEQUENCE(1E9))");
    expect((await page.cellOnce("L5", ({ shown }) => shown !== "")).shown).toMatch(/^#/);
    await page.type("L6", "=LAMBDA(x,x)(1,2,3)");
    await page.type("L7", "=1+1");
    expect((await page.cellOnce("L7", ({ value }) => value === 2)).value).toBe(2);
  });

  test("typing offers our functions with what they do", async () => {
    await page.select("L9");
    await page.page.keyboard.type("=GREY.RISE");
    const offer = page.page.locator("[data-u-comp=sheets-formula-editor]").first();
    await offer.getByText("RISE_AT_LOAD").waitFor();
    expect(await offer.innerText()).toContain("A rise as it would be at another load");
    await page.press("Escape", "Escape");
  });
});
