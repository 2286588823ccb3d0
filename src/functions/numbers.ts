/** Text that is a plain decimal number: sign, digits, one point, exponent, nothing else. No thousands, no decimal comma. */
const PLAIN_NUMBER = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;

/** The number that a text plainly is, or undefined. */
export function plainNumber(text: string): number | undefined {
  const trimmed = text.trim();
  if (!PLAIN_NUMBER.test(trimmed)) return undefined;
  const value = Number(trimmed);
  return Number.isFinite(value) ? value : undefined;
}
