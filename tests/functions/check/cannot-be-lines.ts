/** Numbers that cannot be, as in lines.ts. */
import type { Check } from "./line.js";

export const CANNOT_BE_LINES: readonly Check[] = [
  {
    line: "what cannot be: beyond the hard range",
    finding: "implausible distance",
    what: /^distance 1001 m cannot be: 0\.05 to 1000 m$/,
    off: { distance: 1001 },
    inside: { distance: 1000 },
  },
  {
    line: "per cent for a fraction",
    finding: "implausible emissivity",
    what: /^emissivity 95 cannot be: 0\.01 to 1; 0\.95\?$/,
    off: { emissivity: 95 },
    inside: { emissivity: 1 },
  },
  {
    // 29221 is 1980-01-01, as spreadsheets count days.
    line: "a date outside two centuries",
    finding: "implausible date",
    what: /^date 29220 cannot be \(1979-12-31\): 1980 to 2199$/,
    off: { date: 29220 },
    inside: { date: 29221 },
  },
  {
    line: "a number for a time of day",
    finding: "implausible time",
    what: /^time 12\.5 cannot be \(1900-01-11\): 1980 to 2199$/,
    off: { time: 12.5 },
    inside: { time: 0.5 },
  },
  {
    line: "a minus where there can be none",
    finding: "implausible amps_left",
    what: /^amps_left -231: a minus/,
    off: { amps_left: -231 },
    inside: { amps_left: 231 },
  },
];
