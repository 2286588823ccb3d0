const { mkdirSync, writeFileSync } = require("node:fs");
const path = require("node:path");

/** The folder of the package that a file belongs to, or undefined for a file of our own. */
function packageFolder(file) {
  return /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(file)?.[0];
}

/**
 * Webpack plugin: writes the folders (relative to the project) of the packages whose modules stand in what was
 * emitted, so that licences are judged on what ships and not on what is installed.
 */
class ShippedPackages {
  constructor(file) {
    this.file = file;
  }

  apply(compiler) {
    compiler.hooks.afterEmit.tap("ShippedPackages", (compilation) => {
      const folders = new Set();
      const visit = (module) => {
        const resource = module.nameForCondition?.();
        const folder = resource && packageFolder(resource);
        if (folder) folders.add(path.relative(compiler.context, folder).split(path.sep).join("/"));
        for (const inner of module.modules ?? []) visit(inner);
      };
      for (const module of compilation.modules) {
        if (compilation.chunkGraph.getNumberOfModuleChunks(module) > 0) visit(module);
      }
      mkdirSync(path.dirname(this.file), { recursive: true });
      writeFileSync(this.file, `${JSON.stringify([...folders].sort(), undefined, 2)}\n`);
    });
  }
}

module.exports = { ShippedPackages };
