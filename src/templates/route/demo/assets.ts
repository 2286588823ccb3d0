/** What is on the route of the invented dairy. */
import type { Asset } from "../lists.js";
import { day } from "./moments.js";

const bolted = {
  permitted_rise: 65,
  permitted_temp: 105,
  limit_from: "bolted joint, tin-coated, in air: IEC 60694:1996, Table 3",
} as const;
const terminal = {
  permitted_rise: 70,
  permitted_temp: 110,
  limit_from: "terminal for external conductors: IEC 61439-1, Table 6 (as quoted)",
} as const;

/** A cable lug behind a cover, read on the insulation beside it. */
const LUG: Asset = {
  surface: "cable insulation",
  access: "open cover",
  target_size: 18,
  settling: 30,
  physical_condition: "1",
  environment: "1",
};
/** The same where it is washed down. */
const WET = { environment: "2" } as const;
const SMALL = { target_size: 12 } as const;
const MOTOR = { ...SMALL, ...WET, settling: 60 } as const;
const ROOF = { access: "outdoor", environment: "3" } as const;

/** Of what was there a year ago. */
const LAST_SURVEY = day("2025-03-12");

type Criticality = "1" | "2" | "3";
type Line = [id: string, component: string, rated: number, expected: number, criticality: Criticality, rest: Asset];

const ROUTE: readonly [location: string, lines: readonly Line[]][] = [
  [
    "LV switchroom",
    [
      ["MSB-INC", "Incomer, cable lugs", 1600, 1250, "3", { ...bolted, surface: "tape patch", target_size: 40 }],
      ["MSB-Q2", "Q2 compressors, outgoing lugs", 630, 520, "3", terminal],
      [
        "MSB-Q3",
        "Q3 chilled water, outgoing lugs",
        400,
        320,
        "3",
        {
          ...terminal,
          last_rise: 6.2,
          last_over: "similar",
          last_amps: 240,
          last_grade: "2 of 4",
          repaired: "remade, washer replaced",
        },
      ],
      ["MSB-Q5", "Q5 lighting, outgoing lugs", 250, 200, "2", terminal],
      ["MSB-Q8", "Q8 packing line, outgoing lugs", 250, 220, "3", terminal],
      [
        "BUS-LK",
        "Bus section link, bare bars",
        1600,
        700,
        "3",
        { ...bolted, surface: "tinned bar, dulled", target_size: 60 },
      ],
      [
        "CAP-1",
        "Capacitor stage 1, fuse clips",
        100,
        80,
        "1",
        {
          ...SMALL,
          surface: "copper, in service",
          last_rise: 7,
          last_over: "similar",
          last_amps: 73,
          last_grade: "2 of 4",
          repaired: "clip replaced",
        },
      ],
      ["GEN-ATS", "Transfer switch, load side", 400, 300, "3", terminal],
    ],
  ],
  ["Server room", [["UPS-IN", "UPS input isolator", 250, 200, "3", terminal]]],
  [
    "Transformer room",
    [
      [
        "TX1-LV",
        "TX1 low-voltage terminals",
        909,
        880,
        "3",
        { ...bolted, surface: "tape patch", target_size: 50, settling: 600 },
      ],
      [
        "TX1-HV",
        "TX1 high-voltage plug-in elbows",
        33,
        32,
        "3",
        { surface: "rubber boot", view: "indirect", access: "free", target_size: 60, settling: 600 },
      ],
    ],
  ],
  [
    "11 kV room",
    [
      ["MV-C1", "Cubicle C1, cable box", 630, 40, "3", { ...bolted, ...behindWindow("W1") }],
      ["MV-C2", "Cubicle C2, cable box", 630, 40, "3", { ...bolted, ...behindWindow("W2") }],
      [
        "RMU-1",
        "Ring main unit, tank",
        630,
        60,
        "3",
        { surface: "paint", view: "enclosed", access: "free", target_size: 200 },
      ],
    ],
  ],
  [
    "Boiler house",
    [
      ["BLR-FD", "Feed pump starter", 125, 100, "2", { ...terminal, ...WET }],
      [
        "BLR-CB1",
        "Burner control, contactor",
        80,
        65,
        "2",
        { ...terminal, ...WET, surface: "moulded case", target_size: 15 },
      ],
    ],
  ],
  [
    "Glycol plant",
    [
      ["MCC1-P1", "MCC1, glycol pump P1", 63, 45, "2", { ...terminal, ...MOTOR }],
      [
        "MCC1-P4",
        "MCC1, cleaning return pump",
        63,
        36,
        "1",
        { ...MOTOR, surface: "tape patch", limit_from: "not known" },
      ],
    ],
  ],
  [
    "Dairy hall",
    [
      ["MCC2-M4", "MCC2, homogeniser", 40, 28, "3", { ...terminal, ...MOTOR }],
      ["MCC2-M7", "MCC2, separator", 32, 22, "2", { ...terminal, ...MOTOR }],
      ["MCC2-M9", "MCC2, agitator", 16, 14, "1", { ...terminal, ...MOTOR, target_size: 10 }],
    ],
  ],
  ["Spray dryer", [["SD-FAN", "Exhaust fan drive, input", 250, 240, "3", { ...terminal, ...WET, settling: 60 }]]],
  [
    "Packing hall",
    [
      [
        "DB-PACK",
        "Distribution board, main switch",
        125,
        110,
        "2",
        { ...terminal, ...WET, surface: "moulded case", target_size: 15 },
      ],
    ],
  ],
  ["Workshop", [["DB-WKS", "Distribution board, incomer", 100, 80, "1", terminal]]],
  ["Laboratory", [["DB-LAB", "Distribution board, incomer", 63, 45, "2", { ...terminal, ...SMALL }]]],
  [
    "Loading dock",
    [
      ["LC-HTR", "Door heaters, contactor", 63, 50, "1", { ...terminal, ...SMALL, ...WET }],
      ["EV-CHG", "Truck chargers, isolator", 125, 96, "1", { ...terminal, ...WET, last_survey: null }],
    ],
  ],
  ["Cold store 3", [["CS-EV3", "Evaporator fans, board", 40, 30, "2", { ...terminal, ...SMALL, environment: "3" }]]],
  [
    "Roof",
    [
      [
        "ROOF-CH1",
        "Chiller 1, isolator",
        200,
        160,
        "3",
        {
          ...terminal,
          ...ROOF,
          last_rise: 5.1,
          last_over: "similar",
          last_amps: 130,
          last_grade: "2 of 4",
          repaired: "terminal remade",
        },
      ],
      ["ROOF-AH2", "Air handler 2, isolator", 32, 25, "1", { ...terminal, ...ROOF }],
    ],
  ],
];

function behindWindow(window_id: string): Asset {
  return { surface: "heat-shrink sleeve", access: "window", window_id, target_size: 30 };
}

export const assets: readonly Asset[] = ROUTE.flatMap(([location, lines]) =>
  lines.map(([asset_id, component, rated_A, expected_max_A, criticality, rest]) => ({
    ...LUG,
    asset_id,
    location,
    component,
    rated_A,
    expected_max_A,
    criticality,
    last_survey: LAST_SURVEY,
    ...rest,
  })),
).map((asset, index) => ({ ...asset, order: index + 1 }));
