import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^risingmain$/, replacement: path("./src/index.ts") },
      { find: /^risingmain\/(.+)$/, replacement: `${path("./src/")}$1/index.ts` },
    ],
  },
  test: {
    reporters: process.env["CI"] ? ["dot", ["json", { outputFile: "coverage/test-results.json" }]] : ["dot"],
    coverage: { provider: "v8", include: ["src/**/*.ts"], reporter: ["text-summary", "lcovonly"] },
    projects: [
      {
        extends: true,
        test: {
          name: "tests",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/examples/**", "tests/runtimes/**"],
          setupFiles: ["tests/setup.ts"],
        },
      },
      {
        extends: true,
        test: { name: "examples", include: ["tests/examples/generated/*.test.ts"], isolate: false, pool: "threads" },
      },
    ],
  },
});
