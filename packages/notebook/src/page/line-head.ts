// What a line of a pattern begins with, set in bold so that rounds are found at a glance: the whole of a title, and
// the label of a round. Which lines are rounds the reader of patterns decides; this is for the eye alone.

const title = /^#.*/

/** `Rnd 3:`, `Rounds 4-6 (dark):`, `R7.`, `2nd round -`. */
const label =
  /^\s*(?:(?:rounds?|rnds?|rds?|rows?|r)\.?\s*#?\d[\d\s,&\u2013-]{0,200}|\d{1,3}(?:st|nd|rd|th)\s+(?:rounds?|rnds?|rds?|rows?))(?:\s{0,9}\([^)]{0,40}\))?\s{0,9}[:.\u2013-]/i

/** How many characters at the start of a line are its head; 0 for a line without one. */
export function headLength(line: string): number {
  // Lines are often long, heads never are.
  const start = line.slice(0, 80)
  if (title.test(start)) return line.length
  return label.exec(start)?.[0].length ?? 0
}

/** Whole rounds a label may speak of at once; more is a slip of the pen. */
const mostTogether = 200

/** The rounds whose label a line begins with: 3 of `Rnd 3:`, 4, 5 and 6 of `Rounds 4-6:`; none for other lines. */
export function roundsOfLine(line: string): readonly number[] {
  const head = headLength(line)
  if (head === 0 || title.test(line)) return []
  const [, first, last] = /(\d{1,4})(?:\s*[-\u2013]\s*(\d{1,4}))?/.exec(line.slice(0, head)) ?? []
  if (first === undefined) return []
  const from = Number(first)
  const to = last === undefined ? from : Number(last)
  if (to < from || to - from > mostTogether) return [from]
  return Array.from({ length: to - from + 1 }, (_, k) => from + k)
}
