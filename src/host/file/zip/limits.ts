/** Beyond these a file is refused, and the message says so: no workbook of this trade comes near them. */
export const ZIP_LIMITS = {
  /** Bytes of the file as it lies on the disk. */
  fileBytes: 96 * 2 ** 20,
  /** Entries in the package. */
  entries: 20_000,
  /** Bytes of one part when expanded. */
  partBytes: 256 * 2 ** 20,
  /** Bytes of a part other than a sheet, when expanded. */
  otherPartBytes: 32 * 2 ** 20,
  /** Elements within one another. */
  depth: 100,
  /** Bytes of all parts that are read, when expanded. */
  totalBytes: 512 * 2 ** 20,
  /** How many times larger a part may be expanded than packed, once it is larger than `ratioFrom`. */
  ratio: 300,
  ratioFrom: 16 * 2 ** 20,
} as const;

/** A size as a person reads it. */
export const megabytes = (bytes: number): string => `${Math.round(bytes / 2 ** 20)} MB`;
