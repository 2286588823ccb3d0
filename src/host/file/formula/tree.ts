/** A formula as calls, groups and what stands between them: enough to know what an argument is, and to write it back as it was. */
import type { Segment } from "./segments.js";

export interface Call {
  readonly kind: "call";
  readonly name: string;
  readonly args: readonly Expression[];
}

export interface Group {
  readonly kind: "group";
  readonly inside: readonly Expression[];
}

/** An array constant, kept as text. */
export interface Constant {
  readonly kind: "constant";
  readonly text: string;
}

export type Item = Segment | Call | Group | Constant;

/** Operands and operators in order, spaces kept. */
export type Expression = readonly Item[];

/** The expression of a formula, or undefined where its parentheses do not match. */
export function treeOf(segments: readonly Segment[]): Expression | undefined {
  let at = 0;
  const kindAt = (index: number): string | undefined => {
    const segment = segments[index];
    return segment?.kind === "other" ? segment.token.kind : segment?.kind;
  };
  let isBroken = false;

  const list = (): Expression[] => {
    const args: Expression[] = [];
    for (;;) {
      args.push(expression());
      const kind = kindAt(at);
      at++;
      if (kind === "close") return args;
      if (kind !== "comma") {
        isBroken = true;
        return args;
      }
    }
  };
  const constant = (): Constant => {
    let text = "";
    while (at < segments.length && kindAt(at) !== "closeBrace") text += segments[at++]!.text;
    if (at >= segments.length) isBroken = true;
    at++;
    return { kind: "constant", text: `${text}}` };
  };
  const expression = (): Expression => {
    const items: Item[] = [];
    while (at < segments.length && !isBroken) {
      const segment = segments[at]!;
      const kind = kindAt(at);
      if (kind === "comma" || kind === "close") return items;
      if (kind === "openBrace") items.push(constant());
      else if (kind === "open") {
        at++;
        items.push({ kind: "group", inside: list() });
      } else if (kind === "name" && kindAt(at + 1) === "open") {
        at += 2;
        items.push({ kind: "call", name: segment.text, args: list() });
      } else {
        items.push(segment);
        at++;
      }
    }
    return items;
  };
  const whole = expression();
  // eslint-disable-next-line @typescript-eslint/no-unnecessary-condition -- set by the functions above
  return isBroken || at < segments.length ? undefined : whole;
}

const isSpace = (item: Item): boolean => item.kind === "other" && item.token.kind === "space";
const isMark = (item: Item): boolean => item.kind === "other" && item.token.start === 0 && item.text === "=";

/** The items that count: no spaces, and not the "=" in front. */
export const significant = (expression: Expression): Expression =>
  expression.filter((item) => !isSpace(item) && !isMark(item));

/** Every function that is called, in capitals. */
export function functionsIn(expression: Expression): string[] {
  return expression.flatMap((item) => {
    if (item.kind === "call") return [item.name.toUpperCase(), ...item.args.flatMap(functionsIn)];
    return item.kind === "group" ? item.inside.flatMap(functionsIn) : [];
  });
}

/** The kind of its token, or of the item. */
export const tokenOf = (item: Item | undefined): string | undefined =>
  item?.kind === "other" ? item.token.kind : item?.kind;
export const isOperator = (item: Item | undefined, ...texts: string[]): boolean =>
  item?.kind === "other" && item.token.kind === "operator" && texts.includes(item.text);
export const isBoolean = (item: Item | undefined): boolean =>
  tokenOf(item) === "name" && item?.kind === "other" && /^(?:TRUE|FALSE)$/i.test(item.text);

/** The item of an expression that is a single one. */
export function onlyItem(expression: Expression | undefined): Item | undefined {
  const [item, ...rest] = significant(expression ?? []);
  return rest.length === 0 ? item : undefined;
}
