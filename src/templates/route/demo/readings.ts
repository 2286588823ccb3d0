/** One morning's readings in the invented dairy: rows of every kind. */
import type { Reading } from "../typed.js";
import { clock, day } from "./moments.js";

type Three<Value> = readonly [Value, Value, Value];

/** The numbers of a row: three readings, three currents, the air and where it was taken; null where none was noted. */
function read(
  left: Three<number>,
  amps: Three<number | null> | null,
  air: number | null,
  taken: "enclosure" | "outdoors" | null = null,
): Reading {
  const currents = amps === null ? {} : { amps_left: amps[0], amps_middle: amps[1], amps_right: amps[2] };
  return { left: left[0], middle: left[1], right: left[2], ...currents, surrounding_air: air, air_taken: taken };
}

function fine(asset_id: string, time: string): Reading {
  return { asset_id, time: clock(time), status: "no exception" };
}

/** Images and photos are numbered as they were taken. */
function exception(asset_id: string, time: string, image: number): Reading {
  const number = String(image).padStart(4, "0");
  return { asset_id, time: clock(time), status: "exception", thermal_image: `IR-${number}`, photo: `P-${number}` };
}

export const readings: readonly Reading[] = [
  { ...fine("MSB-INC", "08:40"), ...read([40.6, 41.3, 40.3], [1010, 1022, 998], 26.5) },
  { ...fine("MSB-Q2", "08:46"), amps_left: 402, amps_middle: 398, amps_right: 405 },
  {
    ...exception("MSB-Q3", "08:52", 101),
    ...read([38.2, 37.8, 68.1], [231, 226, 229], 26.5),
    cause: "loose or worn lug connection",
    action: "isolate, open, clean, remake; look again at load",
    told_to: "T. Okafor, 08:55",
    due: day("2026-03-11"),
  },
  {
    ...exception("MSB-Q5", "09:01", 102),
    ...read([37.0, 44.6, 37.3], [148, 152, 146], 26.5),
    cause: "lug connection",
    action: "remake at the next stop",
    due: day("2026-04-18"),
  },
  {
    ...exception("MSB-Q8", "09:07", 103),
    ...read([59.6, 62.0, 40.0], [190, 193, 188], 26.5),
    cause: "two lugs of one fixing",
    action: "remake both at the next stop",
    due: day("2026-03-21"),
  },
  {
    ...exception("BUS-LK", "09:13", 104),
    ...read([30.2, 29.8, 33.2], [402, 398, 405], 26.5),
    action: "tape patches at the next stop, then read again",
  },
  {
    ...exception("CAP-1", "09:20", 105),
    ...read([33.7, 34.2, 42.0], [72, 73, 71.5], 28),
    cause: "fuse clip",
    action: "clean or replace the clip",
    due: day("2026-04-18"),
  },
  {
    ...exception("GEN-ATS", "09:28", 106),
    ...read([53.0, 55.8, 52.6], [265, 268, 262], 38, "enclosure"),
    room_air: 25,
    cause: "filter mat of the enclosure is blocked",
    action: "change the mat, look again",
    due: day("2026-03-28"),
  },
  {
    ...exception("UPS-IN", "09:37", 107),
    ...read([26.7, 26.9, 35.4], [69, 70, 70], 23),
    action: "look again at a higher load",
    due: day("2026-04-18"),
  },
  { ...fine("TX1-LV", "09:50"), ...read([71.7, 72.8, 71.1], [868, 880, 861], 30) },
  {
    ...exception("TX1-HV", "09:58", 108),
    ...read([26.9, 27.1, 30.3], [31, 30.6, 31.2], 18),
    action: "other method at the next outage",
    due: day("2026-06-06"),
  },
  {
    ...exception("MV-C1", "10:08", 109),
    ...read([22.5, 22.7, 29.1], [31, 30.6, 31.2], 18),
    reflected: 18,
    window_temp: 18.5,
    cause: "cable termination",
    action: "plan an outage",
    due: day("2026-04-18"),
  },
  { ...exception("MV-C2", "10:15", 110), ...read([22.2, 27.3, 22.4], [24, 24.3, 23.8], 18), reflected: 18 },
  { ...fine("RMU-1", "10:21"), ...read([21.8, 21.9, 21.9], null, 18) },
  {
    ...exception("BLR-FD", "10:33", 111),
    ...read([35.2, 35.5, 46.6], [45, 44.6, 45.2], 31),
    cause: "starter terminal",
    action: "remake at the next stop",
    due: day("2026-03-21"),
  },
  {
    ...exception("BLR-CB1", "10:41", 112),
    ...read([58.7, 150, 60.3], [58, 60, 59], 31),
    reading_is: "at least",
    cause: "contactor pole",
    action: "take out of service, replace",
    told_to: "boiler house shift lead, 10:43",
    due: day("2026-03-11"),
  },
  {
    ...exception("MCC1-P1", "10:55", 113),
    ...read([28.0, 28.3, 31.6], [38, 37.5, 38.4], 24),
    action: "look again at the next survey",
  },
  {
    ...exception("MCC1-P4", "11:00", 114),
    ...read([28.8, 29.2, 43.1], [29, 28.6, 29.3], 24.5),
    cause: "overload relay terminal",
    action: "remake at the next stop",
    due: day("2026-03-21"),
  },
  { ...exception("MCC2-M4", "11:12", 115), ...read([32.5, 50.5, 33.1], [22, null, 22.4], 24) },
  { ...exception("MCC2-M7", "11:18", 116), ...read([31.0, 31.4, 43.7], [18, 18.2, 17.9], null) },
  { ...fine("MCC2-M9", "11:23"), ...read([22.5, 22.7, 22.4], [12, 12.1, 11.9], 27.5) },
  {
    ...fine("SD-FAN", "11:35"),
    ...read([35.2, 35.9, 35.4], [204, 205, 202], 29),
    minutes_since_load_change: 12,
  },
  {
    ...exception("DB-PACK", "11:48", 117),
    ...read([91.3, 92.8, 90.4], [118, 121, 116], 24),
    cause: "load moved here from the closed line",
    action: "move load back, measure for a day",
    told_to: "packing hall supervisor, 11:52",
    due: day("2026-03-12"),
  },
  {
    ...exception("DB-WKS", "12:40", 118),
    ...read([37.0, 53.0, 36.1], [62, 41, 60], 25),
    cause: "terminal of the phase with the smallest current",
    action: "isolate and remake today",
    told_to: "T. Okafor, 12:44",
    due: day("2026-03-11"),
  },
  {
    asset_id: "DB-LAB",
    time: clock("12:52"),
    status: "partly seen",
    reason: "rear terminals behind a fixed barrier",
    ...read([27.7, 28.1, 27.8], [35, 35.6, 34.8], 22),
  },
  {
    ...exception("LC-HTR", "13:05", 119),
    ...read([24.6, 37.0, 36.3], [0, 46, 45.5], 24),
    cause: "fuse blown, left phase",
    action: "replace the fuse, look again",
  },
  {
    ...exception("EV-CHG", "13:12", 120),
    ...read([33.2, 33.5, 38.9], [74, 75, 80], 21),
    amps_time: clock("13:37"),
    cause: "isolator pole",
    action: "remake at the next stop",
    due: day("2026-04-18"),
  },
  { asset_id: "CS-EV3", time: clock("13:25"), status: "not inspected", reason: "board blocked by stored pallets" },
  {
    ...exception("ROOF-CH1", "13:50", 121),
    ...read([17.9, 18.4, 28.7], [142, 139, 144], 8, "outdoors"),
    cause: "isolator terminal",
    action: "remake at the next stop",
    due: day("2026-04-18"),
    distance: 2,
    humidity: 60,
    wind: 1.5,
  },
  {
    ...fine("ROOF-AH2", "13:58"),
    ...read([12.5, 12.9, 12.4], [22, 21.7, 22.3], 8, "outdoors"),
    distance: 4,
    humidity: 60,
    wind: 3.5,
  },
];
