/** Tasks of the browser's main thread that take 50 ms or more, as the browser itself reports them. */
import type { Page } from "playwright-core";
import type { Handle } from "../../src/page/handle.js";

declare global {
  // The page's own handle, as it stands in the browser.
  var greybody: Handle | undefined;
  var taskWatch: { readonly tasks: number[]; readonly said: string[]; readonly stop: () => void } | undefined;
}

export interface Watched {
  /** Milliseconds of each long task, longest first; none where nothing took 50 ms. */
  readonly tasks: readonly number[];
  /** What the line beside the sheet tabs said meanwhile, each wording once. */
  readonly said: readonly string[];
  /** From the key that began it until the engine was at rest, in milliseconds. */
  readonly took: number;
}

/** Watches while something is done to the page and its sheet is calculated again. */
export async function watchTasks(page: Page, change: () => Promise<unknown>): Promise<Watched> {
  await page.evaluate(() => {
    const tasks: number[] = [];
    const said: string[] = [];
    const tasksSeen = new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    });
    tasksSeen.observe({ entryTypes: ["longtask"] });
    const line = document.querySelector(".gb-calculating")!;
    const words = new MutationObserver(() => {
      const text = line.textContent;
      if (text !== "" && !said.includes(text)) said.push(text);
    });
    words.observe(line, { childList: true, characterData: true, subtree: true });
    globalThis.taskWatch = {
      tasks,
      said,
      stop: () => {
        for (const entry of tasksSeen.takeRecords()) tasks.push(entry.duration);
        tasksSeen.disconnect();
        words.disconnect();
      },
    };
  });
  const start = performance.now();
  await change();
  await settled(page);
  const took = performance.now() - start;
  const { tasks, said } = await page.evaluate(() => {
    globalThis.taskWatch!.stop();
    return { tasks: globalThis.taskWatch!.tasks, said: globalThis.taskWatch!.said };
  });
  return { tasks: [...tasks].sort((a, b) => b - a), said, took };
}

/** Until the engine has been at rest for a moment: a change is calculated only some time after it was made. */
export async function settled(page: Page): Promise<void> {
  for (let quiet = 0; quiet < 3;) {
    const busy = await page.evaluate(async () => {
      await new Promise((resolve) => setTimeout(resolve, 60));
      return globalThis.greybody?.calculating() !== false;
    });
    quiet = busy ? 0 : quiet + 1;
  }
}

/**
 * One exponential and one logarithm a row of 100,000, as the benches measure by, in the browser: the best of some runs,
 * in milliseconds. What else the machine does is in it as it is in the tasks.
 */
export async function floorInBrowser(page: Page): Promise<number> {
  return page.evaluate(() => {
    const rows = 100_000;
    const x = Float64Array.from({ length: rows }, (_, row) => 1 + row / rows);
    const y = new Float64Array(rows);
    let best = Infinity;
    for (let run = 0; run < 40; run++) {
      const start = performance.now();
      for (let row = 0; row < rows; row++) y[row] = Math.exp(x[row]!) * Math.log(300 * x[row]!);
      best = Math.min(best, performance.now() - start);
    }
    return best;
  });
}
