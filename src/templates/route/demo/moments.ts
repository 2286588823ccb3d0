/** Days and times as a sheet counts them: days since 1900, a time as a part of one. */
const FIRST_DAY = Date.UTC(1899, 11, 30);

/** "2026-03-11" */
export function day(text: string): number {
  return (Date.parse(text) - FIRST_DAY) / 86_400_000;
}

/** "09:25" */
export function clock(text: string): number {
  const [hours = NaN, minutes = NaN] = text.split(":").map(Number);
  return (hours * 60 + minutes) / 1440;
}
