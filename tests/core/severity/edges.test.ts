/**
 * Every pair of readings at 0.1 °C or 0.1 °F whose difference is exactly an edge, a tenth above it or a tenth below it,
 * −40…200 °C: graded by whole tenths here, in floating point there. 16.1 − 1.1 is 15.000000000000002.
 */
import { grade } from "../../../src/core/severity/grade.js";
import { bandsFor } from "../../../src/core/severity/criteria.js";
import { BUILT_IN_CRITERIA, type CriteriaSet, type ReferenceKind } from "../../../src/data/criteria.js";
import { shareOfLimit } from "../../../src/core/loading/share-of-limit.js";

const KELVIN = 273.15;
const fahrenheitToKelvin = (f: number): number => (f - 32) / 1.8 + KELVIN;

/** A sheet's unit: tenths of a degree a kelvin, and the ways in which a rise in kelvin comes of two readings. */
const UNITS = {
  "°C": {
    perKelvin: 10,
    from: -400,
    to: 2000,
    rises: [(hot: number, cold: number) => hot - cold, (hot: number, cold: number) => hot + KELVIN - (cold + KELVIN)],
  },
  "°F": {
    perKelvin: 18,
    from: -400,
    to: 3920,
    rises: [
      (hot: number, cold: number) => (hot - cold) / 1.8,
      (hot: number, cold: number) => ((hot - cold) * 5) / 9,
      (hot: number, cold: number) => fahrenheitToKelvin(hot) - fahrenheitToKelvin(cold),
    ],
  },
};

/** Grade by whole tenths; undefined for a rise too cold to be graded. */
function gradeByTenths(set: CriteriaSet, reference: ReferenceKind, tenths: number, perKelvin: number): number {
  const reached = bandsFor(set, reference).filter(({ bound, edge }) => {
    const edgeTenths = Math.round(edge * perKelvin);
    return bound === "from" ? tenths >= edgeTenths : tenths > edgeTenths;
  });
  return Math.max(0, ...reached.map((band) => band.grade));
}

const tables = BUILT_IN_CRITERIA.flatMap((set) =>
  [...new Set(set.rows.map((row) => row.reference))]
    .filter((reference) => reference !== "limit")
    .map((reference) => [set.name, reference, set] as const),
);

describe.each(Object.entries(UNITS))("pairs of readings in tenths of %s", (_, unit) => {
  it.each(tables)("%s, %s", (_name, reference, set) => {
    const view = set.views[0] ?? "direct";
    const wrong: string[] = [];
    let pairs = 0;
    for (const { edge } of bandsFor(set, reference)) {
      for (const beside of [-1, 0, 1]) {
        const tenths = Math.round(edge * unit.perKelvin) + beside;
        const expected = gradeByTenths(set, reference, tenths, unit.perKelvin);
        for (let cold = unit.from; cold + tenths <= unit.to; cold++) {
          for (const rise of unit.rises) {
            pairs++;
            const found = grade({ rise: rise((cold + tenths) / 10, cold / 10), reference, criteria: set, view }).grade;
            if (found !== expected) wrong.push(`${cold + tenths} − ${cold} tenths: ${found}, not ${expected}`);
          }
        }
      }
    }
    expect(pairs).toBeGreaterThan(10_000);
    expect(wrong).toEqual([]);
  });
});

describe("pairs that lie just as far below their reference as chance may", () => {
  const gradeOrNone = (rise: number, reference: string): number | undefined => {
    try {
      return grade({ rise, reference }).grade;
    } catch {
      return undefined;
    }
  };
  it.each([
    ["similar", 1],
    ["ambient", 3],
  ])("%s: −%d K is grade 0, a tenth less has none", (reference, most) => {
    const found = new Set<string>();
    for (let cold = -400; cold <= 2000; cold++) {
      const on = gradeOrNone(cold / 10 - (cold + most * 10) / 10, reference);
      const below = gradeOrNone(cold / 10 - (cold + most * 10 + 1) / 10, reference);
      found.add(`${on ?? "none"}, ${below ?? "none"}`);
    }
    expect([...found]).toEqual(["0, none"]);
  });
});

describe("shares of a limit from readings in tenths", () => {
  const edges = [0.75, 0.9, 1, 1.2];
  it.each([20, 35, 40, 50, 60, 65, 75, 105])("%d K permitted", (permitted) => {
    const wrong: string[] = [];
    for (let air = -300; air <= 600; air++) {
      for (const [i, edge] of edges.entries()) {
        const onEdge = Math.round(edge * permitted * 1e7) / 1e6;
        if (!Number.isInteger(onEdge)) continue;
        for (const beside of [-1, 0, 1]) {
          const temp = (air + onEdge + beside) / 10 + KELVIN;
          const limit = (air + permitted * 10) / 10 + KELVIN;
          const rise = shareOfLimit({ temp, limit, surroundingAir: air / 10 + KELVIN });
          const found = grade({ rise, reference: "limit", criteria: "house-limit" }).grade;
          if (found !== (beside < 0 ? i : i + 1)) wrong.push(`air ${air} tenths, ${edge}: ${found}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
