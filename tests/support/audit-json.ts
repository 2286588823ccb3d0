/** What `greybody audit -o X.json` writes, as the README gives it. */
import type { Folder } from "./recalc.js";

export interface AuditJson {
  readonly mapping: readonly { readonly header: string; readonly column: string | null; readonly why: string | null }[];
  readonly rows: readonly {
    readonly row: number;
    readonly line: number;
    readonly item: string;
    readonly what: string;
    readonly stated: number | null;
    readonly recomputed: number | null;
    readonly difference: number | null;
    readonly tolerance: number | null;
    readonly number: string;
    readonly method: string;
    readonly grade: string;
    readonly consequence: string;
    readonly missing: readonly string[];
    readonly slips: readonly string[];
    readonly reproduced: boolean;
    readonly understood: readonly string[];
  }[];
  readonly report_findings: readonly { readonly what: string }[];
}

export function auditJsonOf(folder: Folder, name: string): AuditJson {
  return JSON.parse(new TextDecoder().decode(folder.read(name))) as AuditJson;
}
