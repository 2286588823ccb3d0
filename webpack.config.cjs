/**
 * Three targets: the command line (node), the embedded page with its worker, and the Excel build.
 * Built by src/scripts/build.mjs through webpack's node interface; types are checked apart (src/scripts/check.mjs).
 */
const { createHash } = require("node:crypto");
const { readFileSync, readdirSync } = require("node:fs");
const path = require("node:path");
const HtmlWebpackPlugin = require("html-webpack-plugin");
const MiniCssExtractPlugin = require("mini-css-extract-plugin");
const webpack = require("webpack");
const { excelSettings } = require("./src/scripts/excel-settings.cjs");
const { ShippedPackages } = require("./src/scripts/shipped-packages.cjs");

const root = __dirname;
const from = (...parts) => path.join(root, ...parts);

// A cache never outlives what made it: node, the lock file (so every package's version) and this file are in its name.
const cacheVersion = createHash("sha256")
  .update(process.version)
  .update(readFileSync(from("package-lock.json")))
  .update(readFileSync(__filename))
  .digest("hex")
  .slice(0, 16);

/** What all targets share. */
function base(name, mode) {
  return {
    name,
    mode,
    context: root,
    // Never an eval form: the page's content security policy forbids it.
    devtool: mode === "development" ? "source-map" : false,
    performance: { hints: false },
    infrastructureLogging: { level: "error" },
    // The first error ends a build: it would otherwise be minified for a minute before it is told.
    bail: true,
    cache: {
      type: "filesystem",
      cacheDirectory: from(".cache/webpack"),
      name: `${name}-${mode}`,
      version: cacheVersion,
    },
    resolve: { extensions: [".ts", ".tsx", ".js"], extensionAlias: { ".js": [".ts", ".tsx", ".js"] } },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          exclude: /node_modules/,
          loader: require.resolve("ts-loader"),
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
        { test: /\.m?js$/, resolve: { fullySpecified: false } },
      ],
    },
    plugins: [withoutHyphenation()],
  };
}

/**
 * The grid brings hyphenation patterns of 77 languages (8 MB, and the longest part of a build) for text documents;
 * cells are never hyphenated, so each pattern becomes an empty module, which it takes for "no such language".
 */
function withoutHyphenation() {
  return new webpack.NormalModuleReplacementPlugin(/^\.\/[\w-]+-[\w-]{8}\.js$/, (asked) => {
    if (/engine-render[\\/]lib[\\/]es$/.test(asked.context)) asked.request = from("src/scripts/empty.cjs");
  });
}

/** A program for node as an ES module, because package.json says "type": "module". Not minified: it is read, not sent. */
function node(name, mode, entry, output) {
  const config = base(name, mode);
  return {
    ...config,
    target: "node20",
    entry,
    output: { module: true, chunkFormat: "module", ...output },
    experiments: { outputModule: true },
    // import.meta stays what it is at run time: webpack would write this machine's path into the file.
    module: { ...config.module, parser: { javascript: { importMeta: false, url: false } } },
    optimization: { minimize: false },
  };
}

/** Notes the packages that a bundle holds, for the licences. */
const shipped = (name) => new ShippedPackages(from("dist/.shipped", `${name}.json`));

function browser(name, mode, entry, output, optimization) {
  const config = base(name, mode);
  return {
    ...config,
    target: ["web", "es2022"],
    entry,
    output: {
      clean: true,
      globalObject: "self",
      assetModuleFilename: "assets/[name][ext]",
      chunkFilename: "parts/[name].js",
      ...output,
    },
    resolve: {
      ...config.resolve,
      alias: {
        "@fluentui/react-icons$": from("src/scripts/fluent-icons.mjs"),
        "@stdlib/assert-has-generator-support$": from("src/scripts/has-generators.cjs"),
      },
    },
    module: {
      ...config.module,
      rules: [
        ...config.module.rules,
        // Style sheets as files of their own: nothing inline, nothing made by script.
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, require.resolve("css-loader")], sideEffects: true },
        { test: /\.(png|svg|woff2?)$/, type: "asset/resource" },
      ],
    },
    plugins: [...config.plugins, shipped(name), new MiniCssExtractPlugin({ filename: "[name].css" })],
    // Short names and no more: the rest of minifying takes as long again as the whole build and saves a fifteenth.
    optimization: { minimizeOptions: { javascript: { compress: false } }, ...optimization },
  };
}

