// Characters that nobody sees: soft hyphens, spaces of no width, joiners, marks of direction. Pages that were copied have
// them inside words and numbers. They go, and blanks at the end keep every line as long as it was.

/** What Unicode says may be ignored where it is not drawn, and the mark at the beginning of a file. */
const invisible = /[\p{Default_Ignorable_Code_Point}\ufeff]/gu

export function isInvisible(text: string): boolean {
  return text.search(invisible) >= 0
}

export interface VisibleText {
  /** Of the same length, and each of its lines too. */
  readonly text: string
  /** Offset of each unit in the text as it was, null where nothing moved. */
  readonly origins: Int32Array | null
}

export function withoutInvisible(given: string): VisibleText {
  if (!isInvisible(given)) return { text: given, origins: null }
  const origins = Int32Array.from({ length: given.length }, (_, i) => i)
  const text = given.replace(/[^\r\n]+/g, (line, start: number) => {
    let seen = ""
    const take = (from: number, to: number) => {
      for (let k = from; k < to; k++) origins[start + seen.length + k - from] = start + k
      seen += line.slice(from, to)
    }
    let from = 0
    for (const { 0: found, index } of line.matchAll(invisible)) {
      take(from, index)
      from = index + found.length
    }
    take(from, line.length)
    for (let k = seen.length; k < line.length; k++) origins[start + k] = start + line.length - 1
    return seen.padEnd(line.length)
  })
  return { text, origins }
}
