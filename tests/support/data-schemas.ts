/** JSON schemas of the tables under src/data. */
const text = { type: "string", minLength: 1 };
const number = { type: "number" };
const provenance = {
  source: text,
  locator: text,
  edition: text,
  evidence: { enum: ["read", "secondary", "memory", "common practice", "own"] },
};

type Properties = Readonly<Record<string, object>>;

function record(properties: Properties, optional: Properties = {}): object {
  return {
    type: "object",
    properties: { ...properties, ...optional },
    required: Object.keys(properties),
    additionalProperties: false,
  };
}

const list = (items: object): object => ({ type: "array", items, minItems: 1 });

export const CRITERIA = list(
  record({
    name: text,
    about: text,
    views: list({ enum: ["direct", "indirect"] }),
    below: record({ words: text, action: text }),
    rows: list(
      record({
        reference: { enum: ["similar", "ambient", "baseline", "limit"] },
        grade: { enum: [1, 2, 3, 4] },
        bound: { enum: ["from", "above"] },
        edge: { type: "number", exclusiveMinimum: 0 },
        words: text,
        action: text,
        ...provenance,
      }),
    ),
  }),
);

export const RULES = {
  type: "object",
  additionalProperties: record({
    value: number,
    unit: { enum: ["-", "K", "°C", "m/s", "µm", "h", "min", "d"] },
    what: text,
    ...provenance,
  }),
};

export const REFERENCES = {
  type: "object",
  additionalProperties: record(
    { short: text, authors: text, title: text, publisher: text },
    { edition: text, year: { type: "integer", minimum: 1900, maximum: 2100 }, identifier: text, note: text },
  ),
};

export const METHODS = list(record({ method: text, how: text, sources: list(text) }));

const range = { ...{ low: number, high: number }, ...provenance };
const optionalNote = { note: text };

export const EMISSIVITY = list(
  record(
    {
      material: text,
      kind: { enum: ["bare metal", "oxidised metal", "coating", "non-metal", "film on metal"] },
      ranges: list(
        record(
          {
            band: { enum: ["total", "long", "short"] },
            ...range,
            low: { type: "number", exclusiveMinimum: 0, maximum: 1 },
            high: { type: "number", exclusiveMinimum: 0, maximum: 1 },
          },
          { also: list(text) },
        ),
      ),
    },
    { ...optionalNote, measure: { const: true } },
  ),
);

const fraction = { type: "number", minimum: 0, maximum: 1 };
export const WINDOWS = list(
  record(
    {
      material: text,
      ranges: list(
        record({
          band: { enum: ["long", "short"] },
          what: { enum: ["ceiling uncoated", "in service", "coated"] },
          ...range,
          low: fraction,
          high: fraction,
        }),
      ),
    },
    optionalNote,
  ),
);

export const LIMITS = list({
  ...record(
    { part: text, ...provenance },
    {
      ...optionalNote,
      temp: { type: "number", minimum: 40, maximum: 250 },
      rise: { type: "number", minimum: 10, maximum: 200 },
      air: { type: "number", minimum: 20, maximum: 60 },
      medium: { enum: ["air", "SF6", "oil"] },
    },
  ),
  anyOf: [{ required: ["temp"] }, { required: ["rise"] }],
});

const months = { type: "integer", minimum: 1, maximum: 120 };
export const INTERVALS = list(
  record({
    name: text,
    about: text,
    months: { type: "array", items: months, minItems: 3, maxItems: 3 },
    ...provenance,
  }),
);

export const PRIORITIES = list(
  record({
    name: text,
    about: text,
    rows: {
      ...{ type: "array", minItems: 5, maxItems: 5 },
      items: record({
        grade: { enum: [0, 1, 2, 3, 4] },
        priorities: { type: "array", items: text, minItems: 3, maxItems: 3 },
      }),
    },
    ...provenance,
  }),
);

export const FIGURES = list(record({ what: text, unit: { enum: ["°C", "K", "-"] }, ...range }, optionalNote));

const pair = { type: "array", items: number, minItems: 2, maxItems: 2 };
const SUB_BAND = "nu1 nu2 a_w B_w c_s c_f a_g B_g gamma_w gamma_g n_w n_s n_g phi_co2".split(" ");

/** The model's file is kept as it came: what is not read here is not held to a shape. */
export const AIR_MODEL = {
  type: "object",
  required: ["name", "provenance", "validity", "constants", "formulae", "subbands"],
  properties: {
    provenance: text,
    validity: { type: "object", additionalProperties: pair, required: ["d_m", "T_air_C", "RH_pct", "P_kPa", "nu_cm1"] },
    subbands: {
      ...{ type: "array", minItems: 57, maxItems: 57 },
      items: record(Object.fromEntries(SUB_BAND.map((name) => [name, number]))),
    },
  },
};
