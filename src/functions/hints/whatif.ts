import type { Hints } from "./words.js";

/** Settings of the core as they are called in a sentence. */
const SETTING: Readonly<Record<string, string>> = {
  apparent: "apparent temperature",
  emissivity: "emissivity",
  reflected: "reflected temperature",
  airTransmission: "transmission of the air",
  airTemp: "temperature of the air",
  windowTransmission: "transmission of the window",
  windowTemp: "temperature of the window",
  windowReflectance: "reflectance of the window",
  outerReflected: "reflected temperature on the camera's side",
  outerAirTransmission: "transmission of the outer air",
};

/** Where a setting plays no part. */
const NO_PART: Readonly<Record<string, string>> = {
  emissivity: "With the target at the reflected temperature itself the emissivity plays no part",
  reflected: "At emissivity 1 the reflected temperature plays no part",
  airTransmission: "What leaves a part at the target is as warm as the air: its transmission plays no part",
  airTemp: "Where the transmission of the air is 1 its temperature plays no part",
  windowTransmission:
    "What reaches the window from a part at the target is as warm as the window: its transmission plays no part",
  windowTemp: "Without a window, or with one that emits nothing, its temperature plays no part",
  windowReflectance: "The window is as warm as what it mirrors on the camera's side: its reflectance plays no part",
  "no-window": "At a window transmission of 1 nothing is left to be reflected (give the window's transmission)",
  outerReflected: "Where the window reflects nothing, the reflected temperature on the camera's side plays no part",
  outerAirTransmission: "What comes to the outer air is as warm as that air: its transmission plays no part",
};

/** Why a fraction cannot do more. */
const DRAWS: Readonly<Record<string, string>> = {
  emissivity:
    "An emissivity below 1 draws a reading towards the reflected temperature, never away from it or beyond it.",
  airTransmission: "Air draws a reading towards its own temperature, never away from it or beyond it.",
  outerAirTransmission: "Air draws a reading towards its own temperature, never away from it or beyond it.",
  windowTransmission:
    "A window draws a reading towards what it emits and mirrors itself, never away from it or beyond it.",
  windowReflectance: "A window's reflectance lies between 0 and what its transmission leaves.",
};

/** Of what a setting would have to be. */
export const WHATIF_HINTS: Hints = {
  "setting-no-part": (w) => {
    const why = NO_PART[w.number("why")] ?? "It plays no part";
    const fits = w.number("fits");
    if (fits === "any") return `${why}; any value gives the target.`;
    if (fits === "fixed") return `${why}; the corrected temperature is ${w.temperature("temperature")} whatever it is.`;
    return `${why}; no value gives the target.`;
  },
  "setting-beyond": (w) => {
    const setting = w.number("setting");
    const reached =
      w.number("reached") === "yes"
        ? ` With ${w.number("end")} the corrected temperature is ${w.temperature("temperature")}.`
        : "";
    return `No ${SETTING[setting] ?? setting} gives the target: it would have to be ${w.number("value")}. ${DRAWS[setting] ?? "That cannot be."}${reached}`;
  },
  "setting-air-as-one": (w) =>
    `Alone it would have to be ${w.number("value")}: without a window both transmissions of air act as one, together ${w.number("together")}. Give that in one of them and leave the other out.`,
  "setting-too-cold": (w) =>
    `No ${SETTING[w.number("setting")] ?? "setting"} gives the target: even at absolute zero, where nothing is radiated, the corrected temperature is only ${w.temperature("temperature")}.`,
  "setting-too-hot": (w) =>
    `The ${SETTING[w.number("setting")] ?? "setting"} would have to be ${w.temperature("temperature")}, which is beyond all that is answered for.`,
  "setting-outshone": (w) =>
    `No object gives this reading, whatever the ${SETTING[w.number("setting")] ?? "setting"}: the rest of the surroundings alone outshine it. Check reading, emissivity and transmissions.`,
  "rise-same-readings": () =>
    "Both readings are the same: under shared settings there is no rise, whatever the settings.",
  "rise-no-part": (w) => `${NO_PART[w.number("why")] ?? "It plays no part"}; the rise is the same whatever it is.`,
  "rise-out-of-reach": (w) =>
    `No ${SETTING[w.number("setting")] ?? "setting"} gives that rise: it can be about ${w.difference("low")} to ${w.difference("high")}.`,
  "rise-outshone": (w) =>
    `The surroundings alone outshine one of the readings, whatever the ${SETTING[w.number("setting")] ?? "setting"}. Check readings, emissivity and transmissions.`,
};
