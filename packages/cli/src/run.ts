// The command line: which command, which files, where results go. Nothing is computed here.

import { readFileSync } from "node:fs"
import { parseArgs } from "node:util"
import { RoundwrightError } from "@roundwright/numerics"
import { runCheck } from "./check-command.ts"
import { finishingCommands } from "./finishing-commands.ts"
import { helpOf, nearest } from "./help.ts"
import { joinNegatives, quoted, wholeNumber } from "./option-values.ts"
import { overview } from "./overview.ts"
import { plainly } from "./plain-output.ts"
import type { Surroundings } from "./surroundings.ts"
import { usage } from "./usage.ts"
import { wrap } from "./wrap.ts"

type Command = (args: string[], around: Surroundings) => number | Promise<number>

const flag = { type: "boolean", default: false } as const
const text = { type: "string" } as const

// Commands other than `check` load what they need when they are called: it keeps `check` quick to start.
const commands: Readonly<Record<string, Command>> = {
  check(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        json: flag,
        quick: flag,
        "lay-out": flag,
        gauge: text,
        hook: text,
        yarn: text,
      },
    })
    const shape = values.quick ? "ledger" : "net"
    const effort = values["lay-out"] ? "whole" : "bounded"
    const { json, gauge, hook, yarn } = values
    return runCheck(positionals, { json, shape, effort, gauge, hook, yarn }, around)
  },
  async report(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { out: text, plain: flag },
    })
    const { runReport } = await import("./report-command.ts")
    return runReport({ files: positionals, out: values.out, plain: values.plain }, around)
  },
  async new(args, around) {
    const { values } = parseArgs({ args, options: { out: text } })
    const { runNew } = await import("./report-command.ts")
    return runNew(values.out, around)
  },
  async square(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        corners: { type: "string", default: "4" },
        rounds: text,
        side: text,
        count: text,
        stitches: text,
        "from-round": text,
        "corner-style": text,
        straighten: text,
        terms: text,
        json: flag,
      },
    })
    const { runSquare } = await import("./square-command.ts")
    return runSquare(
      {
        ...values,
        files: positionals,
        corners: wholeNumber(values.corners, "--corners"),
        rounds: values.rounds === undefined ? null : wholeNumber(values.rounds, "--rounds"),
        count: values.count === undefined ? null : wholeNumber(values.count, "--count"),
      },
      around,
    )
  },
  async "plan-circle"(args, around) {
    const { values } = parseArgs({
      args,
      options: {
        stitch: text,
        across: text,
        rounds: text,
        corners: text,
        "corner-style": text,
        increases: text,
        repeats: text,
        oval: text,
        "longer-by": text,
        terms: text,
        gauge: text,
        hook: text,
        yarn: text,
        json: flag,
      },
    })
    const { runPlanCircle } = await import("./plan-circle-command.ts")
    return runPlanCircle(values, around)
  },
  async edit(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { json: flag, out: text, chart: text },
    })
    const { runEdit } = await import("./edit-command.ts")
    return runEdit({ ...values, files: positionals }, around)
  },
  async chart(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        terms: text,
        width: text,
        emphasis: { type: "string", default: "none" },
        out: text,
      },
    })
    const { runChart } = await import("./chart-command.ts")
    return runChart({ ...values, files: positionals }, around)
  },
  async sheet(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { terms: text, format: { type: "string", default: "md" }, out: text },
    })
    const { runSheet } = await import("./sheet-command.ts")
    return runSheet({ ...values, files: positionals }, around)
  },
  async measure(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        box: text,
        tap: text,
        centre: text,
        corners: text,
        side: text,
        across: text,
        known: text,
        ring: { type: "string", multiple: true },
        "as-it-is": flag,
        "round-edge": flag,
        into: text,
        out: text,
        json: flag,
      },
    })
    const { runMeasure } = await import("./measure-command.ts")
    return runMeasure({ ...values, files: positionals }, around)
  },
  async rebuild(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { gauge: text, hook: text, yarn: text, json: flag },
    })
    const { runRebuild } = await import("./rebuild-command.ts")
    return runRebuild({ ...values, files: positionals }, around)
  },
  ...finishingCommands,
}

function isHelp(name: string): boolean {
  return name === "help" || name === "--help" || name === "-h"
}

function tellHelp(name: string, around: Surroundings): number {
  const help = helpOf(name)
  if (help === null) return tellUnknown(name, around)
  around.out(help)
  return 0
}

/** A command that there is not: the one that was likely meant, or all of them. */
function tellUnknown(name: string, around: Surroundings): number {
  const meant = nearest(name, Object.keys(commands))
  const what = `roundwright: there is no command ${quoted(name)}.`
  around.err(
    meant === null
      ? `${what}\n\n${overview()}`
      : `${what} Do you mean "${meant}"?\n"roundwright help ${meant}" tells how it is used, "roundwright help" of all commands.\n`,
  )
  return 2
}

/** The version that the package states. */
function version(): string {
  const stated = readFileSync(new URL("../package.json", import.meta.url), "utf8")
  return (JSON.parse(stated) as { version: string }).version
}

/** Runs one command. @returns the exit status: 0, 1 or 2 */
export async function run(args: readonly string[], surroundings: Surroundings): Promise<number> {
  const around: Surroundings = {
    cwd: surroundings.cwd,
    out: (text) => surroundings.out(plainly(text)),
    err: (text) => surroundings.err(plainly(text)),
    progress: (text) => surroundings.progress?.(plainly(text)),
  }
  const [name, ...rest] = args
  if (name === undefined) {
    around.out(overview())
    return 2
  }
  if (name === "--version" || name === "-V") {
    around.out(`roundwright ${version()}\n`)
    return 0
  }
  if (isHelp(name)) {
    const [of] = rest
    if (of === undefined || of === "help" || of === "all") {
      around.out(of === "all" ? usage : overview())
      return 0
    }
    return tellHelp(of, around)
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined
  if (!command) return tellUnknown(name, around)
  if (rest.some((word) => word === "--help" || word === "-h")) return tellHelp(name, around)
  try {
    return await command(joinNegatives(rest), around)
  } catch (error) {
    if (error instanceof RoundwrightError) {
      const said = `roundwright ${name}: ${error.message} ${error.hint}`.trimEnd()
      around.err(`${wrap(said, 80)}\n`)
      return 2
    }
    if (!isUsageError(error)) throw error
    around.err(`${wrap(`roundwright ${name}: ${usageWords(error)}`, 80)}\n`)
    return 2
  }
}

/** What is wrong with an option, in this command's words. */
function usageWords(error: Error): string {
  const [first = ""] = error.message.split("\n")
  const said = `${first.replace(/\.$/, "")}.`
    .replace(/ (?:To specify a positional|This command does not take).*$/, "")
    .replace(
      /^Option '([^ ']+)(?=[ '])[^\n]{0,400} argument missing\.$/,
      "Option '$1' needs a value.",
    )
    .replace(
      /^Option '([^ ']+)(?=[ '])[^\n]{0,400} argument is ambiguous\.$/,
      "Option '$1' needs a value.",
    )
  return `${said} 'roundwright help' tells what the commands take.`
}

function isUsageError(error: unknown): error is Error {
  return (
    error instanceof Error && String((error as { code?: string }).code).startsWith("ERR_PARSE_ARGS")
  )
}
