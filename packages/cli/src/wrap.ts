// Text filled to a width, with a first indent and one for the lines after it. A no-break space holds a line together and
// is printed as a space; a number keeps its unit.

export function wrap(text: string, width: number, first = "", rest = first): string {
  const lines: string[] = []
  let line = first
  let empty = true
  const held = text.replace(/(?<=\d) (?=(?:%|mm|cm)(?!\w))/g, "\u00a0")
  for (const word of held.split(/[^\S\u00a0]+/)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line)
      line = rest
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].join("\n").replaceAll("\u00a0", " ")
}
