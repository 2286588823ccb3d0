import { CHECK_RULES } from "../../data/check-rules.js";

/** How three phases lie to each other, as our route sheet has it. */
export type PhasePattern = "balanced" | "one hot" | "two hot";

/**
 * Balanced: all within 3 K or 15 % of the hottest's rise over the air, whichever is more; then it is load, not a joint.
 * Two hot: the middle one is nearer to the hottest than to the coolest, so there are no two cool ones to compare with.
 * @param temps of three phases at like currents [K]
 * @param air that the rise is over [K]; undefined where it is not known
 * Source: ours (check-rules.json).
 */
export function phasePattern(temps: readonly number[], air: number | undefined): PhasePattern {
  const [low = NaN, middle = NaN, high = NaN] = [...temps].sort((a, b) => a - b);
  const share = air === undefined ? 0 : CHECK_RULES.balanced_share.value * (high - air);
  if (high - low <= Math.max(CHECK_RULES.balanced_spread.value, share) + SLACK) return "balanced";
  return middle > (high + low) / 2 + SLACK ? "two hot" : "one hot";
}

/** What floating point adds to a difference of two temperatures. */
const SLACK = 1e-6;
