import { CHECK_RULES } from "../../data/check-rules.js";
import { airTransmission } from "../air/transmission.js";
import { apparent, correct, sensitivities } from "../correction/correct.js";
import type { Settings } from "../correction/settings.js";
import { GreybodyError } from "../errors.js";
import type { Band } from "../planck/band.js";
import type { Named } from "./named.js";
import { phasePattern } from "./pattern.js";
import type { PhasePattern } from "./pattern.js";

/** A number and the column it stands in. */
export interface Placed {
  readonly column: string;
  readonly value: number;
}

/** What temperatures are worked out from. */
export interface RowSettings {
  readonly row: Named;
  readonly job: Named;
  readonly band: Band;
  readonly isSingle: boolean;
  readonly isThroughWindow: boolean;
  readonly readings: readonly Placed[];
  readonly hottest: Placed | undefined;
  readonly emissivity: number | undefined;
  readonly reflected: number | undefined;
  readonly riseAir: number | undefined;
  readonly own: (name: string) => number | undefined;
  readonly ownText: (name: string) => string | undefined;
}

/** Temperatures of one item that are compared with each other [K]. */
export interface Compared {
  readonly hot: number;
  readonly others: readonly number[];
  /** False where they are what the camera showed. */
  readonly isCorrected: boolean;
}

/** What the core answers, or nothing where it refuses: a check says why elsewhere. */
function attempt<Result>(work: () => Result): Result | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

/** The same settings without those that are not known. */
function known(settings: Readonly<Record<string, number | undefined>>): Settings | undefined {
  const { emissivity, reflected, ...rest } = settings;
  if (emissivity === undefined || reflected === undefined) return undefined;
  const given = Object.entries(rest).filter(([, value]) => value !== undefined);
  return { emissivity, reflected, ...(Object.fromEntries(given) as Partial<Settings>) };
}

/** Temperatures and rises of a row as far as its settings reach; each is undefined where they do not. */
export class Radiometry {
  private readonly temperatures = new Map<number, number | undefined>();
  private found: Settings | undefined | null = null;
  private sides: Compared | undefined | null = null;

  /** @param transmissions of air already worked out for the route */
  constructor(
    private readonly facts: RowSettings,
    private readonly transmissions: Map<string, number | undefined>,
  ) {}

  /** Whether the camera has corrected the readings itself. */
  get isCorrectedInCamera(): boolean {
    return this.facts.ownText("readings_are") === "corrected in the camera";
  }

  /** What the camera was set to, where that is known. */
  get setInCamera(): Settings | undefined {
    const own = (name: string): number | undefined => this.facts.own(`set_${name}`);
    return known({
      emissivity: own("emissivity"),
      reflected: own("reflected"),
      airTransmission: own("air_transmission"),
      airTemp: own("air_temp"),
      windowTransmission: own("window_transmission"),
      windowTemp: own("window_temp"),
    });
  }

  get pathAir(): number | undefined {
    const { row, job } = this.facts;
    const around = row.text("air_taken") === "enclosure" ? undefined : row.number("surrounding_air");
    return row.number("path_air") ?? row.number("path_air_used") ?? around ?? job.number("path_air");
  }

  /** What the readings are corrected with. */
  get settings(): Settings | undefined {
    if (this.found === null) this.found = this.settle();
    return this.found;
  }

  private settle(): Settings | undefined {
    const { facts, pathAir } = this;
    const { row } = facts;
    // Without its transmission a window would be left out, and the temperature with it be too low.
    if (facts.isThroughWindow && row.number("window_transmission") === undefined) return undefined;
    const outer = row.number("outer_reflected") ?? facts.job.number("reflected");
    return known({
      emissivity: facts.emissivity,
      reflected: facts.reflected,
      airTransmission: row.number("air_transmission") ?? this.transmissionOfAir(pathAir),
      airTemp: pathAir,
      windowTransmission: row.number("window_transmission"),
      windowTemp: row.number("window_temp"),
      windowReflectance: row.number("window_reflectance"),
      outerReflected: outer,
    });
  }

