// The structure check finds files that import one another, and only those.

import { describe, expect, it } from "vitest"
import { importCycles } from "../../scripts/import-cycles.ts"

const files = (sources: Record<string, string>) => new Map(Object.entries(sources))

describe("import cycles", () => {
  it("are found over any number of files, by types too, and named by their files", () => {
    const cycles = importCycles(
      files({
        "src/a.ts": 'import { b } from "./b.ts"\nimport { z } from "./z.ts"',
        "src/b.ts": 'import type { C } from "./in/c.ts"',
        "src/in/c.ts": 'export const c = await import("../a.ts")',
        "src/own.ts": 'import { own } from "./own.ts"',
        "src/z.ts": 'import "node:fs"\nimport { y } from "y"',
      }),
    )
    expect(cycles).toEqual([["src/a.ts", "src/b.ts", "src/in/c.ts"], ["src/own.ts"]])
  })

  it("are not seen where several ways lead to one file", () => {
    const cycles = importCycles(
      files({
        "a.ts": 'import "./b.ts"\nimport "./c.ts"',
        "b.ts": 'export * from "./d.ts"',
        "c.ts": 'export * from "./d.ts"',
        "d.ts": "export {}",
      }),
    )
    expect(cycles).toEqual([])
  })
})
