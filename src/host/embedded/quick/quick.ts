import { type BaseFunction, type IFunctionService } from "@univerjs/engine-formula";
import { filterSingle } from "../filter.js";
import { workArraysQuickly, type Calculate } from "./arrays.js";
import { QUICK } from "./functions.js";
import { QUICK_LOOKUPS } from "./lookups.js";
import { makeValuesQuickly } from "./values.js";

const known = new WeakSet<BaseFunction>();

/**
 * Makes the engine quick where long columns are worked out: the same results, with less made on the way. Before its
 * functions are limited; also for the functions that it registers only later.
 */
export function workQuickly(functions: IFunctionService): void {
  makeValuesQuickly();
  workArraysQuickly();
  const registerExecutors = functions.registerExecutors.bind(functions);
  functions.registerExecutors = (...executors) => {
    for (const executor of executors) quicken(executor);
    registerExecutors(...executors);
  };
  for (const executor of functions.getExecutors().values()) quicken(executor);
}

function quicken(executor: BaseFunction): void {
  const name = String(executor.name);
  const quick = name === "FILTER" ? filterSingle : (QUICK.get(name) ?? QUICK_LOOKUPS.get(name));
  if (quick === undefined || known.has(executor)) return;
  known.add(executor);
  executor.calculate = quick(executor.calculate.bind(executor) as Calculate);
}
