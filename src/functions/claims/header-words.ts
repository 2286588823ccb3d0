/**
 * What the trade calls the columns that AUDIT reads, as sets of words in the spelling of header-tokens.ts. Common practice,
 * without a source: a header is taken only where its words are exactly one of these sets.
 */
import type { ReferenceKind } from "../../data/criteria.js";

export interface Phrase {
  readonly words: readonly string[];
  /** Ours; several where the words may mean any of them. */
  readonly names: readonly string[];
  /** What a rise is over, where its header says it. */
  readonly over?: ReferenceKind;
}

const listed = (text: string): string[] => text.split("|").map((one) => one.trim());
const of = (names: string | readonly string[], text: string, over?: ReferenceKind): Phrase[] =>
  listed(text).map((words) => ({
    words: words.split(" ").filter((word) => word !== ""),
    names: typeof names === "string" ? [names] : names,
    ...(over === undefined ? {} : { over }),
  }));

const each = (first: string, second: string): string =>
  listed(first)
    .flatMap((one) => listed(second).map((two) => `${one} ${two}`))
    .join("|");

const RISE = "rise | temp rise | delta temp | delta | temp difference";
const HOT =
  "hot spot | spot | max | hot | hottest | peak | exception | problem | fault | anomaly | component | object | target";
const OTHER =
  "reference | normal | similar | comparison | cool | reference phase | reference component | similar component";
const RAW = "apparent | raw | uncorrected | indicated";
const FULL =
  "full load | max load | load | adjusted | load adjusted | projected | load corrected | 100 load | rated load";

export const PHRASES: readonly Phrase[] = [
  ...of(
    "item",
    "item | asset | equipment | component | asset id | equipment id | asset tag | equipment tag | tag | asset name",
  ),
  ...of(
    "item",
    "equipment name | item description | equipment description | component description | description | device",
  ),
  ...of("item", "machine | location | panel | target | point | id"),
  ...of(
    "image",
    "image | image id | image file | image name | thermogram | thermogram id | thermal image | ir image | ir file",
  ),
  ...of("date", "date | survey date | inspection date | date inspected | test date"),
  ...of("stated_temp", each(HOT, "temp | corrected temp")),
  ...of("stated_temp", "corrected temp | hot spot | final temp | surface temp"),
  ...of("stated_reference_temp", each(OTHER, "temp | corrected temp")),
  ...of("stated_rise", `${RISE} | corrected rise | excess temp`),
  ...of("stated_rise", each(RISE, "ambient | air | ambient air | surrounding air"), "ambient"),
  ...of(
    "stated_rise",
    each(RISE, "similar | phase | phases | similar component | adjacent phase | other phase | components"),
    "similar",
  ),
  ...of("stated_rise", each(RISE, "baseline"), "baseline"),
  ...of("stated_rise", each(RISE, "reference")),
  ...of("stated_rise_at_load", each(RISE, FULL)),
  ...of(
    "stated_grade",
    "grade | severity | severity grade | severity level | severity class | fault grade | fault class | classification",
  ),
  ...of("stated_grade", "severity rating | class"),
  ...of("apparent", `${each(RAW, "temp | reading")} | apparent | camera temp | camera reading`),
  ...of("apparent", each(each(RAW, "temp | reading"), HOT)),
  ...of("apparent", each(RAW, HOT)),
  ...of("reference_apparent", each(each(RAW, "temp | reading"), OTHER)),
  ...of("reference_apparent", `${each(RAW, OTHER)} | camera reference reading`),
  ...of("reading_is", "reading is"),
  ...of(
    "emissivity",
    "emissivity | surface emissivity | emissivity set | emissivity setting | emissivity used | object emissivity",
  ),
  ...of(
    "reflected",
    "reflected | reflected temp | reflected apparent temp | background | background temp | apparent reflected",
  ),
  ...of(
    "distance",
    "distance | object distance | camera distance | measuring distance | target distance | working distance",
  ),
  ...of("humidity", "humidity | relative humidity"),
  ...of("path_air", "atmospheric temp | path air | path air temp"),
  ...of("air_transmission", "atmospheric transmission | air transmission"),
  ...of("window_transmission", "window transmission | ir window transmission | viewport transmission"),
  ...of("window_temp", "window temp | ir window temp"),
  ...of("window_reflectance", "window reflectance | ir window reflectance"),
  ...of(
    "surrounding_air",
    "ambient | ambient temp | air temp | surrounding air | ambient air | ambient air temp | air",
  ),
  ...of(
    "surrounding_air",
    "enclosure air | enclosure temp | enclosure air temp | surrounding air temp | surrounding temp",
  ),
  ...of("room_air", "room temp | room air | room air temp | room ambient"),
  ...of("load", "load | measured load | actual load | present load | operating load | inspection load | hot load"),
  ...of("load_of_reference", each("load", "reference phase | similar component | reference component | normal phase")),
  ...of(
    "reference_load",
    "full load | max load | expected max load | expected max | design load | peak load | max expected load",
  ),
  ...of("rated_load", "rated load | rated | nominal load | nominal | nameplate load | load rating"),
  ...of("exponent", "exponent | load exponent | exponent load | n"),
  ...of("material", "material | surface | surface material | finish | surface finish"),
  ...of("view", "view | direct indirect | view type"),
  ...of("access", "access | indoor outdoor | environment"),
  ...of(
    "reference",
    "reference type | compared with | comparison | compared | comparison type | reference basis | comparison basis",
  ),
  // These words alone leave it open.
  ...of(["stated_temp", "apparent"], "temp | reading | measured temp | ir temp | camera | temp reading"),
  ...of(["reference", "stated_reference_temp"], "reference"),
  ...of(["reference_apparent", "stated_reference_temp"], "reference reading"),
  ...of(["reference_load", "load_of_reference"], "reference load"),
  ...of(["air_transmission", "window_transmission"], "transmission"),
  ...of(["stated_grade"], "priority | rating | category | fault | level").map((phrase) => ({
    ...phrase,
    names: [...phrase.names, "none"],
  })),
  ...of("rated_load", "rating"),
  ...of(["surrounding_air", "path_air"], "environment temp | outside temp | weather temp"),
];
