import { CHECK_RULES } from "../../data/check-rules.js";
import { airTransmission } from "../air/transmission.js";
import { apparent, correct, sensitivities } from "../correction/correct.js";
import type { Settings } from "../correction/settings.js";
import { GreybodyError } from "../errors.js";
import type { Band } from "../planck/band.js";
import type { Named } from "./named.js";

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

  /** Rise of the hottest over the mean of the others [K]: the sheet's own, else worked out. */
  get riseOverSimilar(): number | undefined {
    const own = this.facts.row.number("rise_similar");
    if (own !== undefined) return own;
    const { hottest, readings, isSingle } = this.facts;
    if (hottest === undefined || readings.length < (isSingle ? 2 : 3)) return undefined;
    const hot = this.corrected(hottest.value);
    const others = readings.filter((one) => one !== hottest).map(({ value }) => this.corrected(value));
    if (hot === undefined || others.includes(undefined)) return undefined;
    return hot - others.reduce<number>((sum, one) => sum + (one ?? NaN), 0) / others.length;
  }

  /** Rise of the hottest over the air around it [K]. */
  get riseOverAir(): number | undefined {
    const own = this.facts.row.number("rise_air");
    if (own !== undefined) return own;
    const { hottest, riseAir } = this.facts;
    const hot = hottest && this.corrected(hottest.value);
    return hot === undefined || riseAir === undefined ? undefined : hot - riseAir;
  }

  /** Expanded uncertainty of a rise [K]: the row's, else the job's typical figure, else ours. */
  uncertaintyOf(reference: "similar" | "air"): number {
    const low = (this.facts.emissivity ?? 0) < CHECK_RULES.u_emissivity.value;
    const name = `u_${reference}${low ? "_low" : ""}` as keyof typeof CHECK_RULES;
    return this.facts.row.number("rise_U") ?? this.facts.job.number(name) ?? CHECK_RULES[name].value;
  }
}
