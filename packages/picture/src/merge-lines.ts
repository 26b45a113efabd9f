// New lines of a measurement brought into a text that may hold some already.

import { foundBracket, partsOfLine } from "./read-lines.ts"

/**
 * Lines whose value was found are replaced, or dropped where it is found no more; lines set by hand stay as they
 * are; what is missing is added where its order asks for it. Nothing else is touched.
 */
export function mergeLines(text: string, fresh: readonly string[]): string {
  const byLabel = new Map(fresh.map((line) => [labelOf(line), line]))
  const kept = (text === "" ? [] : text.split("\n")).flatMap((line) => {
    const label = labelOf(line)
    if (label === undefined || !wasFound(line)) return [line]
    return byLabel.get(label) ?? []
  })
  let before: string | undefined
  for (const line of fresh) {
    const label = labelOf(line)
    if (!kept.some((one) => labelOf(one) === label)) {
      const after = kept.findLastIndex((one) => before !== undefined && labelOf(one) === before)
      const first = kept.findIndex((one) => labelOf(one) !== undefined)
      kept.splice(after >= 0 ? after + 1 : first >= 0 ? first : kept.length, 0, line)
    }
    before = label
  }
  return kept.join("\n")
}

/** "ring 3", "centre" ...; undefined for a line that is none of ours. */
function labelOf(line: string): string | undefined {
  return partsOfLine(line)?.label.toLowerCase().replace(/\s+/g, " ").replace("center", "centre")
}

function wasFound(line: string): boolean {
  return foundBracket.test(line) || /;\s*not read\s*$/i.test(line)
}
