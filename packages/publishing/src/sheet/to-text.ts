// The sheet as plain text, 76 columns wide.

import { fill } from "@roundwright/assessment"
import type { Sheet } from "./sheet.ts"

const width = 76

export function sheetText(sheet: Sheet): string {
  const item = (text: string) => fill(text, width, "  - ", "    ")
  const parts: (string | null)[] = [
    sheet.title.toUpperCase() === sheet.title ? sheet.title : underlined(sheet.title),
    sheet.own.length > 0 ? sheet.own.join("\n") : null,
    `Terms: ${sheet.terms}\n${fill(`Level: ${sheet.level.name} (proposed: ${sheet.level.why.replace(/\.$/, "")})`, width)}`,
    block(
      "Materials",
      sheet.materials.map(({ what, text }) => fill(`${what}: ${text}`, width, "", "  ")),
    ),
    block(sheet.terms === "UK" ? "Tension" : "Gauge", sheet.gauge.map(item)),
    block("Finished size", sheet.size.map(item)),
    block(
      "Abbreviations",
      sheet.abbreviations.map(({ short, long }) => item(`${short}: ${long}`)),
    ),
    block(
      "Special stitches",
      sheet.special.map(({ name, how }) => item(name === "" ? how : `${name}: ${how}`)),
    ),
    block("Notes", sheet.notes.map(item)),
    "ROUNDS",
    ...sheet.rounds.flatMap(({ label, work, total, sizeSoFar }) => [
      fill(`${label}: ${[work, total].filter((part) => part !== "").join(" ")}`, width, "", "  "),
      sizeSoFar === null ? null : `So far: about ${sizeSoFar} across.`,
    ]),
    sheet.ending,
    block(
      "Does it lie flat?",
      sheet.flatness.map((line) => fill(line, width)),
    ),
    block("Blocking and care", sheet.care.map(item)),
    block("Please take care", sheet.cautions.map(item)),
    block("Left for the designer to say", sheet.missing.map(item)),
  ]
  return `${parts.filter((part) => part !== null).join("\n\n")}\n`
}

function underlined(title: string): string {
  return `${title}\n${"=".repeat(title.length)}`
}

function block(heading: string, lines: readonly string[]): string | null {
  return lines.length === 0 ? null : `${heading.toUpperCase()}\n${lines.join("\n")}`
}
