/** How parts are packed and unpacked: everywhere by fflate, where a host has nothing quicker of its own. */
import { deflateSync, inflateSync } from "fflate";

export interface Codec {
  /** Raw deflate. */
  readonly deflate: (contents: Uint8Array) => Uint8Array;
  /** Unpacks up to `most` bytes. Throws, or gives another size, where there are more or the packed bytes are damaged. */
  readonly inflate: (packed: Uint8Array, most: number) => Uint8Array;
}

export const PLAIN_CODEC: Codec = {
  deflate: (contents) => deflateSync(contents, { level: 6 }),
  // What does not fit is not expanded: nothing grows beyond what is given here.
  inflate: (packed, most) => inflateSync(packed, { out: new Uint8Array(most) }),
};
