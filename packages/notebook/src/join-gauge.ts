// A pattern's text with another hand's heading lines put in, as one text that is read like any other.
//
// What of the pattern's own headings still holds is settled in one place, `inHand` of the package stitches; here its answer is
// written: headings that are replaced, and measures that no longer hold, are blanked, and a hook beside which the pattern's
// measures stay says which hook they were made with ("Hook: 4.5 mm instead of 4 mm").

import { gaugeInputOf, type HeadingAbout, inHand, isOtherYarn } from "@roundwright/stitches"
import {
  aboutOf,
  dividerOf,
  type GivesWay,
  headingName,
  headingsIn,
  linesThatGiveWay,
} from "./hand-lines.ts"

export interface JoinedText {
  readonly joined: string
  /** How many lines stand before the gauge. */
  readonly title: number
  /** Lines of the gauge that are not used, since the pattern says its own. */
  readonly givesWay: readonly GivesWay[]
}

/** The pattern's text under the lines of a gauge cell, which are put in after its title. */
export function joinGauge(text: string, cell: readonly string[]): JoinedText {
  const lines = text.split(/\r\n|\r|\n/)
  const givesWay = linesThatGiveWay(lines, cell)
  const unused = new Set([dividerOf(cell), ...givesWay.map(({ line }) => line)])
  const gauge = cell.map((line, index) => (unused.has(index) ? "" : line))
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
  return {
    joined: [...kept.slice(0, title), ...told, ...kept.slice(title)].join("\n"),
    title,
    givesWay,
  }
}

/** The title, when the text opens with one. */
function titleLine(lines: readonly string[]): number {
  const first = lines.findIndex((line) => line.trim() !== "")
  const line = lines[first]
  return line === undefined || line.includes(":") ? 0 : first + 1
}
