import { GreybodyError } from "../../src/core/errors.js";

/** What a call refuses with; fails where it answers or breaks in another way. */
export function refusal(call: () => unknown): GreybodyError {
  try {
    call();
  } catch (error) {
    if (error instanceof GreybodyError) return error;
    throw error;
  }
  throw new Error("answered where it should refuse");
}
