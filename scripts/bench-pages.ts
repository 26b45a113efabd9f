// How soon a page follows its reader, in Chromium and from disk: from an edit of an eight-round motif to its verdict on
// the screen, from opening a page to the first readable view and to the page being live, and how heavy each page is.

import { readdirSync, readFileSync } from "node:fs"
import { blankNotebook, renderNotebook } from "@roundwright/notebook"
import type { Browser, Page } from "playwright-core"
import { chooseChromium } from "../test/browser/chromium.ts"
import { openBrowser } from "../test/browser/open-browser.ts"
import { type OpenOptions, openPage, settled } from "../test/browser/open-page.ts"

type Report = (line: string) => void

/** Edits and openings measured; the medians of so many hardly move from run to run. */
const edits = 30
const openings = 5

/** Prints the figures, line by line. Nothing is asserted: machines differ. */
export async function benchPages(report: Report): Promise<void> {
  const browser = await openBrowser()
  try {
    report(`\nbrowser: Chromium ${browser.version()}, ${(await chooseChromium()).origin}`)
    report("pages in Chromium, from disk                       median     worst")
    await benchEdits(browser, report)
    report("\npage                          size MB  readable ms    live ms")
    for (const [name, markdown] of notebooks()) await benchOpening(browser, name, markdown, report)
  } finally {
    await browser.close()
  }
}

async function benchEdits(browser: Browser, report: Report): Promise<void> {
  const { html } = await renderNotebook(eightRounds(), { live: true })
  const ways: readonly (readonly [string, OpenOptions])[] = [
    ["edit to verdict, 8 rounds, in a worker", {}],
    ["  the same without workers", { withoutWorkers: true }],
  ]
  for (const [what, options] of ways) {
    const { page, context } = await openPage(browser, html, options)
    await settled(page)
    const waits: number[] = []
    for (let edit = 0; edit < edits; edit += 1) {
      waits.push(await editToVerdict(page, edit))
      await page.waitForFunction(() => !document.body.classList.contains("old"))
    }
    await settled(page)
    const wholes: number[] = []
    for (let edit = edits; edit < edits + openings; edit += 1) {
      const start = performance.now()
      await editToVerdict(page, edit)
      await settled(page)
      wholes.push(performance.now() - start)
    }
    report(`${what.padEnd(44)} ${ms(median(waits))} ${ms(Math.max(...waits))}`)
    report(
      `${"  until the shape is laid out again too".padEnd(44)} ${ms(median(wholes))} ${ms(Math.max(...wholes))}`,
    )
    const pauses = await pausesWhileTyping(page)
    report(
      `${"  longest the typist waits for a key".padEnd(44)} ${ms(median(pauses))} ${ms(Math.max(...pauses))}`,
    )
    await context.close()
  }
}

/** From the change in the text area to the frame after the verdict has changed, ms. */
function editToVerdict(page: Page, edit: number): Promise<number> {
  const [from, to] =
    edit % 2 === 0 ? ["sc in next 25", "dc in next 25"] : ["dc in next 25", "sc in next 25"]
  return page.evaluate(
    ([from, to, gauge]) => {
      const box = document.querySelector<HTMLTextAreaElement>("textarea")!
      const verdict = document.querySelector(".verdict")!
      const before = verdict.textContent
      return new Promise<number>((resolve) => {
        const start = performance.now()
        new MutationObserver((_, observer) => {
          if (verdict.textContent === before) return
          observer.disconnect()
          requestAnimationFrame(() => resolve(performance.now() - start))
        }).observe(verdict, { childList: true, subtree: true })
        // A gauge that was not there before: nothing of an earlier answer can be used again.
        box.value = box.value.replace(from!, to!).replace(/Gauge: [\d.]+/, `Gauge: ${gauge}`)
        box.dispatchEvent(new Event("input", { bubbles: true }))
      })
    },
    [from, to, (17 + edit / 1000).toFixed(3)],
  )
}

