import {
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  StringValueObject,
  type ArrayValueObject,
} from "@univerjs/engine-formula";
import { arrayOf, cellOf, gridOf, type Calculate, type Value } from "./arrays.js";

/** Ways of our own for what long columns are made of, by the name of the engine's function; the same results. */
export const QUICK: ReadonlyMap<string, (own: Calculate) => Calculate> = new Map([
  ["IF", quickIf],
  ["CONCATENATE", () => concatenate],
  ["TEXT", quickText],
]);

/** A value as each cell of a larger array has it: one row or column is repeated, beyond it there is #N/A. */
class Spread {
  readonly rows: number;
  readonly columns: number;
  private readonly array: ArrayValueObject | undefined;
  private readonly beyond = ErrorValueObject.create(ErrorType.NA);

  constructor(private readonly value: Value) {
    this.array = value.isArray() ? (value as ArrayValueObject) : undefined;
    this.rows = this.array?.getRowCount() ?? 1;
    this.columns = this.array?.getColumnCount() ?? 1;
  }

  at(row: number, column: number): Value | null {
    const { array, rows, columns } = this;
    if (array === undefined) return this.value;
    if (rows === 1 && columns === 1) return cellOf(array, 0, 0);
    if (rows === 1 && column < columns) return cellOf(array, 0, column);
    if (columns === 1 && row < rows) return cellOf(array, row, 0);
    return row >= rows || column >= columns ? this.beyond : cellOf(array, row, column);
  }
}

const sizeOf = (spreads: readonly Spread[]): [number, number] => [
  Math.max(0, ...spreads.map(({ rows }) => rows)),
  Math.max(0, ...spreads.map(({ columns }) => columns)),
];

function quickIf(own: Calculate): Calculate {
  return (...values) => {
    const [test, whenTrue, whenFalse = BooleanValueObject.create(false)] = values;
    if (test === undefined || whenTrue === undefined || !test.isArray()) return own(...values);
    const tests = new Spread(test);
    if (tests.rows === 1 && tests.columns === 1) return own(...values);
    const [yes, no] = [new Spread(whenTrue), new Spread(whenFalse)];
    return arrayOf(
      gridOf(...sizeOf([tests, yes, no]), (r, c) => {
        const one = tests.at(r, c);
        if (!one) return NullValueObject.create();
        if (one.isError()) return one;
        return (one.getValue() ? yes : no).at(r, c);
      }),
    );
  };
}

/** A number as Excel puts it into a text: at most fifteen digits, small ones written out, powers as 1E+21. */
function inWords(number: number): string {
  const plain = String(number);
  if (plain.length <= 15 && !plain.includes("e")) return plain;
  const rounded = String(Number(number.toPrecision(15)));
  const [, sign = "", first = "", rest = "", power = ""] = /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(rounded) ?? [];
  if (power === "") return rounded;
  const zeros = -Number(power) - 1;
  if (zeros > 0 && zeros < 9) return `${sign}0.${"0".repeat(zeros)}${first}${rest}`;
  return `${sign}${first}${rest === "" ? "" : `.${rest}`}E${power.replace(/^(.)(\d)$/, "$10$2")}`;
}

function concatenate(...values: Value[]): Value {
  const spreads = values.map((value) => new Spread(value));
  const [rows, columns] = sizeOf(spreads);
  if (spreads.length === 0) return ErrorValueObject.create(ErrorType.VALUE);
  return arrayOf(
    gridOf(rows, columns, (r, c) => {
      let text = "";
      let error: Value | undefined;
      for (const spread of spreads) {
        const value = spread.at(r, c);
        if (!value) {
          text = "";
          error = undefined;
        } else if (error === undefined) {
          if (value.isError()) error = value;
          else if (value.isBoolean()) text += String(value.getValue()).toUpperCase();
          else if (value.isNumber()) text += inWords(value.getValue() as number);
          else if (!value.isNull()) text += String(value.getValue());
        }
      }
      return error ?? StringValueObject.create(text);
    }),
  );
}

/** The same value in the same format once only: of a column many are empty, and many alike. */
function quickText(own: Calculate): Calculate {
  return (...values) => {
    const [text, format] = values;
    if (values.length !== 2 || !text?.isArray() || format === undefined || format.isArray() || format.isError())
      return own(...values);
    const spread = new Spread(text);
    if (spread.rows === 1 && spread.columns === 1) return own(...values);
    const known = new Map<unknown, Value>();
    return arrayOf(
      gridOf(spread.rows, spread.columns, (r, c) => {
        const value = spread.at(r, c);
        if (!value) return NullValueObject.create();
        if (!value.isString() && !value.isNumber()) return own(value, format);
        const raw = value.getValue();
        let shown = known.get(raw);
        if (shown === undefined) known.set(raw, (shown = own(value, format)));
        return shown;
      }),
    );
  };
}
