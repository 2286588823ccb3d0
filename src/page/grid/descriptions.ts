/** The catalogue as the grid's autocomplete and argument help want it. */
import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/engine-formula";
import type { FunctionSpec } from "../../functions/contract.js";
import { argumentFacts, mayBeLeftOut, NAMESPACE } from "../../functions/describe.js";

export function functionDescriptions(specs: readonly FunctionSpec[]): IFunctionInfo[] {
  return specs.map((spec) => ({
    functionName: `${NAMESPACE}.${spec.name}`,
    functionType: FunctionType.User,
    description: `${spec.summary} Gives: ${spec.returns}.`,
    abstract: spec.summary,
    functionParameter: spec.args.map((argument) => ({
      name: argument.name,
      detail: [argument.help, ...argumentFacts(argument)].join(" · "),
      example: argument.default === undefined ? "" : String(argument.default),
      require: mayBeLeftOut(argument) ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  }));
}
