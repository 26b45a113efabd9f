// What the headings say of yarn, hook and gauge.

import {
  type GaugeInput,
  type PieceSize,
  readGaugeLine,
  readHook,
  readPieceSizes,
  readThreadSize,
  readYarnWeight,
  type Swatch,
  type Terms,
} from "@roundwright/stitches"
import type { Finding } from "../base/problem-list.ts"
import type { PatternText } from "./layout.ts"

export interface GaugeFound {
  readonly input: GaugeInput
  readonly findings: readonly Finding[]
}

const gaugeNames = /^(gauge|tension)$/
const yarnNames = /^(yarns?|threads?|wool|materials?|supplies)$/
/** "crochet thread size 10": numbered thread is of the lace weight (Craft Yarn Council, craftyarncouncil.com/standards/yarn-weight-system). */
const numberedThread = /\b(?:thread|cotton|cord)\b[^.;]*?(?:\bsize|\bno\.?|#)\s?(?:[1-9]0|100)\b/i
const sizeNames = /^(sizes?|measurements?)$/
const hookNames = /^(hooks?|hook size|needles?|materials?|supplies)$/

export function gaugeOf(layout: PatternText, terms: Terms): GaugeFound {
  const swatches: Swatch[] = []
  const pieces: PieceSize[] = []
  const findings: Finding[] = []
  let yarnWeight: GaugeInput["yarnWeight"]
  let threadSize: number | undefined
  let hookMm: number | undefined
  let skewDeg: number | undefined
  for (const heading of layout.headings) {
    const value = layout.clean.slice(heading.valueStart, heading.end)
    if (gaugeNames.test(heading.name)) {
      const reading = readGaugeLine(value, terms)
      swatches.push(...reading.swatches)
      pieces.push(...reading.pieces)
      for (const problem of reading.problems) {
        const lead =
          value.slice(problem.start).length - value.slice(problem.start).trimStart().length
        const start = heading.valueStart + problem.start + lead
        findings.push({
          // A size after some rounds is no slip; it only says nothing of one stitch.
          severity: /\b(?:rounds?|rnds?|motif|square)\b/i.test(value) ? "note" : "warning",
          code: "gauge-line",
          start,
          end: start + Math.max(0, problem.length - lead),
          message: problem.message,
          hint: problem.hint,
        })
      }
    }
    if (yarnNames.test(heading.name)) {
      yarnWeight ??= readYarnWeight(value)?.weight ?? (numberedThread.test(value) ? 0 : undefined)
      threadSize ??= readThreadSize(value)
    }
    if (heading.name === "skew" && skewDeg === undefined) {
      const degrees = readDegrees(value)
      if (degrees !== undefined && Math.abs(degrees) <= mostSkewDeg) skewDeg = degrees
      else
        findings.push(
          notRead(heading.valueStart, value, {
            code: "skew-not-read",
            message:
              degrees === undefined
                ? "This skew is not understood, and none is taken."
                : "A skew of more than half a turn cannot be meant, and none is taken.",
            hint: 'Give how far the last corners have turned from the first: "Skew: 6 degrees" in the direction of work, "Skew: -6 degrees" against it.',
          }),
        )
    }
    if (sizeNames.test(heading.name)) pieces.push(...readPieceSizes(value))
    if (hookNames.test(heading.name) && hookMm === undefined) {
      hookMm = readHook(value)
      if (hookMm === undefined && /^hook/.test(heading.name) && value.trim() !== "")
        findings.push(
          notRead(heading.valueStart, value, {
            code: "hook-not-read",
            message: "This hook size is not understood, or tables differ on it.",
            hint: 'Give it in mm: "Hook: 4 mm".',
          }),
        )
    }
  }
  return {
    input: {
      swatches,
      ...(yarnWeight === undefined ? {} : { yarnWeight }),
      ...(hookMm === undefined ? {} : { hookMm }),
      ...(threadSize === undefined ? {} : { threadSize }),
      ...(pieces.length === 0 ? {} : { pieces }),
      ...(skewDeg === undefined ? {} : { skewDeg }),
    },
    findings,
  }
}

/** Half a turn either way. */
const mostSkewDeg = 180

/**
 * "6 degrees", "-4.5 deg", "6°", "6 degrees against the direction of work". Which way "clockwise" is depends on the hand and
 * the side one looks at, so it is not understood.
 */
function readDegrees(value: string): number | undefined {
  const told = value.trim()
  if (told.length > longestSkew) return undefined
  const [, sign, size, way] = skewTold.exec(told) ?? []
  if (size === undefined || (sign && way)) return undefined
  const against = /^[-\u2212]/.test(sign ?? "") || /^against/i.test(way ?? "")
  return (against ? -1 : 1) * Number(size.replace(",", "."))
}

/** "-6.5 degrees in the direction of work." and room to spare. */
const longestSkew = 60
const skewTold =
  /^([-+\u2212])?\s?(\d{1,3}(?:[.,]\d{1,3})?)\s{0,9}(?:°|deg(?:rees?)?\b)\s{0,9}((?:in|against) the direction of work)?\s{0,9}\.?$/i

function notRead(
  start: number,
  value: string,
  said: Pick<Finding, "code" | "message" | "hint">,
): Finding {
  const lead = value.length - value.trimStart().length
  const end = start + value.trimEnd().length
  return { severity: "note", start: Math.min(start + lead, end), end, ...said }
}
