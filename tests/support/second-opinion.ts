/** Formulas to ask two engines: for each trusted function arguments of every kind, over a sheet of invented values. */
import trusted from "../../src/host/file/formula/trusted.json";

export type Value = number | string | boolean | null;

/** Rows of the sheet that the formulas read, invented: numbers, texts, truths, empty cells, numbers, a mixture, rising numbers, days. */
export const GRID: readonly (readonly Value[])[] = [
  [1, "abc", true, null, 3, 1, 10, 43832],
  [2.5, "Def", false, null, 1, "2", 20, 44255.25],
  [-3, "2.5", true, null, 4, true, 30, 36526],
  [4, "10", false, null, 1, null, 40, 44620.999],
  [5, "a b  c", true, null, 5, "abc", 50, 59],
  [6.25, "x", true, null, 9, -4, 60, 45000],
  [7, "Abc", false, null, 2, 0.5, 70, 45366],
  [10, "zebra", true, null, 6, "TRUE", 80, 45657.5],
];

/** What is tried where an argument takes that (trusted.ts). */
const TRIED: Readonly<Record<string, readonly string[]>> = {
  n: ["A2", "A3", "D1", "C1", "B3", '"2.5"', "0.5", "2", "B1", "-1", "A6", "A8", "1", "E1", "0"],
  d: ["H1", "H6", "44000.6", "H7", "43000", "H3", "B1", "H8"],
  s: ["B1", "B5", "A2", "C1", "D1", '"a1b2c3"', "A2/3", "B2", "B3", '"c"', "G1"],
  v: ["A2", "B1", "C1", "D1", '"abc"', "3", "E5", "B3", "1/0"],
  b: ["C1", "C2", "A2", "D1", "A1>2", "TRUE", "0", "B1"],
  r: ["A1:A8", "F1:F8", "E1:E8", "A1:B4", "D1:D4", "G1:G8", "A2", "B1:B8", "C1:C4"],
  t: ["A1:A8", "F1:F8", "B1:B8", "D1:D4", "B1"],
  a: ["A1:A8", "E1:E8", "F1:F8", "G1:G8"],
  x: ["A2", "G3", "B1", "C1", "D1", "H1"],
  m: ["A1:A8", "E1:E8", "G1:G8", "F1:F8"],
  i: ["A2", "B1", "C1", "D1", '"y"', "5"],
};
/** Steps through what is tried, another one for each place of an argument, so that kinds meet in every way. */
const STEPS = [1, 4, 2, 7, 3, 5];
const CASES = 14;

