/** IEC 60694:1996 with amendments 1 and 2, Table 3, which IEC 62271-1:2007 repeats: 32 rows, temperature and rise. */
import { LIMITS } from "../../src/data/limits.js";
import { expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

const BARE_JOINT = "bolted joint, bare";
/** Part and surface as the table has them, and as ours names them. */
const PARTS: Readonly<Record<string, string>> = {
  "contact; bare copper": "contact, bare copper",
  "contact; silver or nickel coated": "contact, silver or nickel coated",
  "contact; tin coated": "contact, tin coated",
  "bolted connection; bare copper, copper alloy or aluminium alloy": BARE_JOINT,
  "bolted connection; silver or nickel coated": "bolted joint, silver or nickel coated",
  "bolted connection; tin coated": "bolted joint, tin coated",
  "terminal to external conductor; bare": "terminal, bare",
  "terminal to external conductor; silver, nickel or tin coated": "terminal, silver, nickel or tin coated",
  "oil; in an oil switching device": "oil of an oil switching device",
  "part touching oil; other than contacts": "part touching oil",
  "accessible part; touched in normal operation": "accessible part, touched in normal operation",
  "accessible part; need not be touched": "accessible part, need not be touched",
};

function partOf(inputs: string): string {
  const [, part = "", surface = "", medium] = /^part=(.*?); surface=(.*?)(?:; medium=(\w+))?$/.exec(inputs) ?? [];
  if (part === "insulation") return `insulation, ${surface}`;
  const name = PARTS[`${part}; ${surface}`] ?? `unknown part ${inputs}`;
  return medium === undefined || medium === "oil" ? inOil(name, medium) : `${name}, in ${medium}`;
}

/** Oil itself, and what is named by touching it, does not say so twice. */
function inOil(name: string, medium: string | undefined): string {
  return medium === undefined || / oil\b/.test(name) ? name : `${name}, in oil`;
}

describe("IEC 60694, Table 3", () => {
  const checks = publishedChecks("T3-");
  it("both figures of every row, and no row more", () => {
    expect(checks).toHaveLength(64);
    const ours = LIMITS.filter(({ source }) => source === "iec-60694-1996").map(({ part }) => part);
    expect(new Set(checks.map(({ inputs }) => partOf(inputs)))).toEqual(new Set(ours));
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, partOf(check.inputs), check.id.endsWith("t") ? "C" : "K", "IEC 60694");
  });
});
