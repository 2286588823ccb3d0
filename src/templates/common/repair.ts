/** What the first sheet of every template says to whoever opens it where our functions are not known. */
export const REPAIR = [
  "Excel shows #NAME?: load the add-in, then press Enter the formulas again in its pane, under Check; what is saved stays until then.",
  "LibreOffice shows #NAME?: it knows none of these functions; the numbers saved in the file are right. Use Excel with the add-in, or the page.",
] as const;
