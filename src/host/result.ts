import type { Refusal, RefusalReason, Result } from "./port.js";

export function done<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function refused(reason: RefusalReason, message: string): Refusal {
  return { ok: false, reason, message };
}
