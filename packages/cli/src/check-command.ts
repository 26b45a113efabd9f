// `roundwright check FILE...`: one result a file, for a person or as JSON.

import { type CheckResult, checkPattern } from "@roundwright/assessment"
import { readText } from "./files.ts"
import { printResult } from "./print-result.ts"
import type { Surroundings } from "./surroundings.ts"

export function runCheck(
  files: readonly string[],
  options: { readonly json: boolean; readonly shape: "ledger" | "net" },
  around: Surroundings,
): number {
  if (files.length === 0) {
    around.err("roundwright check: name at least one pattern file.\n")
    return 2
  }
  let status = 0
  files.forEach((file, index) => {
    const read = readText(around.cwd, file)
    const result =
      "text" in read
        ? checkPattern(read.text, { file, shape: options.shape })
        : unreadable(file, read.fault)
    if (options.json)
      around.out(`${JSON.stringify(result, null, files.length > 1 ? undefined : 2)}\n`)
    else {
      const text = "text" in read ? read.text : ""
      around.out(`${index > 0 ? "\n" : ""}${printResult(result, text, files.length > 1)}`)
    }
    status = Math.max(status, result.exitStatus)
  })
  return status
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
