// The longest pattern that is read, 5,000 rounds of 60 stitches, is checked in a process whose heap is bounded: with the
// runtime and the sources compiled in it that stays under 300 MB. That it ends at all bounds its work, which is counted.

import { spawnSync } from "node:child_process"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"

/** Old and young part together leave more than half of 300 MB to the runtime. */
const boundedHeap = ["--max-old-space-size=128", "--max-semi-space-size=8"]
const sources = ["--conditions=source", "--import", "tsx", "--input-type=module"]
const script = `
  import { examinePattern } from "@roundwright/assessment"
  const rounds = ["Rnd 1: 6 sc in magic ring. (6 sc)", "Rnd 2: 2 sc in each st around. (12 sc)"]
  for (let around = 18; around <= 60; around += 6)
    rounds.push(\`Rnd \${around / 6}: *sc in next \${around / 6 - 2} sts, 2 sc in next st; rep from * around. (\${around} sc)\`)
  rounds.push("Rnds 11-5000: sc in each st around.")
  const { result } = examinePattern(["Terms: US", ...rounds].join("\\n"), { remedies: false })
  const { motif, laidOut, rounds: read } = result
  process.stdout.write(JSON.stringify([motif.rounds, read.at(-1).counted.stitches, laidOut.verdict]))
`

describe("a tube of 5,000 rounds of 60", () => {
  it("has its verdict by growth in a bounded heap", () => {
    const root = fileURLToPath(new URL("../..", import.meta.url))
    const ran = spawnSync(process.execPath, [...boundedHeap, ...sources, "--eval", script], {
      cwd: root,
      encoding: "utf8",
    })
    expect(ran.stderr).toBe("")
    expect(JSON.parse(ran.stdout)).toEqual([5000, 60, "cups"])
  })
})
