import type { RowFacts } from "./facts.js";
import { PHASES } from "./facts.js";
import type { Hit } from "./hit.js";
import type { Rule } from "./rule.js";

/** A value that a row lacks: where it is typed, and whether it is wanted and absent. */
type Need = readonly [column: string, isMissing: (facts: RowFacts) => boolean];

const empty =
  (column: string) =>
  ({ row }: RowFacts): boolean =>
    !row.given(column);

const ofException =
  (isMissing: (facts: RowFacts) => boolean) =>
  (facts: RowFacts): boolean =>
    facts.isException && isMissing(facts);

const wantsReason = ({ status }: RowFacts): boolean => status === "not inspected" || status === "partly seen";

/** Currents are part of the record of what was seen directly, hot or not; a machine's load of an exception. */
const wantsCurrents = ({ isException, status, isDirect, isSingle }: RowFacts): boolean =>
  isDirect && (isException || (status === "no exception" && !isSingle));

const needsAirPath = (facts: RowFacts): boolean => !facts.row.given("air_transmission");

const NEEDS: readonly Need[] = [
  ["asset_id", empty("asset_id")],
  ["status", empty("status")],
  ["time", empty("time")],
  ["reason", (facts) => wantsReason(facts) && !facts.row.given("reason")],
  ["thermal_image", ofException(empty("thermal_image"))],
  ...PHASES.map((phase): Need => [phase, ofException((facts) => !facts.isSingle && !facts.row.given(phase))]),
  ["reading", ofException((facts) => facts.isSingle && !facts.row.given("reading"))],
  // A like machine's reading, a baseline or a limit stands for a reference in the same image; nothing grades what is not seen.
  [
    "reference",
    ofException(
      (facts) =>
        facts.isSingle &&
        facts.isDirect &&
        !facts.isWithoutLists &&
        !["reference", "like", "baseline_rise", "share_of_limit"].some((one) => facts.row.given(one)),
    ),
  ],
  ...[...PHASES.map((phase) => `amps_${phase}`), "load", "process_load"].map((column): Need => [
    column,
    (facts) => wantsCurrents(facts) && facts.currentColumns.includes(column) && !facts.row.given(column),
  ]),
  ["surrounding_air", ofException(empty("surrounding_air"))],
  ["emissivity", ofException((facts) => !facts.isWithoutLists && !facts.has("emissivity", "emissivity_used"))],
  [
    "reflected",
    ofException(
      (facts) =>
        !facts.row.given("reflected") &&
        !facts.row.given("reflected_used") &&
        !facts.job.given(facts.isOutdoors ? "reflected_outdoors" : "reflected"),
    ),
  ],
  [
    "path_air",
    ofException(
      (facts) =>
        !facts.has("path_air", "path_air_used") &&
        facts.row.text("air_taken") === "enclosure" &&
        facts.row.given("surrounding_air"),
    ),
  ],
  ["distance", ofException((facts) => needsAirPath(facts) && !facts.has("distance"))],
  ["humidity", ofException((facts) => needsAirPath(facts) && !facts.has("humidity"))],
  ["window_transmission", ofException((facts) => facts.isThroughWindow && !facts.row.given("window_transmission"))],
  ["window_temp", ofException((facts) => facts.isThroughWindow && !facts.row.given("window_temp"))],
];

/** What a row still has to hold, by its status. Settings are wanted of an exception only: the rest need no correction. */
export const NEEDED: readonly Rule[] = [
  {
    id: "needed",
    kind: "needed",
    find: (facts) =>
      NEEDS.flatMap(([column, isMissing]): Hit[] =>
        isMissing(facts) ? [{ column, values: { status: facts.status ?? "" } }] : [],
      ),
  },
];
