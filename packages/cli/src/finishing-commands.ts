// The commands that match pieces and finish a blanket: their options, and what `help` says of them. Each loads what it needs
// when it is called.

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
      options: { json: flag },
    })
    const { runCompare } = await import("./compare-command.ts")
    return runCompare({ files: positionals, ...values }, around)
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
        repeat: text,
        repeats: text,
        onto: text,
        parts: text,
        corner: text,
        squares: text,
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

export const finishingUsage = `  roundwright gauge FILE [--size '9 cm after Rnd 3'] [--size 'side 12.2 cm']
                     [--swatch '16 dc x 9 rows = 10 cm']
                     [--weighed '4 pieces = 38 g' [--skein '50 g = 120 m']]
                     [--pattern NAME] [--yarn DK] [--hook '4 mm'] [--json]
      The hand of a real piece: how wide and how tall each of its stitches is,
      with standard errors, from sizes after rounds, the finished side, swatches
      and the weight of the yarn, all weighed by how sure they are and against
      what is published; the size after every round; and which further
      measurement would narrow heights and widths most. --size may be given
      several times, and the pattern's own Size: lines count too.
  roundwright match [FILE] --to '15.2 cm' [--now '14 cm'] [--pattern NAME]
                     [--rounds 5 --shape square|hexagon|circle]
                     [--changed yarn|pattern|nothing]
                     [--fabric tight|loose] [--tried '3.5 mm = 6.1 in']
                     [--stitches 60 [--repeat '16 + 6']]
                     [--yarn DK] [--hook '4 mm']
                     [--gauge '16 sc = 10 cm'] [--json]
      Ways to bring a piece to the size of its siblings, best first, each with
      size, verdict, bow, stitches a side and yarn: another last round, a round
      more or fewer, the pins, another start, another hook; and says when it
      cannot be the hook, and what it may be. The size is across unless said:
      --to 'side 6 in', --to 'diagonal 21 cm'; --now is the piece as it is. Or
      --to a file with a piece measured round by round. Without FILE a plain
      piece of --rounds stands in; with --stitches it is straight work, matched
      by its count. --changed tells what differs from the pieces
      that have the size, --fabric how the work comes out,
      --tried what other hooks gave, which goes before any law.
  roundwright compare A B [--json]
      Two pieces of one pattern: the round in which they part, why (a ratio, an
      offset, a step), and whose count slipped. A and B are patterns, files of
      lines such as "Rnd 3: 36 sts, 9 cm", or figures in quotes: '12, 24, 35'
      or '84 rows = 180 cm', or two hooks: '3 mm hook' '2.5 mm hook'.
  roundwright yarn FILE [--pieces 32 | --layout 4x8]
                     [--weighed '4 pieces = 38 g'] [--step '1 g']
                     [--skein '50 g = 120 m'] [--border sc,hdc] [--join sc|
                     slip-stitch|whip|mattress|as-you-go]
                     [--colours 'rose: 1-3; cream: 4-6'] [--left '23 g']
                     [--reserve '10 %'] [--now '14 cm'] [--json]
  roundwright yarn --now '64 in' --used '1800 g' [--last-round '45 g' --more 12]
                     [--used '8 balls' --left '16 balls' --keep '14 balls']
  roundwright yarn --done 11 [--of 30] [--used '210 g'] [--left '500 g']
                     [--per-ball '12-13'] [--step '1 g']
  roundwright yarn --row '15 g' --row-height '2 cm' --ball '100 g' --balls 15
      Yarn by round, colour, piece, joins, border and tails, the error beside
      each figure, skeins to buy, and what is left over still makes. Surest are
      several pieces weighed together. Without FILE: how far a piece that grows
      in rounds or in rows goes on with what is left.
  roundwright border [FILE] [--layout 4x8 | --pieces 3] [--side '9 in']
                     [--stitches 59] [--rounds sc,dc] [--repeat '6 + 1']
                     [--per-join 1] [--corner 3] [--rows 20 [--row-stitch dc]]
                     [--terms UK] [--json]
  roundwright border --stitches 20 --onto 16
      Stitches a side of a border, so many a join and in each corner, a repeat
      fitted to every side with the places added or passed over told, taller
      stitches into the dips; judged flat round by round. FILE is the piece the
      blanket is made of; or tell a side, stitches or rows. With --onto so many
      stitches are led evenly onto others.
  roundwright blanket [FILE] [--size baby | '120 x 150 cm' | --layout 4x8]
                     [--piece '15 cm'] [--pieces 30] [--have 12]
                     [--pair '29 cm'] [--larger '20 cm: 4']
                     [--shape square|hexagon] [--straight-edges]
                     [--colours 'rose 120 g, cream' [--seed 7]]
                     [--border sc,hdc] [--join sc] [--skein '50 g = 120 m']
                     [--weighed '4 pieces = 38 g'] [--out plan.svg] [--json]
      Pieces for a size, or the blanket that the pieces at hand make: how many
      are still to make, the layout as a drawing (--out), half pieces and edge
      triangles for straight edges of hexagons, colours shared out by seed or by
      the weight that is left, and the yarn. A joined pair, measured, goes
      before any reckoning.
`
