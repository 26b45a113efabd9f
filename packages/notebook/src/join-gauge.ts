// The lines of a gauge cell set over a pattern's own headings.

/**
 * A pattern's text with the lines of a gauge cell put in after its title, and its own headings of the
 * same names left out. `title`: how many lines stand before the gauge.
 */
export function joinGauge(
  text: string,
  gauge: readonly string[],
): { readonly joined: string; readonly title: number } {
  const headings = new Set(gauge.map(headingOf).filter((heading) => heading !== null))
  const lines = text.split(/\r\n|\r|\n/)
  const title = titleLine(lines)
  const own = lines.map((line) => (headings.has(headingOf(line) ?? "") ? "" : line))
  return { joined: [...own.slice(0, title), ...gauge, ...own.slice(title)].join("\n"), title }
}

/** `Hook: 4 mm` -> `hook`. */
function headingOf(line: string): string | null {
  return /^\s*([A-Za-z]{2,20})\s*:/.exec(line)?.[1]?.toLowerCase() ?? null
}

/** How many lines stand before the gauge: the title, when the text opens with one. */
function titleLine(lines: readonly string[]): number {
  const first = lines.findIndex((line) => line.trim() !== "")
  const line = lines[first]
  return line === undefined || line.includes(":") ? 0 : first + 1
}
