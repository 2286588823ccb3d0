/**
 * What the tool must always show beside its numbers, in our own words. The same eleven stand on
 * the pane, in every route template and in the README.
 */
export interface Caution {
  /** A few words to find it by. */
  readonly title: string;
  readonly text: string;
}

export const cautions: readonly Caution[] = [
  {
    title: "Arithmetic only",
    text: "These results are arithmetic on what was typed. They do not make equipment safe to open, approach, touch, energise or leave in service. A qualified person decides.",
  },
  {
    title: "Keep covers and doors closed",
    text: "Opening a cover or door to take a reading is itself a shock and arc-flash task, with its own risk assessment; that looking needs no contact changes nothing about it. De-energise first wherever that is feasible and not the greater hazard.",
  },
  {
    title: "Qualified persons and boundaries",
    text: "Others stay outside the limited approach boundary or are escorted; the arc-flash boundary is a separate one and often the larger. This tool works out no boundary, no clearance and no protective equipment.",
  },
  {
    title: "Local law governs",
    text: "Work follows the law, the standards and the licences of the place: for example NFPA 70E and OSHA in the United States, EN 50110-1 in Europe, CSA Z462 in Canada. Where they differ from anything shown here, they are right.",
  },
  {
    title: "Grades are guidance",
    text: "Severity criteria hold for direct sight of the part under a steady, adequate load. A small rise is no evidence of health: a light load hides faults.",
  },
  {
    title: "Windows lessen risk, they do not remove it",
    text: "An infrared window is not by itself a barrier against an arc, and it must suit the enclosure's rating. Keep the cover closed, and measure the window's transmission with the camera in use.",
  },
  {
    title: "No contact with live parts",
    text: "No contact probe, tape or paint on a part that is energised or may be. Reference patches are put on only by authorised people, on equipment that is de-energised, isolated and proved dead.",
  },
  {
    title: "Moving machinery",
    text: "Guards stay on. Shafts, belts and couplings catch sleeves, straps and cables, and surfaces burn.",
  },
  {
    title: "Low emissivity",
    text: "Below an emissivity of 0.6 the uncertainty is wide. Below 0.3 the reading is no temperature measurement: it shows at most that something differs.",
  },
  {
    title: "Circuits that stay live",
    text: "Photovoltaic direct-current circuits are live in daylight, whatever is switched off. Circuits can be back-fed or induced, and capacitors keep their charge.",
  },
  {
    title: "Immediate danger",
    text: "A finding that may be immediately dangerous is told to the responsible person at once, in person, and reported afterwards. Stop the survey there if need be.",
  },
];
