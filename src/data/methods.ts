import methods from "./methods.json";

/** What the numbers of this tool rest on. */
export interface Method {
  readonly method: string;
  readonly how: string;
  /** Keys of references.json. */
  readonly sources: readonly string[];
}

export const METHODS: readonly Method[] = methods;
