/** What becomes of every box of a report when a folder of pictures is at hand, and how that is told. Neutral of any host. */
import { matchPictures, type Wanted } from "./match-pictures.js";

export interface WantedBox extends Wanted {
  /** Where it is, for a person: "Exception pages!F9". */
  readonly at: string;
  /** What the picture shows that an earlier run put there. */
  readonly held: string | undefined;
  /** Why what it shows may not be right. */
  readonly unsure?: string | undefined;
}

export type Outcome = "placed" | "kept" | "doubtful" | "missing" | "refused";

export interface BoxOutcome {
  readonly box: string;
  readonly at: string;
  readonly kind: Wanted["kind"];
  readonly shown: string;
  readonly outcome: Outcome;
  /** The picture that is placed, or what may be meant. */
  readonly files: readonly string[];
  readonly why?: string;
  readonly todo?: string;
}

export interface PicturePlan<P> {
  /** Boxes that show something, in their order. */
  readonly boxes: readonly BoxOutcome[];
  readonly placed: readonly { readonly key: string; readonly shown: string; readonly picture: P }[];
  /** Boxes whose picture of an earlier run stays, since the box still shows the same. */
  readonly keeps: ReadonlySet<string>;
  readonly unused: readonly string[];
}

/** @param open a file's picture, or a sentence that says why it is not taken */
export async function planPictures<P extends object>(
  wanted: readonly WantedBox[],
  files: readonly string[],
  open: (file: string) => Promise<P | string>,
): Promise<PicturePlan<P>> {
  const sure = wanted.filter(({ unsure }) => unsure === undefined);
  const matching = matchPictures(sure, files);
  const opened = new Map<string, P | string>();
  const boxes: BoxOutcome[] = [];
  const placed: { key: string; shown: string; picture: P }[] = [];
  const keeps = new Set<string>();
  for (const { key, kind, at, shown, held, unsure } of wanted) {
    if (shown === "") continue;
    const base = { box: key, at, kind, shown };
    const keep = (otherwise: BoxOutcome): void => {
      const stays = held === shown && unsure === undefined;
      if (stays) keeps.add(key);
      boxes.push(stays ? { ...otherwise, outcome: "kept" } : otherwise);
    };
    const matched = matching.boxes.get(key);
    if (matched === undefined) {
      const why = `its number cannot be worked out (${unsure ?? ""})`;
      boxes.push({ ...base, outcome: "doubtful", files: [], why, todo: "open the workbook in Excel and save it" });
      continue;
    }
    if (matched.outcome !== "placed") {
      keep({ ...base, ...matched });
      continue;
    }
    const { file } = matched;
    if (!opened.has(file)) opened.set(file, await open(file));
    const picture = opened.get(file)!;
    if (typeof picture === "string") keep({ ...base, outcome: "refused", files: [file], why: picture });
    else {
      placed.push({ key, shown, picture });
      boxes.push({ ...base, outcome: "placed", files: [file] });
    }
  }
  return { boxes, placed, keeps, unused: matching.unused };
}

const ORDER: readonly Outcome[] = ["placed", "kept", "doubtful", "missing", "refused"];
const WORDS: Readonly<Record<Outcome, string>> = {
  placed: "placed",
  kept: "kept from before",
  doubtful: "doubtful",
  missing: "missing",
  refused: "not taken",
};
const MOST_NAMED = 8;

/** "20 placed, 2 doubtful, 1 missing". */
export function countsText({ boxes }: PicturePlan<object>): string {
  const counted = ORDER.map((outcome) => [outcome, boxes.filter((one) => one.outcome === outcome).length] as const);
  return counted
    .filter(([outcome, count]) => count > 0 || outcome === "placed")
    .map(([outcome, count]) => `${count} ${WORDS[outcome]}`)
    .join(", ");
}

/** What a person has to look at, a line each. */
export function planLines({ boxes, unused }: PicturePlan<object>): string[] {
  const lines = boxes.flatMap(({ outcome, at, kind, shown, files, why, todo }) => {
    if (outcome === "placed") return [];
    const named = files.length === 0 ? "" : ` [${listed(files)}]`;
    return [
      `${WORDS[outcome]}: ${kind} ${shown} at ${at}: ${why ?? ""}${named}${todo === undefined ? "" : `; ${todo}`}`,
    ];
  });
  return unused.length === 0
    ? lines
    : [...lines, `${unused.length} ${unused.length === 1 ? "file fits" : "files fit"} no box: ${listed(unused)}`];
}

function listed(files: readonly string[]): string {
  const more = files.length - MOST_NAMED;
  return files.slice(0, MOST_NAMED).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
