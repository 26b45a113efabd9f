// How the time of every expression grows with the text it goes over: strings of one run and an end that lets it fail, three
// lengths, the exponent from the shortest to the longest. What is over in no time at 32,000 characters has none.

import { readdirSync, readFileSync } from "node:fs"
import { resolve } from "node:path"
import { expressionsIn } from "../test/support/expressions.ts"

/** What the runs are made of: what patterns, headings and pages are written in. */
const runs = [..." ast19.,;:-()[*\n\tch'\"/<=+#_"].concat("ab ", "1 ", "sc, ", "(1", "- ", "a1")
const ends = ["", "!", "\0", "x", "1"]
/** Characters: looked at first, and then the two that are set against one another. */
const [usual, short, long] = [32_000, 8_000, 64_000]
/** Under so many ms nothing can be said of how a time grows. */
const leastMs = 1.5
/** Asked of every expression over a user's text. */
const askedExponent = 1.2

export function benchExpressions(write: (line: string) => void): void {
  const packages = resolve(import.meta.dirname, "../packages")
  const files = readdirSync(packages).flatMap((name) =>
    readdirSync(`${packages}/${name}/src`, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts"))
      .map((file) => `${packages}/${name}/src/${file}`),
  )
  const all = files.flatMap((file) => expressionsIn(readFileSync(file, "utf8")))
  let worst = { exponent: 0, written: "none", run: "" }
  let slow = 0
  for (const { written, expression } of all)
    for (const run of runs)
      for (const end of ends) {
        const text = (length: number) => run.repeat(length / run.length) + end
        if (leastOf(expression, text(usual)) < leastMs) continue
        slow += 1
        const growth = (tries: number) =>
          leastOf(expression, text(long), tries) / leastOf(expression, text(short), tries)
        const exponentOf = (times: number) => Math.log(times) / Math.log(long / short)
        const once = exponentOf(growth(3))
        // A time that was disturbed is measured again.
        const exponent = once > askedExponent ? Math.min(once, exponentOf(growth(15))) : once
        if (exponent > worst.exponent) worst = { exponent, written, run: JSON.stringify(run + end) }
      }
  write(
    `${all.length} expressions over ${runs.length * ends.length} strings each: ${slow} times over ${leastMs} ms at ${usual} characters`,
  )
  write(
    `  highest exponent ${worst.exponent.toFixed(2)} (asked ${askedExponent}): ${worst.written.slice(0, 60)} over ${worst.run}`,
  )
}

/** The least of so many times that the processor spent, ms: what else the machine does counts little. */
function leastOf(expression: RegExp, text: string, tries = 3): number {
  let least = Number.POSITIVE_INFINITY
  for (let k = 0; k < tries; k++) {
    const before = process.cpuUsage()
    if (expression.global) text.replace(expression, "")
    else expression.test(text)
    const { user, system } = process.cpuUsage(before)
    least = Math.min(least, (user + system) / 1000)
    expression.lastIndex = 0
  }
  return least
}
