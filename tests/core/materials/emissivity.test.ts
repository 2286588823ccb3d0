/** Emissivity of a material by band: which column speaks for which band, what has no value, names that are near. */
import { columnsFor, emissivityIn, middleOf } from "../../../src/core/materials/emissivity.js";
import { flatBand, responseBand } from "../../../src/core/planck/band.js";
import { MATERIALS } from "../../../src/data/emissivity.js";
import { refusal } from "../../support/refusal.js";

const LONG = flatBand(7.5, 14);
const SHORT = flatBand(3, 5);

describe("the column for a band", () => {
  it.each([
    [7, 15, ["long", "total"]],
    [8, 14, ["long", "total"]],
    [6.9, 14, []],
    [8, 15.1, []],
    [1.5, 5.6, ["short"]],
    [3, 5, ["short"]],
    [1.4, 5, []],
    [3, 5.7, []],
    [3, 14, []],
    [0.9, 1.7, []],
  ])("%d to %d µm", (from, to, columns) => {
    expect(columnsFor(flatBand(from, to))).toEqual(columns);
  });

  it("a response table counts where it responds", () => {
    expect(columnsFor(responseBand([2, 7, 10, 14, 18], [0, 0, 1, 0, 0]))).toEqual(["long", "total"]);
    expect(columnsFor(responseBand([2, 10, 14], [0, 1, 0]))).toEqual([]);
  });
});

describe("emissivity in a band", () => {
  it("the long wave's own range goes before the total, which stands in where there is none", () => {
    const sheet = emissivityIn("aluminium, sheet as received", LONG);
    expect([sheet.range.low, sheet.range.high, sheet.totalForLong]).toEqual([0.03, 0.06, false]);
    const oxidised = emissivityIn("COPPER, oxidised ", LONG);
    expect([oxidised.range.low, oxidised.range.high, oxidised.totalForLong]).toEqual([0.6, 0.7, true]);
  });

  it("the total never stands in for the short wave", () => {
    const wrong = refusal(() => emissivityIn("copper, oxidised", SHORT));
    expect([wrong.code, wrong.argument, wrong.hint?.key]).toEqual(["REFUSED", "band", "emissivity-not-in-band"]);
    expect(wrong.hint?.values).toEqual({ material: "copper, oxidised", has: "total emissivity" });
    expect(refusal(() => emissivityIn("copper, oxidised", flatBand(1, 2))).hint?.key).toBe("emissivity-no-column");
  });

  it("anodised aluminium: nearly black in the long wave, far from it in the short", () => {
    // Öhman 1999, as collations give it.
    expect(middleOf(emissivityIn("aluminium, anodised, light grey, dull", LONG))).toBe(0.97);
    expect(middleOf(emissivityIn("aluminium, anodised, light grey, dull", SHORT))).toBe(0.61);
  });

  it("bare metal and what must be measured have ends and no middle", () => {
    const bands = { long: LONG, short: SHORT, total: LONG };
    for (const { material, kind, measure, ranges } of MATERIALS) {
      const found = emissivityIn(material, bands[ranges[0]!.band]);
      expect(found.range.high).toBeGreaterThan(0);
      if (kind !== "bare metal" && measure !== true) expect(middleOf(found)).toBeGreaterThan(0);
      else expect(refusal(() => middleOf(found)).hint?.key).toMatch(/^emissivity-(bare-metal|measure)$/);
    }
  });

  it("no name by half: copper alone is no material", () => {
    const wrong = refusal(() => emissivityIn("copper", LONG));
    expect([wrong.code, wrong.hint?.key]).toEqual(["REFUSED", "material-near"]);
    expect(wrong.hint?.values?.near).toMatch(/^copper, polished; copper, /);
    expect(refusal(() => emissivityIn("unobtainium", LONG)).hint?.key).toBe("material-unknown");
  });
});
