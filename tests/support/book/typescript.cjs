/**
 * Lets plain node require this project's TypeScript: the engine's packages load by require only, and jest cannot load
 * them at all. For tests that want the engine with a workbook in it; what ships is bundled.
 */
const Module = require("node:module");
const { existsSync, readFileSync } = require("node:fs");
const path = require("node:path");
const ts = require("typescript");

require.extensions[".ts"] = (module, file) => {
  const { outputText } = ts.transpileModule(readFileSync(file, "utf8"), {
    fileName: file,
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022, esModuleInterop: true },
  });
  module._compile(outputText, file);
};

// Our imports end in .js, as node and the browser want them; here the sources stand behind them.
const resolve = Module._resolveFilename;
Module._resolveFilename = (request, parent, ...rest) => {
  const source =
    /^\.{1,2}\/.*\.js$/.test(request) && parent?.filename?.endsWith(".ts") ? request.replace(/\.js$/, ".ts") : request;
  const found =
    source !== request && existsSync(path.resolve(path.dirname(parent.filename), source)) ? source : request;
  return resolve(found, parent, ...rest);
};

require(path.resolve(process.argv[2]));
