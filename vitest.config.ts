import { defineConfig } from "vitest/config"

export default defineConfig({
  resolve: { conditions: ["source"] },
  ssr: { resolve: { conditions: ["source"] } },
  test: {
    include: ["packages/*/test/**/*.test.ts", "test/**/*.test.ts"],
    testTimeout: 60_000,
    // The main process hardly works: left to itself vitest would leave one of two cores idle.
    maxWorkers: "100%",
    reporters: ["default", "./test/support/count-reporter.ts"],
  },
})
