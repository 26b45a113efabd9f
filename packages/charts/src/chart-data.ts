// The data of a chart as a table of its own: what the drawing stands on, for a spreadsheet. Comma-separated values after
// RFC 4180: lines end with CR LF, texts with commas, quotes or line breaks in quotes.

import type { ChartSpec, SpecValue } from "./spec.ts"

/** One row for each row of the chart's data, a column for each field, in the order they first come; empty where a row has none. */
export function chartCsv({ data }: ChartSpec): string {
  const fields = [...new Set(data.values.flatMap((row) => Object.keys(row)))]
  const lines = [fields, ...data.values.map((row) => fields.map((field) => row[field] ?? ""))]
  return lines.map((line) => `${line.map(inCsv).join(",")}\r\n`).join("")
}

function inCsv(value: SpecValue): string {
  const text = typeof value === "object" ? JSON.stringify(value) : String(value)
  // A spreadsheet would take these for a formula.
  const plain = typeof value === "string" && /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain
}
