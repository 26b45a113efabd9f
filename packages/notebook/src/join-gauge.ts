// A pattern's text with another hand's heading lines put in, as one text that is read like any other.
//
// What of the pattern's own headings still holds is settled in one place, `inHand` of the package stitches; here its answer is
// written: headings that are replaced, and measures that no longer hold, are blanked, and a hook beside which the pattern's
// measures stay says which hook they were made with ("Hook: 4.5 mm instead of 4 mm").

import {
  gaugeInputOf,
  type HeadingAbout,
  type HeadingReading,
  headingAbout,
  inHand,
  isOtherYarn,
  readHeading,
} from "@roundwright/stitches"

export interface JoinedText {
  readonly joined: string
  /** How many lines stand before the gauge. */
  readonly title: number
}

/** The pattern's text under the lines of a gauge cell, which are put in after its title. */
export function joinGauge(text: string, gauge: readonly string[]): JoinedText {
  const lines = text.split(/\r\n|\r|\n/)
  const title = titleLine(lines)
  const [own, hand] = [headingsIn(lines), headingsIn(gauge)]
  const [ownInput, handInput] = [gaugeInputOf(own), gaugeInputOf(hand)]
  const measured = handInput.swatches.length > 0 || isOtherYarn(ownInput, handInput)
  const sized = measured || handInput.pieces !== undefined
  const names = new Set(gauge.map(headingName))
  // Materials name several things, of which the rest stays.
  const abouts = new Set(hand.map(({ about }) => about))
  abouts.delete("materials")
  const isReplaced = (line: string, about: HeadingAbout | undefined) => {
    const name = headingName(line)
    if (name === null) return false
    if (names.has(name) || (about !== undefined && abouts.has(about))) return true
    return about === "size" ? sized : about === "gauge" && measured
  }
  const kept = lines.map((line) => (isReplaced(line, aboutOf(line)) ? "" : line))
  const { hookMm, gaugeHookMm } = inHand(ownInput, handInput)
  const stays = gaugeInputOf([...hand, ...headingsIn(kept)])
  const hookLine = hand.find(({ reading }) => reading.hookMm !== undefined)?.line
  const yarnLine = hand.find(({ about }) => about === "yarn")?.line
  const told = gauge.map((line, index) => {
    const end = line.trimEnd()
    if (index === hookLine && gaugeHookMm !== undefined && handInput.gaugeHookMm === undefined)
      return `${end} instead of ${gaugeHookMm} mm`
    // A hook that only a measure named which no longer holds.
    const lost = hookMm !== undefined && stays.hookMm === undefined
    return index === yarnLine && lost ? `${end}, Hook: ${hookMm} mm` : line
  })
  return { joined: [...kept.slice(0, title), ...told, ...kept.slice(title)].join("\n"), title }
}

interface HeadingLine {
  readonly line: number
  readonly about: HeadingAbout
  readonly reading: HeadingReading
  readonly start: number
}

function headingsIn(lines: readonly string[]): HeadingLine[] {
  return lines.flatMap((line, index) => {
    const about = aboutOf(line)
    if (about === undefined) return []
    // Only what is measured counts here, not in which stitch: the terms do not matter.
    const reading = readHeading(about, line.slice(line.indexOf(":") + 1), "US")
    return [{ line: index, about, reading, start: 0 }]
  })
}

/** `Hook size: 4 mm` -> `hook size`; null for a line that is no heading. */
function headingName(line: string): string | null {
  return /^\s*([A-Za-z][A-Za-z ]{1,30}):/.exec(line)?.[1]?.trim().toLowerCase() ?? null
}

function aboutOf(line: string): HeadingAbout | undefined {
  return headingAbout(headingName(line) ?? "")
}

/** The title, when the text opens with one. */
function titleLine(lines: readonly string[]): number {
  const first = lines.findIndex((line) => line.trim() !== "")
  const line = lines[first]
  return line === undefined || line.includes(":") ? 0 : first + 1
}
