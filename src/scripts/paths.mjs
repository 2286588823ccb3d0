import { fileURLToPath } from "node:url";

/** The project's folder. */
export const root = fileURLToPath(new URL("../..", import.meta.url));
/** A path inside it. */
export const inRoot = (...parts) => fileURLToPath(new URL(parts.join("/"), new URL("../../", import.meta.url)));
