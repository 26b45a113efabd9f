// Lines and columns of a text, for offsets and back. A line ends with \n, \r\n or \r, as in the reader.

export class Lines {
  readonly starts: readonly number[]

  constructor(readonly text: string) {
    const starts = [0]
    for (const { index, 0: mark } of text.matchAll(/\r\n|\r|\n/g)) starts.push(index + mark.length)
    this.starts = starts
  }

  /** Index of the line, from 0, that holds an offset. */
  lineAt(offset: number): number {
    let [low, high] = [0, this.starts.length - 1]
    while (low < high) {
      const middle = (low + high + 1) >> 1
      if (this.starts[middle]! <= offset) low = middle
      else high = middle - 1
    }
    return low
  }

  /** Offset behind the last letter of a line, given by its index. */
  endOf(line: number): number {
    let end = this.starts[line + 1] ?? this.text.length
    const start = this.starts[line] ?? this.text.length
    while (end > start && (this.text[end - 1] === "\n" || this.text[end - 1] === "\r")) end -= 1
    return end
  }

  lineText(line: number): string {
    return this.text.slice(this.starts[line], this.endOf(line))
  }

  get count(): number {
    return this.starts.length
  }

  /** Line and column from 1; the length is cut at the end of the line. */
  place(start: number, end: number): { line: number; column: number; length: number } {
    const from = Math.max(0, Math.min(start, this.text.length))
    const line = this.lineAt(from)
    const to = Math.max(from, Math.min(end, this.endOf(line)))
    return { line: line + 1, column: from - this.starts[line]! + 1, length: to - from }
  }

  /** @param line,column from 1 */
  offset(line: number, column: number): number {
    return Math.min((this.starts[line - 1] ?? this.text.length) + column - 1, this.text.length)
  }
}
