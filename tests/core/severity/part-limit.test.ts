/** Limits of parts: exact names, one standard, no figure from memory, a workbook's own. */
import { BUILT_IN_LIMITS, findLimit, limitFigure, ownLimits } from "../../../src/core/severity/part-limit.js";
import type { OwnLimitRow } from "../../../src/core/severity/part-limit.js";
import { refusal } from "../../support/refusal.js";

const find = (part: string, standard?: string) => findLimit(BUILT_IN_LIMITS, part, standard);
const key = (work: () => unknown): string | undefined => refusal(work).hint?.key;

describe("the built-in limits", () => {
  it("a part by its exact name, in any case, in kelvin", () => {
    const { temp, rise } = find(" Bolted joint, TIN coated, in air ");
    expect([temp, rise]).toEqual([105 + 273.15, 65]);
  });

  it("by half a name none, and those near it", () => {
    const wrong = refusal(() => find("bolted joint tin"));
    expect([wrong.code, wrong.argument, wrong.hint?.key]).toEqual(["REFUSED", "part", "part-near"]);
    expect(wrong.hint?.values?.near).toMatch(/^bolted joint, tin coated, in air;/);
    expect(key(() => find("flux capacitor"))).toBe("part-unknown");
  });

  it("the standard is named where two have the part, never chosen", () => {
    const part = "assembly terminal for external conductors";
    expect(key(() => find(part))).toBe("part-in-several");
    expect(find(part, "61439").standard).toBe("IEC 61439-1");
    expect(find(part, "iec 60439-1").standard).toBe("IEC 60439-1");
    expect(key(() => find(part, "NEMA"))).toBe("part-not-in-standard");
  });

  it("a rise is not turned into a temperature, nor the other way", () => {
    const winding = find("motor winding, class B, service factor 1.15");
    expect(limitFigure(winding, "rise")).toBe(90);
    expect(key(() => limitFigure(winding, "temp"))).toBe("limit-rise-only");
    expect(key(() => limitFigure(find("motor insulation, class B"), "rise"))).toBe("limit-temp-only");
  });

  it("what is from memory is told, never given as a number", () => {
    const remembered = BUILT_IN_LIMITS.filter(({ row }) => row?.evidence === "memory");
    expect(remembered.length).toBeGreaterThan(0);
    for (const limit of remembered) {
      for (const figure of ["temp", "rise"] as const) {
        if (limit[figure] !== undefined) expect(key(() => limitFigure(limit, figure))).toBe(`limit-${figure}-memory`);
      }
    }
  });
});

describe("a workbook's own limits", () => {
  const lug: OwnLimitRow = { part: "lug", standard: "job", temp: 363.15, rise: NaN, source: "page 3" };
  const wrong = (row: Partial<OwnLimitRow>) => refusal(() => ownLimits([lug, { ...lug, part: "bar", ...row }]));

  it("are found as the built-in ones are", () => {
    const limits = ownLimits([lug, { ...lug, standard: "other", temp: NaN, rise: 30 }]);
    expect(limitFigure(findLimit(limits, "LUG", "job"), "temp")).toBe(363.15);
    expect(limitFigure(findLimit(limits, "lug", "other"), "rise")).toBe(30);
    expect(key(() => findLimit(limits, "lug"))).toBe("part-in-several");
  });

  it.each([
    [{ part: " " }, "limits-part"],
    [{ temp: NaN }, "limits-figure"],
    [{ temp: 1773.16 }, "limits-temp"],
    [{ temp: 273.14 }, "limits-temp"],
    [{ rise: 0 }, "limits-rise"],
    [{ rise: 1000.1 }, "limits-rise"],
    [{ part: "Lug" }, "limits-twice"],
  ])("%j in the second row is refused", (row, expected) => {
    const error = wrong(row);
    expect([error.code, error.argument, error.hint?.key, error.hint?.values?.row]).toEqual([
      "INVALID",
      "limits",
      expected,
      2,
    ]);
  });

  it("none at all is refused", () => {
    expect(key(() => ownLimits([]))).toBe("limits-empty");
  });
});
