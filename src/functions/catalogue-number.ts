/** One more for every change of the catalogue after 0.1.0; workbooks carry it as the hidden name GREYBODY_CATALOGUE. */
export const CATALOGUE_NUMBER = 2;