/** Cases where the arguments have to fit each other. */
const FITTING: readonly string[] = [
  ...['"abc"', "A2", "B3", '"10"', "C1", '"zebra"', '"none"'].flatMap((sought) => [
    `MATCH(${sought},B1:B8,0)`,
    `MATCH(${sought},A1:A8,0)`,
    `VLOOKUP(${sought},A1:E8,5,FALSE)`,
    `VLOOKUP(${sought},B1:E8,4,0)`,
    `COUNTIF(F1:F8,${sought})`,
    `SUMIF(F1:F8,${sought},G1:G8)`,
    `COUNTIF(A1:H8,${sought})`,
    `XLOOKUP(${sought},B1:B8,G1:G8)`,
  ]),
  ...[
    '">2"',
    '"<>1"',
    '"<=2.5"',
    '"a*"',
    '"?bc"',
    '"<>abc"',
    '"=2"',
    '"<>"',
    '""',
    '"="',
    '">abc"',
    "TRUE",
    "D1",
    "0",
  ].flatMap((criterion) => [
    `COUNTIF(F1:F8,${criterion})`,
    `COUNTIF(A1:D8,${criterion})`,
    `SUMIF(F1:F8,${criterion},G1:G8)`,
    `SUMIF(A1:A8,${criterion})`,
    `AVERAGEIF(F1:F8,${criterion},G1:G8)`,
    `COUNTIFS(F1:F8,${criterion},A1:A8,">2")`,
    `SUMIFS(G1:G8,F1:F8,${criterion},E1:E8,"<6")`,
    `MAXIFS(G1:G8,F1:F8,${criterion})`,
    `MINIFS(G1:G8,F1:F8,${criterion})`,
    `AVERAGEIFS(G1:G8,F1:F8,${criterion})`,
  ]),
  ...["35", "10", "5", "80", "90"].flatMap((sought) => [
    `MATCH(${sought},G1:G8)`,
    `MATCH(${sought},G1:G8,1)`,
    `VLOOKUP(${sought},G1:H8,2)`,
    `VLOOKUP(${sought},G1:H8,2,TRUE)`,
    `LOOKUP(${sought},G1:G8,B1:B8)`,
  ]),
  "HLOOKUP(1,A1:H3,2,FALSE)",
  'HLOOKUP("abc",A1:H3,3,FALSE)',
  "HLOOKUP(2,A1:H3,9,FALSE)",
  ...["INDEX(A1:B8,2,2)", "INDEX(A1:A8,3)", "INDEX(A1:B8,9,1)", "SUM(INDEX(A1:B8,0,1))", "INDEX(A1:C1,2)"],
  ...["CHOOSE(2,A1,B1,C1)", "CHOOSE(A2,A1,B1,C1)", "SUM(CHOOSE(1,A1:A8,E1:E8))", "CHOOSE(4,1,2)"],
  ...["H1", "H2", "H3", "H4", "H6", "H7", "H8"].flatMap((day) => [
    ...["YEAR", "MONTH", "DAY", "HOUR", "MINUTE", "SECOND", "WEEKDAY"].map((name) => `${name}(${day})`),
    `WEEKDAY(${day},2)`,
    `WEEKDAY(${day},3)`,
    `WEEKDAY(${day},16)`,
    `EDATE(${day},1)`,
    `EDATE(${day},-13)`,
    `EOMONTH(${day},0)`,
    `EOMONTH(${day},-1)`,
    `DAYS(${day},H1)`,
    `DAYS360(H1,${day})`,
    `DAYS360(H1,${day},TRUE)`,
    `TEXT(${day},"yyyy-mm-dd")`,
    `TEXT(${day},"dd/mm/yyyy hh:mm")`,
    `DATE(YEAR(${day}),MONTH(${day})+1,0)`,
  ]),
  ...["DATE(2020,2,30)", "DATE(2020,14,1)", "DATE(120,1,1)", "DATE(2021,1,-5)", "DATE(-1,1,1)", "DATE(2020.9,1.9,1.9)"],
  ...["TIME(1,2,3)", "TIME(25,0,0)", "TIME(0,90,0)", "TIME(0,0,-1)"],
  ...['"0"', '"0.00"', '"#,##0"', '"#,##0.0"', '"0%"', '"0.0%"', '"000"', '"0.00E+00"', '"$#,##0.00"'].flatMap(
    (format) => [`TEXT(1234.567,${format})`, `TEXT(-0.456,${format})`, `TEXT(0,${format})`, `TEXT(A2,${format})`],
  ),
  ...["IRR(A1:A8)", "IRR(F1:F3)", "NPV(0.1,A1:A8)", "NPV(0.1,A1,A2,F1:F8)", "RATE(12,-10,100)", "RATE(12,-10,100,5,1)"],
  ...["PMT(0.05/12,360,-200000)", "PMT(0,10,100)", "FV(0.01,12,-100,0,1)", "PV(0.01,12,-100)", "NPER(0.01,-100,1000)"],
  ...[
    "MMULT(A1:A2,E1:F1)",
    "SUM(MMULT(A1:B1,E1:E2))",
    "MDETERM(E1:F2)",
    "MDETERM({1,2;3,4})",
    "SUM(MINVERSE({1,2;3,4}))",
  ],
  ...[
    "SUM(TRANSPOSE(A1:B3))",
    "SUMPRODUCT(A1:A8,E1:E8)",
    "SUMPRODUCT((A1:A8>2)*E1:E8)",
    'SUMPRODUCT(--(B1:B8="abc"),G1:G8)',
  ],
  ...["SUMPRODUCT(A1:A8,F1:F8)", "SUMPRODUCT(A1:A3,E1:E4)", "SUMX2MY2(A1:A8,E1:E8)", "SUMX2PY2(A1:A8,E1:E8)"],
  ...["SUMXMY2(A1:A8,E1:E8)", "SLOPE(A1:A8,E1:E8)", "INTERCEPT(A1:A8,E1:E8)", "CORREL(A1:A8,G1:G8)", "RANK(5,A1:A8)"],
  ...[
    "RANK(5,A1:A8,1)",
    "RANK(1,E1:E8)",
    "RANK(99,A1:A8)",
    "SUBTOTAL(9,A1:A8)",
    "SUBTOTAL(1,F1:F8)",
    "SUBTOTAL(3,F1:F8)",
  ],
  ...[
    "SUBTOTAL(104,A1:A8)",
    "SUBTOTAL(109,F1:F8)",
    "SUBTOTAL(7,A1:A8)",
    "ADDRESS(2,3)",
    "ADDRESS(2,3,4)",
    "ADDRESS(2,3,1,FALSE)",
  ],
  ...[
    "ROWS(A1:B5)",
    "COLUMNS(A1:B5)",
    "ROW(B3)",
    "COLUMN(B3)",
    "IFS(A1>2,1,A1>0,2)",
    "IFS(A1>2,1)",
    'SWITCH(A1,1,"a",2,"b")',
  ],
  ...['SWITCH(A2,1,"a","other")', 'IFERROR(1/0,"none")', "IFNA(NA(),5)", "IFERROR(A1/D1,B1)", 'IF(D1="","empty",1)'],
  ...[
    "IF(A1,,5)",
    "IF(FALSE,1)",
    "SUM(IF(A1>0,A1:A8,E1:E8))",
    'TEXTJOIN(",",TRUE,B1:B8)',
    'TEXTJOIN("-",FALSE,A1:A3,D1,C1)',
  ],
  ...['SEARCH("b",B1)', 'SEARCH("B",B5)', 'FIND("B",B1)', 'FIND("b",B1)', 'SEARCH("x",B1)', 'FIND("c",B5,6)'],
  ...['SUBSTITUTE(B1,"b","")', 'SUBSTITUTE("aaa","a","b",2)', 'REPLACE(B1,2,1,"zz")', "MID(B5,2,3)", "RIGHT(B1,2)"],
  ...[
    'VALUE("1,234.5")',
    'VALUE("12%")',
    "VALUE(B1)",
    "VALUE(A2)",
    "ERROR.TYPE(1/0)",
    "ERROR.TYPE(NA())",
    "ERROR.TYPE(A1)",
  ],
  ...[
    "-2^2",
    "2^-1",
    "2^3^2",
    "-A2^2",
    "50%^2",
    "A2^B3",
    "B3^2",
    "1-50%",
    "10%%",
    '--"2.5"',
    '-"x"',
    "A1&A2/3",
    'A2/3&"x"&C1',
  ],
  ...[
    "C1<>A1",
    "C1<>C2",
    'B1<>"ABC"',
    "D1=0",
    'D1=""',
    "D1=FALSE",
    'D1<>""',
    'A1="1"',
    "B3=2.5",
    "C1>A8",
    '"a"<"B"',
    '"TRUE"=C1',
  ],
];

