import { BaseFunction, type BaseValueObject } from "@univerjs/engine-formula";
import type { FunctionSpec } from "../../functions/contract.js";
import { NAMESPACE } from "../../functions/describe.js";
import { refuseBroadcast } from "./limits.js";
import { errorValue, fromGrid, toInput, type MessageAt } from "./values.js";

/** The catalogue's functions as the engine calls them; equipEngine (equip.ts) registers them and mends the engine. */
export function executorsOf(specs: readonly FunctionSpec[], messageAt?: MessageAt): BaseFunction[] {
  return specs.map((spec) => new GreyFunction(spec, messageAt));
}

class GreyFunction extends BaseFunction {
  constructor(
    private readonly spec: FunctionSpec,
    private readonly messageAt: MessageAt | undefined,
  ) {
    super(`${NAMESPACE}.${spec.name}`);
  }

  /** Else the engine reads the text "3-5" as the 3rd of May, and "50%" as a number. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  override calculate(...values: BaseValueObject[]): BaseValueObject {
    const refusal = refuseBroadcast(values.filter((_, index) => this.spec.args[index]?.whole !== true));
    if (refusal !== undefined) return errorValue("#VALUE!", refusal);
    return fromGrid(this.spec.evaluate(values.map((value) => toInput(value, this.messageAt))));
  }
}
