import { BaseFunction, type BaseValueObject } from "@univerjs/engine-formula";
import type { FunctionSpec, Input } from "../../functions/contract.js";
import { refuseBroadcast } from "./limits.js";
import { NAMESPACE } from "./names.js";
import { errorValue, fromGrid, toInput, type MessageAt } from "./values.js";

/** The catalogue's functions as the engine calls them; equipEngine (equip.ts) registers them and mends the engine. Whatever goes wrong inside becomes an error value with a message. */
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

  /** An exception here would stop this calculation and all later ones without a word. */
  override calculate(...values: BaseValueObject[]): BaseValueObject {
    try {
      const wrong = this.wrongCount(values.length) ?? this.wrongSize(values);
      if (wrong !== undefined) return errorValue("#VALUE!", wrong);
      const inputs: Input[] = values.map((value) => toInput(value, this.messageAt));
      return fromGrid(this.spec.evaluate(inputs));
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return errorValue(
        "#VALUE!",
        `${this.name} could not be worked out: ${reason}. This is a fault of Greybody; please report it with the formula.`,
      );
    }
  }

  private wrongCount(given: number): string | undefined {
    const { args } = this.spec;
    const needed = args.filter((argument) => argument.optional !== true);
    if (given > args.length) {
      const takes = args.length === 0 ? "no argument" : `at most ${count(args.length)}`;
      return `${this.name} takes ${takes}, ${given} were given: a decimal comma, or one comma too many?`;
    }
    if (given >= needed.length) return undefined;
    const missing = needed.slice(given).map((argument) => argument.name);
    return `${this.name} needs at least ${count(needed.length)}, ${given === 0 ? "none was" : given === 1 ? "one was" : `${given} were`} given: ${list(missing)} ${missing.length === 1 ? "is" : "are"} missing.`;
  }

  private wrongSize(values: readonly BaseValueObject[]): string | undefined {
    return refuseBroadcast(values.filter((_, index) => this.spec.args[index]?.whole !== true));
  }
}

function count(number: number): string {
  return number === 1 ? "one argument" : `${number} arguments`;
}

function list(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]!}`;
}
