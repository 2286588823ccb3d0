import { CHECK_RULES } from "../../data/check-rules.js";
import { RULES } from "../../data/rules.js";
import { loadDifference } from "../loading/load.js";
import { spotSize } from "../optics/spot.js";
import { inRange } from "../errors.js";
import { DATE } from "../plan/calendar.js";
import type { Band } from "../planck/band.js";
import { impossible, type Impossible } from "./impossible.js";
import type { Named } from "./named.js";
import { Radiometry } from "./radiometry.js";
import type { Placed, RowSettings } from "./radiometry.js";
import { isBareMetal } from "./surface.js";

export const PHASES = ["left", "middle", "right"] as const;

export interface LoadShare {
  readonly column: string;
  readonly load: number;
  readonly reference: number;
  readonly ratio: number;
}

const placed = (row: Named, columns: readonly string[]): Placed[] =>
  columns.flatMap((column) => {
    const value = row.number(column);
    return value === undefined ? [] : [{ column, value }];
  });

/** What all rows of a route have in common. */
export interface Route {
  readonly job: Named;
  readonly band: Band;
  /** Whether the sheet has a column for single points and none for phases. */
  readonly isOfPoints: boolean;
  /** Whether what the lists of assets and surfaces hold is unknown here, and not absent. */
  readonly isWithoutLists?: boolean;
  /** Transmissions of air already worked out: a route has few airs and distances. */
  readonly transmissions: Map<string, number | undefined>;
}

/** What can be told from one row of a route and its job; the row's own settings go before the job's. */
export class RowFacts implements RowSettings {
  readonly radiometry: Radiometry;
  readonly status: string | undefined;
  /** Typed as one reading and its reference, not as three phases. */
  readonly isSingle: boolean;
  readonly readings: readonly Placed[];
  /** Whether anything stands in a column of readings. */
  readonly isMeasured: boolean;
  readonly hottest: Placed | undefined;
  /** Known currents of the row. */
  readonly currents: readonly Placed[];
  /** Numbers that cannot be. */
  readonly impossible: readonly Impossible[];

  readonly job: Named;
  readonly band: Band;
  readonly isWithoutLists: boolean;

  /** @param number of the row, from 1 */
  constructor(
    readonly number: number,
    readonly row: Named,
    { job, band, isOfPoints, transmissions, isWithoutLists = false }: Route,
  ) {
    this.job = job;
    this.band = band;
    this.isWithoutLists = isWithoutLists;
    this.status = row.text("status");
    const phaseGiven = PHASES.some((phase) => row.given(phase));
    this.isSingle = !phaseGiven && (isOfPoints || row.given("reading") || row.given("reference"));
    this.readings = placed(row, this.isSingle ? ["reading", "reference"] : PHASES);
    this.isMeasured = phaseGiven || row.given("reading") || row.given("reference");
    this.hottest = this.hottestOf();
    this.currents = placed(row, this.isSingle ? ["load"] : PHASES.map((phase) => `amps_${phase}`));
    this.impossible = impossible(row);
    this.radiometry = new Radiometry(this, transmissions);
  }

  /** Where a phase cannot be read the others say nothing of the hottest. */
  private hottestOf(): Placed | undefined {
    if (this.isSingle) return this.readings.find(({ column }) => column === "reading");
    const typed = PHASES.filter((phase) => this.row.given(phase)).length;
    return typed === this.readings.length ? highest(this.readings) : undefined;
  }

  get isException(): boolean {
    return this.status === "exception";
  }

  get isInspected(): boolean {
    return this.status !== "not inspected";
  }

  get isDirect(): boolean {
    return (this.row.text("view") ?? "direct") === "direct";
  }

  get isOutdoors(): boolean {
    return this.row.text("air_taken") === "outdoors" || this.row.text("access") === "outdoor";
  }

  /** The row's, else the job's. */
  own(name: string): number | undefined {
    return this.row.number(name) ?? this.job.number(name);
  }

  ownText(name: string): string | undefined {
    return this.row.text(name) ?? this.job.text(name);
  }

  /** Whether the row or the job has it, readable or not. */
  has(...names: readonly string[]): boolean {
    return names.some((name) => this.row.given(name) || this.job.given(name));
  }

