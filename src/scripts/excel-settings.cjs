/** What a build for Excel may be told by environment variables; a wrong value stops the build. */

/** Where manifest.xml, as it stands in the project, looks for everything. */
const DEVELOPMENT_BASE = "https://localhost:3000";

/** The CDN that Microsoft asks add-ins to take office.js from. */
const CDN = "https://appsforoffice.microsoft.com";

/**
 * GREYBODY_BASE: the https address that dist/excel will be served from.
 * GREYBODY_OFFICE_JS: "cdn", or "own" for a copy of office.js in dist/excel.
 * GREYBODY_EXCEL_ERRORS: "shown", or "blank" for an empty text with the message kept for the pane.
 */
function excelSettings(env = process.env) {
  const base = (env.GREYBODY_BASE || DEVELOPMENT_BASE).replace(/\/+$/, "");
  // It is written into XML, HTML and JSON as it is.
  if (!/^https:\/\/[\w.-]+(:\d+)?(\/[\w.~/-]*)?$/.test(base))
    throw new Error(
      `GREYBODY_BASE is "${base}": it must be a plain https address, such as https://example.org/greybody`,
    );
  const ownOfficeJs = choice(env, "GREYBODY_OFFICE_JS", ["cdn", "own"]) === "own";
  return {
    base,
    ownOfficeJs,
    blankErrors: choice(env, "GREYBODY_EXCEL_ERRORS", ["shown", "blank"]) === "blank",
    officeJs: ownOfficeJs ? "office/office.js" : `${CDN}/lib/1/hosted/office.js`,
    policy: policy(ownOfficeJs ? "'self'" : `'self' ${CDN}`),
  };
}

function choice(env, name, allowed) {
  const value = env[name] || allowed[0];
  if (!allowed.includes(value)) throw new Error(`${name} is "${value}": it must be ${allowed.join(" or ")}`);
  return value;
}

/** In the page itself, since any host may serve it. */
function policy(scripts) {
  return [
    "default-src 'none'",
    `script-src ${scripts}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

module.exports = { excelSettings, DEVELOPMENT_BASE };
