import { told } from "./words.js";
import type { WordsOfFindings } from "./words.js";

export const CAUTION_WORDS: WordsOfFindings = {
  "load-light": told(
    ({ percent }) => `load ${percent("ratio")} of the expected maximum: light`,
    "A projection from it multiplies every error of the rise.",
    "Prefer a reading at half load or more; show the projected rise as a range.",
  ),
  imbalance: told(
    ({ percent }) => `currents differ by ${percent("imbalance")}`,
    "The phases are not compared as they are: the hot one may be the loaded one.",
    "Bring each phase's rise to one load first (PHASE_RISE).",
  ),
  "phase-without-current": told(
    ({ column }) => `no current in ${column}`,
    "A phase without current is no reference for one that has some.",
    "Find out whether it is open, unloaded or was not read.",
  ),
  "emissivity-wide": told(
    ({ number }) => `emissivity ${number("emissivity")}: wide uncertainty`,
    "Below 0.6 a small error of emissivity or reflected moves the temperature by many kelvin.",
    "Read beside it on paint, tape or insulation; else state the uncertainty.",
  ),
  "emissivity-qualitative": told(
    ({ number }) => `emissivity ${number("emissivity")}: qualitative only`,
    "Below 0.3 the camera shows the surroundings in a mirror: there is no temperature to be had.",
    "Read beside it; patch it while it is isolated and proved dead; report a pattern, not a temperature.",
  ),
  "metal-without-source": told(
    ({ number, text }) => `emissivity ${number("emissivity")} on ${text("surface")}, source not stated`,
    "Bare metal has anything from 0.02 to 0.9, by its state.",
    "Measure it, or say in known_from which handbook; see MATERIALS.",
  ),
  "spot-close": told(
    ({ number }) => `target only ${number("margin")} times 3 pixels`,
    "An unsteady hand or a corner of the target is enough to mix the reading.",
    "Go nearer as far as it is safe, or take the highest of several readings.",
  ),
  "reflected-assumed": told(
    ({ difference }) => `reflected is assumed: ${difference("error")} of error move this by ${difference("effect")}`,
    "The lower the emissivity, the more of the reading is reflection.",
    "Measure it with a reflector in the plane of the target.",
  ),
  "reflected-near-air": told(
    ({ difference }) => `outdoors, and reflected within ${difference("apart")} of the air`,
    "A clear sky reflects far colder than the air, the ground often warmer.",
    "Measure it with a reflector that faces where the target faces.",
  ),
  "wind-noted": told(
    ({ speed }) => `wind ${speed("wind")} at the target`,
    "It cools: the rise in calm air is larger.",
    "State it with the rise; a rise corrected for wind is advice, never a grade.",
  ),
  "wind-doubtful": told(
    ({ speed }) => `wind ${speed("wind")} at the target: doubtful`,
    "It takes half of a rise or more.",
    "Look again in calmer air before anything is called sound.",
  ),
  sun: told(
    ({ number }) => `sun on it ${number("hours")} h before`,
    "What the sun has warmed looks like a fault, and hides one.",
    "Look again two hours after sunset, or in overcast.",
  ),
  "load-changed": told(
    ({ number }) => `load changed ${number("minutes")} min before, settled after ${number("settling")}`,
    "The temperature still follows the change (times to settle are from memory).",
    "Wait, or say that it had not settled.",
  ),
  "door-open": told(
    ({ number }) => `door open for ${number("minutes")} min`,
    "The draught has cooled what was hot.",
    "Read first what is likeliest hot, as soon as a qualified person has opened it.",
  ),
  "camera-cold": told(
    ({ number }) => `camera out of the vehicle for ${number("minutes")} min only`,
    "It drifts until it has taken on the room's temperature.",
    "Wait a quarter of an hour and let it recalibrate.",
  ),
  "two-hot": told(
    ({ difference, number, text }) =>
      `two phases hot: no similar reference; ${difference("rise")} over the lowest${text("grade") && ` would be grade ${number("grade")}`}`,
    "A mean of a cool phase and a hot one hides both hot ones.",
    "Judge both hot phases over air or by their limit, and find out what differs at the cool one.",
  ),
  "edge-within-u": told(
    ({ difference, text }) =>
      `rise ${difference("rise")} over ${text("reference") === "similar" ? "similar" : "air"} ± ${difference("u")}: edge ${difference("edge")} within`,
    "Either grade may be the right one.",
    "Give both grades, and act on the worse.",
  ),
  "too-sensitive": told(
    ({ number }) => `a degree of the reading moves the temperature by ${number("sensitivity", 3)}`,
    "The camera's own error is multiplied as much.",
    "Find a spot with a higher emissivity, or a window that lets more through.",
  ),
  "far-projection": told(
    ({ number }) => `projected to full load it is multiplied by up to ${number("factor", 3)}`,
    ({ number }) => `At exponent ${number("exponent")}, beyond 3 times, it is more guess than measurement.`,
    "Show it as a range, and look again at a higher load.",
  ),
  "window-temp-not-measured": told(
    "temperature of the window not measured",
    "A window radiates too: 5 K move the temperature by about 1 K at a transmission of 0.7.",
    "Measure the painted frame beside it; a rise through one window suffers less.",
  ),
};
