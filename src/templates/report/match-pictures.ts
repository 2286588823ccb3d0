/**
 * Which file of a folder is the picture that a box of a report asks for by its number. Only what fits without doubt is
 * placed: a wrong picture beside a finding is worse than none. Neutral of any host.
 */

export interface Wanted {
  readonly key: string;
  readonly kind: "thermogram" | "photo";
  /** What the box shows: a number, or a file's name. */
  readonly shown: string;
}

export type Matched =
  | { readonly outcome: "placed"; readonly file: string }
  | {
      readonly outcome: "doubtful" | "missing";
      readonly files: readonly string[];
      readonly why: string;
      readonly todo: string;
    };

export interface Matching {
  /** By the box's key; boxes that show nothing are not used. */
  readonly boxes: ReadonlyMap<string, Matched>;
  /** Files that fit no box. */
  readonly unused: readonly string[];
}

/** Typed columns of the route from which the boxes have their numbers. */
const COLUMNS = { thermogram: "thermal_image", photo: "photo" } as const;
const ENDING = /\.(?:jpe?g|jfif|jpe|png|heic|heif|avif|tiff?|webp|bmp|gif|dng)$/i;
const TAKEN = /\.(?:jpe?g|jfif|jpe|png)$/i;

export function matchPictures(wanted: readonly Wanted[], files: readonly string[]): Matching {
  const names = files.map((file) => new FileName(file));
  const boxes = new Map<string, Matched>();
  const touched = new Set<string>();
  for (const one of wanted) {
    if (one.shown === "") continue;
    const matched = matchOne(one, names);
    boxes.set(one.key, matched);
    for (const file of matched.outcome === "placed" ? [matched.file] : matched.files) touched.add(file);
  }
  doubtBothKinds(wanted, boxes);
  return { boxes, unused: files.filter((file) => !touched.has(file)) };
}

const sameLetters = (name: string): string => name.normalize().toLowerCase();

class FileName {
  readonly stem: string;
  /** Letters and numbers without what stands between them, numbers without leading zeros: "IR_0123" is "ir|123". */
  readonly plain: string;
  readonly numbers: readonly string[];

  constructor(readonly file: string) {
    // A Mac may hand "ü" over as two characters.
    this.stem = file.normalize().replace(ENDING, "").toLowerCase();
    const runs = (this.stem.match(/\p{L}+|\d+/gu) ?? []).map((run) => run.replace(/^0+(?=\d)/, ""));
    this.plain = runs.join("|");
    this.numbers = runs.filter((run) => /^\d/.test(run));
  }
}

function matchOne({ shown, kind }: Wanted, names: readonly FileName[]): Matched {
  const asked = new FileName(shown);
  const exact = names.filter(({ file }) => sameLetters(file) === sameLetters(shown));
  if (exact.length > 0) return one(exact, shown);
  const column = COLUMNS[kind];
  if (asked.numbers.length === 0)
    return {
      outcome: "missing",
      files: [],
      why: `"${shown}" is no image number`,
      todo: `type one into the column ${column} of its row`,
    };
  if (/[,;&+/]|\d\s+\d/.test(asked.stem))
    return {
      outcome: "doubtful",
      files: [],
      why: `"${shown}" names more than one image`,
      todo: `leave the one to be printed in the column ${column}`,
    };
  const fits = fitting(asked, shown, names);
  if (fits.length > 0) return one(fits, shown);
  const number = asked.numbers.at(-1)!;
  const partly = names.filter(({ numbers }) => numbers.includes(number)).map(({ file }) => file);
  if (partly.length === 0)
    return {
      outcome: "missing",
      files: [],
      why: `no file of this folder has the number ${number} in its name`,
      todo: `copy the picture into the folder, or correct the column ${column}`,
    };
  return {
    outcome: "doubtful",
    files: partly,
    why: `only a part of the name fits "${shown}"`,
    todo: `if it is the one, type its whole name into the column ${column}`,
  };
}

/** The whole name where letters were typed; else names with no other number than this. */
function fitting(asked: FileName, shown: string, names: readonly FileName[]): FileName[] {
  if (ENDING.test(shown)) return [];
  if (/^\d+$/.test(asked.plain))
    return names.filter(({ numbers }) => numbers.length === 1 && numbers[0] === asked.plain);
  const same = names.filter(({ plain }) => plain === asked.plain);
  const literal = same.filter(({ stem }) => stem === asked.stem);
  return literal.length > 0 ? literal : same;
}

/** Of files that differ only in what they are (a raw one beside its JPEG) the one that can be taken. */
function one(fits: readonly FileName[], shown: string): Matched {
  const takable = fits.filter(({ file }) => TAKEN.test(file));
  const [first, ...others] = takable.length > 0 ? takable : fits;
  if (first !== undefined && others.length === 0) return { outcome: "placed", file: first.file };
  const files = fits.map(({ file }) => file);
  return {
    outcome: "doubtful",
    files,
    why: `${files.length} files fit "${shown}"`,
    todo: "type the whole name of the right one, with its ending, in place of the number",
  };
}

/** One number typed for both, one file: it cannot be told whether it is the thermogram or the photo. */
function doubtBothKinds(wanted: readonly Wanted[], boxes: Map<string, Matched>): void {
  const kinds = new Map<string, Set<string>>();
  const byNumber = wanted.flatMap(({ key, kind, shown }) => {
    const matched = boxes.get(key);
    if (matched?.outcome !== "placed" || !/^\d+$/.test(shown)) return [];
    kinds.set(matched.file, (kinds.get(matched.file) ?? new Set()).add(kind));
    return [{ key, file: matched.file }];
  });
  for (const { key, file } of byNumber)
    if (kinds.get(file)!.size > 1)
      boxes.set(key, {
        outcome: "doubtful",
        files: [file],
        why: "the same file fits as a thermogram and as a photo",
        todo: "type the whole name of each file, with its ending, in place of the number",
      });
}
