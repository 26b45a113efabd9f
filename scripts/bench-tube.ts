// One tube checked: `bench-tube ROUNDS AROUND` prints the ms of its verdict by growth and those the processor spent on it, the
// most memory the process took so far, MB, and the ms of the same check with what to change.

import { examinePattern } from "@roundwright/assessment"

const [rounds, around] = process.argv.slice(2).map(Number) as [number, number]
const lines = [
  "Terms: US",
  "Rnd 1: 6 sc in magic ring. (6 sc)",
  ...(around < 12 ? [] : ["Rnd 2: 2 sc in each st around. (12 sc)"]),
]
for (let sts = 18; sts <= around; sts += 6)
  lines.push(
    `Rnd ${sts / 6}: *sc in next ${sts / 6 - 2} sts, 2 sc in next st; rep from * around. (${sts} sc)`,
  )
lines.push(`Rnds ${around / 6 + 1}-${rounds}: sc in each st around.`)
const text = lines.join("\n")
const spent = process.cpuUsage()
const growthMs = timed(() => examinePattern(text, { remedies: false }))
const { user, system } = process.cpuUsage(spent)
const growthMb = Math.round(process.resourceUsage().maxRSS / 1024)
const wholeMs = timed(() => examinePattern(text)) - growthMs
process.stdout.write(
  JSON.stringify({
    growthMs,
    spentMs: Math.round((user + system) / 1000),
    growthMb,
    wholeMs: Math.max(0, wholeMs),
  }),
)

function timed(work: () => unknown): number {
  const start = performance.now()
  work()
  return Math.round(performance.now() - start)
}
