/** What the template's words for a missing value mean: where it is typed and what it is needed for. */

interface Need {
  readonly column: string;
  /** The job's field that stands for every row without a value of its own. */
  readonly field?: string;
  readonly why: string;
}

const CORRECT = "Without it the reading cannot be corrected.";

const needs: Readonly<Record<string, Need>> = {
  asset_id: { column: "asset_id", why: "Location, component, load and limit are looked up by it." },
  status: { column: "status", why: "What else the row must hold depends on it." },
  time: { column: "time", why: "Images and currents are matched by it." },
  reason: { column: "reason", why: "What was not seen is reported with its reason." },
  "thermal image": { column: "thermal_image", why: "An exception is reported with its image." },
  reading: { column: "reading", why: "An exception is reported with its temperature." },
  "process load": {
    column: "process_load",
    why: "A rise says something only at a known load; 0 is a machine that stands.",
  },
  "survey date in Job": {
    column: "last_greased",
    field: "job_date",
    why: "The hours since greasing are counted to it.",
  },
  "surrounding air": { column: "surrounding_air", why: "The rise is taken over it." },
  emissivity: {
    column: "emissivity",
    why: `${CORRECT} It stands in Surfaces for the asset's surface, or in this row.`,
  },
  reflected: { column: "reflected", field: "job_reflected", why: `${CORRECT} It stands in Job, or in this row.` },
  "path air": { column: "path_air", field: "job_path_air", why: `${CORRECT} It stands in Job, or in this row.` },
  "window temperature": { column: "window_temp", why: CORRECT },
  "set emissivity": { column: "set_emissivity", why: "Readings corrected in the camera are first taken back with it." },
};

/** "reading left", "current right": one a phase. */
function ofPhase(need: string): Need | undefined {
  const [, what, phase] = /^(reading|current) (left|middle|right)$/.exec(need) ?? [];
  if (phase === undefined) return undefined;
  return what === "reading"
    ? { column: phase, why: "The phases are compared with one another." }
    : { column: `amps_${phase}`, why: "A rise says something only at a known current; 0 is a phase without." };
}

export function columnOfNeed(need: string): string {
  return (needs[need] ?? ofPhase(need))?.column ?? "remarks";
}

export function fieldOfNeed(need: string): string | undefined {
  return needs[need]?.field;
}

export function whyNeeded(need: string): string {
  return (needs[need] ?? ofPhase(need))?.why ?? CORRECT;
}
