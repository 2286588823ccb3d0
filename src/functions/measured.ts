import { TEMPERATURE, TRANSMISSION } from "../core/limits.js";
import { emissivityByContact } from "../core/measured/emissivity-by-contact.js";
import { reflectedByReflector, REFLECTOR_REFLECTANCE } from "../core/measured/reflected.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { FunctionSpec } from "./contract.js";
import { defineCells, UNITS_ARGUMENT } from "./lift.js";
import { REFLECTED_MIX } from "./reflected-mix.js";

const EMISSIVITY_BY_CONTACT = defineCells({
  name: "EMISSIVITY_BY_CONTACT",
  topic: "Measured inputs",
  summary:
    "Emissivity of a surface whose temperature a contact thermometer gives; only on what is de-energised, isolated and proved dead.",
  returns: "emissivity, a fraction",
  args: [
    {
      name: "apparent",
      quantity: "temperature",
      help: "apparent temperature of the surface: the camera's reading with emissivity and transmission at 1",
      range: TEMPERATURE,
    },
    {
      name: "contact_temp",
      quantity: "temperature",
      help: "temperature of the surface by contact, at least 10 K from reflected, better 20 K",
      range: TEMPERATURE,
    },
    {
      name: "reflected",
      quantity: "temperature",
      help: "reflected apparent temperature, measured at the surface",
      range: TEMPERATURE,
    },
    {
      name: "air_transmission",
      quantity: "fraction",
      help: "transmission of the air between surface and camera",
      optional: true,
      default: 1,
      range: TRANSMISSION,
    },
    {
      name: "air_temp",
      quantity: "temperature",
      help: "temperature of the air on the path; needed where its transmission is below 1",
      optional: true,
      range: TEMPERATURE,
    },
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "fraction",
  cell: (values) => {
    const airTemp = values.optional("air_temp");
    return emissivityByContact(
      {
        apparent: values.number("apparent"),
        contactTemp: values.number("contact_temp"),
        reflected: values.number("reflected"),
        airTransmission: values.number("air_transmission"),
        ...(airTemp === undefined ? {} : { airTemp }),
      },
      values.band(),
    );
  },
  example: { formula: "=GREY.EMISSIVITY_BY_CONTACT(58,62,22)", shows: "0.885" },
  sources: ["astm-e1933-14", "iso-18434-1-2008"],
});

const REFLECTED_BY_REFLECTOR = defineCells({
  name: "REFLECTED_BY_REFLECTOR",
  topic: "Measured inputs",
  summary:
    "Reflected apparent temperature off a reflector in the place of the surface, what it emits itself taken out.",
  returns: "reflected apparent temperature",
  args: [
    {
      name: "apparent",
      quantity: "temperature",
      help: "apparent temperature of the reflector: the camera's reading with emissivity and transmission at 1",
      range: TEMPERATURE,
    },
    {
      name: "reflector_reflectance",
      quantity: "fraction",
      help: "reflectance of the reflector in the camera's band; left out, it emits nothing itself",
      optional: true,
      default: 1,
      range: REFLECTOR_REFLECTANCE,
      zeroIsBlank: true,
    },
    {
      name: "reflector_temp",
      quantity: "temperature",
      help: "temperature of the reflector itself; needed where its reflectance is below 1",
      optional: true,
      range: TEMPERATURE,
    },
    BAND_ARGUMENT,
    UNITS_ARGUMENT,
  ],
  result: "temperature",
  cell: (values) => {
    const reflectorTemp = values.optional("reflector_temp");
    return reflectedByReflector(
      {
        apparent: values.number("apparent"),
        reflectance: values.number("reflector_reflectance"),
        ...(reflectorTemp === undefined ? {} : { reflectorTemp }),
      },
      values.band(),
    );
  },
  example: { formula: "=GREY.REFLECTED_BY_REFLECTOR(18,0.95,22)", shows: "17.8" },
  sources: ["astm-e1862-14", "iso-18434-1-2008"],
});

export const measuredFunctions: readonly FunctionSpec[] = [
  EMISSIVITY_BY_CONTACT,
  REFLECTED_BY_REFLECTOR,
  REFLECTED_MIX,
];
