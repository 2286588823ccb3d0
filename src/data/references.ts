import references from "./references.json";

/** An entry of the one bibliography. */
export interface Reference {
  /** As it stands in a cell. */
  readonly short: string;
  readonly authors: string;
  readonly title: string;
  readonly edition?: string;
  readonly year?: number;
  readonly publisher: string;
  readonly identifier?: string;
  readonly note?: string;
}

export const REFERENCES: Readonly<Record<string, Reference>> = references;
