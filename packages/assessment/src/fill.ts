// Text filled to a width, with a first indent and one for the lines after it.

/** @param between what parts the words */
export function fill(
  text: string,
  width: number,
  first = "",
  rest = first,
  between = /\s+/,
): string {
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(between)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line)
      line = rest
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].join("\n")
}
