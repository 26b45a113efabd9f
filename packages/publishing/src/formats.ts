// The editions of the sheet by name.

import type { Sheet } from "./sheet/sheet.ts"
import { sheetHtml, sheetLarge } from "./sheet/to-html.ts"
import { sheetMarkdown } from "./sheet/to-markdown.ts"
import { sheetText } from "./sheet/to-text.ts"

export const sheetFormats = {
  md: sheetMarkdown,
  html: sheetHtml,
  txt: sheetText,
  large: sheetLarge,
} as const satisfies Readonly<Record<string, (sheet: Sheet) => string>>

export type SheetFormat = keyof typeof sheetFormats
