/**
 * Working memory of one call, used again by the next: a sheet recalculates the same columns over and over, and fresh
 * arrays of that size cost more than the physics. Nothing in it outlives the call.
 */
const LIMIT = 4_000_000;
let memory = new Float64Array(0);
let used = 0;
let wanted = 0;

/** Starts a call: all that the last one used is free again. */
export function beginCall(): void {
  if (wanted > memory.length && memory.length < LIMIT) memory = new Float64Array(Math.min(wanted, LIMIT));
  used = 0;
  wanted = 0;
}

/** An array of that length for this call, not cleared. */
export function numbersFor(length: number): Float64Array {
  wanted += length;
  if (used + length > memory.length) return new Float64Array(length);
  const at = used;
  used += length;
  return memory.subarray(at, used);
}
