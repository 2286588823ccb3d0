import { catalogue } from "../../functions/catalogue.js";
import type { FunctionSpec } from "../../functions/contract.js";
import { argumentFacts, mayBeLeftOut } from "../../functions/describe.js";

/** The contents of functions.json: what Excel asks to know about each function before it runs. */
export function metadata(base: string): object {
  return { allowErrorForDataTypeAny: true, functions: catalogue.map((spec) => describe(spec, base)) };
}

/** Every parameter takes any value or range, and every result may spill: the lift sorts them out, once for all hosts. */
function describe(spec: FunctionSpec, base: string): object {
  return {
    id: spec.name,
    name: spec.name,
    description: spec.summary,
    helpUrl: `${base}/help.html#${spec.name}`,
    parameters: spec.args.map((argument) => ({
      name: argument.name,
      description: [argument.help, ...argumentFacts(argument)].join("; "),
      type: "any",
      dimensionality: "matrix",
      ...(mayBeLeftOut(argument) ? { optional: true } : {}),
    })),
    result: { type: "any", dimensionality: "matrix" },
    // The pane shows what a function says beside the cell that shows the error.
    options: { requiresAddress: true },
  };
}
