// Lines of a gauge cell that hold, and those that give way. What a maker says of her own hand goes before the pattern's
// headings; below the line "Unless the pattern says otherwise:" stand lines that hold only while the pattern says nothing of
// the kind itself. So the fields of a new page, and what stood there before another pattern was pasted, hide no heading.

import { gaugeInputOf, type HeadingAbout, headingAbout, readHeading } from "@roundwright/stitches"

/** What stands below it gives way to the pattern's own headings. */
export const unlessSaid = "Unless the pattern says otherwise:"

export interface HeadingLine {
  /** Index of the line. */
  readonly line: number
  readonly about: HeadingAbout
  readonly reading: ReturnType<typeof readHeading>
  readonly start: number
}

/** The lines that tell of yarn, hook, gauge or size. */
export function headingsIn(lines: readonly string[]): HeadingLine[] {
  return lines.flatMap((line, index) => {
    const about = aboutOf(line)
    if (about === undefined) return []
    // Only what is measured counts here, not in which stitch: the terms do not matter.
    const reading = readHeading(about, line.slice(line.indexOf(":") + 1), "US")
    return [{ line: index, about, reading, start: 0 }]
  })
}

/** `Hook size: 4 mm` -> `hook size`; null for a line that is no heading. */
export function headingName(line: string): string | null {
  return /^\s*([A-Za-z][A-Za-z ]{1,30}):/.exec(line)?.[1]?.trim().toLowerCase() ?? null
}

export function aboutOf(line: string): HeadingAbout | undefined {
  return headingAbout(headingName(line) ?? "")
}

/** Index of the dividing line; the number of lines where there is none. */
export function dividerOf(lines: readonly string[]): number {
  const at = lines.findIndex((line) => line.trim().toLowerCase() === unlessSaid.toLowerCase())
  return at < 0 ? lines.length : at
}

export interface GivesWay {
  /** Index of the line in the gauge cell. */
  readonly line: number
  /** Why, in a sentence. */
  readonly why: string
}

/** Lines below the divider beside which the pattern says its own. */
export function linesThatGiveWay(
  pattern: readonly string[],
  gauge: readonly string[],
): readonly GivesWay[] {
  const says = saidBy(pattern)
  const divider = dividerOf(gauge)
  return headingsIn(gauge).flatMap(({ line, about }) => {
    if (line < divider) return []
    // A yarn or a hook of another hand means nothing beside the pattern's yarn, hook or swatch.
    const hand = about === "yarn" || about === "hook" || about === "materials"
    const by = hand
      ? (["yarn", "hook", "gauge"] as const).filter((one) => says.has(one))
      : says.has(about)
        ? [about]
        : []
    return by.length === 0
      ? []
      : [
          {
            line,
            why: `The pattern says its own ${inWords(by)}: this line is not used.`,
          },
        ]
  })
}

/** `yarn`, `yarn and hook`, `yarn, hook and gauge`. */
function inWords(names: readonly string[]): string {
  const [last, ...before] = names.toReversed()
  return before.length === 0 ? last! : `${before.reverse().join(", ")} and ${last}`
}

/**
 * A gauge cell after another pattern was pasted under it: lines of what that pattern says itself are put below the divider.
 * @param before what stood in the pattern's place: only headings that are new with the paste count
 * @returns the text, and what was put there
 */
export function yieldTo(
  pattern: string,
  gauge: string,
  before: string,
): { readonly text: string; readonly moved: readonly HeadingAbout[] } {
  const known = new Set(before.split(/\r\n|\r|\n/))
  const says = saidBy(pattern.split(/\r\n|\r|\n/).filter((line) => !known.has(line)))
  const lines = gauge.split("\n")
  const divider = dividerOf(lines)
  const yielding = headingsIn(lines).filter(({ line, about }) => line < divider && says.has(about))
  if (yielding.length === 0) return { text: gauge, moved: [] }
  const gone = new Set(yielding.map(({ line }) => line))
  const below = [...yielding.map(({ line }) => lines[line]!), ...lines.slice(divider + 1)]
  return {
    text: [...lines.slice(0, divider).filter((_, k) => !gone.has(k)), unlessSaid, ...below].join(
      "\n",
    ),
    moved: yielding.map(({ about }) => about),
  }
}

/** The text with a line of her own set, before what gives way; taken out where `value` is null. */
export function withOwnLine(text: string, name: string, value: string | null): string {
  const lines = text === "" ? [] : text.split("\n")
  const isIt = (line: string) => headingName(line) === name.toLowerCase()
  const divider = dividerOf(lines)
  const at = lines.findIndex((line, k) => k < divider && isIt(line))
  const told = value === null ? [] : [`${name}: ${value}`]
  const above = lines.slice(0, divider)
  const own = at >= 0 ? above.toSpliced(at, 1, ...told) : [...trimmedEnd(above), ...told]
  const below = lines.slice(divider + 1).filter((line) => !isIt(line))
  const rest = below.some((line) => line.trim() !== "") ? [unlessSaid, ...below] : []
  return [...own, ...rest].join("\n")
}

function trimmedEnd(lines: readonly string[]): readonly string[] {
  let end = lines.length
  while (end > 0 && lines[end - 1]!.trim() === "") end -= 1
  return lines.slice(0, end)
}

/** Of what the headings of a pattern tell. */
function saidBy(lines: readonly string[]): ReadonlySet<HeadingAbout> {
  const input = gaugeInputOf(headingsIn(lines))
  const says = new Set<HeadingAbout>()
  if ([input.yarnWeight, input.threadSize, input.strands].some((one) => one !== undefined))
    says.add("yarn")
  if (input.hookMm !== undefined) says.add("hook")
  if (input.swatches.length > 0) says.add("gauge")
  if (input.pieces !== undefined && input.pieces.length > 0) says.add("size")
  return says
}
