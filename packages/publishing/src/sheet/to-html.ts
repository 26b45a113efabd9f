// The sheet as one HTML file made for print on A4 and Letter, and the large edition: 24 point, one column, every round
// in full words, one step on a line. No script, nothing fetched.

import { largeStyle, printStyle } from "./html-style.ts"
import { roomForChart } from "./paper.ts"
import type { Sheet } from "./sheet.ts"
import { inFull, spokenSteps, spokenTotal } from "./spoken.ts"

export function sheetHtml(sheet: Sheet): string {
  return page(sheet, printStyle, sheetParts(sheet))
}

/**
 * The sheet as a part of another page, to be set in an element whose look is `sheetStyle`.
 * @param level of its title among the headings of that page
 */
export function sheetFragment(sheet: Sheet, level: 2 | 3 | 4): string {
  const parts = sheetParts(sheet).filter((one) => one !== "")
  // Texts are escaped: nothing but the headings made here can begin so.
  return parts
    .join("\n")
    .replace(/<(\/?)h([12])>/g, (_, end, own) => `<${end}h${level + Number(own) - 1}>`)
}

function sheetParts(sheet: Sheet): string[] {
  const { abbreviations, special, size, gauge } = sheet
  const facts = [
    part("Materials", definitions(sheet.materials.map(({ what, text }) => [what, text]))),
    `<div>${part(gaugeWord(sheet), list(gauge))}${part("Finished size", list(size))}</div>`,
  ].join("\n")
  const rounds = sheet.rounds
    .map(
      ({ label, work, total, sizeSoFar }) =>
        `<li><strong>${inHtml(label)}</strong><span>${inHtml(work)} <span class="total">${inHtml(total)}</span></span><span class="size">${sizeSoFar === null ? "" : inHtml(sizeSoFar)}</span></li>`,
    )
    .join("\n")
  return [
    header(sheet),
    `<div class="facts">\n${facts}\n</div>`,
    part(
      "Abbreviations",
      definitions(
        abbreviations.map(({ short, long }) => [short, long]),
        "short",
      ),
    ),
    part("Special stitches", definitions(special.map(({ name, how }) => [name, how]))),
    part("Notes", list(sheet.notes)),
    part(
      "Rounds",
      `<p class="aside">At the right: about how far across the piece is now, to check as you go.</p><ol class="rounds">\n${rounds}\n</ol><p>${inHtml(sheet.ending)}</p>`,
    ),
    ...ends(sheet),
    `<div class="to-designer">${part("Left for the designer to say", list(sheet.missing))}</div>`,
  ]
}

/** Charts up to this width stand beside the last parts, mm. */
const besideMm = 84

/** Flatness, care and cautions, with the chart where its size asks for it. */
function ends(sheet: Sheet): string[] {
  const { chart, flatness, care, cautions } = sheet
  const words = [
    part("Does it lie flat?", list(flatness)),
    part("Blocking and care", list(care)),
    part("Please take care", list(cautions)),
  ]
  const drawn = (look: string) =>
    `<section class="chart"${look}><h2>Chart</h2>\n${chart}\n</section>`
  const wide = Number(/width="([\d.]+)mm"/.exec(chart ?? "")?.[1] ?? 0)
  if (chart !== null && wide <= besideMm)
    return [`<div class="facts">\n<div>${words.join("\n")}</div>\n${drawn("")}\n</div>`]
  const columns = `<div class="facts end">\n<div>${words[0]}${words[2]}</div>\n${words[1]}\n</div>`
  if (chart === null) return [columns]
  const room = roomForChart(sheet)
  const look = room === null ? ' data-page="own"' : ` style="--high:${room}mm"`
  return [columns, drawn(look)]
}

/** @returns the accessible edition: no chart is needed to work from it */
export function sheetLarge(sheet: Sheet): string {
  const { terms } = sheet
  const full = (text: string) => inFull(text, terms)
  const rounds = sheet.rounds
    .map(({ number, label, work, total, sizeSoFar }) => {
      const steps = spokenSteps(work, terms)
        .map((step) => `<li>${inHtml(step)}.</li>`)
        .join("\n")
      const name = label.startsWith("Row") ? "Row" : "Round"
      // Told first, so that no page parts a round from its total.
      const aim =
        total === "" ? "" : `<p class="aim">It ends with ${inHtml(spokenTotal(total, terms))}.</p>`
      const end = [
        sizeSoFar === null ? "" : `<p>The piece is now about ${inHtml(sizeSoFar)} across.</p>`,
      ].join("\n")
      return `<section class="round"><h3>${name} ${number}</h3>\n${aim}\n<ol>\n${steps}\n</ol>\n${end}</section>`
    })
    .join("\n")
  return page(sheet, largeStyle, [
    header(sheet),
    part("Materials", list(sheet.materials.map(({ what, text }) => `${what}: ${text}`))),
    part(gaugeWord(sheet), list(sheet.gauge.map(full))),
    part("Finished size", list(sheet.size)),
    part(
      "Special stitches",
      list(sheet.special.map(({ name, how }) => full(name === "" ? how : `${name}: ${how}`))),
    ),
    part("Notes", list(sheet.notes.map(full))),
    `<section><h2>Rounds</h2>\n${rounds}\n<p>${inHtml(sheet.ending)}</p></section>`,
    part("Does it lie flat?", list(sheet.flatness)),
    part("Blocking and care", list(sheet.care)),
    part("Please take care", list(sheet.cautions)),
    part("Left for the designer to say", list(sheet.missing)),
  ])
}

function page({ title }: Sheet, style: string, parts: readonly string[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${inHtml(title)}</title>
<style>
${style}
</style>
</head>
<body>
<main>
${parts.filter((one) => one !== "").join("\n")}
</main>
</body>
</html>
`
}

function header({ title, own, terms, level }: Sheet): string {
  const lines = own.map((line) => `<p>${inHtml(line)}</p>`).join("\n")
  const facts = `${terms} terms. Level proposed: ${level.name.toLowerCase()} (${level.why.replace(/\.$/, "")}).`
  return `<header><h1>${inHtml(title)}</h1>\n${lines}<p>${inHtml(facts)}</p></header>`
}

function gaugeWord({ terms }: Sheet): string {
  return terms === "UK" ? "Tension" : "Gauge"
}

function part(heading: string, content: string): string {
  return content === "" ? "" : `<section><h2>${heading}</h2>\n${content}\n</section>`
}

function list(items: readonly string[]): string {
  return items.length === 0
    ? ""
    : `<ul>\n${items.map((item) => `<li>${inHtml(item)}</li>`).join("\n")}\n</ul>`
}

function definitions(items: readonly (readonly [string, string])[], kind = ""): string {
  if (items.length === 0) return ""
  const rows = items
    .map(([term, text]) => `<div><dt>${inHtml(term)}</dt><dd>${inHtml(text)}</dd></div>`)
    .join("\n")
  return `<dl${kind === "" ? "" : ` class="${kind}"`}>\n${rows}\n</dl>`
}

/** Figures stay on one line with their units. */
export function inHtml(text: string): string {
  return text
    .replace(/(\d) (mm|cm|m|in|yd|%)(?![a-z])/g, "$1\u00a0$2")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
}
