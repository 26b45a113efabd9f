// A pattern edited and published in a page: findings with their wordings taken over by one click, the sheet as it will print,
// figures kept as files, a round marked wherever it is shown, and a plain page that is complete without its script.

import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { renderNotebook } from "@roundwright/notebook"
import type { Page } from "playwright-core"
import { beforeAll, describe, expect, it } from "vitest"
import { fileBrowser } from "./file-browser.ts"
import { area, fence } from "./live-page.ts"
import { type OpenPage, settled, unsoundParts } from "./open-page.ts"

const text = `# A mat to hand out

It is looked through before it is published.

## The text

${fence}pattern name=mat
# Heron mat
Terms: US
Yarn: DK
Hook: 4 mm (US H/8)

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (26 dc)
Rnd 3: ch 3 (counts as dc), 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around; join. (36 dc)
${fence}

${fence}verdict of=mat
${fence}

## The edit

${fence}edit of=mat
${fence}

## The rounds

${fence}ledger of=mat
${fence}

${fence}chart of=mat name=growth
${fence}

${fence}chart of=mat name=diagram
${fence}

## The sheet

${fence}sheet of=mat
${fence}
`

const { open } = fileBrowser()
let live: string
let plain: string
beforeAll(async () => {
  live = (await renderNotebook(text, { live: true })).html
  plain = (await renderNotebook(text)).html
})

/** One page for all tests; the one that changes it comes last. */
let shared: OpenPage | undefined

async function withLive(run: (page: Page) => Promise<void>): Promise<void> {
  shared ??= await open(live, { viewport: { width: 1600, height: 900 }, reducedMotion: "reduce" })
  await settled(shared.page)
  await run(shared.page)
  expect(shared.complaints).toEqual([])
}

/** Keeps the figure of a cell in one way; the file as bytes. */
async function kept(page: Page, cell: number, way: string): Promise<Buffer> {
  const fold = page.locator(`#cell-${cell} .export`)
  if (!(await fold.evaluate((one: HTMLDetailsElement) => one.open)))
    await fold.locator("summary").click()
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    fold.getByRole("button", { name: way }).click(),
  ])
  return readFileSync(await download.path())
}

describe("a round", () => {
  it("chosen in the table, the text or the diagram is marked in the others, with the keyboard too", () =>
    withLive(async (page) => {
      const marked = () =>
        page.evaluate(() =>
          [...document.querySelectorAll(".chosen")].map(
            (one) => `${one.closest(".cell")!.id} ${one.getAttribute("data-round")}`,
          ),
        )
      await page.locator("#cell-4 a.round").nth(1).focus()
      await page.keyboard.press("Enter")
      const places = new Set(await marked())
      expect(places).toEqual(new Set([1, 4, 5, 6, 7].map((cell) => `cell-${cell} 2`)))
      await area(page, 1).evaluate((box: HTMLTextAreaElement) => {
        box.focus()
        box.setSelectionRange(box.value.indexOf("Rnd 3") + 9, box.value.indexOf("Rnd 3") + 9)
      })
      await page.keyboard.press("ArrowRight")
      expect(new Set(await marked())).toEqual(
        new Set([1, 4, 5, 6, 7].map((cell) => `cell-${cell} 3`)),
      )
      await page.locator('#cell-6 .wide [data-round="1"]').first().dispatchEvent("click")
      expect(await marked()).toContain("cell-4 1")
      expect(await page.locator("#cell-4 tr.chosen").count()).toBe(1)
    }))
})

describe("a figure", () => {
  it("is kept as SVG, PNG, specification and data; plain Vega-Lite draws the specification the same", () =>
    withLive(async (page) => {
      for (const cell of [5, 6]) {
        const svg = (await kept(page, cell, "SVG")).toString()
        expect(svg).toMatch(/^<svg [^>]*width="544"/)
        expect(svg).toContain("<title>")
        const png = await kept(page, cell, "PNG")
        expect(png.subarray(1, 4).toString()).toBe("PNG")
        expect(png.readUInt32BE(16)).toBeGreaterThanOrEqual(1600)
        const csv = (await kept(page, cell, "Data")).toString()
        const [head, ...rows] = csv.trimEnd().split("\r\n")
        expect(head).toMatch(cell === 5 ? /^round,told,growth,flatGrowth/ : /^x,y,symbol/)
        expect(rows.length).toBeGreaterThanOrEqual(3)
        const spec = JSON.parse((await kept(page, cell, "Vega-Lite")).toString())
        const apart = await page.evaluate(inkApart, [svg, await drawnPlainly(spec)] as const)
        expect(apart.inked).toBeGreaterThan(2000)
        // Places are told to a hundredth of a pixel in ours, which moves the grey of an edge.
        expect(apart.share).toBeLessThan(0.01)
      }
      const chart = (await kept(page, 7, "SVG")).toString()
      expect(chart).toMatch(/width="[\d.]+mm"/)
      expect(chart).toContain("<title>Heron mat: chart</title>")
    }))

  it("says what its marks show where they are pointed at", () =>
    withLive(async (page) => {
      const words = await page.locator("#cell-5 .wide title").allTextContents()
      expect(words[0]).toMatch(/^Round 1: \d+ mm, flat needs \d+ mm$/)
      expect(await page.locator("#cell-6 .wide title").allTextContents()).toContain(
        "Round 2: 24 dc",
      )
    }))
})

