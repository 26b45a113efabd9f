// `pnpm bench [--full] [--export FILE]`: how long a check takes, in this process once warm and as a whole process. Figures are
// medians of one run on one machine: compare them within a run, not across machines.

import { execFileSync } from "node:child_process"
import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join, resolve } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import { readPattern } from "@roundwright/instructions"
import { benchExpressions } from "./bench-expressions.ts"
import { benchMotifs } from "./bench-motifs.ts"
import { benchNet, exportNet } from "./bench-net.ts"
import { benchPages } from "./bench-pages.ts"
import { benchTubes } from "./bench-tubes.ts"

const twelveRounds = discText(12)
const root = resolve(import.meta.dirname, "..")

const call = medianOf(200, () => checkPattern(twelveRounds))
const reading = medianOf(200, () => readPattern(twelveRounds))
report("check of 12 rounds, library call, warm", call)
report("  of it reading", reading)
report(
  "reading 1,000 rounds of text",
  medianOf(5, () => readPattern(manyRounds(1000))),
)

const folder = mkdtempSync(join(tmpdir(), "roundwright-bench-"))
const file = join(folder, "disc.txt")
writeFileSync(file, twelveRounds)
const main = join(root, "packages/cli/src/main.ts")
report(
  "check of 12 rounds, whole process",
  medianOf(5, () =>
    execFileSync(
      process.execPath,
      ["--conditions=source", "--import", "tsx", main, "check", file],
      {
        cwd: root,
        stdio: "ignore",
      },
    ),
  ),
)

const exported = process.argv.indexOf("--export")
if (exported >= 0) {
  const name = process.argv[exported + 1]
  if (name === undefined) throw new Error("Say which file to write: --export FILE")
  exportNet(resolve(name))
}
benchTubes((line) => process.stdout.write(`${line}\n`))
benchExpressions((line) => process.stdout.write(`${line}\n`))
benchMotifs((line) => process.stdout.write(`${line}\n`))
benchNet(
  (line) => process.stdout.write(`${line}\n`),
  process.argv.includes("--full") ? [800, 3000, 10_000] : [800, 3000],
)
await benchPages((line) => process.stdout.write(`${line}\n`))

function report(what: string, ms: number): void {
  process.stdout.write(`${what.padEnd(44)} ${ms.toFixed(ms < 10 ? 2 : 0).padStart(8)} ms\n`)
}

/** Median of `times` runs in ms, after as many to warm up (at most 50). */
function medianOf(times: number, work: () => unknown): number {
  for (let i = 0; i < Math.min(times, 50); i++) work()
  const all = Array.from({ length: times }, () => {
    const start = performance.now()
    work()
    return performance.now() - start
  })
  return all.sort((a, b) => a - b)[Math.floor(times / 2)]!
}

/** A plain dc disc in words; its last rounds lie flat, so remedies are not searched. */
function discText(rounds: number): string {
  const lines = ["# Bench disc", "Terms: US", "Yarn: DK", "Hook: 4 mm", ""]
  for (let i = 1; i <= rounds; i++) lines.push(roundText(i))
  return `${lines.join("\n")}\n`
}

function roundText(i: number): string {
  const total = `(${12 * i} dc)`
  if (i === 1) return `Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. ${total}`
  if (i === 2)
    return `Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. ${total}`
  const plain = i === 3 ? "next st" : `next ${i - 2} sts`
  return `Rnd ${i}: ch 3 (does not count), *2 dc in next st, dc in ${plain}; rep from * around; join. ${total}`
}

/** Many short rounds: the text is long, the piece stays small. */
function manyRounds(count: number): string {
  const lines = ["Rnd 1: 24 sc in magic ring. (24 sc)"]
  for (let i = 2; i <= count; i++) lines.push(`Rnd ${i}: sc in each st around. (24 sc)`)
  return lines.join("\n")
}
