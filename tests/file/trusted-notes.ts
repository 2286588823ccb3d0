/** Where the two engines of trusted.test.ts differ and why ours stands: "page" is Microsoft's page of the function. */
export interface Note {
  /** Of a line "formula: ours …, theirs …". */
  readonly of: RegExp;
  readonly why: string;
}

export const NOTES: readonly Note[] = [
  {
    of: /^(?:ROUND|ROUNDUP|ROUNDDOWN|TRUNC|SUBTOTAL|BASE|BITLSHIFT|BITRSHIFT|DEC2BIN|DEC2HEX|DEC2OCT|SEQUENCE|COMBINA|ADDRESS|CHOOSE|FIND|MID|REPLACE|RIGHT|EDATE|EOMONTH|WEEKDAY|WEEKNUM|YEARFRAC|ISEVEN|TBILL\w+)\(/,
    why: "A number of digits, places, months or days is cut to a whole one (page: truncated), theirs is not.",
  },
  { of: /A2\/3/, why: "A number as text has 15 digits at most." },
  { of: /^(?:AND|OR|XOR)\(/, why: "Page: texts and empty cells of a range are passed over; none left is #VALUE!." },
  { of: /^SUMPRODUCT\(/, why: "Page: entries that are not numeric count as 0, truths among them." },
  { of: /^PRODUCT\(/, why: "Excel gives 0 where there are no numbers (from memory)." },
  { of: /^DEVSQ\(/, why: "Without numbers #NUM!, as the corpus has it (FormulaEvalTestData, DEVSQ)." },
  { of: /^(?:DAY|MONTH|YEAR)\((?:D1|0\.5)\)/, why: "Day 0 is 0 January 1900 in Excel (from memory)." },
  { of: /^IS(?:EVEN|ODD)\(/, why: "Page: what is not whole is truncated; a negative odd number is odd." },
  { of: /^ISREF\(/, why: "Page: TRUE for a reference, whatever it holds." },
  { of: /^(?:COUNT|SUM|AVERAGE)IFS?\(.*1\/0/, why: "An error as a criterion means the cells that show it." },
  {
    of: /^(?:SUM|AVERAGE)IF\(/,
    why: "Page: what is summed begins at the first cell of its range and has the size of the other.",
  },
  { of: /IFS?\(.*">abc"/, why: "Page: a criterion may order texts." },
  { of: /IFS?\(.*\bD1\b/, why: "Page of COUNTIF: an empty cell as a criterion counts as 0." },
  { of: /^SWITCH\("abc",1\/0/, why: "An error that is compared is the result." },
  { of: /INDEX\(A1:C1,2\)/, why: "Page: of a single row the one number is that of the column." },
  { of: /^SUM\(INDEX\(A1:B8,0,1\)\)/, why: "Page: row 0 is the whole column." },
  { of: /^TEXT\(/, why: "Theirs knows few formats: no thousands, percent or exponents." },
  { of: /^VALUE\("1,234\.5"\)/, why: "Page: any constant number format counts, thousands with them." },
  { of: /^VALUE\(D1\)/, why: "An empty cell is 0." },
  { of: /^A1&/, why: "A number as text has 15 digits at most." },
  { of: /^ACOT\(/, why: "Page: from 0 to pi." },
  {
    of: /^CEILING\(.*(?:D1|0)\)/,
    why: "Excel gives 0 for a significance of 0 (page of CEILING, as POI's tests have it).",
  },
  { of: /^HEX2(?:DEC|OCT)\(/, why: "Small letters are hexadecimal digits too." },
  { of: /^ROMAN\(/, why: "0 is an empty text." },
  { of: /^MULTINOMIAL\(/, why: "Page: the ratio of the factorial of the sum; that of more than 170 is too large." },
  { of: /^(?:CHIDIST|CHISQ\.DIST(?:\.RT)?)\(/, why: "Page: x below 0 is #NUM!." },
  { of: /^NEGBINOM\.DIST\(/, why: "Fewer than one success is #NUM! (page)." },
  { of: /^[IP]PMT\(/, why: "Page: the period lies from 1 to the number of periods." },
  { of: /^(?:PMT|RATE)\(/, why: "No such loan: a rate of -100 %, or no payments. Not known which Excel says." },
  { of: /^DB\(/, why: "A salvage above the cost, by the page's formula." },
  { of: /^(?:WORKDAY|NETWORKDAYS)\(/, why: "A day before 1900 among the holidays is #NUM! (page)." },
];

/** Functions of which the second engine knows nothing, or no case of ours: the corpus has right values of each (corpus.test.ts). */
export const BY_CORPUS: readonly string[] =
  "AVERAGEIFS ERROR.TYPE GESTEP INTERCEPT ISREF LINEST MDETERM MINVERSE MMULT MODE NORMSDIST PERCENTRANK PERCENTRANK.EXC PERCENTRANK.INC PERMUT RANK RANK.EQ".split(
    " ",
  );

/** Functions that neither supports, and why they are trusted all the same. */
export const STANDS: Readonly<Record<string, string>> = {
  CONCAT: "As CONCATENATE, which both know, over a range.",
  FILTER: "The second engine has no room for what spills; the cases of it were read.",
  LOOKUP: "As MATCH for the nearest among rising numbers, which both know.",
  "MODE.SNGL": "MODE by its newer name.",
  UNIQUE: "The second engine has no room for what spills; the cases of it were read.",
  SORT: "The second engine has no room for what spills; the cases of it were read.",
  XMATCH: "As MATCH, which both know.",
  LET: "It only names values; workbooks of ours use it.",
  ANCHORARRAY: "How a file writes A1#: the cells of a spill; workbooks of ours use it.",
  CHOOSECOLS: "It only picks columns; workbooks of ours use it.",
  HSTACK: "It only puts columns side by side; workbooks of ours use it.",
};
