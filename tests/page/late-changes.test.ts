import { describeInBrowser } from "../support/browser.js";
import { OpenPage } from "../support/page.js";

/** As on a machine with much to do: of each message of the engine the page hears 60 ms after the last. */
const slowly = (): void => {
  // eslint-disable-next-line @typescript-eslint/unbound-method -- called with its worker below
  const { addEventListener } = Worker.prototype;
  let free = 0;
  Worker.prototype.addEventListener = function (this: Worker, type: string, listener: EventListener, options: object) {
    const later = (event: Event): void => {
      free = Math.max(free, performance.now()) + 60;
      setTimeout(() => {
        listener.call(this, event);
      }, free - performance.now());
    };
    addEventListener.call(this, type, type === "message" ? later : listener, options);
  } as typeof addEventListener;
};

describeInBrowser("What is typed while the engine is at work", () => {
  let page: OpenPage;

  beforeAll(async () => {
    page = await OpenPage.open("small", {}, slowly);
    await page.ready();
  });

  afterAll(async () => {
    expect(page.faults).toEqual([]);
    await page.close();
  });

  test("is worked out as well, though the engine hears of it only when it is done", async () => {
    // Long enough apart for the engine to be at work, short enough for the page not to have its answer.
    for (const row of [5, 6, 7, 8]) {
      await page.select(`C${row}`);
      await page.page.keyboard.type("50");
      await page.page.keyboard.press("Tab");
      await page.page.waitForTimeout(350);
      await page.page.keyboard.type("40");
      await page.page.keyboard.press("Enter");
      expect(await page.becomes([`G${row}`], ["10.0"])).toEqual(["10.0"]);
    }
  });
});
