/** What formulas of all kinds give through the built command line: plain functions, ours, and both together. */
import { calc } from "../support/calc.js";

const PLAIN: readonly (readonly [string, unknown])[] = [
  ["=1+1", 2],
  ["1+1", 2],
  ["  =1+1", 2],
  ["-5+3", -2],
  // Literals that the engine alone would take for text.
  ["=58.0*2", 116],
  ["=SUM({1.0;2.0})", 3],
  ["=.5", 0.5],
  ["=5.", 5],
  ["=007", 7],
  ["=1E3", 1000],
  ["=1.E+3", 1000],
  ["=-.5", -0.5],
  ["=0.12345678901234568", 0.12345678901234568],
  ["=1e21", 1e21],
  ["=22.50%", 0.225],
  // Text stays text.
  ['="a""b"', 'a"b'],
  ['="a""""b"', 'a""b'],
  ['=""""', '"'],
  ['={"a,b","c;d}","say ""x"""}', [["a,b", "c;d}", 'say "x"']]],
  ['={"3-5";"8-14"}', [["3-5"], ["8-14"]]],
  ['={"20%","2024-05-01"}', [["20%", "2024-05-01"]]],
  ['=IF(TRUE,"3-5","x")', "3-5"],
  ['="日本 é 😀 °C µm"', "日本 é 😀 °C µm"],
  ['=YEAR("2024-05-01")', 2024],
  // What the engine's lexer alone would refuse.
  ["=- 5", -5],
  ["=1 - - 2", 3],
  ["=2*( - 5)", -10],
  ["=1+{1,2}", [[2, 3]]],
  ["=-{1,2}", [[-1, -2]]],
  ["=_xlfn.SEQUENCE(2)", [[1], [2]]],
  ["=_xlfn.LET(_xlpm.x,2,_xlpm.x*3)", 6],
  // One row or column is filtered by one truth, which fits its height or its width.
  ['=FILTER({1,"a"},TRUE)', [[1, "a"]]],
  ["=FILTER({1;2},{TRUE})", [[1], [2]]],
  ['=FILTER({1,2},FALSE,"none")', "none"],
  // Look-ups of a column: the first of equals whatever the case, a number never as a text.
  ['=XLOOKUP({"B";"c";2;"x"},{"a";"b";"B";2},{1;2;3;4},"none")', [[2], ["none"], [4], ["none"]]],
  // Exactly means that * and ? are letters like others; an error that is found is given, as Excel does.
  ['=XLOOKUP("A*1",{"AX1";"A*1"},{1;2})', 2],
  ['=XLOOKUP({"A?1";"B*"},{"AX1";"A?1"},{1;2},"none")', [[2], ["none"]]],
  ['=XMATCH({"A*";"a*1"},{"AX1";"A*1"})', [[{ error: "#N/A", message: expect.any(String) as string }], [2]]],
  ['=IFERROR(XLOOKUP({1;2},{1;2},{#N/A;3},"none"),"error")', [["error"], [3]]],
  ['=IFERROR(XLOOKUP(1,{1;2},{#N/A;3},"none"),"error")', "error"],
  // A truth is no text.
  ['={TRUE;FALSE}<>""', [[true], [true]]],
  ['=TRUE<>"x"', true],
  ['=TRUE=""', false],
  // A number within a text has fifteen digits at most.
  ['=1/3&""', "0.333333333333333"],
  ['=0.1+0.2&" K"', "0.3 K"],
  ['={1E-7;1E+21;2.5E-12;-20;1234.5}&""', [["0.0000001"], ["1E+21"], ["2.5E-12"], ["-20"], ["1234.5"]]],
  ['=XLOOKUP({0;"";"b"},{"a";"bc";"d"},{1;2;3},"none")', [["none"], ["none"], ["none"]]],
  ['=IFERROR(XMATCH({"d";"A";1},{"a";"bc";"d"}),0)', [[3], [1], [0]]],
  // Arithmetic by digits as the engine has it, truths as 1 and 0, texts that read as numbers.
  ['={0.3;1;"0.5"}-{0.1;TRUE;0.25}', [[0.2], [0], [0.25]]],
  ['=IFERROR(IF({1;0;1},{1;2},"no"),"beyond")', [[1], ["no"], ["beyond"]]],
  // Arrays and lambdas.
  ["=LET(a,1,b,a+1,b*2)", 4],
  ["=LAMBDA(x,x+1)(2)", 3],
  ["=MAP({1,2,3},LAMBDA(x,x*2))", [[2, 4, 6]]],
  [
    "=MAKEARRAY(2,2,LAMBDA(r,c,r*c))",
    [
      [1, 2],
      [2, 4],
    ],
  ],
  ["=REDUCE(0,{1,2,3},LAMBDA(a,b,a+b))", 6],
  ['=XLOOKUP(2,{1;2;3},{"a";"b";"c"})', "b"],
  ["=FILTER({1;2;3},{TRUE;FALSE;TRUE})", [[1], [3]]],
  [
    "=SEQUENCE(2,2)",
    [
      [1, 2],
      [3, 4],
    ],
  ],
  [
    '={1,TRUE;-2.5,"x"}',
    [
      [1, true],
      [-2.5, "x"],
    ],
  ],
  // Cells are empty.
  ["=A1", 0],
  ["=A1+1", 1],
  ["=SUM(A:A)", 0],
  ["=XFD1048576", 0],
  ['=IF(A1:A2="","none",A1:A2)', [["none"], ["none"]]],
];

