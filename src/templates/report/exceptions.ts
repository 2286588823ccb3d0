/** The list of exceptions, the worst first, and beside the printed page the words that the pages show. */
import { cautions } from "../../functions/cautions.js";
import type { FreeCell, FreeSheet } from "../contract.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { at, headers, lines, spill } from "./free.js";
import { heading, type ReportHead } from "./head.js";
import { gradeShown, type ReportKind } from "./kind.js";
import { pageWords } from "./page-words.js";
import { inOrder } from "./ranked.js";

const WIDTHS = [44, 92, 130, 220, 340, 170, 200, 64, 220, 210, 84] as const;
const HEADERS = [
  "no",
  "asset_id",
  "location",
  "component",
  "grade as found",
  "judged by",
  "± U 95 %, edge inside",
  "load",
  "projected, advice",
  "told to",
  "due",
];
const LIST = 9;

export function exceptionsSheet(kind: ReportKind, head: ReportHead, units: SheetUnits, pages: number): FreeSheet {
  const order = { table: "Readings", rankKey: "exception_rank" };
  const listed = "ISNUMBER(Readings[exception_rank])";
  const count = (grade: number): string =>
    `SUM(${listed}*ISNUMBER(Readings[grade_number])*(Readings[grade_number]=${grade}))`;
  const ofGrade = [4, 3, 2, 1, 0].map((grade) => `${count(grade)}&" of grade ${grade}, "`).join("&");
  const without = `SUM(${listed}*(1-ISNUMBER(Readings[grade_number])))`;
  const unmarked =
    '(Readings[status]="no exception")*IF(ISNUMBER(Readings[grade_number]),(Readings[grade_number]>=1)*1,0)';
  const told = cautions
    .filter(({ title }) => kind.cautions.includes(title))
    .map(({ title, text }) => `${title}. ${text}`);
  const words = lines(3, told, WIDTHS);
  let column = WIDTHS.length + 1;
  const blocks = pageWords(kind, units).flatMap(({ name, words: block }): FreeCell[] => {
    const from = column;
    column += block.length;
    return [
      ...headers(
        LIST - 1,
        block.map(({ label }) => label),
        from,
      ),
      at(
        LIST,
        from,
        inOrder(
          block.map(({ shown }) => shown),
          { ...order, upTo: pages },
        ),
        "muted",
        {
          size: { rows: pages, columns: block.length },
          name,
        },
      ),
    ];
  });
  return {
    kind: "free",
    name: "Exceptions",
    heading: heading("Exceptions", head),
    widths: WIDTHS,
    heights: words.heights,
    frozen: { rows: 0, columns: 0 },
    cells: [
      at(0, 0, `=SUM(${listed}*1)`, "computed", { name: "exception_count", format: "0" }),
      at(
        0,
        1,
        `=IF(exception_count=1,"exception","exceptions")&" (grades 0 to 4, 4 = worst): "&${ofGrade}&${without}&" without a grade"`,
        "label",
      ),
      at(
        1,
        0,
        `=LET(unmarked,SUM(${unmarked}),IF(unmarked=0,"",unmarked&" more, marked no exception, with a grade of 1 or more: see Route. "))` +
          `&IF(exception_count>${pages},exception_count-${pages}&" of them stand only in this list: there are ${pages} pages.","")`,
        "label",
      ),
      ...words.cells,
      ...headers(LIST - 1, HEADERS),
      spill(
        LIST,
        0,
        inOrder(["[exception_rank]", "[asset_id]", "[location]", "[component]"], {
          ...order,
          none: '{"","No exception.","",""}',
        }),
        4,
      ),
      spill(LIST, 4, inOrder([gradeShown], order), 1, { grade: true }),
      spill(
        LIST,
        5,
        inOrder(
          [
            kind.judged(units),
            "[grade_found_u]",
            kind.load,
            kind.projected,
            "[told_to]",
            'IF(ISNUMBER([due]),TEXT([due],"yyyy-mm-dd"),[due])',
          ],
          order,
        ),
        6,
      ),
      at(LIST - 2, WIDTHS.length + 1, `What the pages show of the first ${pages}`, "muted"),
      ...blocks,
      at(0, WIDTHS.length + 1, `=${LIST}+MAX(1,exception_count)`, "muted", { name: "exception_rows", format: ";;;" }),
    ],
    print: { landscape: true, repeatHeading: true, rowsNamed: "exception_rows" },
  };
}
