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
