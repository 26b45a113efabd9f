// `roundwright check FILE...`: one result a pattern, for a person or as JSON.

import {
  type CheckResult,
  checkPattern,
  type Effort,
  examinePattern,
  gaugeFromPieces,
  withRemedies,
} from "@roundwright/assessment"
import { type Adaptation, adaptGauge } from "@roundwright/shaping"
import type { Gauge, GaugeInput, Terms } from "@roundwright/stitches"
import { gaugeOfHand, type HandOptions } from "./hand.ts"
import { holdsPatterns, patternsOf } from "./notebook-patterns.ts"
import { printRest, printVerdict } from "./print-result.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface CheckRequest extends HandOptions {
  readonly json: boolean
  readonly shape: "ledger" | "net"
  readonly effort: Effort
}

/** One pattern that was checked, and the text that its problems are placed in. */
interface Checked {
  /** What it is called where several are checked: the file, and in a notebook the name of the pattern. */
  readonly name: string
  readonly text: string
  /** Without what to change, which takes longer. */
  readonly result: CheckResult
  /** The whole result. */
  finish(): CheckResult
  /** Name of a pattern in a notebook; null where it has none that can be used. */
  readonly pattern?: string | null
  readonly inYourHands: Adaptation | null
}

/** @throws RoundwrightError for a yarn, hook or gauge that is none; the caller prints it */
export async function runCheck(
  files: readonly string[],
  options: CheckRequest,
  around: Surroundings,
): Promise<number> {
  if (files.length === 0) {
    around.err("roundwright check: name at least one pattern file.\n")
    return 2
  }
  const compared = handIn(options, "US", { swatches: [] }) !== null
  let status = 0
  let printed = 0
  for (const file of files) {
    const read = readText(around.cwd, file)
    around.progress?.(`Working ${file} stitch by stitch ...`)
    const all =
      "text" in read
        ? await checkFile(read.text, file, options)
        : [{ name: file, text: "", inYourHands: null, ...finished(unreadable(file, read.fault)) }]
    around.progress?.("")
    const several = files.length > 1 || all.length > 1
    for (const { name, text, result, finish, pattern, inYourHands } of all) {
      if (options.json) {
        const { file: from, ...found } = finish()
        const whole = {
          file: from,
          ...(pattern === undefined ? {} : { pattern }),
          ...found,
          ...(compared ? { inYourHands } : {}),
        }
        around.out(`${JSON.stringify(whole, null, several ? undefined : 2)}\n`)
      } else {
        const named = several || pattern !== undefined ? name : null
        // The verdict stands before the search for what to change begins, which can be broken off.
        around.out(`${printed > 0 ? "\n" : ""}${printVerdict(result, named)}`)
        around.progress?.("Looking for what to change; Ctrl-C breaks that off ...")
        const whole = finish()
        around.progress?.("")
        around.out(printRest(whole, text))
        if (inYourHands) around.out(`\n${printAdvice(inYourHands)}\n`)
      }
      printed++
      status = Math.max(status, result.exitStatus)
    }
  }
  return status
}

/** The pattern a file holds; of a notebook each of its patterns by itself. */
async function checkFile(text: string, file: string, options: CheckRequest): Promise<Checked[]> {
  if (!holdsPatterns(text)) return [{ name: file, text, ...checkBoth(text, file, options) }]
  return (await patternsOf(text)).map((one) => {
    const { name, line, problems } = one
    const words = name === null ? `the pattern in line ${line}` : `pattern ${name}`
    const checked =
      one.text === null
        ? { ...finished(checkPattern("", { file })), inYourHands: null }
        : checkBoth(one.text, file, options)
    const placed = (result: CheckResult) => ({ ...result, problems: [...problems] })
    return {
      ...{ name: `${file}, ${words}`, text, pattern: name, ...checked },
      result: placed(checked.result),
      finish: () => placed(checked.finish()),
    }
  })
}

/** The pattern as it is, and beside it what comes of it with another yarn, hook or hand. */
function checkBoth(
  text: string,
  file: string,
  options: CheckRequest,
): Pick<Checked, "result" | "finish" | "inYourHands"> {
  const { shape, effort } = options
  const check = examinePattern(text, { file, shape, effort, remedies: false })
  const { result, reading, gauge } = check
  const { terms, motif } = reading
  const hand = handIn(options, terms, gauge?.input)
  const worked = hand !== null && gauge !== null && motif.rounds.length > 0
  const inYourHands = worked
    ? adaptGauge(gauge, gaugeFromPieces(motif, hand, false).gauge, motif, terms)
    : null
  return { result, finish: () => withRemedies(check), inYourHands }
}

/** A result to which nothing is to be added. */
function finished(result: CheckResult): Pick<Checked, "result" | "finish"> {
  return { result, finish: () => result }
}

/** A maker's own gauge names stitches as her pattern does; a name that only the other terms have is read in those. */
function handIn(options: HandOptions, terms: Terms, own?: GaugeInput): Gauge | null {
  try {
    return gaugeOfHand({ ...options, terms }, own)
  } catch (error) {
    if (options.gauge === undefined) throw error
    try {
      return gaugeOfHand({ ...options, terms: terms === "US" ? "UK" : "US" }, own)
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
