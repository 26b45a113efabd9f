// The commands that match pieces and finish a blanket, with their options. Each loads what it needs when it is called.

import { parseArgs } from "node:util"
import type { Surroundings } from "./surroundings.ts"

type Command = (args: string[], around: Surroundings) => number | Promise<number>

const flag = { type: "boolean", default: false } as const
const text = { type: "string" } as const
const hand = { gauge: text, hook: text, yarn: text } as const

export const finishingCommands: Readonly<Record<string, Command>> = {
  async gauge(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        size: { type: "string", multiple: true },
        swatch: { type: "string", multiple: true },
        weighed: { type: "string", multiple: true },
        skein: text,
        pattern: text,
        hook: text,
        yarn: text,
        json: flag,
      },
    })
    const { runGauge } = await import("./gauge-command.ts")
    return runGauge({ files: positionals, ...values }, around)
  },
  async compare(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { whole: text, rows: text, sides: text, at: text, json: flag },
    })
    const { runCompare } = await import("./compare-command.ts")
    return runCompare({ files: positionals, ...values }, around)
  },
  async reckon(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: { repeat: text, json: flag },
    })
    const { runReckon } = await import("./reckon-command.ts")
    return runReckon({ statements: positionals, ...values }, around)
  },
  async match(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        to: text,
        now: text,
        pattern: text,
        rounds: text,
        shape: text,
        changed: text,
        fabric: text,
        tried: text,
        stitches: text,
        repeat: text,
        rows: text,
        chains: text,
        stitch: text,
        "from-corner": flag,
        around: text,
        whole: text,
        "meant-hook": text,
        ...hand,
        json: flag,
      },
    })
    const { runMatch } = await import("./match-command.ts")
    const { gauge, hook, yarn } = values
    return runMatch({ files: positionals, ...values, gauge, hook, yarn }, around)
  },
  async yarn(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        pieces: text,
        layout: text,
        weighed: { type: "string", multiple: true },
        step: text,
        skein: text,
        colours: text,
        join: text,
        border: text,
        left: text,
        reserve: text,
        used: text,
        done: text,
        of: text,
        "per-ball": text,
        keep: text,
        "last-round": text,
        more: text,
        row: text,
        "row-height": text,
        ball: text,
        balls: text,
        need: text,
        each: text,
        all: text,
        to: text,
        size: text,
        rounds: text,
        now: text,
        pattern: text,
        ...hand,
        json: flag,
      },
    })
    const { runYarn } = await import("./yarn-command.ts")
    const { gauge, hook, yarn } = values
    return runYarn({ files: positionals, ...values, gauge, hook, yarn }, around)
  },
  async border(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        side: text,
        stitches: text,
        pieces: text,
        layout: text,
        "per-join": text,
        rows: text,
        "row-stitch": text,
        row: text,
        repeat: text,
        repeats: text,
        onto: text,
        parts: text,
        corner: text,
        squares: text,
        to: text,
        every: text,
        step: text,
        "too-many": text,
        rounds: text,
        now: text,
        pattern: text,
        terms: text,
        ...hand,
        json: flag,
      },
    })
    const { runBorder } = await import("./border-command.ts")
    const { gauge, hook, yarn } = values
    return runBorder({ files: positionals, ...values, gauge, hook, yarn }, around)
  },
  async blanket(args, around) {
    const { values, positionals } = parseArgs({
      args,
      allowPositionals: true,
      options: {
        size: text,
        layout: text,
        have: text,
        pieces: text,
        piece: text,
        edge: text,
        along: text,
        shape: text,
        pair: text,
        gap: text,
        pace: text,
        around: text,
        "join-rounds": text,
        "chains-each": text,
        "colours-each": text,
        "corner-to-corner": flag,
        "in-rounds": flag,
        larger: text,
        border: text,
        "straight-edges": flag,
        colours: text,
        seed: text,
        join: text,
        skein: text,
        weighed: { type: "string", multiple: true },
        out: text,
        now: text,
        pattern: text,
        ...hand,
        json: flag,
      },
    })
    const { runBlanket } = await import("./blanket-command.ts")
    const { gauge, hook, yarn } = values
    return runBlanket({ files: positionals, ...values, gauge, hook, yarn }, around)
  },
}
