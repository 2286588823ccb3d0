import { inRange } from "../errors.js";
import { COLUMN_LIMITS } from "./limits.js";

/** One row of a route, or its job, by the names of its columns: numbers in SI, words as their column has them. */
export class Named {
  /**
   * @param values what could be read
   * @param unreadable names of what is filled but could not
   */
  constructor(
    private readonly values: ReadonlyMap<string, number | string>,
    private readonly unreadable: ReadonlySet<string> = new Set(),
  ) {}

  /** A number as it was typed, possible or not. */
  raw(name: string): number | undefined {
    const value = this.values.get(name);
    return typeof value === "number" ? value : undefined;
  }

  /** A number that can be. */
  number(name: string): number | undefined {
    const value = this.raw(name);
    const limits = COLUMN_LIMITS[name];
    return value === undefined || (limits && !inRange(value, limits)) ? undefined : value;
  }

  text(name: string): string | undefined {
    const value = this.values.get(name);
    return typeof value === "string" ? value : undefined;
  }

  /** Whether anything stands there, readable or not. */
  given(name: string): boolean {
    return this.values.has(name) || this.unreadable.has(name);
  }

  get names(): readonly string[] {
    return [...this.values.keys(), ...this.unreadable];
  }
}
