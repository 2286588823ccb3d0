import { randomBytes } from "node:crypto";
import { closeSync, existsSync, fchmodSync, fsyncSync, openSync, readdirSync, renameSync } from "node:fs";
import { statSync, unlinkSync, writeSync } from "node:fs";
import { hostname } from "node:os";
import path from "node:path";
import { UsageError } from "./usage.js";

/** Ends every temporary file of ours, so that one left behind by a killed run is known for what it is. */
const MARK = ".greybody-tmp";
const HOST = hostname().replaceAll(/[^A-Za-z0-9-]/g, "-");

/** Writes pieces of a file one after another. */
export interface Pieces {
  readonly put: (piece: Uint8Array | string) => void;
}

/** Before any work is done. @throws UsageError where there is no folder for the file, or a folder in its place */
export function requirePlace(target: string): void {
  const folder = path.dirname(target);
  if (!existsSync(folder)) throw new UsageError(`there is no folder ${folder} to write to.`);
  if (existsSync(target) && statSync(target).isDirectory())
    throw new UsageError(`${target} is a folder: name a file in it.`);
}

/**
 * Writes a file whole or not at all: into a temporary one beside it, onto the disk, then renamed. Whoever is killed on
 * the way leaves the old file or the new one, and at most a temporary one, which the next run takes away.
 */
export function writeWhole(target: string, mode: number, write: (pieces: Pieces) => void): void {
  const folder = path.dirname(target);
  sweep(folder, path.basename(target));
  const name = `.${path.basename(target)}.${HOST}.${process.pid}.${randomBytes(4).toString("hex")}${MARK}`;
  const temporary = path.join(folder, name);
  const file = openSync(temporary, "wx", 0o600);
  try {
    try {
      write({ put: (piece) => putAll(file, typeof piece === "string" ? Buffer.from(piece) : piece) });
      fchmodSync(file, mode & 0o7777);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(temporary, target);
  } catch (error) {
    unlinkSync(temporary);
    throw error;
  }
  syncFolder(folder);
}

function putAll(file: number, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length;) at += writeSync(file, bytes, at);
}

/** Takes away what runs that are no longer there have left beside a file. */
function sweep(folder: string, base: string): void {
  const start = `.${base}.${HOST}.`;
  for (const name of readdirSync(folder)) {
    if (!name.startsWith(start) || !name.endsWith(MARK)) continue;
    const owner = Number(name.slice(start.length).split(".")[0]);
    if (owner === process.pid || isRunning(owner)) continue;
    try {
      unlinkSync(path.join(folder, name));
    } catch {
      // Another run was quicker.
    }
  }
}

function isRunning(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** So that the new name outlives a power cut too; not every system lets a folder be opened. */
function syncFolder(folder: string): void {
  try {
    const opened = openSync(folder, "r");
    try {
      fsyncSync(opened);
    } finally {
      closeSync(opened);
    }
  } catch {
    // The file itself is on the disk.
  }
}
