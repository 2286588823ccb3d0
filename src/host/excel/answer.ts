/** One operation in Excel: one context, and whatever Excel answers made into a Result. */
/// <reference types="office-js" />
import type { Refusal, RefusalReason, Result } from "../port.js";
import { done, refused } from "../result.js";

/** Ends an operation with a refusal from anywhere within it. */
class Refused extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.message);
  }
}

export function refuse(reason: RefusalReason, message: string): never {
  throw new Refused(refused(reason, message));
}

export async function answer<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<Result<T>> {
  try {
    return done(await Excel.run(work));
  } catch (error) {
    return error instanceof Refused ? error.refusal : refusalOf(error);
  }
}

const reasons: Readonly<Record<string, readonly [RefusalReason, string]>> = {
  InvalidOperationInCellEditMode: [
    "busy",
    "Excel gives no answer while a cell is being typed into: finish that, then try again.",
  ],
  HostRestartNeeded: ["busy", "Excel has to be started again before it answers."],
  ItemNotFound: ["missing", "The sheet, table or cell is not there any more."],
  InvalidReference: ["invalid", "Excel cannot read the reference."],
  InvalidArgument: ["invalid", "Excel does not take the formula or value as it is written."],
  AccessDenied: ["locked", "The sheet is protected: take its protection away, then try again."],
  ApiNotFound: ["unable", "This Excel is too old for it."],
  NotImplemented: ["unable", "This Excel cannot do it."],
};

function refusalOf(error: unknown): Refusal {
  const { code, message } = (error ?? {}) as { code?: unknown; message?: unknown };
  const known = typeof code === "string" ? reasons[code] : undefined;
  if (known !== undefined) return refused(...known);
  return refused("failed", `Excel could not do it. Its own words: ${typeof message === "string" ? message : "none"}.`);
}
