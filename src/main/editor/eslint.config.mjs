// The scripts that people's browsers run: the server's pages and the packs.
import js from "@eslint/js";
import globals from "globals";

const rules = {
  ...js.configs.recommended.rules,
  curly: ["error", "multi-line"],
  eqeqeq: "error",
  "no-implicit-globals": "error",
  "no-shadow": "error",
  "no-unused-vars": ["error", { args: "after-used" }],
  "no-var": "error",
  "prefer-const": "error",
  "max-len": ["error", { code: 140, ignoreStrings: true, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true }],
};

export default [
  { ignores: ["**/vendor/**"] },
  {
    files: ["**/META-INF/resources/**/*.js"],
    languageOptions: { ecmaVersion: 2022, sourceType: "module", globals: globals.browser },
    rules,
  },
  {
    // a pack is opened by old phones from a file: the build joins these to one plain script
    files: ["scripts/*.js"],
    languageOptions: { ecmaVersion: 2020, sourceType: "module", globals: { ...globals.browser, ...globals.serviceworker } },
    rules,
  },
];
