/** Currents, and the phases brought to what may be compared. */
import type { Computed } from "./columns.js";
import {
  columnsOf,
  extreme,
  fromAssets,
  number,
  ofPhase,
  PHASES,
  type Phase,
  phaseOf,
  sideBySide,
  UNREADABLE,
} from "./formula.js";
import type { SheetUnits } from "./sheet-units.js";

const WORKING = "Working";

/** 1 where the currents of a directly seen item differ too much for the phases to be compared as they are. */
export const UNEQUAL = `(([view]="direct")*(([imbalance]="no current")+(ISNUMBER([imbalance])*([imbalance]>0.1))))`;
/** The load that the rise over similar belongs to. */
export const COMPARED_AT = `IF(${UNEQUAL},[amps_high],[amps_hottest])`;

export function loadColumns(units: SheetUnits): Computed[] {
  const working = { group: WORKING, width: 72, folded: true, format: "0.0" } as const;
  const missing = (prefix: string): string =>
    columnsOf(prefix)
      .map((one) => `(1-ISNUMBER(${one}))`)
      .join("+");
  return [
    {
      key: "amps_high",
      ...working,
      unit: "A",
      format: "0",
      note: "Largest of the three currents.",
      formula: `=${extreme("highest", columnsOf("amps_"))}`,
    },
    {
      key: "imbalance",
      group: WORKING,
      width: 76,
      folded: true,
      format: "0 %",
      note: "Largest over smallest current, less 1. Needs all three.",
      formula: `=LET(lowest,${extreme("lowest", columnsOf("amps_"))},IF(${missing("amps_")}>0,"",IF(lowest=0,"no current",ROUND([amps_high]/lowest-1,6))))`,
    },
    ...PHASES.map((phase, index) => compared(phase, index + 1, units)),
    {
      key: "c_sum",
      ...working,
      note: "Only where all three can be compared.",
      formula: `=IF(${missing("c_")}>0,"",[c_left]+[c_middle]+[c_right])`,
    },
    { key: "c_high", ...working, formula: `=${extreme("highest", columnsOf("c_"))}` },
    { key: "c_low", ...working, formula: `=${extreme("lowest", columnsOf("c_"))}` },
    {
      key: "hottest",
      header: "hottest phase",
      group: "Compared",
      width: 76,
      note: "At the load they are compared at, not simply the highest reading.",
      formula: `=IF([c_high]<>"",${phaseOf("[c_high]", "c_")},IF([t_high]<>"",${phaseOf("[t_high]", "t_")},""))`,
    },
    {
      key: "t_hottest",
      group: WORKING,
      width: 76,
      folded: true,
      measure: "temperature",
      format: "0.0",
      formula: `=${ofPhase("[hottest]", (phase) => `[t_${phase}]`)}`,
    },
    {
      key: "amps_hottest",
      group: WORKING,
      width: 84,
      folded: true,
      unit: "A",
      format: "0",
      note: "Current of the hottest phase; the largest where no temperature was read.",
      formula: `=IF([hottest]="",[amps_high],${ofPhase("[hottest]", (phase) => number(`[amps_${phase}]`))})`,
    },
    {
      key: "expected_max",
      group: WORKING,
      width: 84,
      folded: true,
      unit: "A",
      format: "0",
      formula: `=${fromAssets("expected_max_A")}`,
    },
    {
      key: "load_share",
      header: "load share",
      group: "Load",
      width: 64,
      format: "0 %",
      note: "Current of the hottest phase over the expected maximum in Assets.",
      formula: `=IF(([amps_hottest]="")+([expected_max]="")>0,"",IFERROR([amps_hottest]/[expected_max],""))`,
    },
    {
      key: "currents",
      group: "Load",
      width: 330,
      note: "Up to 5 % apart the phases are compared as they are, up to 10 % with care; beyond, each phase's rise is first brought to the largest of the three currents.",
      formula:
        `=IF([imbalance]="","",IF([imbalance]="no current",IF([amps_high]=0,"no current on any phase","no current on "&${withoutCurrent()}),` +
        `IF(ISNUMBER([imbalance])*([imbalance]>0.05),"differ by "&TEXT([imbalance],"0 %")&IF(${UNEQUAL},${fromHottest()}&", compared at "&[amps_high]&" A",""),"alike")))`,
    },
  ];
}

/** What is compared of a phase: its temperature, or its rise at the largest current where the currents differ. */
function compared(phase: Phase, position: number, units: SheetUnits): Computed {
  return {
    key: `c_${phase}`,
    group: WORKING,
    width: 72,
    folded: true,
    format: "0.0",
    note: "What is compared: the corrected temperature; where the currents differ by more than 10 %, the rise at the largest of them.",
    formula:
      `=IF(([t_${phase}]="")+${UNREADABLE}+([view]="direct")*([imbalance]="")+([view]="enclosed")>0,"",IF(${UNEQUAL},` +
      `IFERROR(CHOOSECOLS(GREY.PHASE_RISE(${sideBySide("t_")},${sideBySide("amps_")},[air_used],,job_exponent,job_minimum_load,${units.argument}),${position}),""),[t_${phase}]))`,
  };
}

/** How far the hottest phase's current is from the farthest of the others: |I_hot/I_ref − 1| above 10 % (trade.md 5.2.2). */
function fromHottest(): string {
  const apart = (phase: Phase): string =>
    `IF(([hottest]="${phase}")+([amps_${phase}]=0)>0,0,ABS([amps_hottest]/[amps_${phase}]-1))`;
  const [left, middle, right] = PHASES.map(apart);
  return (
    `LET(first,${left},second,${middle},third,${right},most,IF(first>=second,IF(first>=third,first,third),IF(second>=third,second,third)),` +
    `IF(ISNUMBER(most)*(most>0.1),", |I_hot/I_ref − 1| = "&TEXT(most,"0 %"),""))`
  );
}

function withoutCurrent(): string {
  const names = PHASES.map((phase) => `IF(ISNUMBER([amps_${phase}])*([amps_${phase}]=0)," and ${phase}","")`);
  return `MID(${names.join("&")},6,40)`;
}
