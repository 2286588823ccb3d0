import { createRequire } from "node:module";
import webpack from "webpack";
import { inRoot } from "./paths.mjs";

/** Runs the webpack configurations of one target one after another; throws with webpack's own words when one fails. */
export async function bundle(target, mode) {
  const configurations = createRequire(import.meta.url)(inRoot("webpack.config.cjs"))(mode)[target];
  for (const configuration of configurations) await run(configuration);
}

/** Runs one webpack configuration to its end, its cache written. */
export function run(configuration) {
  return new Promise((resolve, reject) => {
    const compiler = webpack(configuration);
    compiler.run((failure, stats) => {
      // Closing writes the cache: only then is a next build quick.
      compiler.close((closing) => {
        if (failure ?? closing) reject(failure ?? closing);
        else if (stats.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true, colors: false })));
        else resolve();
      });
    });
  });
}
