// Rows of cells as lines of a terminal.

/** Right-aligned columns but the last; two spaces between. */
export function alignColumns(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)))
  return rows.map((row) =>
    row
      .map((cell, column) => (column === row.length - 1 ? cell : cell.padStart(widths[column]!)))
      .join("  ")
      .trimEnd(),
  )
}
