// The sheet as Markdown. It reads as a pattern again: headings of yarn, hook and gauge stand on lines of their own.

import type { Sheet } from "./sheet.ts"

export function sheetMarkdown(sheet: Sheet): string {
  const parts: (string | null)[] = [
    `# ${sheet.title}`,
    sheet.own.length > 0 ? sheet.own.join("  \n") : null,
    `Terms: ${sheet.terms}`,
    `Level: ${sheet.level.name} (proposed: ${sheet.level.why.replace(/\.$/, "")})`,
    section(
      "Materials",
      sheet.materials.map(({ what, text }) => `- ${what}: ${text}`),
    ),
    section(`${gaugeWord(sheet)} and finished size`, [
      ...gaugeLines(sheet),
      ...sheet.size.map((line) => `- ${line}`),
    ]),
    section(
      "Abbreviations",
      sheet.abbreviations.map(({ short, long }) => `- ${short}: ${long}`),
    ),
    section(
      "Special stitches",
      sheet.special.map(({ name, how }) => (name === "" ? `- ${how}` : `- ${name}: ${how}`)),
    ),
    section(
      "Notes",
      sheet.notes.map((note) => `- ${note}`),
    ),
    "## Rounds",
    ...sheet.rounds.flatMap(({ label, work, total, sizeSoFar }) => [
      `${label}: ${[work, total].filter((part) => part !== "").join(" ")}`,
      sizeSoFar === null ? null : `So far: about ${sizeSoFar} across.`,
    ]),
    sheet.ending,
    section("Does it lie flat?", sheet.flatness),
    section(
      "Blocking and care",
      sheet.care.map((line) => `- ${line}`),
    ),
    section(
      "Please take care",
      sheet.cautions.map((line) => `- ${line}`),
    ),
    section(
      "Left for the designer to say",
      sheet.missing.map((what) => `- ${what}`),
    ),
  ]
  return `${parts.filter((part) => part !== null).join("\n\n")}\n`
}

function gaugeWord({ terms }: Sheet): string {
  return terms === "UK" ? "Tension" : "Gauge"
}

/** The designer's gauge reads as one when it is read again. */
function gaugeLines(sheet: Sheet): string[] {
  const isSwatch = (line: string) => {
    const figures = [...line.matchAll(/\d/g)]
    return /=|per|to|x/.test(line.slice(figures[0]?.index ?? line.length, figures.at(-1)?.index))
  }
  return sheet.gauge.map(
    (line, k) => `- ${k === 0 && isSwatch(line) ? `${gaugeWord(sheet)}: ` : ""}${line}`,
  )
}

function section(heading: string, lines: readonly string[]): string | null {
  return lines.length === 0 ? null : `## ${heading}\n\n${lines.join("\n")}`
}
