/**
 * `npm run start:excel`: serves dist/excel at https://localhost:3000/ for this machine, where manifest.xml looks for it;
 * `npm run start:excel -- --port N` elsewhere, with a manifest to match.
 */
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { excelSettings } from "./excel-settings.cjs";
import { isFresh, withBuildLock } from "./freshness.mjs";
import { build } from "./make.mjs";
import { inRoot } from "./paths.mjs";

const noCertificate = `This machine does not trust https on localhost yet, and Excel loads add-ins over https only.
Do this once, then start again:

  npx office-addin-dev-certs install

It makes a certificate for localhost and asks to trust it; "npx office-addin-dev-certs uninstall" takes it back.
On Linux it needs sudo. See for yourself with "npx office-addin-dev-certs verify": the installation says nothing where
it failed.`;

try {
  await start();
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}

async function start() {
  const { values } = parseArgs({ options: { port: { type: "string", default: "3000" } } });
  const port = Number(values.port);
  if (!/^\d+$/.test(values.port) || port < 1 || port > 65_535)
    throw new Error(`A port is a whole number from 1 to 65535, not "${values.port}".`);
  const { cert, key } = await certificate();
  process.env.GREYBODY_BASE = `https://localhost:${port}`;
  await withBuildLock(async () => {
    if (!isFresh()) await build(["excel"]);
  });
  const { serve } = await import(pathToFileURL(inRoot(".cache/built/serve.mjs")).href);
  const { address } = await serve({
    port,
    root: inRoot("dist/excel"),
    tls: { cert, key },
    // Excel on the web reads functions.json from its own origin; the page brings its policy itself.
    headers: { "Access-Control-Allow-Origin": "*" },
  });
  console.log(`The add-in is served at ${address} (Ctrl-C ends it).`);
  console.log(
    `Its manifest for Excel: ${inRoot("dist/excel/manifest.xml")}; README.md, "In Excel", says where to put it.`,
  );
  console.log(`Office's own script comes ${excelSettings().ownOfficeJs ? "with it" : "from Microsoft's servers"}.`);
}

/** The trusted certificate for localhost; never installs one by itself. */
async function certificate() {
  const certificates = await import("office-addin-dev-certs");
  let trusted = false;
  let reason = "";
  try {
    trusted = certificates.verifyCertificates();
  } catch (error) {
    reason = `\n(${error.message})`;
  }
  if (!trusted) throw new Error(noCertificate + reason);
  const { cert, key } = await certificates.getHttpsServerOptions();
  return { cert: String(cert), key: String(key) };
}
