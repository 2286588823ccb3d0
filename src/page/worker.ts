/** The worker: the calculation engine and our functions, and nothing that paints. */
import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRPCWorkerThreadPlugin } from "@univerjs/rpc";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverRemoteSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { catalogue } from "../functions/catalogue.js";
import { equipEngine } from "../host/embedded/equip.js";
import { endOnce } from "./one-end.js";

const locales = { [LocaleType.EN_US]: {} };
const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.SILENT });
univer.registerPlugin(UniverSheetsPlugin, { onlyRegisterFormulaRelatedMutations: true });
univer.registerPlugin(UniverFormulaEnginePlugin);
univer.registerPlugin(UniverRPCWorkerThreadPlugin);
univer.registerPlugin(UniverRemoteSheetsFormulaPlugin);

// The page gives each worker a channel of its own: two tabs of the page are two books.
const channel = new BroadcastChannel(self.location.hash.slice(1));
equipEngine(univer.__getInjector(), catalogue, (messages) => {
  channel.postMessage(messages);
});
endOnce(univer.__getInjector(), self);
