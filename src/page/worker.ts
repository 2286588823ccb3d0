/** The worker: the calculation engine and our functions, and nothing that paints. */
import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { IFunctionService, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRPCWorkerThreadPlugin } from "@univerjs/rpc";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverRemoteSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { catalogue } from "../functions/catalogue.js";
import { executorsOf } from "../host/embedded/executors.js";
import { limitSizes } from "../host/embedded/limits.js";
import { MessageBook } from "./grid/channel.js";
import { speakOut } from "./grid/speaking.js";

const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.ERROR });
univer.registerPlugin(UniverSheetsPlugin, { onlyRegisterFormulaRelatedMutations: true });
univer.registerPlugin(UniverFormulaEnginePlugin);
univer.registerPlugin(UniverRPCWorkerThreadPlugin);
univer.registerPlugin(UniverRemoteSheetsFormulaPlugin);

// The page gives each worker a channel of its own: two tabs of the page are two books.
const channel = new BroadcastChannel(self.location.hash.slice(1));
const book = new MessageBook();
const executors = executorsOf(catalogue, (_unit, sheetId, row, column) => book.at(sheetId, row, column));
speakOut(executors, book, (call) => { channel.postMessage(call); });
const functions = univer.__getInjector().get(IFunctionService);
functions.registerExecutors(...executors);
limitSizes(functions);
