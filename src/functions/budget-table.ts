/** A budget as a table that a person reads. */
import type { Agreement } from "../core/uncertainty/agreement.js";
import type { Budget } from "../core/uncertainty/budget.js";
import { argumentOf, isTemperature } from "../core/uncertainty/inputs.js";
import type { InputName, UncertainInput, UncertainReading } from "../core/uncertainty/inputs.js";
import type { Cell, Grid } from "./contract.js";
import { fromSI, readable, unitOf } from "./units.js";
import type { Units } from "./units.js";

/** What a table is made of. */
interface Told {
  readonly found: Budget;
  readonly reading: UncertainReading;
  readonly coverage: number;
  readonly units: Units;
}

const WIDTH = 11;
/** Share of draws that cannot be: fewer are the tail of any normal distribution beside a bound. */
const WORTH_TELLING = 0.001;
const row = (...cells: Cell[]): Cell[] => [...cells, ...new Array<Cell>(WIDTH - cells.length).fill("")];
/** A row of results: its note stands in the last column, under the others. */
const resultRow = (label: string, value: Cell, unit: string, note: string): Cell[] => [
  ...row(label, value, unit).slice(0, -1),
  note,
];

const difference = (units: Units): string => unitOf("difference", units).label;
/** In °C a difference has another unit than the temperature beside it. */
const unitOfTemperature = (units: Units): string =>
  units === "C"
    ? `${unitOf("temperature", units).label}, u in ${difference(units)}`
    : unitOf("temperature", units).label;
const percent = (share: number): string => `${readable(100 * share, 4)} %`;

/** Fractions without which there would be no path: named even where nobody gave them. */
const ALWAYS: ReadonlySet<InputName> = new Set(["airTransmission", "windowTransmission"]);

const isGiven = (name: InputName, { settings }: UncertainReading): boolean =>
  name === "apparent" || settings[name] !== undefined;

/** Whether an input stands in the table: what was given, what is uncertain, and what was taken for granted on the path. */
function isShown({ name, value, standard }: UncertainInput, { found, reading }: Told): boolean {
  if (isGiven(name, reading) || standard > 0) return true;
  const window = found.settings.windowTransmission < 1;
  return !Number.isNaN(value) && !isTemperature(name) && (ALWAYS.has(name) || window);
}

function noteOf({ name, value, standard, freedom }: UncertainInput, { found, reading }: Told): string {
  const notes: string[] = [];
  const exact = standard === 0;
  if (Number.isNaN(value)) return "not given: plays no part here";
  if (!isGiven(name, reading)) notes.push(`not given: taken as ${value}${exact ? ", exact" : ""}`);
  else if (found.sensitivities[name] === 0) notes.push("plays no part here");
  else if (exact) notes.push("taken as exact: no uncertainty given");
  if (!exact && freedom !== Infinity) notes.push(`${readable(freedom)} degrees of freedom`);
  return notes.join("; ");
}

function inputRow(input: UncertainInput, place: number, told: Told): Cell[] {
  const { found, units } = told;
  const { name, value, stated, standard, distribution } = input;
  const temperature = isTemperature(name);
  const step = unitOf(temperature ? "difference" : "fraction", units);
  const kelvins = unitOf("difference", units);
  const contribution = found.contributions[place] ?? 0;
  return [
    argumentOf(name),
    Number.isNaN(value) ? "" : asTyped(fromSI(value, unitOf(temperature ? "temperature" : "fraction", units))),
    temperature ? unitOfTemperature(units) : "-",
    fromSI(stated, step),
    standard === 0 ? "exact" : distribution,
    fromSI(standard, step),
    temperature ? found.sensitivities[name] : fromSI(found.sensitivities[name], kelvins),
    temperature ? `${kelvins.label}/${kelvins.label}` : kelvins.label,
    fromSI(contribution, kelvins),
    share(contribution ** 2, found),
    noteOf(input, told),
  ];
}

const share = (variance: number, { combined }: Budget): number => (combined === 0 ? 0 : variance / combined ** 2);

/** What goes together: r, and what that adds to the variance or takes from it. */
function correlationRows({ found, reading }: Told): Cell[][] {
  const places = found.inputs.map(({ name }) => name);
  return (reading.correlations ?? []).map(({ one, other, r }) => {
    const at = [places.indexOf(one), places.indexOf(other)].sort((a, b) => a - b);
    const pair = found.pairs.find((known) => known.one === at[0] && known.other === at[1]);
    const part = share(pair?.variance ?? 0, found);
    const note =
      part === 0
        ? "no effect: r is 0, or one of the two is exact or plays no part"
        : `the two go together, which ${part > 0 ? "adds to" : "takes from"} the variance`;
    const cells = row(`${argumentOf(one)} with ${argumentOf(other)}`, r, "correlation");
    return [...cells.slice(0, -2), part, note];
  });
}