test("plain formulas", async () => {
  const answers = await calc(PLAIN.map(([formula]) => formula));
  expect(answers).toEqual(PLAIN.map(([formula, value]) => ({ formula, value })));
});

// Worked apart from this code, by a reference in extended precision.
test("the worked lines of the measurement equation", async () => {
  const answers = await calc([
    "=GREY.CORRECTED(58.0,0.850,22.00,.98,20)",
    "=grey.corrected(58,85%,22,0.98,20)",
    "=_xldudf_GREY_CORRECTED(58,0.85,22,0.98,20)",
    "=GREY.CORRECTED(58,0.85,22,0.98,20,0.7,30,0.1,24,0.99)",
    "=GREY.RISE_AT_LOAD(12,45,100,1.6)",
  ]);
  const [first, second, third, window, rise] = answers.map(({ value }) => Number(value));
  expect(first).toBeCloseTo(64.1319672049731, 9);
  expect([second, third]).toEqual([first, first]);
  expect(window).toBeCloseTo(77.1240065729994, 9);
  expect(rise).toBeCloseTo(12 * (100 / 45) ** 1.6, 9);
});

test("an argument left out is not given, whether between commas or at the end", async () => {
  const [plain, between, trailing] = await calc([
    '=GREY.CORRECTED(58,0.85,22,1,20,1,20,0,20,1,"3-5")',
    '=GREY.CORRECTED(58,0.85,22,,,,,,,,"3-5")',
    '=GREY.CORRECTED(58,0.85,22,,,,,,,,"3-5",)',
  ]);
  expect(Number(plain?.value)).toBeGreaterThan(58);
  expect([between?.value, trailing?.value]).toEqual([plain?.value, plain?.value]);
});

test("ours within LET, LAMBDA, MAP, XLOOKUP, FILTER, SEQUENCE, INDEX and arithmetic", async () => {
  const answers = await calc([
    "=GREY.CORRECTED({58;60;62},0.85,22)",
    "=MAP({58;60;62},LAMBDA(t,GREY.CORRECTED(t,0.85,22)))",
    "=GREY.CORRECTED(SEQUENCE(3,1,58,2),0.85,22)",
    "=LET(t,{58;60;62},GREY.CORRECTED(t,0.85,22))",
    "=LAMBDA(t,GREY.CORRECTED(t,0.85,22))({58;60;62})",
    '=FILTER(GREY.CORRECTED({58;60;62;"x"},0.85,22),{TRUE;TRUE;TRUE;FALSE})',
    "=GREY.CORRECTED({58;60;62},0.85,22)*1",
  ]);
  const rounded = (value: unknown): string[] => (value as number[][]).flat().map((number) => number.toFixed(9));
  expect(answers[0]?.value).toHaveLength(3);
  for (const { formula, value } of answers)
    expect([formula, rounded(value)]).toEqual([formula, rounded(answers[0]?.value)]);
  const [first, second] = rounded(answers[0]?.value);
  const single = await calc([
    "=INDEX(GREY.CORRECTED({58;60;62},0.85,22),2)",
    "=XLOOKUP(60,{58;60;62},GREY.CORRECTED({58;60;62},0.85,22))",
    "=GREY.CORRECTED(58,0.85,22)",
  ]);
  expect(rounded(single.map(({ value }) => [value]))).toEqual([second, second, first]);
});

test("a very long formula: 5,000 readings in one array constant, and a sum of 4,000 terms", async () => {
  const readings = Array.from({ length: 5000 }, (_, index) => (40 + index * 0.01).toFixed(2));
  const [long, sum] = await calc([
    `=COUNT(GREY.CORRECTED({${readings.join(";")}},0.9,22))`,
    `=${Array.from({ length: 4000 }, () => "1.0").join("+")}`,
  ]);
  expect([long?.value, sum?.value]).toEqual([5000, 4000]);
});