interface Parameter {
  readonly optionalArg?: boolean;
  readonly defaultValue?: unknown;
}
/** How many arguments a function takes; by the second engine. */
export type ArityOf = (
  name: string,
) => { readonly parameters: readonly Parameter[]; readonly repeats: number } | undefined;

/** Without half a pair. */
function complete(takes: string, count: number): number {
  const group = takes.indexOf("(");
  if (group < 0) return count;
  return count - ((count - group) % (takes.length - group - 2));
}

function letterAt(takes: string, place: number): string {
  const group = takes.indexOf("(");
  const once = group < 0 ? takes.slice(0, -1) : takes.slice(0, group);
  const again = group < 0 ? takes.slice(-1) : takes.slice(group + 1, -1);
  return once[place] ?? again[(place - once.length) % again.length]!;
}

export const TRUSTED: ReadonlyMap<string, string> = new Map(
  Object.values(trusted).flatMap((topic) => Object.entries(topic)),
);

/** Every formula to ask, without "=". */
export function cases(arityOf: ArityOf): string[] {
  const made = [...TRUSTED].flatMap(([name, takes]) => {
    const arity = arityOf(name);
    if (!arity) return [];
    const { parameters, repeats } = arity;
    const least = parameters.filter(
      ({ optionalArg, defaultValue }) => optionalArg !== true && defaultValue === undefined,
    ).length;
    const most = parameters.length + (repeats > 0 ? repeats : 0);
    return Array.from({ length: CASES }, (_, i) => {
      const count = complete(takes, least + (i % (most - least + 1)));
      const args = Array.from({ length: count }, (_, place) => {
        const tried = TRIED[letterAt(takes, place)]!;
        return tried[(i * (STEPS[place] ?? 1) + place) % tried.length]!;
      });
      return `${name}(${args.join(",")})`;
    });
  });
  return [...new Set([...made, ...FITTING])];
}
