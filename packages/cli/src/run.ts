// The command line: which command, which files, where results go. Nothing is computed here.

import { parseArgs } from "node:util"
import { runCheck } from "./check-command.ts"
import { runReport } from "./report-command.ts"

/** Where a command reads and writes; paths are taken from `cwd`. */
export interface Surroundings {
  readonly cwd: string
  readonly out: (text: string) => void
  readonly err: (text: string) => void
}

export const usage = `roundwright: does a crochet motif worked in rounds lie flat, and what to change.

  roundwright check FILE... [--json] [--lay-out]
      Reads written patterns and says of each whether it lies flat, cups or
      ruffles, from which round, and what to change. With --json nothing but
      JSON is printed: one object, or one a line for several files.
      With --lay-out the shape is solved as an elastic net on a table: slower,
      but it tells lift, waves, bow of the sides, corner angle and skew.
  roundwright report NOTEBOOK [--out FILE.html]
      Renders a Markdown notebook to one HTML file, by default beside your
      working folder as NOTEBOOK.html. An existing file that is not such a
      page is never overwritten.
  roundwright help

Exit status: 0 = read and flat, 1 = read and something to mend,
             2 = could not be read or used.
`

/** Runs one command. @returns the exit status: 0, 1 or 2 */
export async function run(args: readonly string[], around: Surroundings): Promise<number> {
  const [command, ...rest] = args
  if (command === undefined || command === "help" || command === "--help" || command === "-h") {
    around.out(usage)
    return command === undefined ? 2 : 0
  }
  try {
    if (command === "check") {
      const { values, positionals } = parseArgs({
        args: rest,
        allowPositionals: true,
        options: {
          json: { type: "boolean", default: false },
          "lay-out": { type: "boolean", default: false },
        },
      })
      const shape = values["lay-out"] ? "net" : "ledger"
      return runCheck(positionals, { json: values.json, shape }, around)
    }
    if (command === "report") {
      const { values, positionals } = parseArgs({
        args: rest,
        allowPositionals: true,
        options: { out: { type: "string" } },
      })
      return await runReport(positionals, values.out, around)
    }
  } catch (error) {
    if (!isUsageError(error)) throw error
    around.err(`roundwright ${command}: ${error.message}\n\n${usage}`)
    return 2
  }
  around.err(`roundwright: there is no command '${command}'.\n\n${usage}`)
  return 2
}

function isUsageError(error: unknown): error is Error {
  return (
    error instanceof Error && String((error as { code?: string }).code).startsWith("ERR_PARSE_ARGS")
  )
}
