/** `npm start`: builds what is stale and serves the page; everything after `--` goes to `greybody serve`. */
import { spawn } from "node:child_process";
import { ensureBuilt } from "./make.mjs";
import { inRoot } from "./paths.mjs";

try {
  await ensureBuilt();
} catch (error) {
  console.error(`The build failed: ${error.message}`);
  process.exit(1);
}
const server = spawn(process.execPath, [inRoot("dist/cli.js"), "serve", ...process.argv.slice(2)], {
  stdio: "inherit",
});
// Ctrl-C reaches the server by itself: this process only waits for it to end.
process.on("SIGINT", () => undefined);
process.on("SIGTERM", () => server.kill());
server.on("exit", (code) => process.exit(code ?? 0));
