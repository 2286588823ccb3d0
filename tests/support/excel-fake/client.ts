/**
 * Objects as Excel's API hands them out: nothing can be read before it was loaded and synced, nothing happens before a
 * sync, and what is asked of nothing is a null object or an error.
 */
export class Queue {
  syncs = 0;
  private work: (() => void)[] = [];

  push(work: () => void): void {
    this.work.push(work);
  }

  /** As Excel does: in order, and the rest is dropped at the first error. */
  sync(): Promise<void> {
    this.syncs++;
    const work = this.work.splice(0);
    try {
      for (const step of work) step();
      return Promise.resolve();
    } catch (error) {
      return Promise.reject(error instanceof Error ? error : new Error(String(error)));
    }
  }
}

export class ExcelError extends Error {
  constructor(readonly code: string) {
    super(`Excel: ${code}`);
  }
}

export interface Shape<Target> {
  /** What it stands for when the queue is worked off; undefined: a null object. */
  readonly target: () => Target | undefined;
  readonly orNull?: boolean;
  readonly get?: Readonly<Record<string, (target: Target) => unknown>>;
  readonly set?: Readonly<Record<string, (target: Target, value: never) => void>>;
  /** Objects and methods that are there without being loaded. */
  readonly members?: Readonly<Record<string, unknown>>;
  /** Members that are clients, for paths such as "items/name". */
  readonly items?: (target: Target) => Client[];
}

export type Client = object & { readonly load: (paths: string) => void };

export function client<Target>(queue: Queue, shape: Shape<Target>): Client {
  const loaded = new Map<string, unknown>();
  const resolve = (): Target | undefined => {
    const target = shape.target();
    if (target === undefined && shape.orNull !== true) throw new ExcelError("ItemNotFound");
    return target;
  };
  const loadNow = (path: string): void => {
    const target = resolve();
    loaded.set("isNullObject", target === undefined);
    if (target === undefined) return;
    const [first = "", ...rest] = path.split("/");
    if (first === "items" && shape.items !== undefined) {
      // One list for all paths, or each would load objects of its own.
      if (!loaded.has("items")) loaded.set("items", shape.items(target));
      for (const item of loaded.get("items") as LoadNow[]) item[now](rest.join("/"));
    } else if (rest.length > 0) (shape.members?.[first] as LoadNow)[now](rest.join("/"));
    else if (shape.get?.[first] !== undefined) loaded.set(first, shape.get[first](target));
    else throw new Error(`There is no property ${path} to load.`);
  };
  const own: Record<string | symbol, unknown> = {
    ...shape.members,
    [now]: loadNow,
    load: (paths: string) => {
      for (const path of paths.split(",")) queue.push(() => loadNow(path.trim()));
    },
  };
  return new Proxy({} as Client, {
    get: (_, name) => {
      if (name in own) return own[name];
      // A promise asks every object whether it is one.
      if (name === "then" || typeof name === "symbol") return undefined;
      if (loaded.has(name)) return loaded.get(name);
      throw new ExcelError(`PropertyNotLoaded: ${name}`);
    },
    set: (_, name, value) => {
      const setter = shape.set?.[String(name)];
      if (setter === undefined) throw new Error(`${String(name)} cannot be set.`);
      queue.push(() => {
        const target = resolve();
        if (target !== undefined) setter(target, value as never);
      });
      return true;
    },
  });
}

const now = Symbol("load now");
interface LoadNow {
  readonly [now]: (path: string) => void;
}

/** Takes whatever is set: looks, which the fake does not have. */
export function looks(): object {
  return new Proxy({}, { get: () => looks(), set: () => true });
}
