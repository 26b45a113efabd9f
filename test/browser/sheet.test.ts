// Sheets in a browser: sound for assistive technology, nothing cut on a phone, and printed on A4 and Letter without waste: a
// short solid piece, an open lace piece with a chart of its own height, and large print.

import { makeSheet, sheetFormats } from "@roundwright/publishing"
import type { Browser } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { openBrowser } from "./open-browser.ts"
import { unsoundParts } from "./open-page.ts"

const coaster = `# Sill Coaster
Terms: US
Yarn: DK, cotton
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (24 dc)
Rnd 3: ch 3 (counts as dc), 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around; join. (36 dc)
`
const lace = `# Gable Mat
Terms: UK
Yarn: DK, cotton
Hook: 4 mm

Rnd 1: ch 3 (counts as tr), 11 tr in magic ring; join. (12 tr)
Rnd 2: ch 5 (counts as tr + ch 2), *tr in next st, ch 2; rep from * around; join. (12 tr + 12 ch-2 sps)
Rnd 3: ss to next ch-2 sp; ch 3 (counts as tr), 2 tr in same sp, 3 tr in each ch-2 sp around; join. (36 tr)
Rnd 4: ch 4 (counts as tr + ch 1), *tr in next st, ch 1; rep from * around; join. (36 tr + 36 ch-1 sps)
Rnd 5: ss to next ch-1 sp; ch 3 (counts as tr), tr in same sp, 2 tr in each ch-1 sp around; join. (72 tr)
`

const sheets = {
  "a short one": { sheet: makeSheet(coaster), format: "html", pages: 1 },
  "one in UK terms with a large chart": { sheet: makeSheet(lace), format: "html", pages: 2 },
  "one in large print": { sheet: makeSheet(coaster), format: "large", pages: 8 },
} as const

/** Inside the margins of the sheet, mm. */
const papers = { A4: { high: 297, wide: 210 }, Letter: { high: 279.4, wide: 215.9 } } as const
const pxPerMm = 96 / 25.4

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

describe.each(Object.entries(sheets))("%s", (_, { sheet, format, pages: most }) => {
  it("has no fault that axe finds, is not wider than a phone, and prints on A4 and Letter without waste", async () => {
    const page = await browser.newPage({ viewport: { width: 360, height: 800 } })
    await page.setContent(sheetFormats[format](sheet))
    expect(await unsoundParts(page)).toEqual([])
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(360)
    await page.emulateMedia({ media: "print" })
    for (const [paper, { high, wide }] of Object.entries(papers)) {
      const pdf = (await page.pdf({ format: paper })).toString("latin1")
      const pages = (pdf.match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length
      expect(pages).toBeGreaterThan(0)
      expect(pages).toBeLessThanOrEqual(most)
      const [top, side] = format === "html" ? [12, 15] : [15, 15]
      const [room, width] = [(high - 2 * top) * pxPerMm, (wide - 2 * side) * pxPerMm]
      await page.setViewportSize({ width: Math.floor(width), height: Math.floor(room) })
      const found = await page.evaluate(() => {
        const whole = [...document.querySelectorAll("li, .chart, .end, .aim, h2, h3")]
        return {
          used: document.querySelector("main")!.getBoundingClientRect().height,
          wide: document.documentElement.scrollWidth,
          tallest: Math.max(...whole.map((one) => one.getBoundingClientRect().height)),
        }
      })
      // What must not be cut fits on a page.
      expect(found.tallest).toBeLessThan(room)
      expect(found.wide).toBeLessThanOrEqual(Math.floor(width))
      if (pages > 1) expect(found.used / (pages * room), paper).toBeGreaterThan(0.5)
    }
    await page.close()
  })

  it("keeps every round with its total", () => {
    const html = sheetFormats[format](sheet)
    const rounds =
      format === "html"
        ? html.match(
            /<li><strong>Rnd \d+<\/strong><span>.*? <span class="total">\(\d+.*?\)<\/span>/g,
          )
        : html.match(/<h3>Round \d+<\/h3>\n<p class="aim">It ends with \d+/g)
    expect(rounds).toHaveLength(sheet.rounds.length)
    expect(html).toMatch(
      format === "html"
        ? /ol\.rounds li \{[^}]*break-inside: avoid/
        : /\.aim \{ break-after: avoid/,
    )
  })
})
