// The symbols of stitches, drawn by us after the published open standard for crochet symbols: an oval for
// a chain, a dot for a slip stitch, a cross for sc, a T for hdc, and across the T as many slanted bars as
// there are yarn overs before the hook goes in (dc one, tr two ...; hdc none). What guides to the standard
// say in words: "Crochet pattern symbols", crochetzen.com/blog/crochet-pattern-symbols, and "How to read
// crochet charts", dailyhandmade.com/?p=2036 (the cross). The line under a stitch in the back loop is the
// standard's too. Hooks at the foot of post stitches and legs that meet are common practice, no source; the
// marks of front loop, third loop and extended stitches are our own.
//
// A symbol is a path in a box from -1 to 1: foot at (0, 1), top at (0, -1), so that it is as long as the stitch.

import type { BasicStitch, Gathering, StitchKind } from "@roundwright/stitches"
import { yarnOvers } from "@roundwright/stitches"

export interface StitchSymbol {
  /** Names the path; equal for kinds that are drawn alike. */
  readonly key: string
  /** SVG path, to be stroked. */
  readonly path: string
}

/** Paths keep this far from foot and top, so that the stitches of two rounds do not touch. */
const end = 0.84

/** Legs of a bundle beyond this many cannot be told apart. */
const mostLegs = 6

/** The symbol of a whole stitch, its legs (if it has several) standing in one place. */
export function stitchSymbol(kind: StitchKind): StitchSymbol {
  const { basic, gathered } = kind
  if (gathered !== undefined && gathered.legs > 1 && gathered.how !== "together") {
    const legs = Math.min(mostLegs, gathered.legs)
    const path = bundle(basic, gathered.how, legs) + footMarks(kind)
    return { key: named(`${gathered.how} ${legs} ${basic}`, kind), path }
  }
  return { key: named(basic, kind), path: post(basic) + footMarks(kind) }
}

/** One leg of a stitch whose legs stand in several places, and what closes them at their top. */
export function legSymbol(kind: StitchKind): StitchSymbol {
  const path = `M0,${end}V-1${slantedBars(kind.basic, 0)}${footMarks(kind)}`
  return { key: named(`leg ${kind.basic}`, kind), path }
}

export function closingSymbol({ basic }: StitchKind): StitchSymbol {
  if (isLow(basic)) return { key: "closing sc", path: "M-0.4,0H0.4M0,0.4V-0.4" }
  return { key: `closing ${basic}`, path: bar(0, barHalf(basic)) }
}

/** A stitch whose legs stand in several places, for a legend: two of them stand for all. */
export function togetherSymbol(kind: StitchKind): StitchSymbol {
  const { basic } = kind
  const half = isLow(basic) ? 0.3 : barHalf(basic)
  const path = `M-0.5,${end}L0,${-end}L0.5,${end}${bar(-end, half)}${footMarks(kind)}`
  return { key: named(`together ${basic}`, kind), path }
}

/** A chain lies along the edge: its box runs from end to end. */
export const chainSymbol: StitchSymbol = { key: "chain", path: oval(0, 0, 0.36, 0.84) }

/** Slip stitch, and the join at the end of a round; filled. */
export const dotSymbol: StitchSymbol = { key: "sl st", path: oval(0, 0, 0.5, 0.5) }

/** Three chains in a ring, standing with the foot on the edge. */
export const picotSymbol: StitchSymbol = {
  key: "picot",
  path: oval(0, -0.55, 0.42, 0.24) + oval(-0.5, 0.15, 0.24, 0.42) + oval(0.5, 0.15, 0.24, 0.42),
}

/** A ring that is drawn shut: a coil with its tail. */
export const coilSymbol: StitchSymbol = {
  key: "adjustable ring",
  path: `${oval(0, 0, 1, 1)}M0,-0.55A0.55,0.55,0,1,1,-0.55,0`,
}

/** Points along the work in rounds worked the other way; filled. */
export const arrowSymbol: StitchSymbol = { key: "turned", path: "M-0.8,0.8L0,-0.9L0.8,0.8Z" }

