/** Builds the page around a described workbook and makes it live. */
import { UniverInstanceType } from "@univerjs/core";
import type { FunctionSpec } from "../functions/contract.js";
import type { BookDescription } from "../templates/contract.js";
import { embeddedHost } from "../host/embedded/host.js";
import { layOut } from "./book/layout.js";
import { liveBook, type LiveBook } from "./book/live.js";
import { bookSnapshot } from "./book/snapshot.js";
import { refuseBeyondSheet } from "./edit/beyond.js";
import { offerChoices } from "./edit/choices.js";
import { copySpills } from "./edit/copying.js";
import { goFarByKey } from "./edit/far-keys.js";
import { type FirstSay, takeFirstSay } from "./edit/first-say.js";
import { askBeforeLeaving, trackChanges } from "./edit/leaving.js";
import { lockWorkedOutCells } from "./edit/locks.js";
import { keepTyping } from "./edit/keep-typing.js";
import { keepLateChanges } from "./edit/late-changes.js";
import { guardMoves } from "./edit/moving.js";
import { normaliseWrites } from "./edit/normalise.js";
import { spareLockedCells } from "./edit/pasting.js";
import { settleTables } from "./edit/settle.js";
import { tellStrayRows } from "./edit/stray.js";
import { mendAccessibility } from "./frame/accessibility.js";
import { topBar } from "./frame/bar.js";
import { gridRegion, region, walkRegions } from "./frame/focus.js";
import { buildFrame, gridId } from "./frame/frame.js";
import { sidePanel } from "./frame/panel.js";
import { sheetTabs } from "./frame/tabs.js";
import { followTheme, onPrefersDark, prefersDark } from "./frame/theme.js";
import type { Trouble } from "./frame/trouble.js";
import { describeOpenBook } from "./file/described.js";
import { fileParts } from "./file/files.js";
import { functionDescriptions } from "./grid/descriptions.js";
import { measureCells, measureHeadings } from "./grid/measure.js";
import { startGrid } from "./grid/univer.js";
import { debugHandle, type Handle } from "./handle.js";
import { showPictures } from "./show/pictures.js";
import { fitNumbers } from "./show/fitting.js";
import { type Access, gridAccess } from "./port/access.js";
import { bookOpener } from "./port/open-book.js";
import { type Calculating, calculating } from "./show/calculating.js";
import { explainOnHover } from "./show/hover.js";
import { keepInView } from "./show/in-view.js";
import { type Messages, receiveMessages } from "./show/messages.js";
import { statusLine } from "./show/status.js";
import { tintCells } from "./show/tints.js";

export interface PageOptions {
  readonly root: HTMLElement;
  readonly book: BookDescription;
  readonly specs: readonly FunctionSpec[];
  readonly report: Trouble["report"];
}

export function openPage({ root, book, specs, report }: PageOptions): Handle {
  const layout = layOut(book);
  const measure = measureHeadings();
  const snapshot = bookSnapshot(layout, measure);
  const channelName = `greybody-${String(performance.timeOrigin)}-${String(Math.random()).slice(2)}`;
  const worker = new Worker(`worker.js#${channelName}`);
  worker.addEventListener("error", (event) => {
    report("The calculation stopped: reload the page. The reason:", event.message);
  });
  const messages = receiveMessages(channelName);

  const status = statusLine();
  const busy = calculating();
  const tabs = sheetTabs();
  const panel = sidePanel(() => dispatchEvent(new Event("resize")), report);
  const bar = topBar(panel.toggle);
  const frame = buildFrame(root, {
    bar: bar.root,
    tabs: tabs.root,
    status: status.root,
    calculating: busy.root,
    panel: panel.root,
  });

  const grid = startGrid({
    container: frame.grid,
    worker,
    descriptions: functionDescriptions(specs),
    darkMode: prefersDark(),
  });
  const firstSay = takeFirstSay(grid.univer.__getInjector());
  grid.univer.createUnit(UniverInstanceType.UNIVER_SHEET, snapshot);
  const live = liveBook(grid, layout);
  attachEditing(live, firstSay, status.say);
  attachShowing(live, messages, frame.stage);
  showPictures(live, busy);
  busy.attach(live);
  bar.attach(live);
  tabs.attach(live, gridId);
  status.attach(live, messages);
  busy.onDone(status.refresh);
  mendAccessibility(document.body);
  const gridPart = gridRegion(frame.stage, live);
  const panelPart = region(panel.root, panel.isOpen, { remembers: true });
  walkRegions([gridPart, region(tabs.root), region(bar.root), panelPart]);
  const access = gridAccess(accessTo(live, messages, busy, bookOpener(grid, live, measure)));
  const port = embeddedHost(access);
  const changes = trackChanges(live);
  askBeforeLeaving(changes);
  const files = fileParts({
    changes,
    title: () => live.layout.book.title,
    describe: () => describeOpenBook(live, (range) => access.cells(range)),
    open: port.makeBook,
    onOpened: (listener) => {
      live.onOpened(listener);
    },
    say: status.say,
  });
  bar.root.querySelector(".gb-title")?.after(files.tools);
  bar.root.after(files.notice);
  void panel.fill({
    ...port,
    // Who goes to a cell from the pane wants to see it and to type there.
    goTo: async (cell) => {
      const gone = await port.goTo(cell);
      if (gone.ok) {
        panel.giveWay();
        gridPart.focus();
      }
      return gone;
    },
  });
  return { ...debugHandle(live, messages, busy), port };
}

function accessTo(
  book: LiveBook,
  messages: Messages,
  calculating: Calculating,
  open: (description: BookDescription) => void,
): Access {
  const theme = {
    now: () => (prefersDark() ? ("dark" as const) : ("light" as const)),
    onChange: (listener: (theme: "light" | "dark") => void) =>
      onPrefersDark((dark) => {
        listener(dark ? "dark" : "light");
      }),
  };
  return { book, messages, calculating, open, theme };
}

function attachEditing(book: LiveBook, firstSay: FirstSay, say: (message: string) => void): void {
  keepTyping(book.injector);
  keepLateChanges(book);
  lockWorkedOutCells(book, say);
  spareLockedCells(book, firstSay, say);
  guardMoves(book, firstSay, say);
  normaliseWrites(book, firstSay, (unresolved) => {
    say(`Not found: ${unresolved.join(", ")}. Table and column names are those of the headings.`);
  });
  settleTables(book);
  tellStrayRows(book, say);
  copySpills(book);
  refuseBeyondSheet(book, say);
}

function attachShowing(book: LiveBook, messages: Messages, stage: HTMLElement): void {
  offerChoices(book, stage);
  explainOnHover(book, messages, stage);
  fitNumbers(book, measureCells);
  keepInView(book, stage);
  goFarByKey(book, stage);
  followTheme(book, tintCells(book));
}
