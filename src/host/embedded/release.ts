import { type BaseAstNode, type Interpreter } from "@univerjs/engine-formula";

/** The engine's numbers for the parts of a formula that it takes apart. */
const REFERENCE = 1;
const OPERATOR = 3;
const FUNCTION = 4;
/** What a LET becomes: its names under its first child, its result as the last one. */
const LET = 5;

interface Executing {
  _execute: (node: BaseAstNode, refOffsetX?: number, refOffsetY?: number) => unknown;
}

/**
 * Lets go of what a part of a formula gave as soon as the part above has used it. The engine keeps the values of every
 * part to the end: of a long column with a long formula hundreds of megabytes, which the collector of garbage then
 * copies again and again. Not where a LAMBDA stands, since its parts are worked out several times.
 */
export function releaseValues(interpreter: Interpreter, holdsLambda: () => boolean): void {
  const inner = interpreter as unknown as Executing;
  const execute = inner._execute.bind(interpreter);
  inner._execute = (node, refOffsetX = 0, refOffsetY = 0) =>
    holdsLambda() ? execute(node, refOffsetX, refOffsetY) : executed(node);
}

function executed(node: BaseAstNode): number {
  for (const child of node.getChildren()) executed(child);
  const { nodeType } = node as { nodeType: number };
  if (nodeType === REFERENCE)
    (node as BaseAstNode & { setRefOffset: (x: number, y: number) => void }).setRefOffset(0, 0);
  node.execute();
  if (nodeType === OPERATOR || nodeType === FUNCTION) release(node);
  else if (nodeType === LET) {
    for (const child of node.getChildren()) release(child);
    release(node);
  }
  return 0;
}

function release(node: BaseAstNode): void {
  for (const child of node.getChildren()) child.setValue(undefined);
}
