/** A client's header in comparable words: its unit apart, spellings of one thing made one. */

export interface ReadHeader {
  readonly words: ReadonlySet<string>;
  /** As it is written: "°C", "A", "%". */
  readonly unit?: string;
}

const SPELLINGS: Readonly<Record<string, string>> = {
  temps: "temp",
  temperature: "temp",
  temperatures: "temp",
  t: "temp",
  tmp: "temp",
  fla: "rated load",
  tmax: "max temp",
  tobj: "object temp",
  app: "apparent",
  trefl: "reflected temp",
  tref: "reference temp",
  tamb: "ambient temp",
  tair: "air temp",
  tatm: "atmospheric temp",
  dt: "delta temp",
  deltat: "delta temp",
  td: "delta temp",
  hotspot: "hot spot",
  amb: "ambient",
  refl: "reflected",
  ref: "reference",
  refs: "reference",
  emiss: "emissivity",
  emis: "emissivity",
  eps: "emissivity",
  epsilon: "emissivity",
  e: "emissivity",
  rh: "humidity",
  amps: "load",
  amp: "load",
  amperes: "load",
  ampere: "load",
  amperage: "load",
  current: "load",
  currents: "load",
  loading: "load",
  loads: "load",
  dist: "distance",
  atm: "atmospheric",
  atmosphere: "atmospheric",
  transmittance: "transmission",
  transmissivity: "transmission",
  trans: "transmission",
  transm: "transmission",
  tau: "transmission",
  reflectivity: "reflectance",
  corr: "corrected",
  adj: "adjusted",
  max: "max",
  maximum: "max",
  mat: "material",
  diff: "difference",
  infrared: "ir",
  equip: "equipment",
  desc: "description",
  img: "image",
  images: "image",
  sev: "severity",
};

/** Words that a header may hold without meaning another thing. */
const NEUTRAL = new Set(
  "the of at on in to for an and over above vs versus against between value values deg degree degrees no nr num number reported stated is it".split(
    " ",
  ),
);

const UNIT = String.raw`[°º˚]\s*[CFK]|℃|℉|deg(?:rees?)?\.?\s*[CF]|K|C|F|A|kA|mA|amps?|m|mm|cm|ft|feet|in|%(?:\s*RH)?|pct|µm|um`;
const IN_BRACKETS = new RegExp(String.raw`[([{]\s*(?:in\s+)?(${UNIT})\s*[)\]}]`, "i");
const AFTER_MARK = new RegExp(String.raw`(?:[,;:\n/]|\s-|\sin)\s*(${UNIT})\s*$`, "i");
const AT_END = /(?:\s|(?=%))([°º˚]\s*[CF]|℃|℉|deg\.?\s*[CF]|%|kA|(?<=(?:current|load|rating)\s)A)\s*$/i;
const AT_START = /^\s*(%)(?=\s*\p{L})/u;
const AFTER_UNDERSCORE = /_(C|F|K|A|kA|m|ft|mm|pct|degC|degF)$/i;
/** "Phase A", "T_C": a letter of a conductor is no unit. */
const CONDUCTOR = /(?:phase|pole|line|leg|^t|^l)[\s_]*[a-c]\s*$/i;

/** A text that is nothing but a unit, as a second line of headers has them. */
export function isUnitText(text: string): boolean {
  return new RegExp(String.raw`^[([{]?\s*(?:${UNIT})\s*[)\]}]?$`, "i").test(text.trim());
}

export function readHeader(header: string): ReadHeader {
  const text = header
    .normalize("NFC")
    .replaceAll(/[\u00a0\u202f]/gu, " ")
    .trim();
  const [pattern, unit] =
    [IN_BRACKETS, AFTER_MARK, AT_END, AT_START, AFTER_UNDERSCORE]
      .map((one) => [one, CONDUCTOR.test(text) ? undefined : one.exec(text)?.[1]] as const)
      .find(([, found]) => found !== undefined) ?? [];
  const name = pattern === undefined ? text : text.replace(pattern, " ");
  const words = name
    .replaceAll(/\bdT\b/gu, " delta temp ")
    .replaceAll(/[Δ∆δ]/gu, " delta ")
    .replaceAll(/[εϵ]/gu, " emissivity ")
    .replaceAll("τ", " transmission ")
    .replaceAll("ρ", " reflectance ")
    .replaceAll(/(?<=\p{Ll})(?=\p{Lu})/gu, " ")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .flatMap((word) => (Object.hasOwn(SPELLINGS, word) ? SPELLINGS[word]! : word).split(" "))
    .filter((word) => word !== "" && !NEUTRAL.has(word));
  return { words: new Set(words), ...(unit === undefined ? {} : { unit }) };
}
