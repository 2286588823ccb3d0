import AxeBuilder from "@axe-core/playwright";
import { theme, themeOf } from "../../src/host/excel/theme.js";
import { contrastTones, darkTones, lightTones } from "../../src/host/tones.js";
import { describeInBrowser } from "../support/browser.js";
import { ExcelPane } from "../support/excel-pane.js";

describe("Office's theme by the ground of its panes", () => {
  // From memory: grounds of Office's white, light grey, dark grey and black themes, and high contrast on black.
  test.each([
    ["#ffffff", "light"],
    ["#E6E6E6", "light"],
    ["#666666", "dark"],
    ["#262626", "dark"],
    ["#1f1f1f", "dark"],
    ["#000000", "contrast"],
    ["#000000ff", "contrast"],
    ["000000", "contrast"],
    ["", undefined],
    ["buttonface", undefined],
    [undefined, undefined],
  ])("%s is %s", (ground, expected) => {
    expect(themeOf(ground)).toBe(expected);
  });

  test.each([
    [true, "dark"],
    [false, "light"],
  ])("where Office does not tell, the system is asked: dark %s", (matches, expected) => {
    Object.assign(globalThis, { matchMedia: () => ({ matches }) });
    expect(theme()).toBe(expected);
    Object.assign(globalThis, { Office: { context: { officeTheme: { bodyBackgroundColor: "#000000" } } } });
    expect(theme()).toBe("contrast");
    Object.assign(globalThis, { Office: undefined, matchMedia: undefined });
  });
});

describeInBrowser("The pane follows Office, not the system", () => {
  let pane: ExcelPane;
  beforeAll(async () => {
    pane = await ExcelPane.open({ name: "Sheet1", formulas: [[1]], values: [[1]] });
  });
  afterAll(() => pane.close());

  test.each([
    ["#262626", "dark", darkTones],
    ["#000000", "contrast", contrastTones],
    ["#ffffff", "light", lightTones],
    ["none", "light", lightTones],
  ])("ground %s: %s, seen when someone comes back to the pane", async (ground, expected, tones) => {
    await pane.page.evaluate((set) => {
      globalThis.standIn.ground = set;
      dispatchEvent(new Event("focus"));
    }, ground);
    await pane.page.locator(`.gp-pane[data-theme=${expected}]`).waitFor();
    const rgb = (hex: string): string =>
      `rgb(${[1, 3, 5].map((at) => String(Number.parseInt(hex.slice(at, at + 2), 16))).join(", ")})`;
    const colours = await pane.page.evaluate(() =>
      [".gp-pane", "body"].map((one) => getComputedStyle(document.querySelector(one)!).backgroundColor),
    );
    // What stands around the pane goes with it.
    expect(colours).toEqual([rgb(tones.paper), rgb(tones.paper)]);
    for (const way of ["Start", "Check", "Look", "Functions", "Sources"]) {
      await pane.way(way);
      const { violations } = await new AxeBuilder({ page: pane.page }).analyze();
      expect(violations.map(({ id, nodes }) => [way, id, nodes.map(({ html }) => html)])).toEqual([]);
    }
  });
});
