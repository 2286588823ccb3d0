/** Univer's own English words, one list a plugin. */
import designWords from "@univerjs/design/locale/en-US";
import docsUiWords from "@univerjs/docs-ui/locale/en-US";
import sheetsWords from "@univerjs/sheets/locale/en-US";
import sheetsFormulaWords from "@univerjs/sheets-formula/locale/en-US";
import sheetsFormulaUiWords from "@univerjs/sheets-formula-ui/locale/en-US";
import sheetsNumfmtUiWords from "@univerjs/sheets-numfmt-ui/locale/en-US";
import sheetsSortUiWords from "@univerjs/sheets-sort-ui/locale/en-US";
import sheetsTableWords from "@univerjs/sheets-table/locale/en-US";
import sheetsTableUiWords from "@univerjs/sheets-table-ui/locale/en-US";
import sheetsUiWords from "@univerjs/sheets-ui/locale/en-US";
import uiWords from "@univerjs/ui/locale/en-US";

export const englishWords = [
  designWords,
  uiWords,
  docsUiWords,
  sheetsWords,
  sheetsUiWords,
  sheetsFormulaWords,
  sheetsFormulaUiWords,
  sheetsNumfmtUiWords,
  sheetsSortUiWords,
  sheetsTableWords,
  sheetsTableUiWords,
];
