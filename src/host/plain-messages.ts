/** What an error of the engine's own functions means, for errors that bring no message of ours. */
const MESSAGES: Readonly<Record<string, string>> = {
  "#DIV/0!": "Something is divided by zero, or an average is taken of no numbers.",
  "#N/A": "A value that the formula needs is not available: a lookup found nothing, or an argument is missing.",
  "#NAME?": "The formula uses a name that is not known here: check its spelling, and put text in double quotes.",
  "#NULL!": "Two ranges that should overlap have no cell in common.",
  "#NUM!": "The result is no number that a cell can hold, or a number lies outside what the function takes.",
  "#REF!": "The formula refers to cells, a sheet or a table that do not exist.",
  "#VALUE!": "A value is of a kind that the formula cannot use, such as text where a number is needed.",
  "#SPILL!": "The results need more cells than are free: clear the cells below and to the right.",
  "#CALC!": "The formula gives nothing that a cell can hold, such as an empty list.",
  "#CYCLE!": "The formula depends on its own cell.",
  "#ERROR!": "The formula cannot be worked out as it is written: check the number and order of its arguments.",
  "#GETTING_DATA": "The value is not there yet.",
};

/** A plain sentence for an error value. */
export function plainMessage(error: string): string {
  return MESSAGES[error] ?? "The formula gives an error.";
}
