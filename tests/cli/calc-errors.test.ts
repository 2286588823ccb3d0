/** Errors through the built command line: the value, and always a message that helps. */
import { calc } from "../support/calc.js";

const ERRORS: readonly (readonly [formula: string, error: string, message: RegExp])[] = [
  // Ours.
  ["=GREY.CORRECTED(58,95,22)", "#VALUE!", /emissivity.*95.*above 0, up to 1.*0\.95/],
  ["=GREY.RISE_AT_LOAD(12,35,100)", "#N/A", /35 %.*40 %/],
  ["=GREY.CORRECTED(58)", "#VALUE!", /emissivity is not given/],
  ["=GREY.CORRECTED()", "#VALUE!", /apparent is not given/],
  ["=GREY.CORRECTED(58,,22)", "#VALUE!", /emissivity is not given/],
  ["=GREY.CORRECTED(A1,0.9,22)", "#VALUE!", /apparent is not given/],
  ['=GREY.CORRECTED(IF(A1="","",A1),0.9,22)', "#VALUE!", /apparent is not given/],
  ["=GREY.CORRECTED(1,2,3,4,5,6,7,8,9,10,11,12,13)", "#VALUE!", /at most 12 arguments/],
  ["=GREY.CORRECTED({58;60},{0.9;0.9;0.9},22)", "#VALUE!", /(?=.*apparent.* 2 rows)(?=.*emissivity.* 3 rows)/],
  ['=GREY.CORRECTED("50%",0.9,22)', "#VALUE!", /apparent.*"50%"/],
  // Ours, seen through other functions.
  ["=GREY.CORRECTED(58,95,22)+1", "#VALUE!", /emissivity.*0\.95/],
  ["=SUM(GREY.CORRECTED({58;60},{0.9;95},22))", "#VALUE!", /emissivity.*0\.95/],
  ["=INDEX(GREY.CORRECTED({58;60},{0.9;95},22),2)", "#VALUE!", /emissivity.*0\.95/],
  ["=LET(t,GREY.CORRECTED(58,95,22),t-22)", "#VALUE!", /emissivity.*0\.95/],
  ["=GREY.CORRECTED(GREY.CORRECTED(58,95,22),0.9,22)", "#VALUE!", /emissivity.*0\.95/],
  // The engine's own.
  ["=1/0", "#DIV/0!", /divided by zero/],
  ["=GREY.CORRECTED(1/0,0.9,22)", "#DIV/0!", /divided by zero/],
  ["=VLOOKUP(9,{1,2},2,FALSE)", "#N/A", /lookup found nothing/],
  ["=SQRT(-1)", "#NUM!", /no number/],
  ['=ABS("x")', "#VALUE!", /text where a number is needed/],
  ["=FILTER({1;2},{FALSE;FALSE})", "#CALC!", /empty list/],
  ["=LAMBDA(x,x)", "#CALC!", /LAMBDA/],
  ["=ABS(1,2)", "#N/A", /ABS takes 1 argument, 2 were given/],
  ["=IF()", "#N/A", /IF takes 2 to 3 arguments, 0 were given/],
  // Names.
  ["=NOPE(1)", "#NAME?", /no function NOPE here\.$/],
  ["=GREY.CORECTED(58,0.9,22)", "#NAME?", /GREY\.CORECTED.*GREY\.CORRECTED/],
  ["=CORRECTED(58,0.9,22)", "#NAME?", /GREY\.CORRECTED/],
  ["=VLOKUP(1,2,3)", "#NAME?", /VLOOKUP/],
  ["=similar", "#NAME?", /similar.*double quotes/],
  ['=IMAGE("http://localhost/x.png")', "#NAME?", /IMAGE/],
  ["=LET(f,LAMBDA(x,x+1),f(2))", "#NAME?", /f is a LAMBDA/],
  // No workbook.
  ["=Foo!A1", "#REF!", /no sheet Foo/],
  ["=Readings[Apparent]", "#REF!", /no table.*\[Apparent\]/],
  // More than can be held.
  ["=SUM(A1:XFD1048576)", "#VALUE!", /at most 5,000,000/],
  ["=SUM(OFFSET(A1,0,0,1000000,1000))", "#VALUE!", /at most 5,000,000/],
  ["=SEQUENCE(1000000)+SEQUENCE(1,1000)", "#VALUE!", /at most 5,000,000/],
  ["=GREY.CORRECTED(SEQUENCE(100000),SEQUENCE(1,1000),22)", "#VALUE!", /at most 5,000,000/],
  ["=MAKEARRAY(100000,100000,LAMBDA(r,c,1))", "#VALUE!", /at most 5,000,000/],
  ['=REPT("ab",20000)', "#VALUE!", /32,767/],
  // Form.
  ["=SUM(1", "SYNTAX", /position 5/],
  ["={1,2;3}", "SYNTAX", /position 7/],
  ["=1+", "SYNTAX", /position 4/],
  ["=SUM(1;2)", "SYNTAX", /semicolons.*position 7/],
  ["", "SYNTAX", /empty.*position 1/],
];

test("each error has its value and its message, and a good line among them its value", async () => {
  const answers = await calc(ERRORS.flatMap(([formula]) => [formula, "=1+1"]));
  ERRORS.forEach(([formula, error, message], index) => {
    expect(answers[2 * index]).toEqual({ formula, error, message: expect.stringMatching(message) as string });
    expect(answers[2 * index + 1]).toEqual({ formula: "=1+1", value: 2 });
  });
});

test("an error caught is no error", async () => {
  const [caught] = await calc(['=IFERROR(GREY.CORRECTED(58,95,22),"check")']);
  expect(caught?.value).toBe("check");
});

test("errors inside a spill stand in their place, each with its own message", async () => {
  const [spill] = await calc(['=GREY.CORRECTED({58;60;"x";58},{0.9;95;0.9;0.9},22)']);
  const rows = (spill?.value as unknown[][]).flat();
  expect(rows).toHaveLength(4);
  expect(rows[1]).toEqual({ error: "#VALUE!", message: expect.stringContaining("emissivity") as string });
  expect(rows[2]).toEqual({ error: "#VALUE!", message: expect.stringContaining('"x"') as string });
  expect(typeof rows[0]).toBe("number");
  expect(rows[3]).toBe(rows[0]);
});
