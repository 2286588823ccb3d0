/** What a call would give, worked out while it is being typed; cells that it refers to are read from the workbook. */
import { useEffect, useMemo, useState } from "react";
import type { FunctionSpec, Grid } from "../../functions/contract.js";
import { type Argument, previewCall, readArgument } from "../../host/call.js";
import type { HostPort } from "../../host/port.js";
import type { PaneTools } from "../tools.js";

export interface Preview {
  readonly given: readonly Argument[];
  /** Undefined until something is typed, or a referred cell is read. */
  readonly preview: Grid | undefined;
}

export function usePreview(
  spec: FunctionSpec,
  typed: Readonly<Record<string, string>>,
  { port, book }: PaneTools,
): Preview {
  const given = useMemo(() => spec.args.map(({ name }) => readArgument(typed[name] ?? "")), [spec, typed]);
  const [preview, setPreview] = useState<Grid>();
  useEffect(() => {
    let current = true;
    void readCells(port, given).then((cells) => {
      if (!current) return;
      const asked = given.some((argument, index) => argument.kind !== "none" && spec.args[index]?.name !== "units");
      setPreview(asked || spec.args.every(({ optional }) => optional) ? previewCall(spec, given, cells) : undefined);
    });
    return () => {
      current = false;
    };
    // The book is read again when a cell has changed: so is what the call refers to.
  }, [spec, given, port, book]);
  return { given, preview };
}

async function readCells(port: HostPort, given: readonly Argument[]): Promise<Map<string, Grid>> {
  const cells = new Map<string, Grid>();
  for (const argument of given) {
    if (argument.kind !== "reference") continue;
    const read = await port.read(argument.reference);
    if (read.ok) cells.set(argument.reference, read.value);
    else cells.set(argument.reference, [[{ error: "#REF!", message: read.message }]]);
  }
  return cells;
}