  /** Columns of the currents that the row has to have, three phases or one. */
  get currentColumns(): readonly string[] {
    if (!this.isSingle) return this.row.given("load") ? ["load"] : PHASES.map((phase) => `amps_${phase}`);
    if (this.currents.length > 0 || PHASES.some((phase) => this.row.given(`amps_${phase}`))) return [];
    return [this.row.given("reference_load") || this.row.given("expected_max_A") ? "load" : "process_load"];
  }

  get isThroughWindow(): boolean {
    const transmission = this.row.number("window_transmission");
    return this.row.given("window_id") || (transmission !== undefined && transmission < 1);
  }

  get isBareMetal(): boolean {
    return isBareMetal(this.row.text("surface")) || isBareMetal(this.row.text("material"));
  }

  get emissivity(): number | undefined {
    return this.row.number("emissivity") ?? this.row.number("emissivity_used") ?? this.job.number("emissivity");
  }

  get reflected(): number | undefined {
    const ofJob = this.isOutdoors ? "reflected_outdoors" : "reflected";
    return this.row.number("reflected") ?? this.row.number("reflected_used") ?? this.job.number(ofJob);
  }

  /** The job's method stands for the job's value only. */
  get isReflectedAssumed(): boolean {
    const own = this.row.text("reflected_method");
    if (own !== undefined) return own === "assumed";
    return !this.row.given("reflected") && !this.isOutdoors && this.job.text("reflected_method") === "assumed";
  }

  /** Air that a rise is over: the room's where the enclosure's was taken beside it. */
  get riseAir(): number | undefined {
    const room = this.row.text("air_taken") === "enclosure" ? this.row.number("room_air") : undefined;
    return room ?? this.row.number("surrounding_air");
  }

  /** Size of the target over the smallest that can be measured. */
  get spotMargin(): number | undefined {
    const [target, distance, ifov] = [this.row.number("target_size"), this.own("distance"), this.own("ifov")];
    if (target === undefined || distance === undefined || ifov === undefined) return this.row.number("spot_margin");
    return target / spotSize({ distance, ifov });
  }

  /** Current of the hottest phase; where that is not known the largest of all. */
  private get currentOfHottest(): Placed | undefined {
    return (
      this.currents.find(({ column }) => column === `amps_${this.hottest?.column ?? ""}`) ?? highest(this.currents)
    );
  }

  /** The most that the current of the hottest phase differs from another's; infinite where one phase alone carries none. */
  get imbalance(): number | undefined {
    const values = this.currents.map(({ value }) => value);
    const hot = this.currentOfHottest?.value;
    if (values.length < PHASES.length || hot === undefined) return undefined;
    if (values.includes(0)) return values.every((value) => value === 0) ? 0 : Infinity;
    return Math.max(...values.map((value) => loadDifference(hot, value)));
  }

  /** Current of the hottest phase, else the largest, over the expected maximum. */
  get loadShare(): LoadShare | undefined {
    const reference = this.row.number("expected_max_A") ?? this.row.number("reference_load");
    const load = this.row.number("load");
    const current = load === undefined ? this.currentOfHottest : { column: "load", value: load };
    if (reference === undefined || reference === 0 || current === undefined) return undefined;
    return { column: current.column, load: current.value, reference, ratio: current.value / reference };
  }

  /** The least load that is projected from: the job's, else the rule's. */
  get minimumLoad(): number {
    return this.job.number("minimum_load") ?? RULES.minimum_load.value;
  }

  /** Day of the row, as a sheet counts days: its own, else the job's. */
  get ownDay(): number | undefined {
    const time = this.row.number("time");
    return this.row.number("date") ?? (time !== undefined && inRange(time, DATE) ? Math.floor(time) : undefined);
  }

  /** Last day of the camera's calibration. */
  get calibratedUntil(): number | undefined {
    const calibrated = this.job.number("calibrated");
    const days = this.job.number("calibration_days") ?? CHECK_RULES.calibration_interval.value;
    return calibrated === undefined ? undefined : calibrated + days;
  }
}

function highest(values: readonly Placed[]): Placed | undefined {
  return values.reduce<Placed | undefined>((most, one) => (most && most.value >= one.value ? most : one), undefined);
}
