// The sheet of a pattern in a page, as it will print: black on white like the paper it is for.

import { type Sheet, sheetFragment, sheetStyle, sheetType } from "@roundwright/publishing"
import { type Child, element, trusted } from "./html.ts"

export function publishedHtml(sheet: Sheet | { readonly why: string }): Child {
  if ("why" in sheet) return element("p", { class: "after" }, `No sheet yet. ${sheet.why}`)
  return element("div", { class: "sheet-page" }, trusted(sheetFragment(sheet, 3)))
}

/** The look of a sheet holds inside it alone. */
export const publishedStyle = `
.sheet-page {
  ${sheetType}; color-scheme: light; font-variant-numeric: lining-nums;
  border: 1px solid var(--line); padding: 8mm 7mm; overflow-wrap: break-word;
  ${sheetStyle}
}
.sheet-page :is(h2, h3, h4, h5) { line-height: 1.25; letter-spacing: 0; text-wrap: wrap; }
.sheet-page li { margin: 0; }
.sheet-page .facts { grid-template-columns: repeat(auto-fit, minmax(min(76mm, 100%), 1fr)); }
@media (min-width: 50rem) { .cell.sheet { width: 46rem; margin-left: -4.75rem; } }
@media (max-width: 34rem) {
  .sheet-page { margin: 0 -1rem; padding: 1.2rem 1rem; border-width: 1px 0; }
  .sheet-page ol.rounds li { grid-template-columns: 11mm 1fr 13mm; gap: 1.5mm; }
}
@media print {
  .cell.sheet { width: auto; margin-left: 0; }
  .sheet-page { border: 0; padding: 0; }
}`.trim()
