import type { Hints } from "./words.js";

/** Of what is measured beforehand (window, emissivity, reflected), of the spot and of the wind. */
export const MEASURED_HINTS: Hints = {
  "window-contrast": (w) =>
    `Target and window are ${w.difference("contrast")} apart; below ${w.difference("least")} no transmission is given. Take both readings again off a hotter target.`,
  "pair-contrast": (w) =>
    `The two targets are ${w.difference("contrast")} apart; below ${w.difference("least")} no transmission is given. Take the readings again off a hotter one, or a colder one.`,
  "emissivity-contrast": (w) =>
    `The surface and what it reflects are ${w.difference("contrast")} apart; below ${w.difference("least")} no emissivity is given. Take the readings again with the surface warmer, or in other surroundings.`,
  "window-opaque": (w) =>
    `The window would let through ${w.number("transmission")} of what is behind it, which is nothing. Is it opaque in the camera's band? Else check window_temp, and whether a reading was corrected already.`,
  "pair-opaque": (w) =>
    `The window would let through ${w.number("transmission")} of what is behind it, which is nothing. Is it opaque in the camera's band? Else hot and cold may be swapped through it.`,
  "window-below-least": (w) =>
    `The window would let through ${w.number("transmission")}, less than the ${w.number("least")} of any window that is measured through. Arguments exchanged? Order is reading without, reading with, window_temp.`,
  "pair-below-least": (w) =>
    `The window would let through ${w.number("transmission")}, less than the ${w.number("least")} of any window that is measured through. Arguments exchanged? Order is hot without, hot through, cold without, cold through.`,
  "window-above-most": (w) =>
    `The window would let through ${w.number("transmission")}, more than the ${w.number("most")} that there is. Readings without and through swapped, a target that changed between them, or window_temp or reflectance off?`,
  "emissivity-above-one": (w) =>
    `These readings take an emissivity of ${w.number("emissivity")}, and none is above 1. Did the contact thermometer touch badly, was the reading corrected already, or is reflected off?`,
  "emissivity-none": (w) =>
    `These readings take an emissivity of ${w.number("emissivity")}, and none is 0 or less: the camera shows no more of the surface than of what it reflects. Are reflected and contact_temp right, and of this surface?`,
  "reflector-temp-needed": () =>
    "The temperature of the reflector itself is needed where its reflectance is below 1: the rest is its own emission.",
  "reflector-alone": (w) =>
    `The reflector alone would show ${w.temperature("temperature")}, more than was read. Check reading, reflectance and temperature of the reflector.`,
  "mix-temp": (w) => `Part ${w.number("part")} has a share and no temperature.`,
  "mix-share": (w) => `Part ${w.number("part")} has a temperature and no share.`,
  "mix-empty": () => "No part has a share above 0.",
  "mix-sum": (w) => `The shares add up to ${w.number("sum")}; they have to add up to 1.`,
  "ifov-radians": (w) => `The angle of a pixel is in mrad: was ${w.number("meant")} meant?`,
  "ifov-of-picture": () =>
    "The angle of one pixel is wanted, not that of the whole picture: that in mrad over the pixels across it.",
  "wind-too-little": (w) =>
    `Wind of ${w.speed("wind")}: below ${w.speed("least")} a rise is not brought to another wind. Calm is not defined: there the air that rises by itself carries off as much as the wind. An empty cell counts as 0.`,
  "wind-too-strong": (w) =>
    `Wind of ${w.speed("wind")}: above ${w.speed("most")} a rise says nothing any more. Take the reading again in less wind.`,
};
