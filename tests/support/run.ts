import { spawn } from "node:child_process";
import path from "node:path";

/** The project's folder. */
export const root = path.resolve(__dirname, "../..");

export interface Outcome {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

interface RunOptions {
  readonly input?: string;
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string | undefined>>;
}

/** Runs a program to its end, from the project's folder unless told otherwise. */
function run(program: string, args: readonly string[], options: RunOptions = {}): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { cwd: options.cwd ?? root, env: { ...process.env, ...options.env } });
    let stdout = "";
    let stderr = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => (stdout += text));
    child.stderr.setEncoding("utf8").on("data", (text: string) => (stderr += text));
    child.on("error", reject);
    child.on("close", (status) => resolve({ status, stdout, stderr }));
    // A program that ends before it has read everything is no failure of ours.
    child.stdin.on("error", () => undefined);
    child.stdin.end(options.input ?? "");
  });
}

/** Runs node with these arguments, the first one the script. */
export function runNode(args: readonly string[], options?: RunOptions): Promise<Outcome> {
  return run(process.execPath, args, options);
}
