/** Our colours as sheets in every host, pictures and the pane use them; the page's frame takes them from pane/styles/tokens.css. */

export interface Tone {
  readonly fill: string;
  readonly ink: string;
}

export interface Tones {
  readonly paper: string;
  readonly ink: string;
  readonly muted: string;
  readonly accent: string;
  readonly line: string;
  /** What went wrong, and what cannot be taken back. */
  readonly trouble: string;
  readonly input: string;
  readonly computed: string;
  /** Grades 1 to 4; grade 0 has no fill. */
  readonly grades: readonly [Tone, Tone, Tone, Tone];
}

export const lightTones: Tones = {
  paper: "#fbfaf7",
  ink: "#1d2430",
  muted: "#5b6472",
  accent: "#0b5c63",
  line: "#c9c5bb",
  trouble: "#8c2f1b",
  input: "#eef4f1",
  computed: "#f4f1ea",
  grades: [
    { fill: "#f3e3bd", ink: "#1d2430" },
    { fill: "#e0a96d", ink: "#1d2430" },
    { fill: "#a4502f", ink: "#fbfaf7" },
    { fill: "#541f3f", ink: "#fbfaf7" },
  ],
};

export const darkTones: Tones = {
  paper: "#171a20",
  ink: "#e9e6df",
  muted: "#a8afba",
  accent: "#6cc3c4",
  line: "#3a3f49",
  trouble: "#f0a48e",
  input: "#1b2629",
  computed: "#211f1d",
  grades: [
    { fill: "#5c5233", ink: "#e9e6df" },
    { fill: "#7d5829", ink: "#e9e6df" },
    { fill: "#c9794f", ink: "#171a20" },
    { fill: "#e3b0d0", ink: "#171a20" },
  ],
};

/** For a ground of pure black: every line and word stands out as far as it can. */
export const contrastTones: Tones = {
  ...darkTones,
  paper: "#000000",
  ink: "#ffffff",
  muted: "#ffffff",
  accent: "#8ff0f0",
  line: "#ffffff",
  trouble: "#ffc4b5",
  input: "#000000",
  computed: "#000000",
};

/** One bar more a grade, so that a grade reads without colour; index 0 is grade 0. */
export const gradeBars = ["–", "▁", "▂", "▄", "█"] as const;

const grade = /^\s*([0-4])(?![\d.,])/;

/** The grade that a cell of a grade column holds: a whole number from 0 to 4, or words that begin with one. */
export function gradeOf(value: unknown): number | undefined {
  if (typeof value !== "number" && typeof value !== "string") return undefined;
  const match = grade.exec(String(value));
  return match?.[1] === undefined ? undefined : Number(match[1]);
}
