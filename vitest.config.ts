import { defineConfig } from "vitest/config"

export default defineConfig({
  resolve: { conditions: ["source"] },
  ssr: { resolve: { conditions: ["source"] } },
  test: {
    include: ["packages/*/test/**/*.test.ts", "test/**/*.test.ts"],
    // Limits against a hang, not measures of speed: a cold machine with other work on both cores takes minutes for a few.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    expect: { poll: { timeout: 120_000 } },
    // The main process hardly works: left to itself vitest would leave one of two cores idle.
    maxWorkers: "100%",
    reporters: ["default", "./test/support/count-reporter.ts"],
  },
})
