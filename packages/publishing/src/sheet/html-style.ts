// How the sheet looks on paper. Sizes in points and millimetres; black on white; a round is never parted from its total.

/** The look of the sheet inside the element that holds it, whatever its headings are. */
export const sheetStyle =
  `header { border-bottom: 1.5pt solid #000; padding-bottom: 2mm; margin-bottom: 3mm }
header > :is(h1, h2, h3):first-child { font-size: 20pt; line-height: 1.15; margin: 0 0 1mm }
section > :is(h2, h3, h4):first-child { font-size: 11pt; margin: 0 0 1mm; break-after: avoid }
p { margin: 0 0 1mm; orphans: 2; widows: 2 }
section { margin: 0 0 3mm }
.facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(76mm, 1fr)); gap: 0 8mm }
.facts section { break-inside: avoid }
ul { margin: 0; padding-left: 4.5mm }
dl { margin: 0; display: grid; grid-template-columns: minmax(22mm, max-content) 1fr; column-gap: 3mm }
dl div { display: grid; grid-template-columns: subgrid; grid-column: 1 / -1; break-inside: avoid }
dt { font-weight: 600; max-width: 40mm }
dd { margin: 0 }
dl.short { display: block; columns: 38mm; column-gap: 5mm }
dl.short div { grid-template-columns: 14mm 1fr; gap: 1mm }
.aside { color: #333; font-size: 9pt }
ol.rounds { list-style: none; margin: 0 0 1.5mm; padding: 0 }
ol.rounds li { display: grid; grid-template-columns: 14mm 1fr 15mm; gap: 2mm; padding: 0.9mm 0; border-top: 0.4pt solid #999; break-inside: avoid }
.total { display: inline-block; font-weight: 600 }
.size { text-align: right; color: #333; font-size: 9pt; padding-top: 0.3mm }
.chart { break-inside: avoid }
.chart svg { display: block; max-width: 100%; max-height: var(--high, 145mm); height: auto; margin: 0 auto }
@media print { .chart[data-page="own"] svg { width: 100%; max-height: 180mm } }
.facts .chart svg { max-height: 68mm }
.to-designer { border-top: 0.4pt dashed #999; padding-top: 2mm; color: #333 }
@media print { .to-designer { display: none } }
@media (max-width: 120mm) { .facts { grid-template-columns: 1fr } dl.short { columns: 1 } }
`.trim()

/** Letters and paper of the sheet. */
export const sheetType =
  'font: 9.5pt/1.36 "Helvetica Neue", Arial, "Liberation Sans", sans-serif; color: #000; background: #fff'

export const printStyle = `@page { margin: 12mm 15mm }
* { box-sizing: border-box }
html { ${sheetType} }
body { margin: 0 }
main { max-width: 180mm; margin: 0 auto; padding: 6mm 4mm }
${sheetStyle}
@media print { main { max-width: none; padding: 0 } }`

export const largeStyle = `@page { margin: 15mm }
* { box-sizing: border-box }
html { font: 24pt/1.5 Verdana, Arial, "Liberation Sans", sans-serif; color: #000; background: #fff }
body { margin: 0 }
main { max-width: 40em; margin: 0 auto; padding: 0.5em }
h1 { font-size: 32pt; line-height: 1.2; margin: 0 0 0.4em }
h2 { font-size: 28pt; margin: 1em 0 0.3em; break-after: avoid }
h3 { font-size: 24pt; margin: 0.8em 0 0.2em; break-after: avoid }
p { margin: 0 0 0.4em; orphans: 2; widows: 2 }
ul, ol { margin: 0 0 0.4em; padding-left: 1.4em }
li { margin-bottom: 0.25em; break-inside: avoid; overflow-wrap: anywhere }
.round p { break-before: avoid }
.round .aim { break-after: avoid; break-inside: avoid; font-weight: 600 }
@media print { main { max-width: none; padding: 0 } }`
