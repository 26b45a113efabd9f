// Heading lines (`Yarn:`, `Hook:`, `Corner style:`) read and set one by one, the other lines of the text left
// as they are.

/** What stands after the colon, or null when there is no such line. */
export function headingValue(text: string, name: string): string | null {
  const line = text.split("\n").find((one) => headingName(one) === name.toLowerCase())
  return line === undefined ? null : line.slice(line.indexOf(":") + 1).trim()
}

/** The text with the line set, added at the end, or taken out where `value` is null. */
export function withHeading(text: string, name: string, value: string | null): string {
  const lines = text === "" ? [] : text.split("\n")
  const at = lines.findIndex((line) => headingName(line) === name.toLowerCase())
  if (value === null) return lines.filter((_, index) => index !== at).join("\n")
  const line = `${name}: ${value}`
  if (at >= 0) return lines.with(at, line).join("\n")
  while (lines.at(-1)?.trim() === "") lines.pop()
  return [...lines, line].join("\n")
}

/** `Corner style: any` -> `corner style`, and so `corner-style: any`; "" for a line that is no heading. */
export function headingName(line: string): string {
  const name = line.slice(0, Math.max(0, line.indexOf(":")))
  return name
    .trim()
    .toLowerCase()
    .replace(/[-\s]+/g, " ")
}