  private transmissionOfAir(airTemp: number | undefined): number | undefined {
    const [distance, humidity] = [this.facts.own("distance"), this.facts.own("humidity")];
    const pressure = this.facts.own("pressure");
    if (distance === undefined || humidity === undefined || airTemp === undefined) return undefined;
    const path = { distance, airTemp, humidity, ...(pressure !== undefined && { pressure }) };
    const key = [distance, humidity, airTemp, pressure].join("|");
    if (!this.transmissions.has(key)) {
      this.transmissions.set(
        key,
        attempt(() => airTransmission(path, this.facts.band)),
      );
    }
    return this.transmissions.get(key);
  }

  /** The uncompensated reading behind what was typed. */
  apparentOf(reading: number): number | undefined {
    if (!this.isCorrectedInCamera) return reading;
    const { setInCamera } = this;
    return setInCamera && attempt(() => apparent(reading, setInCamera, this.facts.band));
  }

  /** Temperature of the object of an apparent temperature. */
  correctedOnce(apparentTemp: number): number | undefined {
    const { settings } = this;
    return settings && attempt(() => correct(apparentTemp, settings, this.facts.band).temperature);
  }

  /** Temperature of the object of what was typed. */
  corrected(reading: number): number | undefined {
    if (!this.temperatures.has(reading)) {
      const apparentTemp = this.apparentOf(reading);
      this.temperatures.set(reading, apparentTemp === undefined ? undefined : this.correctedOnce(apparentTemp));
    }
    return this.temperatures.get(reading);
  }

  /** What 1 K of the hottest reading comes to in its temperature [-]. */
  get sensitivity(): number | undefined {
    const { settings, facts } = this;
    const apparentTemp = facts.hottest && this.apparentOf(facts.hottest.value);
    if (apparentTemp === undefined || settings === undefined) return undefined;
    return attempt(() => sensitivities(apparentTemp, settings, facts.band).apparent);
  }

  /** What is compared, hottest first: corrected where the settings reach, else as read. */
  get compared(): Compared | undefined {
    if (this.sides === null) this.sides = this.compare();
    return this.sides;
  }

  private compare(): Compared | undefined {
    const { hottest, readings } = this.facts;
    if (hottest === undefined) return undefined;
    const placed = [hottest, ...readings.filter((one) => one !== hottest)];
    const corrected = placed.map(({ value }) => this.corrected(value));
    const isCorrected = !corrected.includes(undefined);
    const [hot = NaN, ...others] = isCorrected ? (corrected as number[]) : placed.map(({ value }) => value);
    return { hot, others, isCorrected };
  }

  /** How three phases lie to each other; undefined where there are not three. */
  get pattern(): PhasePattern | undefined {
    const { compared, facts } = this;
    if (compared === undefined || facts.isSingle || compared.others.length < 2) return undefined;
    return phasePattern([compared.hot, ...compared.others], facts.riseAir);
  }

  /** Rise of the hottest over the mean of the others [K]: the sheet's own, else worked out. Two hot phases have no such mean. */
  get riseOverSimilar(): number | undefined {
    if (this.pattern === "two hot") return undefined;
    const { compared, facts } = this;
    const own = facts.row.number("rise_similar");
    if (own !== undefined || !compared?.isCorrected) return own;
    const { hot, others } = compared;
    return others.length < (facts.isSingle ? 1 : 2)
      ? undefined
      : hot - others.reduce((a, b) => a + b, 0) / others.length;
  }

  /** Rise of the hottest phase over the coolest [K], corrected or not. */
  get riseOverLowest(): number | undefined {
    const { compared } = this;
    return compared && compared.others.length > 0 ? compared.hot - Math.min(...compared.others) : undefined;
  }

  /** Rise of the hottest over the air around it [K]. */
  get riseOverAir(): number | undefined {
    const own = this.facts.row.number("rise_air");
    const { riseAir } = this.facts;
    if (own !== undefined || !this.compared?.isCorrected) return own;
    return riseAir === undefined ? undefined : this.compared.hot - riseAir;
  }

  /** Expanded uncertainty of a rise [K]: the row's, else the job's typical figure, else ours. */
  uncertaintyOf(reference: "similar" | "air"): number {
    const low = (this.facts.emissivity ?? 0) < CHECK_RULES.u_emissivity.value;
    const name = `u_${reference}${low ? "_low" : ""}` as keyof typeof CHECK_RULES;
    const { row } = this.facts;
    return (
      row.number(`rise_U_${reference}`) ??
      row.number("rise_U") ??
      this.facts.job.number(name) ??
      CHECK_RULES[name].value
    );
  }
}
