// Heading lines (`Yarn:`, `Hook:`, `Corners:`) read and set one by one, the other lines of the text left
// as they are.

/** What stands after the colon, or null when there is no such line. */
export function headingValue(text: string, name: string): string | null {
  const line = text.split("\n").find((one) => isHeading(one, name))
  return line === undefined ? null : line.slice(line.indexOf(":") + 1).trim()
}

/** The text with the line set, added at the end, or taken out where `value` is null. */
export function withHeading(text: string, name: string, value: string | null): string {
  const lines = text === "" ? [] : text.split("\n")
  const at = lines.findIndex((line) => isHeading(line, name))
  if (value === null) return lines.filter((_, index) => index !== at).join("\n")
  const line = `${name}: ${value}`
  if (at >= 0) return lines.with(at, line).join("\n")
  while (lines.at(-1)?.trim() === "") lines.pop()
  return [...lines, line].join("\n")
}

function isHeading(line: string, name: string): boolean {
  const colon = line.indexOf(":")
  return colon > 0 && line.slice(0, colon).trim().toLowerCase() === name.toLowerCase()
}
