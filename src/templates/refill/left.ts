/** What could not be taken over, in words: of many alike the first few with their place, then their number. */

const MOST_PLACES = 4;

export class LeftOut {
  private readonly lines: string[] = [];
  private readonly places = new Map<string, string[]>();

  /** A line by itself, once. */
  say(line: string): void {
    if (!this.lines.includes(line)) this.lines.push(line);
  }

  /** One of several of a kind; the kind is a whole sentence without its full stop. */
  at(kind: string, place: string): void {
    const known = this.places.get(kind);
    if (known === undefined) this.places.set(kind, [place]);
    else known.push(place);
  }

  get all(): readonly string[] {
    const grouped = [...this.places].map(([kind, places]) => {
      const more = places.length - MOST_PLACES;
      const shown = places.slice(0, MOST_PLACES).join(", ");
      return `${kind}: ${shown}${more > 0 ? ` and ${more} more` : ""}.`;
    });
    return [...this.lines, ...grouped];
  }
}