/** How long each of some keys, struck ten a second, holds up the page before the next frame, ms. */
function pausesWhileTyping(page: Page): Promise<number[]> {
  return page.evaluate(async () => {
    const box = document.querySelector<HTMLTextAreaElement>("textarea")!
    const pauses: number[] = []
    for (const letter of "; join with care and go on") {
      const start = performance.now()
      box.value += letter
      box.dispatchEvent(new Event("input", { bubbles: true }))
      await new Promise(requestAnimationFrame)
      pauses.push(performance.now() - start)
      await new Promise((resolve) => setTimeout(resolve, 84))
    }
    return pauses
  })
}

async function benchOpening(
  browser: Browser,
  name: string,
  markdown: string,
  report: Report,
): Promise<void> {
  // What is searched for is searched for before a page is opened and matters little to its size.
  const none = { square: () => null, transitions: () => null }
  const { html } = await renderNotebook(markdown, { live: true, ...none })
  const readable: number[] = []
  const live: number[] = []
  for (let k = 0; k < openings; k += 1) {
    const { page, context } = await openPage(browser, html, { markLive: true })
    await settled(page)
    const [painted, alive] = await page.evaluate(() => [
      performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
      performance.getEntriesByName("page-live")[0]?.startTime ?? Number.NaN,
    ])
    readable.push(painted!)
    live.push(alive!)
    await context.close()
  }
  const size = (Buffer.byteLength(html) / 1e6).toFixed(2)
  report(
    `${name.padEnd(28)} ${size.padStart(8)} ${ms(median(readable)).padStart(12)} ${ms(median(live)).padStart(10)}`,
  )
}

function notebooks(): [string, string][] {
  const folder = new URL("../reports/", import.meta.url)
  const names = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "index.md")
  return [
    ...names.map((name): [string, string] => [name, readFileSync(new URL(name, folder), "utf8")]),
    ["the blank page", blankNotebook()],
  ]
}

/** A wheel of eight rounds, spokes and corners in it, with every result a page shows of one. */
function eightRounds(): string {
  const fence = "```"
  const pattern = [
    "# Bench wheel",
    "Terms: US",
    "Gauge: 17 dc x 9 rows = 10 cm",
    "",
    "Rnd 1: Ch 3 (counts as dc), 15 dc in magic ring; join. (16 dc)",
    "Rnd 2: Ch 5 (counts as dc and ch 2), *dc in next dc, ch 2; rep from * 14 more times; join with sl st to 3rd ch of ch-5. (16 dc, 16 ch-2 sps)",
    "Rnd 3: Sl st to next ch-2 sp, ch 3 (counts as dc), 2 dc in same sp, 2 dc in next ch-2 sp, *3 dc in next ch-2 sp, 2 dc in next ch-2 sp; rep from * around; join. (40 dc)",
    "Rnd 4: Ch 1 (does not count), *(2 tr, ch 2, 2 tr) in next st, dc in next st, hdc in next 2 sts, sc in next 3 sts, hdc in next 2 sts, dc in next st; rep from * around; join. (52 sts, 4 ch-2 sps)",
    "Rnd 5: Ch 1 (does not count), dc in next 2 sts, *(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 13 sts; rep from * 2 more times, (2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 11 sts; join. (68 dc, 4 ch-2 sps)",
    "Rnd 6: Ch 1 (does not count), dc in next 4 sts, *(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 17 sts; rep from * 2 more times, (2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 13 sts; join. (84 dc, 4 ch-2 sps)",
    "Rnd 7: Ch 1 (does not count), dc in next 6 sts, *(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 21 sts; rep from * 2 more times, (2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 15 sts; join.",
    "Rnd 8: Ch 1 (does not count), sc in next 8 sts, *(sc, ch 2, sc) in next ch-2 sp, sc in next 25 sts; rep from * 2 more times, (sc, ch 2, sc) in next ch-2 sp, sc in next 17 sts; join.",
  ]
  const results = [
    "verdict",
    "ledger",
    "remedies",
    "problems",
    "chart name=growth",
    "chart name=fullness",
  ]
  const cells = results.map((info) => `${fence}${info}\n${fence}`)
  return [`# Bench`, `${fence}pattern name=wheel\n${pattern.join("\n")}\n${fence}`, ...cells].join(
    "\n\n",
  )
}

function ms(value: number): string {
  return value.toFixed(0).padStart(8)
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!
}
