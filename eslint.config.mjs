import tseslint from "typescript-eslint";

/** Imports as node and the browser resolve them, and names where they are made. */
const importRules = [
  {
    selector: ":matches(ImportDeclaration, ExportNamedDeclaration)[source.value=/^\\.(?!.*\\.(js|json|css)$)/]",
    message: "A relative import ends in .js (or .json, .css).",
  },
  { selector: "ExportAllDeclaration", message: "No barrels: name what is exported, where it is made." },
  { selector: "ExportDefaultDeclaration", message: "A name is found again; a default export is not." },
];

const officeGlobals = ["Office", "Excel", "CustomFunctions", "OfficeExtension", "OfficeRuntime"].map((name) => ({
  name,
  message: "Only src/host/excel names Office.",
}));

const nodeGlobals = ["console", "process", "URL", "performance", "setTimeout", "clearTimeout", "Buffer", "fetch"];

export default tseslint.config(
  { ignores: ["dist/", ".cache/", "coverage/", "node_modules/", "**/*.d.ts"] },
  {
    files: ["src/**/*.{ts,tsx}", "tests/**/*.{ts,tsx}"],
    extends: [tseslint.configs.recommendedTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "max-lines": ["error", { max: 250 }],
      "no-restricted-syntax": ["error", ...importRules],
      "no-restricted-globals": ["error", ...officeGlobals],
      eqeqeq: "error",
      "no-alert": "error",
      "no-console": "error",
      "no-eval": "error",
      "no-implied-eval": "off",
      "@typescript-eslint/no-implied-eval": "error",
      "@typescript-eslint/consistent-type-imports": [
        "error",
        { fixStyle: "inline-type-imports", disallowTypeAnnotations: false },
      ],
      "@typescript-eslint/explicit-module-boundary-types": "error",
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true, allowBoolean: true }],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
      "@typescript-eslint/no-unnecessary-condition": "error",
      // Loops over typed arrays under noUncheckedIndexedAccess need the mark.
      "@typescript-eslint/no-non-null-assertion": "off",
      // An index loop that walks several arrays at once stays one.
      "@typescript-eslint/prefer-for-of": "off",
    },
  },
  {
    // Pure: the same inputs give the same result, on any machine and any day.
    files: ["src/core/**/*.ts", "src/functions/**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        ...officeGlobals,
        ...["Date", "console", "process", "performance", "fetch", "window", "document", "self"].map((name) => ({
          name,
          message: "The core knows no clock, host or page.",
        })),
      ],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "Random numbers come from a generator with a given seed." },
      ],
    },
  },
  {
    files: ["src/host/excel/**/*.ts"],
    rules: { "no-restricted-globals": "off", "@typescript-eslint/triple-slash-reference": "off" },
  },
  { files: ["src/cli/**/*.ts", "tests/bench/**/*.ts"], rules: { "no-console": "off" } },
  {
    files: ["src/scripts/**/*.{mjs,cjs}", "tests/**/*.mjs", "*.{mjs,cjs}"],
    extends: [tseslint.configs.recommended],
    languageOptions: {
      globals: Object.fromEntries(
        [...nodeGlobals, "require", "module", "__dirname", "__filename"].map((name) => [name, "readonly"]),
      ),
    },
    rules: { "max-lines": ["error", { max: 250 }], "no-undef": "error", eqeqeq: "error" },
  },
  { files: ["**/*.cjs"], rules: { "@typescript-eslint/no-require-imports": "off" } },
);
