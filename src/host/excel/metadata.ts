import { catalogue } from "../../functions/catalogue.js";
import type { FunctionSpec } from "../../functions/contract.js";
import { argumentFacts } from "../../functions/describe.js";

/** The contents of functions.json: what Excel asks to know about each function before it runs. */
export function metadata(): object {
  return { allowErrorForDataTypeAny: true, functions: catalogue.map(describe) };
}

/** Every parameter takes any value or range, and every result may spill: the lift sorts them out, once for all hosts. */
function describe(spec: FunctionSpec): object {
  return {
    id: spec.name,
    name: spec.name,
    description: spec.summary,
    parameters: spec.args.map((argument) => ({
      name: argument.name,
      description: [argument.help, ...argumentFacts(argument)].join("; "),
      type: "any",
      dimensionality: "matrix",
      ...(argument.optional === true ? { optional: true } : {}),
    })),
    result: { type: "any", dimensionality: "matrix" },
  };
}
