import type { Hints } from "./words.js";

export const LOOKUP_HINTS: Hints = {
  "material-near": (w) =>
    `No material is called "${w.number("name")}". Near it: ${w.number("near")}. GREY.MATERIALS() shows all.`,
  "material-unknown": (w) =>
    `No material is called "${w.number("name")}", and none is near. The table is what GREY.MATERIALS() shows.`,
  "emissivity-no-column": (w) =>
    `The table has emissivities for bands within ${w.number("long_from")} to ${w.number("long_to")} µm and within ${w.number("short_from")} to ${w.number("short_to")} µm only: measure it in this band.`,
  "emissivity-not-in-band": (w) =>
    `The table has ${w.number("material")} for ${w.number("has")} only; in this band it may be far from that: measure it.`,
  "emissivity-bare-metal": (w) =>
    `Measure it: ${w.number("material")} is bare metal, ${w.number("low")} to ${w.number("high")} in the table, and every scratch changes it. Tape or paint on a dead, isolated part, or a contact thermometer, gives a value.`,
  "emissivity-measure": (w) =>
    `Measure it: ${w.number("material")} is anything from ${w.number("low")} to ${w.number("high")}, which is no value to correct with.`,
  "part-near": (w) =>
    `No part is called "${w.number("part")}". Near it: ${w.number("near")}. GREY.LIMITS() shows all, unless limits are your own.`,
  "part-unknown": (w) =>
    `No part is called "${w.number("part")}", and none is near. The table is what GREY.LIMITS() shows; limits takes your own.`,
  "part-not-in-standard": (w) =>
    `No limit for "${w.number("part")}" by "${w.number("standard")}", only by ${w.number("has")}.`,
  "part-in-several": (w) => `Name the standard: "${w.number("part")}" has limits by ${w.number("has")}.`,
  "limit-rise-only": (w) =>
    `The source permits ${w.number("part")} a rise of ${w.difference("rise")} and names no temperature: show the rise.`,
  "limit-temp-only": (w) =>
    `The source permits ${w.number("part")} a temperature of ${w.temperature("temp")} and names no rise: show the temp.`,
  "limit-temp-memory": (w) =>
    `From memory, so not given as a number: ${w.temperature("value")} for ${w.number("part")}. Look it up in ${w.number("standard")} and hand it in as limits, with where you read it.`,
  "limit-rise-memory": (w) =>
    `From memory, so not given as a number: a rise of ${w.difference("value")} for ${w.number("part")}. Look it up in ${w.number("standard")} and hand it in as limits, with where you read it.`,
  "limits-empty": () => "A range part | standard | temp | rise | source is wanted, with one row at least.",
  "limits-part": (w) => `Row ${w.number("row")} of the limits: the first column names the part.`,
  "limits-figure": (w) =>
    `Row ${w.number("row")} of the limits has neither a temperature nor a rise, in columns 3 and 4.`,
  "limits-number": (w) => `Row ${w.number("row")} of the limits: temperature and rise are numbers.`,
  "limits-temp": (w) => `Row ${w.number("row")} of the limits: the third column is the highest temperature.`,
  "limits-rise": (w) => `Row ${w.number("row")} of the limits: the fourth column is the highest rise.`,
  "limits-twice": (w) => `Row ${w.number("row")} of the limits: that part stands in this standard already.`,
  "matrix-form": () => "A range of four columns is wanted: grade | words for criticality 1 | 2 | 3, 3 the worst.",
  "matrix-grade": (w) => `Row ${w.number("row")} of the matrix: a grade is a whole number from 0 to 4, 4 the worst.`,
  "matrix-twice": (w) => `Row ${w.number("row")} of the matrix: that grade stands there already.`,
  "matrix-words": (w) =>
    `Row ${w.number("row")} of the matrix: words for criticality 1, 2 and 3 are wanted, in columns 2 to 4.`,
  "grade-scale": () => "The worst grade is 4.",
  "condition-scale": () => "The worst is 3.",
  "grade-not-in-matrix": (w) => `The matrix has no row for grade ${w.number("grade")}, only for ${w.number("has")}.`,
  "date-range": () =>
    "A date is the number of days that Excel counts: 1980-01-01 is 29221, 2199-12-31 is 109574. Enter it as a date.",
  "date-text": () => "A date that is text: enter it as a date, or turn it into one with DATEVALUE.",
  "intervals-form": (w) =>
    `Three whole numbers of months are wanted, ${w.number("least")} to ${w.number("most")}, for condition 1, 2 and 3, 3 the worst.`,
  "intervals-order": () => "Condition 3 is the worst: no interval is longer than the one before it.",
};
