/**
 * How far a number can be trusted: read in the document or page named; read where it is quoted; from memory, not confirmed;
 * what the trade commonly does, without a document; our own judgement or computation.
 */
export type Evidence = "read" | "secondary" | "memory" | "common practice" | "own";

/** Where a number comes from. */
export interface Provenance {
  /** A key of references.json. */
  readonly source: string;
  /** Table, clause or page. */
  readonly locator: string;
  /** The edition that was seen. */
  readonly edition: string;
  readonly evidence: Evidence;
}
