// Text filled to a width, with a first indent and one for the lines after it. A no-break space holds a line together and
// is printed as a space; a number keeps its unit.

import { fill } from "@roundwright/assessment"

export function wrap(text: string, width: number, first = "", rest = first): string {
  const held = text.replace(/(?<=\d) (?=(?:%|mm|cm)(?!\w))/g, "\u00a0")
  return fill(held, width, first, rest, /[^\S\u00a0]+/).replaceAll("\u00a0", " ")
}
