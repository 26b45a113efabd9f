// Patterns that are wrong, broken, huge or no patterns at all: each ends in a clear message and the
// right exit status, in the process a user runs. That it ends at all is the check; how fast is in the bench.

import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { beforeAll, describe, expect, it } from "vitest"
import { roundwright } from "../support/command.ts"

let folder = ""
const files: Record<string, string | Buffer> = {
  "one-group-more.txt": `Terms: US
Rnd 1: ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, (3 dc in ring, ch 2) 4 times; join to top of ch-3. (15 dc, 5 ch-2 sps)
Rnd 2: sl st to next ch-2 sp; (ch 3, 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times; join to top of ch-3. (24 dc)
`,
  "wrong-total.txt": `Terms: US
Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (20 sc)
`,
  "nonsense.txt":
    "Terms: US\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: blorf in each st around. (12 sc)\n",
  "empty.txt": "",
  "binary.dat": Buffer.from(Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256)),
  "huge.txt": "Rnd 1: 6 sc in magic ring. (6 sc)\n".repeat(150_000),
  "endless-repeat.txt":
    "Terms: US\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: *2 sc in next st; rep from * 1000000000 times. (12 sc)\n",
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-hard-"))
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
})

interface Problem {
  severity: string
  code: string
  round: number | null
  line: number
  column: number
  length: number
  message: string
  hint: string
}

function check(file: string): { status: number | null; problems: Problem[]; err: string } {
  const ran = roundwright(["check", file, "--json"], folder)
  return { status: ran.status, problems: JSON.parse(ran.out).problems, err: ran.err }
}

describe("hard inputs", () => {
  it.each([
    ["one-group-more.txt", 1, 3],
    ["wrong-total.txt", 1, 4],
    ["nonsense.txt", 1, 3],
    ["empty.txt", 2, 1],
    ["binary.dat", 2, 1],
    ["huge.txt", 2, null],
    ["endless-repeat.txt", 1, 3],
  ] as const)("%s ends with %i and says where", (file, status, line) => {
    const result = check(file)
    expect(result.err).toBe("")
    expect(result.status).toBe(status)
    // A round that stands for its total is told, however well the total settles it.
    const told = result.problems.filter(
      ({ severity, code }) => severity !== "note" || code === "read-with-gap",
    )
    expect(told.length).toBeGreaterThan(0)
    for (const problem of told) {
      expect(problem.message.length).toBeGreaterThan(10)
      expect(problem.hint.length).toBeGreaterThan(5)
    }
    if (line !== null) expect(told.map((problem) => problem.line)).toContain(line)
  })

  it.each([
    [5000, ["--quick"]],
    [1100, []],
  ])(
    "tells of a tube of %i rounds how it lies, and where it looked for what to change",
    (rounds, options) => {
      const tube = [
        "Terms: US",
        "Rnd 1: 6 sc in magic ring. (6 sc)",
        "Rnd 2: 2 sc in each st around. (12 sc)",
        `Rnds 3-${rounds}: sc in each st around.`,
      ]
      writeFileSync(join(folder, "tube.txt"), tube.join("\n"))
      const ran = roundwright(["check", "tube.txt", "--json", ...options], folder)
      const result = JSON.parse(ran.out)
      expect(ran.status).toBe(1)
      expect(result.ledger).toHaveLength(rounds)
      expect(result.laidOut.verdict).not.toBe("flat")
      expect(result.notes.join()).toMatch(/The piece is large: what to change was looked for/)
    },
  )

  it("points at the word that is not understood", () => {
    const text = String(files["nonsense.txt"]).split("\n")
    const words = check("nonsense.txt")
      .problems.filter((p) => p.line === 3)
      .map((p) => text[2]!.slice(p.column - 1, p.column - 1 + p.length))
    expect(words.some((marked) => marked.startsWith("blorf"))).toBe(true)
  })

  it("tells both numbers of a wrong total", () => {
    const [problem] = check("wrong-total.txt").problems.filter((p) => p.severity !== "note")
    expect(problem!.message).toMatch(/18/)
    expect(problem!.message).toMatch(/20/)
  })

  it("keeps the answer for the rounds before the one that is assumed, and says that it is", () => {
    const ran = roundwright(["check", "nonsense.txt", "--json"], folder)
    const result = JSON.parse(ran.out)
    expect(result.laidOut).not.toBeNull()
    expect(result.rounds[0].verdict).toBe("flat")
    expect(result.rounds.map(({ assumed }: { assumed?: true }) => assumed)).toEqual([
      undefined,
      true,
    ])
  })
})
