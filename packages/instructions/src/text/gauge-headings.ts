// What the headings say of yarn, hook and gauge.

import {
  type GaugeInput,
  gaugeInputOf,
  type HeadingAbout,
  type HeadingReading,
  headingAbout,
  readHeading,
  swatchUnlikeYarn,
  type Terms,
} from "@roundwright/stitches"
import type { Finding } from "../base/problem-list.ts"
import type { PatternText } from "./layout.ts"

export interface GaugeFound {
  readonly input: GaugeInput
  readonly findings: readonly Finding[]
}

interface ReadAt {
  readonly about: HeadingAbout
  readonly reading: HeadingReading
  /** Of the value of the heading. */
  readonly start: number
  readonly end: number
}

export function gaugeOf(layout: PatternText, terms: Terms): GaugeFound {
  const findings: Finding[] = []
  const read: ReadAt[] = []
  let skewDeg: number | undefined
  for (const heading of layout.headings) {
    const value = layout.clean.slice(heading.valueStart, heading.end)
    const about = headingAbout(heading.name)
    if (about !== undefined) {
      const reading = readHeading(about, value, terms)
      read.push({ about, reading, start: heading.valueStart, end: heading.end })
      for (const problem of reading.problems)
        findings.push(toldOf(problem, value, heading.valueStart))
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
  }
  const input = { ...gaugeInputOf(read), ...(skewDeg === undefined ? {} : { skewDeg }) }
  findings.push(...unlikeYarn(input, read, layout.clean))
  return { input, findings }
}

/** A swatch that yarn and hook cannot give is told at its line; whichever is wrong, the sizes are. */
function unlikeYarn(input: GaugeInput, read: readonly ReadAt[], text: string): Finding[] {
  const times = swatchUnlikeYarn(input)
  const line = read.find(({ reading }) => reading.swatches.length > 0)
  if (times === undefined || line === undefined) return []
  const way =
    times > 1 ? `${times.toFixed(1)} times as wide` : `${Math.round(100 * times)} % as wide`
  return [
    {
      ...notRead(line.start, text.slice(line.start, line.end), {
        code: "gauge-unlike-yarn",
        message: `This gauge has stitches ${way} as the yarn and hook named give; the gauge is used.`,
        hint: "Check the counts, the length they are counted over, the terms (US or UK), the yarn and how many strands of it.",
      }),
      severity: "warning",
    },
  ]
}

function toldOf(
  { code, message, hint, start, length }: HeadingReading["problems"][number],
  value: string,
  by: number,
): Finding {
  const lead = value.slice(start).length - value.slice(start).trimStart().length
  const from = by + start + lead
  // A size after some rounds is no slip; it only says nothing of one stitch.
  const slip = code === "gauge-line" && !/\b(?:rounds?|rnds?|motif|square)\b/i.test(value)
  const severity = slip || code.endsWith("-impossible") ? "warning" : "note"
  return { severity, code, start: from, end: from + Math.max(0, length - lead), message, hint }
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