describe("the page", () => {
  it("sets pattern and verdict side by side where there is room, and is sound for readers of every kind", () =>
    withLive(async (page) => {
      const [left, right] = await Promise.all(
        [1, 2].map((cell) => page.locator(`#cell-${cell}`).boundingBox()),
      )
      expect(right!.x).toBeGreaterThan(left!.x + left!.width)
      expect(right!.y).toBeLessThan(left!.y + left!.height)
      for (const fold of await page.locator(".fold > summary").all()) await fold.click()
      expect(await unsoundParts(page)).toEqual([])
    }))

  it("prints the sheet alone", () =>
    withLive(async (page) => {
      await page.emulateMedia({ media: "print" })
      await page.evaluate(() => {
        window.print = () => {
          const shown = [...document.querySelectorAll("main > *")].filter(
            (one) => getComputedStyle(one).display !== "none",
          )
          document.body.dataset.printed = shown.map(({ id }) => id).join()
        }
        document.querySelector<HTMLButtonElement>(".print-sheet button")!.click()
      })
      expect(await page.evaluate(() => document.body.dataset.printed)).toBe("cell-7")
      expect(await page.evaluate(() => document.body.className)).not.toContain("printing")
      await page.emulateMedia({ media: "screen" })
    }))

  it("is complete without scripts: contents and anchors lead, findings and sheet stand", async () => {
    const { page, context } = await open(plain, { viewport: { width: 360, height: 740 } })
    expect(await page.locator(".contents a").allTextContents()).toEqual([
      "The text",
      "The edit",
      "The rounds",
      "The sheet",
    ])
    await page.locator(".contents a").nth(1).click()
    expect(await page.evaluate(() => location.hash)).toBe("#part-the-edit")
    expect(await page.locator("#part-the-edit").textContent()).toBe("The edit")
    await page.locator("#cell-4 a.round").nth(1).click()
    expect(await page.locator(":target").textContent()).toMatch(/^Rnd 2:/)
    await page.locator("#cell-3 .found a").first().click()
    expect(await page.locator(":target").textContent()).toMatch(/^H\/8/)
    expect(await page.locator("#cell-7 .sheet-page .chart svg").count()).toBe(1)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
    expect(await page.locator("script, button").count()).toBe(0)
    await context.close()
  })
})

describe("an edit in a page", () => {
  it("takes a wording at one click, and all that are sure at another; the way back leads to the text as it was", () =>
    withLive(async (page) => {
      const list = page.locator("#cell-3 .found li.must-mend")
      expect(await list.count()).toBe(2)
      expect(await page.locator("#cell-3 mark.must-mend").allTextContents()).toEqual([
        "H/81",
        "26 dc2",
      ])
      const before = await area(page, 1).inputValue()
      await list.nth(1).getByRole("button", { name: "Take it" }).click()
      await settled(page)
      expect(await area(page, 1).inputValue()).toBe(before.replace("26 dc", "24 dc"))
      expect(await list.count()).toBe(1)
      await page.getByRole("button", { name: "Undo" }).click()
      await settled(page)
      expect(await area(page, 1).inputValue()).toBe(before)
      await page.getByRole("button", { name: /^Take the \d+ that nothing/ }).click()
      await settled(page)
      expect(await list.count()).toBe(0)
      expect(await area(page, 1).inputValue()).toContain("(24 dc)")
      expect(await area(page, 1).inputValue()).toContain("4 mm (US G-6)")
      // The sheet follows, once the piece is laid out anew.
      await expect.poll(() => page.locator("#cell-7 .rounds").textContent()).toContain("(24 dc)")
    }))
})

/** By Vega and Vega-Lite as they come, with their own way of reading expressions. */
async function drawnPlainly(spec: object): Promise<string> {
  const load = createRequire(new URL("../../packages/notebook/package.json", import.meta.url))
  const vega = await import(load.resolve("vega"))
  const lite = await import(load.resolve("vega-lite"))
  const view = new vega.View(vega.parse(lite.compile(spec).spec), { renderer: "none" })
  const svg = await view.toSVG()
  view.finalize()
  return svg
}

/** Both drawn at twice their size: pixels with ink, and the share of them whose grey is more than a fifth apart. */
async function inkApart(drawings: readonly [string, string]) {
  const pixels = await Promise.all(
    drawings.map(async (svg) => {
      const image = new Image()
      image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`
      await image.decode()
      const canvas = document.createElement("canvas")
      canvas.width = 2 * image.width
      canvas.height = 2 * image.height
      const pen = canvas.getContext("2d")!
      pen.fillStyle = "#fff"
      pen.fillRect(0, 0, canvas.width, canvas.height)
      pen.drawImage(image, 0, 0, canvas.width, canvas.height)
      return pen.getImageData(0, 0, canvas.width, canvas.height)
    }),
  )
  const [ours, theirs] = pixels as [ImageData, ImageData]
  if (ours.width !== theirs.width || ours.height !== theirs.height)
    throw new Error(`${ours.width} x ${ours.height} is not ${theirs.width} x ${theirs.height}`)
  let [inked, apart] = [0, 0]
  for (let at = 0; at < ours.data.length; at += 4) {
    const [a, b] = [ours.data[at]!, theirs.data[at]!]
    if (a < 250 || b < 250) inked += 1
    if (Math.abs(a - b) > 51) apart += 1
  }
  return { inked, share: apart / inked }
}
