/** What every host port does, run against each: the page in a browser, and Excel as far as a fake can be Excel. */
import { changesTheBook } from "./changing.js";
import { readsTheBook } from "./reading.js";
import type { Subject } from "./subject.js";

/** @param make a port with the book `metric` open in it, anew for each test */
export function holdsThePort(name: string, make: () => Promise<Subject>): void {
  describe(`${name} reads`, () => {
    readsTheBook(make);
  });
  describe(`${name} changes`, () => {
    changesTheBook(make);
  });
}