function named(name: string, { post: round, loops }: StitchKind): string {
  return [name, round && `${round} post`, loops && `${loops} loop`].filter(Boolean).join(", ")
}

function isLow(basic: BasicStitch): boolean {
  return basic === "sc" || basic === "esc" || basic === "sl st"
}

/** Half the bar at the top: about a third of the stitch's width, whatever its height. */
function barHalf(basic: BasicStitch): number {
  const heightInWidths = basic === "hdc" || basic === "ehdc" ? 1.32 : 1 + yarnOvers(basic)
  return 0.74 / heightInWidths
}

function post(basic: BasicStitch): string {
  if (basic === "sl st") return oval(0, 0, 0.5, 0.5)
  if (isLow(basic)) return `M-0.6,0H0.6M0,-0.6V0.6${extension(basic)}`
  const stem = `M0,${end}V${-end}`
  return stem + bar(-end, barHalf(basic)) + slantedBars(basic, 0) + extension(basic)
}

function bar(y: number, half: number): string {
  return `M${-tidy(half)},${y}H${tidy(half)}`
}

function slantedBars(basic: BasicStitch, x: number, share = 0.62): string {
  const count = basic === "hdc" || basic === "ehdc" ? 0 : yarnOvers(basic)
  const wide = share * barHalf(basic)
  const rise = Math.min(0.1, 0.55 * wide)
  let path = ""
  for (let k = 0; k < count; k++) {
    // Spread about the middle, a little above it.
    const y = -0.1 + 0.19 * (k - (count - 1) / 2)
    path += `M${tidy(x - wide)},${tidy(y - rise)}L${tidy(x + wide)},${tidy(y + rise)}`
  }
  return path
}

/** Extended stitches begin with a chain drawn through: a small oval on the stem. */
function extension(basic: BasicStitch): string {
  if (basic === "esc") return oval(0, 0.8, 0.16, 0.16)
  return /^e(hdc|dc|tr)$/.test(basic) ? oval(0, 0.5, 0.1, 0.12) : ""
}

/** Legs from one place that meet again at the top: bowed, or angled for a cluster. */
function bundle(basic: BasicStitch, how: Gathering, legs: number): string {
  const half = how === "popcorn" ? 0.44 : 0.36
  const top = how === "popcorn" ? 0.62 : end
  let path = ""
  for (let k = 0; k < legs; k++) {
    const x = legs === 1 ? 0 : half * ((2 * k) / (legs - 1) - 1)
    path += `M0,${end}`
    path +=
      how === "cluster"
        ? `L${tidy(x)},0L0,${-top}`
        : `C${tidy(1.4 * x)},0.4,${tidy(1.4 * x)},-0.4,0,${-top}`
    if (how !== "puff" && !isLow(basic))
      path += slantedBars(basic, how === "cluster" ? x : 1.05 * x, 0.36)
  }
  return path + (how === "popcorn" ? oval(0, -0.8, 0.34, 0.16) : bar(-end, 0.3))
}

/** Round a post: a hook at the foot, to the right in front, to the left behind. In one loop: a line under it. */
function footMarks({ post: round, loops }: StitchKind): string {
  const hook =
    round === undefined
      ? ""
      : `M0,${end}C0,1.3,${round === "front" ? 0.5 : -0.5},1.3,${round === "front" ? 0.45 : -0.45},0.86`
  if (loops === "back") return `${hook}M-0.42,0.92H0.42`
  if (loops === "front") return `${hook}M-0.42,0.8Q0,1.12,0.42,0.8`
  return loops === "third" ? `${hook}M-0.42,0.86H0.42M-0.42,1H0.42` : hook
}

/** A closed oval about (x, y). */
function oval(x: number, y: number, halfWide: number, halfHigh: number): string {
  const arc = `A${halfWide},${halfHigh},0,1,1,`
  return `M${tidy(x - halfWide)},${y}${arc}${tidy(x + halfWide)},${y}${arc}${tidy(x - halfWide)},${y}Z`
}

function tidy(value: number): number {
  return Math.round(1000 * value) / 1000
}
