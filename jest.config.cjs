const { availableParallelism } = require("node:os");
const path = require("node:path");

// Readings and reference rows shared by the projects of this house stand beside the checkout.
process.env.GREYBODY_SHARED ??= path.resolve(__dirname, "../shared");

/** @type {import("jest").Config} */
module.exports = {
  testEnvironment: "node",
  testMatch: ["<rootDir>/tests/**/*.test.ts"],
  globalSetup: "<rootDir>/tests/support/global-setup.mjs",
  transform: {
    // Types are checked once, in the check step.
    "\\.tsx?$": [
      "ts-jest",
      {
        transpilation: true,
        tsconfig: {
          target: "ES2022",
          module: "CommonJS",
          moduleResolution: "Node10",
          esModuleInterop: true,
          isolatedModules: true,
        },
      },
    ],
  },
  // Our imports end in .js, as node and the browser want them; here the sources stand behind them.
  moduleNameMapper: { "^(\\.{1,2}/.*)\\.js$": "$1" },
  modulePathIgnorePatterns: ["<rootDir>/dist", "<rootDir>/.cache"],
  maxWorkers: Math.min(4, availableParallelism()),
  testTimeout: 60_000,
};
