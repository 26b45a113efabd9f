// A picture cell in a real browser: measured in the page as in Node, worked by keys, by fields and by taps, and nothing
// set by hand is lost.

import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { computeNotebook, renderLivePage } from "@roundwright/notebook"
import { readLines } from "@roundwright/picture"
import { encodePng } from "@roundwright/picture/decode"
import type { Page } from "playwright-core"
import { beforeAll, describe, expect, it } from "vitest"
import { picturesIn } from "../../packages/cli/src/picture-file.ts"
import { drawMotif, tunedKinds } from "../support/drawn-motif.ts"
import { fileBrowser } from "./file-browser.ts"
import { settled, unsoundParts } from "./open-page.ts"

const fence = "```"
const drawn = drawMotif(9, { kinds: tunedKinds, tiltDeg: [0, 3], side: 360 })
const folder = mkdtempSync(join(tmpdir(), "picture-page-"))
const { open } = fileBrowser()
let html = ""

beforeAll(async () => {
  writeFileSync(join(folder, "piece.png"), await encodePng(drawn.picture))
  writeFileSync(join(folder, "text.png"), "Rnd 1: 12 dc in ring.\n")
  writeFileSync(join(folder, "cut.png"), readFileSync(join(folder, "piece.png")).subarray(0, 20))
  const text = `# A piece\n\n${fence}picture\nPicture: piece.png\nView: as it is\n${fence}\n`
  const notebook = await computeNotebook(text, { picture: picturesIn(folder) })
  expect(notebook.problems).toEqual([])
  html = await renderLivePage(notebook, text)
  expect(Buffer.byteLength(html)).toBeLessThan(2_600_000)
})

const lines = (page: Page) => page.locator(".picture textarea").inputValue()
const state = (page: Page) => page.locator(".picture > [role=status]")
/** Waits for a measurement whose lines hold something. */
async function measured(page: Page, holds: RegExp): Promise<string> {
  await page.waitForFunction(
    ([source, flags]) => {
      const said = document.querySelector(".picture > [role=status]")?.textContent ?? ""
      const text = document.querySelector<HTMLTextAreaElement>(".picture textarea")?.value ?? ""
      return said.startsWith("Measured") && new RegExp(source!, flags).test(text)
    },
    [holds.source, holds.flags],
  )
  await settled(page)
  return lines(page)
}

describe("a picture in a page", () => {
  it("is measured by the page as it was in Node, and worked by keys, fields and taps", async () => {
    const { page, context, complaints } = await open(html, { leaveFreely: true })
    try {
      await settled(page)
      const shown = (await page.locator("pre.measured .line").allTextContents()).join("\n")
      await page.getByRole("button", { name: "Measure", exact: true }).press("Enter")
      const found = await measured(page, /^Ring 3/m)
      // The page carries a smaller picture: what is sure in one is the same in the other.
      const counts = (text: string) => readLines(text).rings.map(({ repeats }) => repeats)
      const sure = (text: string) =>
        readLines(text).rings.flatMap(({ repeats, sureness }) =>
          sureness! > 0.85 ? [repeats] : [],
        )
      expect(sure(shown).length).toBeGreaterThan(3)
      expect(sure(found)).toEqual(sure(shown))
      const at = counts(found).indexOf(24) + 1
      expect(at).toBeGreaterThan(0)

      // By keys: the centre.
      const [x, y] = /Centre: (\d+) (\d+)/.exec(found)!.slice(1).map(Number) as [number, number]
      const centre = page.getByRole("button", { name: /^Centre: arrow keys/ })
      await centre.press("ArrowRight")
      await centre.press("Shift+ArrowDown")
      await measured(page, new RegExp(`^Centre: ${x + 1} ${y + 10}$`, "m"))
      await page.getByRole("button", { name: "Leave out: centre" }).press("Enter")
      await measured(page, new RegExp(`^Centre: ${x} ${y} \\(found`, "m"))

      // By a field: a count, which the next measurement leaves alone.
      await page.getByRole("spinbutton", { name: `Ring ${at}, repeats` }).fill("23")
      await page.keyboard.press("Tab")
      await measured(page, new RegExp(`^Ring ${at}: [^;]*; 23 repeats$`, "m"))

      // By a tap: a tick less.
      const ticks = async () =>
        (await page
          .locator("g.ring-row")
          .nth(at - 1)
          .getAttribute("data-ticks"))!
          .split(" ")
          .map(Number)
      expect(await ticks()).toHaveLength(23)
      const row = page.locator("g.ring-row").nth(at - 1)
      const [path, tick] = [row.locator("path.ring-tick"), (await ticks())[7]!]
      await path.scrollIntoViewIfNeeded()
      const drawn = (await path.boundingBox())!
      const [first, last] = [(await ticks())[0]!, (await ticks()).at(-1)!]
      const along = drawn.x + (drawn.width * (tick - first)) / (last - first)
      await page.mouse.click(along, drawn.y + drawn.height / 2)
      await measured(page, new RegExp(`^Ring ${at}: [^;]*; 22 repeats$`, "m"))
      expect(await ticks()).toHaveLength(22)
      expect(await state(page).textContent()).toMatch(/^Measured: \d rings/)
      expect(await unsoundParts(page)).toEqual([])

      // A step back, and files that are no picture.
      await page.getByRole("button", { name: "Undo" }).click()
      expect(await lines(page)).toMatch(new RegExp(`^Ring ${at}: [^;]*; 23 repeats$`, "m"))
      for (const [file, words] of [
        ["text.png", /neither a PNG nor a JPEG/],
        ["cut.png", /damaged or cut off/],
      ] as const) {
        await page.locator(".picture input[type=file]").setInputFiles(join(folder, file))
        await page.waitForFunction(
          (pattern) =>
            new RegExp(pattern).test(
              document.querySelector(".picture > [role=status]")?.textContent ?? "",
            ),
          words.source,
        )
      }
      expect(complaints).toEqual([])
    } finally {
      await context.close()
    }
  })

  it("takes another picture, corners and all by hand, on a phone", async () => {
    const { page, context, complaints } = await open(html, {
      leaveFreely: true,
      viewport: { width: 360, height: 740 },
      hasTouch: true,
    })
    try {
      await settled(page)
      writeFileSync(join(folder, "other.png"), readFileSync(join(folder, "piece.png")))
      await page.locator(".picture input[type=file]").setInputFiles(join(folder, "other.png"))
      await measured(page, /^Picture: other\.png$/m)
      await page.getByRole("button", { name: "Set four corners of something square" }).tap()
      await measured(page, /^Corners: \d+ \d+, \d+ \d+, \d+ \d+, \d+ \d+$/m)
      await page.getByRole("spinbutton", { name: "Corner 2, from the top, pixels" }).fill("3")
      await page.keyboard.press("Tab")
      const text = await measured(page, /^Corners: \d+ \d+, \d+ 3,/m)
      expect(readLines(text).corners).toHaveLength(8)
      const width = await page.evaluate(() => document.documentElement.scrollWidth)
      expect(width).toBeLessThanOrEqual(360)
      expect(complaints).toEqual([])
    } finally {
      await context.close()
    }
  })
})
