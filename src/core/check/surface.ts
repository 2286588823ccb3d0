/** Words of a surface's name: of the metal, and of what lies on it and is seen in its place. */
const METAL = words(
  "copper cu aluminium aluminum al steel stainless iron brass bronze tin tinned silver silvered nickel gold zinc galvanised galvanized chromium chrome metal",
);
const COVER =
  /\b(paint|lacquer|varnish|tape|patch|anodi[sz]|enamel|powder|sleeve|shrink|boot|insulat|pvc|xlpe|rubber|grease|oil|film|dirt|spray|label|epoxy|resin)/i;

const OXIDE = /\b(?:oxid|tarnish|black|rust|corro|patina|weather|scale|rough)/i;

/** Whether a metal is named with what grows on it, whose emissivity is far above that of the metal. */
export function isOxidised(surface: string | undefined): boolean {
  return surface !== undefined && OXIDE.test(surface);
}

function words(list: string): ReadonlySet<string> {
  return new Set(list.split(" "));
}

/** Whether a surface is a metal with nothing on it but what grows there, as far as its name tells. */
export function isBareMetal(surface: string | undefined): boolean {
  if (surface === undefined || COVER.test(surface)) return false;
  return surface
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .some((word) => METAL.has(word));
}
