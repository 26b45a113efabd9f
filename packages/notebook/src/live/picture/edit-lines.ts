// Lines of a measurement changed one at a time, as the handles and fields of a page do: what is set so stands without
// a bracket and is the reader's own.

import { isMeasurementLine, readLines } from "@roundwright/picture"

export type LineName = "Picture" | "Box" | "Tap" | "Corners" | "View" | "Known length" | "Centre"

const ringStart = /^\s*ring\s+(\d{1,3})\s*:/i
const bracket = /(?<!\s)\s*\(\s*found[^)]{0,400}\)/i

/** Sets the value of a line, or takes the line out. A new line goes where the measuring writes it. */
export function setLine(text: string, name: LineName, value: string | null): string {
  const lines = text === "" ? [] : text.split("\n")
  const order: readonly string[] = [
    "Picture",
    "Box",
    "Tap",
    "Corners",
    "View",
    "Known length",
    "Centre",
  ]
  const isOf = (line: string, one: string) =>
    new RegExp(`^\\s*${one === "Centre" ? "cent(?:re|er)" : one}\\s*:`, "i").test(line)
  const at = lines.findIndex((line) => isOf(line, name))
  const fresh = value === null ? [] : [`${name}: ${value}`]
  if (at >= 0) lines.splice(at, 1, ...fresh)
  else {
    const before = order.slice(0, order.indexOf(name))
    const after = lines.findLastIndex((line) => before.some((one) => isOf(line, one)))
    lines.splice(after + 1, 0, ...fresh)
  }
  return lines.join("\n")
}

/** A ring counted by hand: its count stands without a bracket. */
export function countRing(text: string, ring: number, repeats: number, strands: number): string {
  return changeRing(text, ring, (line) => {
    const reach = /:\s*((?:to|side)\b[^;]*)/i.exec(line.replace(bracket, ""))?.[1]?.trim()
    const own = (/;\s*(\d{1,3} posts? between[^;(]*)/i.exec(line)?.[1] ?? "").trim()
    const stitch = (/;\s*(sc|hdc|dc|tr|dtr)\s*(?:;|\(|$)/i.exec(line)?.[1] ?? "").trim()
    return [
      `Ring ${ring}: ${reach ?? "to ? of 100"}`,
      `${repeats} repeats${strands === repeats ? "" : `, ${strands} strands`}`,
      ...[own, stitch].filter((part) => part !== ""),
    ].join("; ")
  })
}

/** What was found is taken for sure. */
export function keepRing(text: string, ring: number): string {
  return changeRing(text, ring, (line) => line.replace(bracket, ""))
}

/** What was set is to be found anew. */
export function findRing(text: string, ring: number): string {
  return changeRing(text, ring, (line) =>
    bracket.test(line) ? line : `${line.trimEnd()} (found, 0 %)`,
  )
}

/** The centre in the lines, found or set; null where they have none. */
export function centreIn(text: string): readonly [number, number] | null {
  const line = text.split("\n").find((one) => /^\s*cent(?:re|er)\s*:/i.test(one))
  const numbers = (line?.replace(bracket, "").match(/-?\d+\.?\d*/g) ?? []).map(Number)
  return numbers.length === 2 ? [numbers[0]!, numbers[1]!] : null
}

/** Another picture: what was said in pixels of the old one says nothing of it. */
export function forPicture(text: string, name: string): string {
  const cleared = (["Box", "Tap", "Corners", "Centre"] as const).reduce(
    (lines, label) => setLine(lines, label, null),
    text,
  )
  return setLine(cleared, "Picture", name)
}

/** True when the lines say the same, whatever else the text holds. */
export function sameLines(a: string, b: string): boolean {
  const lines = (text: string) => text.split("\n").filter(isMeasurementLine).join("\n")
  return lines(a) === lines(b)
}

/** Rings of the lines, by number. */
export function ringsIn(text: string) {
  return new Map(readLines(text).rings.map((ring) => [ring.number, ring]))
}

function changeRing(text: string, ring: number, change: (line: string) => string): string {
  return text
    .split("\n")
    .map((line) => (Number(ringStart.exec(line)?.[1]) === ring ? change(line) : line))
    .join("\n")
}
