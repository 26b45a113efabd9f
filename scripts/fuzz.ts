// `pnpm fuzz [COUNT] [SEED]`: damaged patterns, a million by default: nothing may be thrown, hang over a
// second of processor time, or take more than 300 MB; every problem's place must lie inside the text.
// The reading runs in a process whose heap is bounded, so that what it needs is told from what the machine
// leaves uncollected: a reading that needs more ends the run. Prints what broke and the figures; ends with
// 1 when anything broke.

import { spawnSync } from "node:child_process"
import { readPattern } from "@roundwright/instructions"
import { damaged, faultOf, randomFrom } from "../packages/instructions/test/mutate.ts"

const count = Number(process.argv[2] ?? 1_000_000)
const seed = Number(process.argv[3] ?? 1)

/** Longest a reading may take, ms of processor time. */
const longestMs = 1000
/** Most memory of the whole process, bytes. */
const mostMemory = 300e6
/** The heap a reading may need, in MB: the rest of the 300 is for the runtime and the reader's own code. */
const boundedHeap = ["--max-old-space-size=96", "--max-semi-space-size=8"]

if (boundedHeap.every((flag) => process.execArgv.includes(flag))) readDamaged()
else {
  const { status } = spawnSync(
    process.execPath,
    [...boundedHeap, ...process.execArgv, ...process.argv.slice(1)],
    { stdio: "inherit" },
  )
  process.exitCode = status ?? 1
}

function readDamaged(): void {
  const random = randomFrom(seed)
  let slowest = 0
  let memory = 0
  let broken = 0
  for (let i = 0; i < count; i++) {
    const text = damaged(random)
    const start = process.cpuUsage()
    const fault = faultOf(text, readPattern)
    const { user, system } = process.cpuUsage(start)
    const ms = (user + system) / 1000
    slowest = Math.max(slowest, ms)
    if (i % 1000 === 0) memory = Math.max(memory, process.memoryUsage.rss())
    if (fault || ms > longestMs) {
      broken += 1
      process.stdout.write(`${fault ?? `slow, ${ms.toFixed(0)} ms`}: ${JSON.stringify(text)}\n`)
    }
  }
  process.stdout.write(
    `${count} damaged patterns from seed ${seed}: ${broken} broke something; the slowest took ${slowest.toFixed(0)} ms of processor time; at most ${(memory / 1e6).toFixed(0)} MB\n`,
  )
  process.exitCode = broken > 0 || memory > mostMemory ? 1 : 0
}