function cli(mode) {
  const config = node(
    "cli",
    mode,
    { cli: "./src/cli/main.ts" },
    { path: from("dist"), filename: "[name].js", chunkFilename: "cli/[name].js" },
  );
  config.plugins.push(
    shipped("cli"),
    new webpack.BannerPlugin({ banner: "#!/usr/bin/env node", raw: true, entryOnly: true }),
  );
  return config;
}

function page(mode) {
  const entry = {
    main: "./src/page/main.ts",
    // A worker is started by its fixed name and loads its parts by importScripts.
    worker: { import: "./src/page/worker.ts", filename: "worker.js", chunkLoading: "import-scripts" },
    "file-worker": {
      import: "./src/page/file/worker.ts",
      filename: "file-worker.js",
      chunkLoading: "import-scripts",
    },
  };
  // The packages apart from our own code: after a change of ours only that is minified again, and what the page and the
  // worker both hold stands once.
  const packages = {
    test: /node_modules/,
    chunks: "initial",
    name: (_module, chunks) => ["packages", ...chunks.map(({ name }) => name).sort()].join("-"),
    enforce: true,
  };
  const config = browser(
    "page",
    mode,
    entry,
    { path: from("dist/page"), filename: "[name].js" },
    { splitChunks: { usedExports: false, cacheGroups: { packages } } },
  );
  config.plugins.push(
    new HtmlWebpackPlugin({ template: "./src/page/index.html", chunks: ["main"], scriptLoading: "defer" }),
  );
  return config;
}

/** One page for the shared runtime: the functions first, then the pane, which shares their modules. */
function excel(mode, folder) {
  const { officeJs, policy, blankErrors } = excelSettings();
  const entry = {
    functions: "./src/host/excel/functions.ts",
    pane: { import: "./src/pane/excel/main.ts", dependOn: "functions" },
  };
  // Elsewhere than in dist/ it counts for nothing that ships.
  const name = folder === from("dist/excel") ? "excel" : "excel-aside";
  const config = browser(name, mode, entry, { path: folder, filename: "[name].js" });
  config.plugins.push(
    new webpack.DefinePlugin({ GREYBODY_BLANK_ERRORS: JSON.stringify(blankErrors) }),
    new HtmlWebpackPlugin({
      template: "./src/pane/excel/pane.html",
      filename: "pane.html",
      scriptLoading: "defer",
      templateParameters: { officeJs, policy },
    }),
  );
  return config;
}

/** For the build and the development server: what is made from the catalogue, and the command line's own server. */
function excelTools(mode) {
  return node(
    "excel-tools",
    mode,
    {
      metadata: "./src/host/excel/metadata.ts",
      "help-page": "./src/host/excel/help-page.ts",
      serve: "./src/cli/serve.ts",
    },
    {
      path: from(".cache/built"),
      filename: "[name].mjs",
      library: { type: "module" },
    },
  );
}

/** Each file of tests/bench as a program of its own. */
function bench(mode) {
  const files = readdirSync(from("tests/bench")).filter((file) => file.endsWith(".ts"));
  const entry = Object.fromEntries(files.map((file) => [path.basename(file, ".ts"), `./tests/bench/${file}`]));
  return {
    ...node("bench", mode, entry, { path: from(".cache/bench"), filename: "[name].mjs" }),
    externals: { mitata: "module mitata", "playwright-core": "module playwright-core" },
  };
}

/** The webpack configurations of each target, in the order in which they are built; `folders` by target, if not dist/. */
module.exports = (mode = "production", folders = {}) => ({
  cli: [cli(mode)],
  page: [page(mode)],
  excel: [excel(mode, folders.excel ?? from("dist/excel")), excelTools(mode)],
  get bench() {
    return [bench(mode)];
  },
});
