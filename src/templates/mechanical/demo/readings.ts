/** A morning's readings at the invented water works: rows of every kind. */
import { clock, day } from "../../route/demo/moments.js";
import type { PointReading } from "../typed.js";

type Numbers = readonly [reading: number, load: number, air: number];

const read = ([reading, process_load, surrounding_air]: Numbers): PointReading => ({
  reading,
  process_load,
  surrounding_air,
});

function fine(asset_id: string, time: string, numbers: Numbers): PointReading {
  return { asset_id, time: clock(time), status: "no exception", ...read(numbers) };
}

/** Images and photos are numbered as they were taken. */
function exception(asset_id: string, time: string, image: number, numbers: Numbers): PointReading {
  const images = { thermal_image: `IR-${image}`, photo: `P-${image}` };
  return { asset_id, time: clock(time), status: "exception", ...images, ...read(numbers) };
}

const STOP = { due: day("2026-05-20") } as const;

export const readings: readonly PointReading[] = [
  {
    ...exception("RW1-DE", "08:31", 301, [59.2, 84, 19.5]),
    cause: "lubrication, or load of the bearing",
    action: "vibration reading this week; open at the next stop",
    told_to: "J. Varga (invented), 08:40",
    ...STOP,
  },
  fine("RW1-NDE", "08:34", [43.1, 84, 19.5]),
  {
    ...exception("RW1-CPL", "08:38", 302, [27.4, 84, 19.5]),
    action: "paint a patch at the next stop, then read again",
    ...STOP,
  },
  fine("RW2-DE", "08:44", [44.3, 82, 19.5]),
  fine("RW2-NDE", "08:46", [42.6, 82, 19.5]),
  {
    ...exception("RW2-SEAL", "08:49", 303, [33.8, 82, 19.5]),
    cause: "flush water, or a bearing that is not loaded",
    action: "look which of the two is the sound one",
  },
  {
    ...fine("RW3-DE", "08:55", [55.9, 80, 19.5]),
    last_greased: day("2026-04-21") + clock("14:00"),
  },
  {
    ...exception("BB-DE", "09:12", 304, [63.4, 81, 22]),
    cause: "bearing worn; grease dark at the seal",
    action: "replace the bearing",
    told_to: "J. Varga (invented), 09:15",
    due: day("2026-04-29"),
  },
  fine("BB-NDE", "09:14", [39.2, 81, 22]),
  {
    ...exception("BB-BELT", "09:17", 305, [48.5, 81, 22]),
    action: "read the belt itself through the guard's opening",
  },
  fine("BB-FRM", "09:20", [51.6, 81, 22]),
  {
    ...exception("SC-GB", "09:34", 306, [74.9, 70, 17]),
    cause: "oil level low",
    action: "check oil and breather",
    due: day("2026-05-06"),
  },
  {
    ...exception("SC-DE", "09:37", 307, [38.5, 70, 17]),
    action: "look again in a month",
    due: day("2026-05-22"),
  },
  fine("SC-NDE", "09:39", [32.1, 70, 17]),
  {
    ...exception("AC-DE", "09:58", 308, [150, 90, 26]),
    reading_is: "at least",
    cause: "bearing failing",
    action: "stop the compressor, open",
    told_to: "shift lead, 09:59",
    due: day("2026-04-22"),
  },
  fine("AC-NDE", "10:01", [60.3, 90, 26]),
  {
    ...exception("SP-DE", "10:20", 309, [43.9, 55, 14]),
    action: "read again at the usual load",
    ...STOP,
  },
  { ...fine("SP-GB", "10:23", [51.2, 55, 14]), status: "partly seen", reason: "rear face behind the guard" },
  { asset_id: "SM-DE", time: clock("10:30"), status: "not inspected", reason: "machine off, under repair" },
];
