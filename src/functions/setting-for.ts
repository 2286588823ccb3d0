import { TEMPERATURE } from "../core/limits.js";
import { settingFor } from "../core/whatif/setting-for.js";
import { settingForRise, TARGET_RISE } from "../core/whatif/setting-for-rise.js";
import type { OtherSettings, SettingName } from "../core/whatif/setting-line.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";
import type { Values } from "./lift.js";
import { READING_ARGUMENTS, SETTING_NAMES, SETTINGS_ARGUMENTS, settingsOf } from "./settings-arguments.js";

const soughtBySetting = (spec: ArgumentSpec): ArgumentSpec => ({ ...spec, soughtBy: "setting" });

/** The argument that names what is sought; its own place among the others may then be empty. */
function settingArgument(choices: readonly string[]): ArgumentSpec {
  return {
    name: "setting",
    quantity: "text",
    help: "which argument is sought; its own place is not looked at",
    choices,
  };
}

const BY_ARGUMENT = new Map(
  Object.entries(SETTING_NAMES).map(([name, argument]) => [argument, name as SettingName] as const),
);

/** The core's name of the setting that is sought. */
function soughtSetting(values: Values): SettingName {
  const setting = BY_ARGUMENT.get(values.text("setting"));
  if (setting === undefined) throw new Error(`no setting ${values.text("setting")}`);
  return setting;
}

const quantityOfSought = (values: Values): ArgumentSpec["quantity"] =>
  READING_ARGUMENTS.find((spec) => spec.name === values.text("setting"))?.quantity ?? "number";

const SETTING_FOR = defineCells({
  name: "SETTING_FOR",
  topic: "What-if and audit",
  summary: "Value of one setting at which the corrected temperature is the target, the others as given.",
  returns: "the setting, a temperature or a fraction",
  args: [
    { name: "target", quantity: "temperature", help: "corrected temperature that is wanted", range: TEMPERATURE },
    settingArgument(READING_ARGUMENTS.map((spec) => spec.name)),
    ...READING_ARGUMENTS.map(soughtBySetting),
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: quantityOfSought,
  cell: (values) => {
    const target = values.number("target");
    const others: OtherSettings = settingsOf(values);
    if (values.text("setting") === "apparent")
      return settingFor({ target, setting: "apparent", others }, values.band());
    const apparent = values.number("apparent");
    return settingFor({ target, setting: soughtSetting(values), apparent, others }, values.band());
  },
  example: { formula: '=GREY.SETTING_FOR(70,"emissivity",58,,22,0.98,20)', shows: "0.73" },
  sources: ["iso-18434-1-2008"],
});

const SETTING_FOR_RISE = defineCells({
  name: "SETTING_FOR_RISE",
  topic: "What-if and audit",
  summary: "Value of one setting, shared by two readings, at which their corrected temperatures differ by the target.",
  returns: "the setting, a temperature or a fraction; of several the one nearest to that given, else the largest",
  args: [
    {
      name: "target_rise",
      quantity: "difference",
      help: "difference of the two corrected temperatures that is wanted, hot less reference",
      range: TARGET_RISE,
    },
    settingArgument(SETTINGS_ARGUMENTS.map((spec) => spec.name)),
    { name: "hot", quantity: "temperature", help: "apparent temperature of the part in question", range: TEMPERATURE },
    {
      name: "reference",
      quantity: "temperature",
      help: "apparent temperature of what its rise is over, under the same settings",
      range: TEMPERATURE,
    },
    ...SETTINGS_ARGUMENTS.map(soughtBySetting),
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: quantityOfSought,
  cell: (values) =>
    settingForRise(
      {
        targetRise: values.number("target_rise"),
        setting: soughtSetting(values),
        hot: values.number("hot"),
        reference: values.number("reference"),
        others: settingsOf(values),
      },
      values.band(),
    ),
  example: { formula: '=GREY.SETTING_FOR_RISE(15,"emissivity",58,45,0.95,22)', shows: "0.833" },
  sources: ["iso-18434-1-2008", "oliveira-takahashi-2020"],
});

export const settingFunctions: readonly FunctionSpec[] = [SETTING_FOR, SETTING_FOR_RISE];
