// `roundwright check FILE...`: one result a file, for a person or as JSON.

import {
  type CheckResult,
  checkPattern,
  type Effort,
  examinePattern,
} from "@roundwright/assessment"
import { type Adaptation, adaptGauge } from "@roundwright/shaping"
import type { Gauge, Terms } from "@roundwright/stitches"
import { readText } from "./files.ts"
import { gaugeOfHand, type HandOptions } from "./hand.ts"
import { printResult } from "./print-result.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface CheckRequest extends HandOptions {
  readonly json: boolean
  readonly shape: "ledger" | "net"
  readonly effort: Effort
}

/** @throws RoundwrightError for a yarn, hook or gauge that is none; the caller prints it */
export function runCheck(
  files: readonly string[],
  options: CheckRequest,
  around: Surroundings,
): number {
  if (files.length === 0) {
    around.err("roundwright check: name at least one pattern file.\n")
    return 2
  }
  const compared = handIn(options, "US") !== null
  let status = 0
  files.forEach((file, index) => {
    const read = readText(around.cwd, file)
    const { result, inYourHands } =
      "text" in read
        ? checkBoth(read.text, file, options)
        : { result: unreadable(file, read.fault), inYourHands: null }
    if (options.json) {
      const whole = compared ? { ...result, inYourHands } : result
      around.out(`${JSON.stringify(whole, null, files.length > 1 ? undefined : 2)}\n`)
    } else {
      const text = "text" in read ? read.text : ""
      around.out(`${index > 0 ? "\n" : ""}${printResult(result, text, files.length > 1)}`)
      if (inYourHands) around.out(`\n${printAdvice(inYourHands)}\n`)
    }
    status = Math.max(status, result.exitStatus)
  })
  return status
}

/** The pattern as it is, and beside it what comes of it with another yarn, hook or hand. */
function checkBoth(
  text: string,
  file: string,
  options: CheckRequest,
): { result: CheckResult; inYourHands: Adaptation | null } {
  const { shape, effort } = options
  const { result, reading, gauge } = examinePattern(text, { file, shape, effort })
  const { terms, motif } = reading
  const mine = handIn(options, terms)
  const worked = mine !== null && gauge !== null && motif.rounds.length > 0
  return { result, inYourHands: worked ? adaptGauge(gauge, mine, motif, terms) : null }
}

/** A maker's own gauge names stitches as her pattern does; a name that only the other terms have is read in those. */
function handIn(options: HandOptions, terms: Terms): Gauge | null {
  try {
    return gaugeOfHand({ ...options, terms })
  } catch (error) {
    if (options.gauge === undefined) throw error
    try {
      return gaugeOfHand({ ...options, terms: terms === "US" ? "UK" : "US" })
    } catch {
      throw error
    }
  }
}

function printAdvice({ advice }: Adaptation): string {
  return [
    "With your yarn, hook or gauge",
    ...advice.map((one) => wrap(one, 80, "  - ", "    ")),
  ].join("\n")
}

/** The result for a file that cannot be read at all: one problem, nothing else. */
function unreadable(file: string, fault: string): CheckResult {
  const result = checkPattern("", { file })
  return {
    ...result,
    problems: [
      {
        severity: "error",
        code: "file-unreadable",
        round: null,
        line: 1,
        column: 1,
        length: 1,
        message: fault,
        hint: "Check the name and the folder.",
      },
    ],
  }
}
