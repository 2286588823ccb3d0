/** Currents, and the phases brought to what may be compared. */
import type { Computed } from "./columns.js";
import { eachRow, fromAssets, ofPhase, PHASES, type Phase, phaseOf, phases, typedPhases } from "./formula.js";
import type { SheetUnits } from "./sheet-units.js";

const WORKING = "Working";
const AMPS = typedPhases("amps_");

/** 1 where the currents of a directly seen item differ too much for the phases to be compared as they are. */
export const UNEQUAL = `(([view]="direct")*(([imbalance]="no current")+(ISNUMBER([imbalance])*([imbalance]>0.1))))`;
export const LARGEST_CURRENT = eachRow(AMPS, 1, "MAX(three)");
/** The load that the rise over similar belongs to. */
export const COMPARED_AT = `IF(${UNEQUAL},${LARGEST_CURRENT},[amps_hottest])`;

export function loadColumns(units: SheetUnits): Computed[] {
  return [
    {
      key: "imbalance",
      group: WORKING,
      width: 76,
      folded: true,
      format: "0 %",
      note: "Largest over smallest current, less 1. Needs all three.",
      formula: `=${eachRow(AMPS, 3, 'IF(MIN(three)=0,"no current",ROUND(MAX(three)/MIN(three)-1,6))')}`,
    },
    ...PHASES.map((phase, index) => compared(phase, index + 1, units)),
    {
      key: "hottest",
      header: "hottest phase",
      group: "Compared",
      width: 76,
      note: "At the load they are compared at, not simply the highest reading.",
      formula:
        `=LET(compared,${eachRow(phases("c"), 1, "MAX(three)")},seen,${eachRow(phases("t"), 1, "MAX(three)")},` +
        `IF(compared<>"",${phaseOf("compared", "c")},IF(seen<>"",${phaseOf("seen", "t")},"")))`,
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
      formula: `=IF([hottest]="",${LARGEST_CURRENT},${ofPhase("[hottest]", (phase) => `IF([amps_${phase}]="","",[amps_${phase}])`)})`,
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
      width: 130,
      note: "Up to 5 % apart the phases are compared as they are, up to 10 % with care; beyond, each phase's rise is first brought to the largest of the three currents.",
      formula:
        `=IF([imbalance]="","",IF([imbalance]="no current","no current on "&${withoutCurrent()},` +
        `IF(ISNUMBER([imbalance])*([imbalance]>0.05),"differ by "&TEXT([imbalance],"0 %"),"alike")))`,
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
      `=IF(([t_${phase}]="")+([view]="direct")*([imbalance]="")+([view]="enclosed")>0,"",IF(${UNEQUAL},` +
      `IFERROR(CHOOSECOLS(GREY.PHASE_RISE(${phases("t")},${AMPS},[air_used],,job_exponent,job_minimum_load,${units.argument}),${position}),""),[t_${phase}]))`,
  };
}

function withoutCurrent(): string {
  const names = PHASES.map((phase) => `IF(ISNUMBER([amps_${phase}])*([amps_${phase}]=0)," and ${phase}","")`);
  return `MID(${names.join("&")},6,40)`;
}
