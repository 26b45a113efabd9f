// Text filled to a width, for the plain edition.

export function fill(text: string, width: number, first = "", rest = first): string {
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(/\s+/)) {
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
