/**
 * The arrows of DEVELOPERS.md: core ← functions ← (host, templates) ← (pane, page, cli);
 * data is read through core or functions; only host/excel names Office; no cycles.
 */
const part = (...names) => `^src/(${names.join("|")})/`;

/** From a part of the tree, nothing else of src than what is named may be imported. */
const only = (name, from, ...to) => ({
  name,
  severity: "error",
  from: { path: from },
  to: { path: "^src/", pathNot: to },
});

/** @type {import("dependency-cruiser").IConfiguration} */
module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "found", severity: "error", from: {}, to: { couldNotResolve: true } },
    only("data-knows-nobody", part("data"), part("data")),
    only("core-knows-data-only", part("core"), part("core", "data")),
    only("front-door-is-the-core", "^src/index\\.ts$", part("core")),
    only("functions-rest-on-core", part("functions"), part("functions", "core", "data")),
    only("templates-rest-on-functions", part("templates"), part("templates", "functions", "core")),
    // A host lays out what a template describes, so it knows the shape of a description and no template.
    only(
      "host-rests-on-functions",
      part("host"),
      part("host", "functions", "core"),
      "^src/templates/(contract|contents)\\.ts$",
    ),
    only(
      "hosts-know-no-other",
      "^src/host/(?!file/)([^/]+)/",
      "^src/host/$1/",
      "^src/host/[^/]+\\.ts$",
      part("functions", "core"),
      "^src/templates/(contract|contents)\\.ts$",
    ),
    // A workbook as a file has no screen and no engine of its own: its formulas are worked out by the embedded engine.
    only(
      "file-has-the-embedded-engine",
      "^src/host/file/",
      part("host/file", "host/embedded"),
      "^src/host/[^/]+\\.ts$",
      part("functions", "core"),
      "^src/templates/(contract|contents)\\.ts$",
    ),
    only("pane-rests-on-the-port", part("pane"), part("pane", "host", "templates", "functions", "core")),
    only("page-holds-grid-and-pane", part("page"), part("page", "pane", "host", "templates", "functions", "core")),
    only("cli-has-no-screen", part("cli"), part("cli", "host", "templates", "functions", "core")),
    {
      name: "only-excel-names-office",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/(host/excel|scripts)/" },
      to: { path: "node_modules/(@microsoft/office|@types/(office|custom-functions)|office-)" },
    },
    {
      name: "only-its-pane-reaches-excel",
      comment: "The page and the command line run without Office.",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/(host|pane)/excel/" },
      to: { path: "^src/host/excel/" },
    },
    {
      name: "core-is-bare",
      comment: "Pure computation: no node, no grid, no screen.",
      severity: "error",
      from: { path: `${part("core", "data", "functions", "templates")}|^src/index\\.ts$` },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "core-needs-no-package",
      comment: "Save single functions of @stdlib.",
      severity: "error",
      from: { path: `${part("core", "data", "functions", "templates")}|^src/index\\.ts$` },
      to: { path: "node_modules/", pathNot: "node_modules/@stdlib/" },
    },
    {
      name: "no-node-in-the-browser",
      severity: "error",
      from: { path: part("pane", "page") },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "scripts-stand-apart",
      severity: "error",
      from: { path: "^src/", pathNot: part("scripts") },
      to: { path: part("scripts") },
    },
    { name: "no-test-ships", severity: "error", from: { path: "^src/" }, to: { path: "^tests/" } },
    { name: "no-paid-grid", severity: "error", from: {}, to: { path: "@univerjs-pro/" } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    moduleSystems: ["es6"],
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
    },
  },
};
