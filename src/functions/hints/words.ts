/** How a hint's values are written in the units of the sheet. */
export interface HintWords {
  readonly temperature: (name: string) => string;
  readonly difference: (name: string) => string;
  readonly number: (name: string) => string;
  /** A fraction as per cent, close enough to tell it from a limit that it misses. */
  readonly percent: (name: string) => string;
  /** A length in the sheet's unit, from metres. */
  readonly length: (name: string) => string;
  readonly pressure: (name: string) => string;
  readonly speed: (name: string) => string;
}

/** What hint keys of the core say to the person at the sheet. */
export type Hints = Readonly<Record<string, (w: HintWords) => string>>;
