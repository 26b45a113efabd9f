// `roundwright check FILE...`: one result a file, for a person or as JSON.

import {
  type CheckResult,
  checkPattern,
  type Effort,
  examinePattern,
} from "@roundwright/assessment"
import { type Adaptation, adaptGauge } from "@roundwright/shaping"
import type { Gauge } from "@roundwright/stitches"
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
  const mine = gaugeOfHand(options)
  let status = 0
  files.forEach((file, index) => {
    const read = readText(around.cwd, file)
    const { result, inYourHands } =
      "text" in read
        ? checkBoth(read.text, file, options, mine)
        : { result: unreadable(file, read.fault), inYourHands: null }
    if (options.json) {
      const whole = mine ? { ...result, inYourHands } : result
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
  { shape, effort }: CheckRequest,
  mine: Gauge | null,
): { result: CheckResult; inYourHands: Adaptation | null } {
  const { result, reading, gauge } = examinePattern(text, { file, shape, effort })
  const worked = mine !== null && gauge !== null && reading.motif.rounds.length > 0
  return { result, inYourHands: worked ? adaptGauge(gauge, mine, reading.motif) : null }
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
