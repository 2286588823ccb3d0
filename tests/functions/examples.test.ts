/** Every example of the catalogue runs, read as a person reads it, and shows what stands beside it. */
import { catalogue } from "../../src/functions/catalogue.js";
import type { Cell, Grid, Input } from "../../src/functions/contract.js";

const ARRAY = /^\{(.*)\}$/;

function literal(text: string): Cell {
  if (text === "") return null;
  const quoted = /^"(.*)"$/.exec(text);
  if (quoted) return quoted[1] ?? "";
  if (!/^-?\d+(\.\d+)?$/.test(text)) throw new Error(`An example may hold literals only, not ${text}.`);
  return Number(text);
}

/** The arguments of "=GREY.NAME(1,"text",,{1,2;3,4})". */
function argumentsOf(formula: string, name: string): Input[] {
  const inside = new RegExp(`^=GREY\\.${name}\\((.*)\\)$`).exec(formula)?.[1];
  if (inside === undefined) throw new Error(`${formula} does not call GREY.${name}.`);
  if (inside === "") return [];
  const parts = inside.match(/(\{[^}]*\}|"[^"]*"|[^,])*(?:,|$)/g) ?? [];
  // The last match is the empty end of the text, unless the last argument is one.
  const texts = parts.slice(0, inside.endsWith(",") ? undefined : -1).map((part) => part.replace(/,$/, "").trim());
  return texts.map((text): Input => {
    const rows = ARRAY.exec(text)?.[1];
    return rows === undefined ? literal(text) : rows.split(";").map((row) => row.split(",").map(literal));
  });
}

/** A cell as the example shows it: numbers to as many decimals. */
function reads(cell: Cell | undefined, shown: string): boolean {
  const decimals = shown.split(".")[1]?.length ?? 0;
  return typeof cell === "number" ? cell.toFixed(decimals) === shown : cell === shown;
}

describe.each(catalogue.map((spec) => [spec.example.formula, spec.example.shows, spec] as const))(
  "%s",
  (formula, shows, spec) => {
    const found: Grid = spec.evaluate(argumentsOf(formula, spec.name));

    it(`shows ${shows}`, () => {
      const cells = found.flat();
      const shown = shows.split(", ").filter((part) => part !== "…");
      expect(shown.length).toBeGreaterThan(0);
      if (spec.shape === "table" && !reads(cells[0], shown[0] ?? "")) {
        // One line of a table: the value asked for.
        expect(shown.every((part) => cells.some((cell) => reads(cell, part)))).toBe(true);
        return;
      }
      expect(shown.map((part, i) => (reads(cells[i], part) ? part : cells[i]))).toEqual(shown);
      if (!shows.endsWith("…")) expect(cells).toHaveLength(shown.length);
    });
  },
);
