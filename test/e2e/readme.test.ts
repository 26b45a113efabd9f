// What the README shows is run: its library example as a program, its own pattern through the check,
// and the output it prints of the demo.

import { readFileSync, rmSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import { describe, expect, it } from "vitest"
import { root, runScript } from "../support/command.ts"

const readme = readFileSync(join(root, "README.md"), "utf8")

function blocks(language: string): string[] {
  return [...readme.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, "g"))].map(
    (match) => match[1]!,
  )
}

describe("README", () => {
  it("holds a library example that runs and prints what it says", () => {
    const [example] = blocks("ts")
    const file = join(root, "test/e2e/readme-example.generated.ts")
    writeFileSync(file, example!)
    try {
      const ran = runScript("test/e2e/readme-example.generated.ts", [])
      expect(ran.err).toBe("")
      expect(ran.out.trim().split("\n")).toEqual(["Lies flat.", "[ 6, 12, 18 ]"])
    } finally {
      rmSync(file)
    }
  })

  it("shows a pattern of one's own that is read without problems", () => {
    const pattern = blocks("text").find((block) => block.includes("Garden coaster"))!
    const result = checkPattern(pattern)
    expect(result.problems.filter((problem) => problem.severity !== "note")).toEqual([])
    expect(result.rounds.map((round) => round.agrees)).toEqual([true, true, true])
  })

  it("shows the demo's output as it is", () => {
    const shown = blocks("text").find((block) => block.includes("Palm House Pane"))!
    const ran = runScript("scripts/start.ts", [])
    expect(ran.status).toBe(0)
    expect(ran.out.startsWith(shown.trimEnd())).toBe(true)
  })
})
