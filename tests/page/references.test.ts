import { mapReferences } from "../../src/page/edit/references.js";

const down = (formula: string): string =>
  mapReferences(formula, ({ box }) => ({ ...box, startRow: box.startRow + 1, endRow: box.endRow + 1 }));

test("moves every reference and keeps its dollar signs", () => {
  expect(down("=A1+$B$2*C$3-$D4")).toBe("=A2+$B$3*C$4-$D5");
  expect(down("=SUM(A1:B2,$C$3:$D$4)")).toBe("=SUM(A2:B3,$C$4:$D$5)");
});

test("leaves text, numbers, names and functions alone", () => {
  for (const formula of ['="A1"&"say ""B2"""', "=1E5+LOG10(2)+A1_rate", "=GREY.RISE_AT_LOAD(1,2,3)", "=TRUE"]) {
    expect(down(formula)).toBe(formula);
  }
});

test("tells the sheet without its quotes and writes it back as it was", () => {
  const seen: (string | undefined)[] = [];
  const formula = mapReferences("=Job!A1+'It''s a sheet'!B2:B3+C4", ({ sheetName, box }) => {
    seen.push(sheetName);
    return { ...box, endRow: box.endRow + 1 };
  });
  expect(seen).toEqual(["Job", "It's a sheet", undefined]);
  expect(formula).toBe("=Job!A1:A2+'It''s a sheet'!B2:B4+C4:C5");
});

test("a reference that is not answered stays as written", () => {
  expect(mapReferences("=b2:b3", () => undefined)).toBe("=b2:b3");
});
