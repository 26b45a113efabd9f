// The sheet in a browser: sound for assistive technology, nothing cut on a phone, and printed on A4 and Letter in few pages.

import { makeSheet, sheetFormats } from "@roundwright/publishing"
import type { Browser } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { openBrowser } from "./open-browser.ts"
import { unsoundParts } from "./open-page.ts"

const sheet = makeSheet(`# Sill Coaster
Terms: US
Yarn: DK, cotton
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)
Rnd 2: ch 5 (counts as dc + ch 2), *dc in next st, ch 2; rep from * around; join. (12 dc + 12 ch-2 sps)
Rnd 3: sl st to next ch-2 sp; ch 3 (counts as dc), 2 dc in same sp, 3 dc in each ch-2 sp around; join. (36 dc)
`)

let browser: Browser
beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(async () => {
  await browser?.close()
})

describe.each(["html", "large"] as const)("the sheet as %s", (format) => {
  it("has no fault that axe finds and is not wider than a phone", async () => {
    const page = await browser.newPage({ viewport: { width: 360, height: 800 } })
    await page.setContent(sheetFormats[format](sheet))
    expect(await unsoundParts(page)).toEqual([])
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(360)
    await page.close()
  })

  it.each(["A4", "Letter"])("prints on %s in few pages", async (paper) => {
    const page = await browser.newPage()
    await page.setContent(sheetFormats[format](sheet))
    const pdf = (await page.pdf({ format: paper })).toString("latin1")
    const pages = pdf.match(/\/Type\s*\/Page\b(?!s)/g) ?? []
    expect(pages.length).toBeGreaterThan(0)
    expect(pages.length).toBeLessThanOrEqual(format === "html" ? 2 : 8)
    await page.close()
  })
})
