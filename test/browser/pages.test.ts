// Every page of reports/ and the blank page in a browser: no complaint, the numbers of Node, readable
// by everyone, on a phone, in light and in dark.

import { readdirSync, readFileSync } from "node:fs"
import { blankNotebook, computeNotebook, renderNotebook } from "@roundwright/notebook"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { bundleScript } from "../../packages/notebook/src/live/bundle.ts"
import { fileBrowser } from "./file-browser.ts"
import { settled, unsoundParts } from "./open-page.ts"

const folder = new URL("../../reports/", import.meta.url)
const notebooks: readonly (readonly [name: string, markdown: string])[] = [
  ...readdirSync(folder)
    .filter((name) => name.endsWith(".md") && name !== "index.md")
    .map((name) => [name, thinned(readFileSync(new URL(name, folder), "utf8"))] as const),
  ["the blank page", blankNotebook()],
]

/** Circle after circle squared takes a second each: here a few of them stand for all. */
function thinned(markdown: string): string {
  return markdown.replace(/^Every: 3$/m, "Every: 12")
}

const { open } = fileBrowser()

describe.each(notebooks)("%s", (_, markdown) => {
  it("stands on a phone, sound for readers of every kind in light and dark, and writes itself as Node wrote it", async () => {
    const { html } = await renderNotebook(markdown, { live: true })
    const { page, context, complaints } = await open(html, {
      viewport: { width: 360, height: 740 },
      reducedMotion: "reduce",
    })
    await settled(page)
    expect(await page.evaluate(() => document.body.dataset.computedIn)).toBe("worker")
    const wide = await page.evaluate(() => document.documentElement.scrollWidth)
    expect(wide).toBeLessThanOrEqual(360)
    for (const fold of await page.locator(".fold > summary").all()) await fold.click()
    await page.locator(".save > summary").click()
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme })
      expect(await unsoundParts(page), colorScheme).toEqual([])
    }
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: /HTML/ }).click(),
    ])
    const saved = readFileSync(await download.path(), "utf8")
    // As a browser reads them: ours closes empty elements of drawings in short, a browser does not.
    const [found, written] = await page.evaluate(
      (texts) =>
        texts.map(
          (text) =>
            new DOMParser().parseFromString(text, "text/html").querySelector("main")!.innerHTML,
        ),
      [saved, html],
    )
    expectSamePage(found!, written!)
    expect(complaints).toEqual([])
    await context.close()
  })
})

/**
 * The same words and marks; numbers, all of them written, may differ by rounding: drawings give hundredths of a pixel,
 * and the last bits of a sine are each engine's own.
 */
function expectSamePage(saved: string, written: string): void {
  const number = /-?\d+(?:\.\d+)?/g
  const words = (text: string) => text.replace(number, "#")
  expect(words(saved)).toBe(words(written))
  const [found, expected] = [saved, written].map((text) => (text.match(number) ?? []).map(Number))
  const apart = found!.filter((value, k) => Math.abs(value - expected![k]!) > 0.011)
  expect(apart, "more than a hundredth apart").toEqual([])
}

describe("numbers", () => {
  let page: Page
  beforeAll(async () => {
    const entry = new URL("../../packages/notebook/src/compute.ts", import.meta.url)
    const script = await bundleScript(entry, "tool")
    page = (await open("<!doctype html><title>bare</title>")).page
    await page.evaluate(`${script};globalThis.tool = tool`)
  })
  afterAll(() => page?.context().close())

  it.each(notebooks)(
    "of %s are the same in the browser as in Node, to six digits, lifts to five",
    async (_, markdown) => {
      const there = await page.evaluate(async (text) => {
        const { tool } = globalThis as unknown as {
          tool: { computeNotebook: typeof computeNotebook }
        }
        const { cells, values } = await tool.computeNotebook(text)
        return JSON.stringify([cells, values])
      }, markdown)
      const { cells, values } = await computeNotebook(markdown)
      const here = numbersIn(JSON.parse(JSON.stringify([cells, values])))
      const theirs = numbersIn(JSON.parse(there))
      // A page about a picture alone has a few numbers of its own, one about a pattern hundreds.
      expect(here.length).toBeGreaterThan(markdown.includes("```pattern") ? 200 : 40)
      expect(theirs.map(([path]) => path)).toEqual(here.map(([path]) => path))
      const apart = here.flatMap(([path, value], index) => {
        const other = theirs[index]![1]
        return same(path, value, other) ? [] : [{ path, here: value, there: other }]
      })
      expect(apart).toEqual([])
    },
  )
})

/** Every number and every text, with its path. */
function numbersIn(value: unknown, path = ""): (readonly [string, number | string])[] {
  if (typeof value === "number" || typeof value === "string") return [[path, value]]
  if (typeof value !== "object" || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}/${key}`))
}

/** Engines may differ in the last bits of sines and powers. */
const sixDigits = 1e-6

/** A lift is where a search for rest stops; it goes round many times on those last bits. Three digits of it are ever shown. */
const fiveDigits = 1e-5

function same(path: string, a: number | string, b: number | string): boolean {
  if (typeof a !== "number" || typeof b !== "number") return a === b
  // Of two corners of a square off by as much to either side, the last bits say which is named.
  const from = path.includes("/found/") && path.endsWith("/cornerAngleDeg") ? 90 : 0
  const [here, there] = from > 0 ? [Math.abs(a - from), Math.abs(b - from)] : [a, b]
  const share = path.endsWith("/liftMm") ? fiveDigits : sixDigits
  return Math.abs(here - there) <= share * Math.max(sixDigits, Math.abs(a), Math.abs(b))
}
