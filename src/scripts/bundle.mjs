import { createRequire } from "node:module";
import path from "node:path";
import webpack from "webpack";
import { inRoot, root } from "./paths.mjs";

/**
 * Runs the webpack configurations of one target one after another; throws with webpack's own words when one fails.
 * `folders` by target: where to, if not into dist/.
 */
export async function bundle(target, mode, folders = {}) {
  const configurations = createRequire(import.meta.url)(inRoot("webpack.config.cjs"))(mode, folders)[target];
  for (const configuration of configurations) await run(configuration);
}

/** Runs one webpack configuration to its end, its cache written. */
function run(configuration) {
  return new Promise((resolve, reject) => {
    const compiler = webpack(configuration);
    compiler.run((failure, stats) => {
      // Closing writes the cache: only then is a next build quick.
      compiler.close((closing) => {
        if (failure) reject(new Error([failure.message, ...whereIn(failure.module)].join("\n  in ")));
        else if (closing) reject(closing);
        else if (stats.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true, colors: false })));
        else resolve();
      });
    });
  });
}

/** The file that a failure was met in, where webpack says so. */
function whereIn(module) {
  const file = module?.nameForCondition?.();
  return file ? [path.relative(root, file)] : [];
}
