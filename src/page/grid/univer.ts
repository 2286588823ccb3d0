/**
 * The grid on the page: Univer without its toolbar, footer and telemetry. It paints and edits; the engine runs in the worker.
 */
import "@univerjs/design/lib/index.css";
import "@univerjs/ui/lib/index.css";
import "@univerjs/docs-ui/lib/index.css";
import "@univerjs/sheets-ui/lib/index.css";
import "@univerjs/sheets-formula-ui/lib/index.css";
import "@univerjs/sheets-numfmt-ui/lib/index.css";
import "@univerjs/sheets-sort-ui/lib/index.css";
import "@univerjs/sheets-table-ui/lib/index.css";
import "@univerjs/ui/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-ui/facade";
import "@univerjs/sheets-formula/facade";
import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import { type IFunctionInfo, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverRPCMainThreadPlugin } from "@univerjs/rpc";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import { UniverSheetsSortPlugin } from "@univerjs/sheets-sort";
import { UniverSheetsSortUIPlugin } from "@univerjs/sheets-sort-ui";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import { UniverSheetsTableUIPlugin } from "@univerjs/sheets-table-ui";
import { UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import { UniverUIPlugin } from "@univerjs/ui";
import { calmTable } from "../book/table.js";
import { calmTheme } from "./theme.js";
import { englishWords } from "./words.js";

export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
}

export interface GridOptions {
  readonly container: HTMLElement;
  readonly worker: Worker;
  readonly descriptions: IFunctionInfo[];
  readonly darkMode: boolean;
}

/** Puts an empty grid into the container; the workbook is created afterwards. */
export function startGrid(options: GridOptions): Grid {
  const univer = new Univer({
    theme: calmTheme,
    darkMode: options.darkMode,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(...englishWords) },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverRPCMainThreadPlugin, { workerURL: options.worker });
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverUIPlugin, { container: options.container, header: true, toolbar: false, footer: false });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin, { notExecuteFormula: true });
  univer.registerPlugin(UniverSheetsPlugin, { notExecuteFormula: true });
  univer.registerPlugin(UniverSheetsUIPlugin, {
    footer: false,
    disableForceStringAlert: true,
    // Its mark for numbers as text reads every text of the sheet as a date first, at each drawing; the sheets say it in words.
    disableForceStringMark: true,
    clipboardConfig: { hidePasteOptions: true },
  });
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    notExecuteFormula: true,
    // Forced: otherwise a spill whose anchor carries a saved value is missing until something is edited.
    initialFormulaComputing: CalculationMode.FORCED,
    description: options.descriptions,
  });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverSheetsSortPlugin);
  univer.registerPlugin(UniverSheetsSortUIPlugin);
  univer.registerPlugin(UniverSheetsTablePlugin, { userThemes: [calmTable], defaultThemeIndex: 0 });
  univer.registerPlugin(UniverSheetsTableUIPlugin, { hideAnchor: true });
  return { univer, api: FUniver.newAPI(univer) };
}