/** Whether something uncertain has degrees of freedom. */
function hasFreedom({ inputs }: Budget): boolean {
  return inputs.some(({ standard, freedom }) => standard > 0 && freedom !== Infinity);
}

function freedomRow({ found }: Told): Cell[] {
  const finite = hasFreedom(found);
  const note =
    found.freedom !== Infinity
      ? "Welch–Satterthwaite, cut to a whole number"
      : found.pairs.length > 0
        ? "taken as infinite: the formula does not hold where inputs go together"
        : finite
          ? "infinite: what has degrees of freedom plays no part"
          : "infinite: none given";
  return resultRow("effective degrees of freedom", found.freedom === Infinity ? "infinite" : found.freedom, "", note);
}

function resultRows(told: Told): Cell[][] {
  const { found, coverage, units } = told;
  const kelvins = unitOf("difference", units);
  const factorNote = `${percent(coverage)} coverage, ${found.freedom === Infinity ? "normal distribution" : "Student's t"}`;
  return [
    resultRow("combined standard uncertainty", fromSI(found.combined, kelvins), kelvins.label, "k = 1"),
    freedomRow(told),
    resultRow("coverage factor", found.factor, "", factorNote),
    resultRow(
      "expanded uncertainty",
      fromSI(found.expanded, kelvins),
      kelvins.label,
      `first order, ${percent(coverage)} coverage`,
    ),
    resultRow(
      "corrected temperature",
      fromSI(found.temperature, unitOf("temperature", units)),
      unitOf("temperature", units).label,
      span(found.temperature - found.expanded, found.temperature + found.expanded, units),
    ),
  ];
}

function span(low: number, high: number, units: Units): string {
  const unit = unitOf("temperature", units);
  return `${fromSI(low, unit).toFixed(1)} to ${fromSI(high, unit).toFixed(1)} ${unit.label}`;
}

const VERDICTS: Readonly<Record<Agreement["verdict"], string>> = {
  agrees: "",
  wide: ": first order is wider, on the safe side",
  short: ": first order falls short, report the interval of the draws (MONTE_CARLO)",
  rejected: "",
};

function agreementRow(agreement: Agreement | undefined, { found, units, coverage }: Told): Cell[] {
  const label = "check by Monte Carlo";
  if (!agreement) return resultRow(label, "not made", "", "the coverage asks for too many draws: see MONTE_CARLO");
  const { verdict, low, high, difference: off, rejected, draws } = agreement;
  if (verdict === "rejected") {
    const note = "nearly no draw has an answer: check the uncertainties, first order means nothing here";
    return resultRow(label, "disagrees", "", note);
  }
  const drawn = `${percent(coverage)} of ${draws} draws: ${span(low, high, units)}`;
  const apart =
    verdict === "agrees" ? "" : `; ends differ by ${percent(Number(off.toPrecision(2)))} of the expanded uncertainty`;
  const lost = rejected < WORTH_TELLING ? "" : `; ${percent(Number(rejected.toPrecision(2)))} of the draws cannot be`;
  return resultRow(
    label,
    verdict === "agrees" ? "agrees" : "disagrees",
    "",
    `${drawn}${apart}${VERDICTS[verdict]}${lost}${hasFreedom(found) ? "; degrees of freedom play no part in the draws" : ""}`,
  );
}

/** Header, the inputs, what goes together, then what comes out. */
export function budgetTable(
  found: Budget,
  agreed: Agreement | undefined,
  reading: UncertainReading,
  coverage: number,
  units: Units,
): Grid {
  const told = { found, reading, coverage, units };
  const inputs = found.inputs.flatMap((input, place) => (isShown(input, told) ? [inputRow(input, place, told)] : []));
  return [
    [
      "input",
      "value",
      "unit",
      "uncertainty as given",
      "distribution",
      "standard uncertainty",
      "sensitivity",
      "unit of sensitivity",
      `contribution in ${difference(units)}`,
      "share of variance",
      "note",
    ],
    ...inputs,
    ...correlationRows(told),
    ...resultRows(told),
    agreementRow(agreed, told),
  ];
}

/** There and back through kelvin leaves 71.39999999999998 of 71.4: the input is shown as it was typed. */
function asTyped(value: number): number {
  return Number(value.toPrecision(12));
}
