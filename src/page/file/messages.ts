/** What the page and the worker for files say to each other. */
import type { BookDescription } from "../../templates/contract.js";

export type FileRequest =
  { readonly kind: "read"; readonly bytes: Uint8Array } | { readonly kind: "write"; readonly book: BookDescription };

export type FileAnswer =
  | { readonly kind: "read"; readonly book: BookDescription; readonly left: readonly string[] }
  | { readonly kind: "written"; readonly bytes: Uint8Array }
  /** A whole sentence for a person. */
  | { readonly kind: "refused"; readonly message: string };
