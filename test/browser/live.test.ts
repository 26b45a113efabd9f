// A live page in a browser, from disk and without a network: what a reader does, and what follows.

import { renderNotebook } from "@roundwright/notebook"
import type { Page } from "playwright-core"
import { describe, expect, it } from "vitest"
import { area, doubled, fence, livePages, notebook, pattern, said, write } from "./live-page.ts"
import { settled, unsoundParts } from "./open-page.ts"

const { withPage } = livePages()

/** What is selected in a cell that has the focus. */
const chosen = (page: Page, cell: number) =>
  area(page, cell).evaluate((box: HTMLTextAreaElement) =>
    document.activeElement === box ? box.value.slice(box.selectionStart, box.selectionEnd) : "",
  )

describe("an edit", () => {
  it("reaches verdict, prose, calculation and chart", () =>
    withPage(async (page) => {
      const before = await page.locator("#cell-5 .wide svg").getAttribute("aria-label")
      const calm = await said(page)
      await write(page, 1, doubled)
      expect(await said(page)).not.toBe(calm)
      expect(await said(page)).toMatch(/ruffles/i)
      expect(await page.locator("#prose-0").textContent()).toContain("has 72 stitches")
      expect(await page.locator("#prose-0").textContent()).toContain("twice that is 144")
      expect(await page.locator("#cell-4 .values").textContent()).toContain("144")
      expect(await page.locator("#cell-5 .wide svg").getAttribute("aria-label")).not.toBe(before)
      expect(await page.locator(".saying").textContent()).toMatch(/ruffles/i)
      expect(await page.locator("#cell-1 .edited").isVisible()).toBe(true)
      await expect.poll(() => page.locator(".heard").textContent()).toMatch(/ruffles/i)
      expect(await page.evaluate(() => document.body.dataset.computedIn)).toBe("worker")
    }))

  it("reaches them in a page without workers as well", () =>
    withPage(
      async (page) => {
        await write(page, 1, doubled)
        expect(await said(page)).toMatch(/ruffles/i)
        expect(await page.locator("#cell-4 .values").textContent()).toContain("144")
        expect(await page.evaluate(() => document.body.dataset.computedIn)).toBe("page")
      },
      { withoutWorkers: true },
    ))

  it("of a gauge and of a calculation is followed, too", () =>
    withPage(async (page) => {
      const before = await page.locator("#cell-3 .facts").textContent()
      await write(page, 2, "Hook: 6 mm")
      expect(await page.locator("#cell-3 .facts").textContent()).not.toBe(before)
      await page.locator("#cell-4 summary").click()
      await write(page, 4, "double = 3 * disc.stitches_last")
      expect(await page.locator("#prose-0").textContent()).toContain("twice that is 72")
      await write(page, 4, "double = 3 * (")
      expect(await page.locator("#cell-4 mark.error").textContent()).toBe("double = 3 * (")
      expect(await page.locator("#prose-0").textContent()).toContain("[no value")
    }))

  it("with wrong words underlines them, says so beside, and blanks nothing", () =>
    withPage(async (page) => {
      await write(
        page,
        1,
        pattern.replace(
          "2 sc in next st; rep from * around. (24 sc)",
          "2 sx in next st; rep from * around. (24 sc)",
        ),
      )
      const marks = await page.locator("#cell-1 mark").allTextContents()
      expect(marks.some((words) => words.includes("sx"))).toBe(true)
      expect(await said(page)).toMatch(/1 of its 4 rounds is assumed/)
      const told = page.locator("#cell-1 .found li", { hasText: "sx" })
      await told.first().locator(".where").click()
      expect(await chosen(page, 1)).toContain("sx")
      expect(marks).toContain(await chosen(page, 1))
      await write(page, 1, "")
      expect(await page.locator("h1").textContent()).toBe("A small disc")
      expect(await said(page)).not.toBe("")
    }))

  it("lays the underlines exactly under the words of the text area", () =>
    withPage(async (page) => {
      // Lines of many lengths: were any set otherwise than in the sheet, some of them would wrap elsewhere.
      const lines = Array.from({ length: 40 }, (_, k) => "sc in next st, ".repeat(2 + (k % 9)))
      await write(
        page,
        1,
        `${pattern}\n\n${lines.map((line, k) => `${line}${"x".repeat(k)}`).join("\n")}`,
      )
      for (const width of [360, 520, 1280]) {
        await page.setViewportSize({ width, height: 800 })
        const sizes = await page.evaluate(() => {
          const box = document.querySelector<HTMLTextAreaElement>("#cell-1-text")!
          const sheet = document.querySelector<HTMLElement>("#cell-1 .sheet")!
          return [box.scrollHeight - box.clientHeight, sheet.clientHeight - box.clientHeight]
        })
        expect(sizes).toEqual([0, 0])
      }
    }))
})

describe("by keyboard alone", () => {
  it("everything can be reached, used and left, and nothing is hidden under the bar", () =>
    withPage(async (page) => {
      const reached: string[] = []
      for (let presses = 0; presses < 60; presses += 1) {
        await page.keyboard.press("Tab")
        const at = await page.evaluate(() => {
          const element = document.activeElement as HTMLElement | null
          if (!element || element === document.body) return null
          const bar = document.querySelector(".bar")!
          const box = element.getBoundingClientRect()
          const hidden = !bar.contains(element) && box.bottom <= bar.getBoundingClientRect().bottom
          const name = element.id || element.getAttribute("aria-label") || element.textContent
          return `${name}${hidden ? " (hidden)" : ""}`
        })
        if (at === null) break
        reached.push(at)
      }
      expect(reached.filter((name) => name.endsWith("(hidden)"))).toEqual([])
      expect(reached).toEqual(expect.arrayContaining(["Save", "Print", "cell-1-text"]))
      expect(reached).toEqual(
        expect.arrayContaining(["cell-2-text", "cell-2-editor-hook", "Change this calculation"]),
      )
      await area(page, 1).focus()
      await page.keyboard.press("Control+End")
      await page.keyboard.type("\nRnd 5: 2 sc in each st around. (48 sc)")
      await settled(page)
      expect(await said(page)).toMatch(/from round 5/)
      await page.locator(".save > summary").focus()
      await page.keyboard.press("Enter")
      await page.keyboard.press("Tab")
      await page.keyboard.press("Escape")
      expect(await page.locator(".save .choices").isVisible()).toBe(false)
      expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("SUMMARY")
    }))

  it("a measured round, yarn, hook and swatch can be given, and stand in the text", () =>
    withPage(async (page) => {
      await page.getByLabel("Yarn weight").selectOption({ label: "4 Medium" })
      await page.getByLabel("Hook", { exact: true }).selectOption("6 mm")
      await page.getByLabel("Stitches of the swatch").fill("14")
      await page.getByLabel("Rows of the swatch").fill("16")
      await page.getByLabel("Rows of the swatch").blur()
      await settled(page)
      const text = await area(page, 2).inputValue()
      expect(text).toBe("Hook: 6 mm\nYarn: worsted\nGauge: 14 sc x 16 rows = 10 cm")
      expect(await page.locator("#cell-2 .found li").count()).toBe(0)
      await page.getByLabel("Measured across, cm").fill("7.5")
      await page.getByLabel("After which round").fill("3")
      await page.getByLabel("After which round").blur()
      await settled(page)
      expect(await area(page, 2).inputValue()).toBe(`${text}\nSize: 7.5 cm after Rnd 3`)
      const first = page.locator("#cell-2 .fields input").first()
      expect(await first.getAttribute("aria-label")).toBe("Measured across, cm")
      await write(page, 2, "Hook: H-8")
      expect(await page.getByLabel("Measured across, cm").inputValue()).toBe("")
      expect(await page.getByLabel("Hook", { exact: true }).inputValue()).toBe("5 mm")
      expect(await page.getByLabel("Yarn weight").inputValue()).toBe("")
    }))
})

describe("a pattern pasted into a page", () => {
  it("has its own headings go first, which is told, and a first answer says that it is one", () =>
    withPage(async (page) => {
      await page.evaluate(() => {
        const seen: string[] = []
        Object.assign(window, { seen })
        const verdict = document.querySelector(".cell.verdict")!
        new MutationObserver(() => {
          if (verdict.classList.contains("provisional")) seen.push(verdict.textContent)
        }).observe(verdict, { attributes: true, childList: true, subtree: true })
      })
      const [first, second] = [pattern.replace("Hook: 4 mm", "Hook: 6 mm"), area(page, 1)]
      await second.evaluate((box: HTMLTextAreaElement, text) => {
        box.value = text
        box.dispatchEvent(new InputEvent("input", { inputType: "insertFromPaste", bubbles: true }))
      }, first)
      await settled(page)
      expect(await area(page, 2).inputValue()).toBe(
        "Unless the pattern says otherwise:\nHook: 4.5 mm",
      )
      expect(await page.locator(".notice").textContent()).toContain("The pattern says its own hook")
      expect(await page.locator("#cell-2 .found").textContent()).toContain("this line is not used")
      const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen)
      expect(seen.join(" ")).toContain("A first answer, by the growth of the rounds")
      expect(await page.locator(".provisional").count()).toBe(0)
      expect(await page.locator(".cell.verdict").textContent()).not.toContain("first answer")
    }))
})

describe("a page in disorder", () => {
  it("is as sound for readers of every kind as one in order", () =>
    withPage(async (page) => {
      await write(page, 1, `${doubled}\nRnd 6: sx in eech st.\nRnd 7: what`)
      await page.locator("#cell-4 summary").click()
      await write(page, 4, "double = (\n1/0")
      await page.locator(".save > summary").click()
      expect(await unsoundParts(page)).toEqual([])
      await write(page, 1, "")
      await page.emulateMedia({ colorScheme: "dark" })
      expect(await unsoundParts(page)).toEqual([])
    }))
})

describe("a remedy", () => {
  it("can be tried: the pattern changes, and with it the verdict", () =>
    withPage(async (page) => {
      await write(page, 1, doubled)
      const remedy = page.locator("#cell-6 ol > li").first()
      const promised = /Then it (\w+ flat)/.exec((await remedy.textContent()) ?? "")?.[1]
      await page.getByRole("button", { name: /^Try it: .* remedy 1$/ }).click()
      await settled(page)
      expect(await area(page, 1).inputValue()).not.toBe(doubled)
      expect((await said(page))?.toLowerCase()).toContain(promised)
      await page.getByRole("button", { name: "Undo" }).click()
      await settled(page)
      expect(await area(page, 1).inputValue()).toBe(doubled)
      expect(await said(page)).toMatch(/ruffles/i)
      expect(await page.getByRole("button", { name: /^Try it: .* remedy 1$/ }).count()).toBe(1)
    }))
})

describe("squaring", () => {
  it("is searched for on demand, taken over into the pattern, and marked when the pattern has changed", async () => {
    const circle = [
      "Terms: US",
      "Yarn: DK",
      "Hook: 4 mm",
      "",
      "Rnd 1: 12 dc in magic ring; join. (12 dc)",
      "Rnd 2: 2 dc in each st around; join. (24 dc)",
    ].join("\n")
    const text = `${fence}pattern name=round\n${circle}\n${fence}\n\n${fence}verdict\n${fence}\n\n${fence}squaring of=round\nRounds: 1\nStitches: sc, hdc, dc\n${fence}\n`
    const { html } = await renderNotebook(text, { live: true })
    await withPage(
      async (page) => {
        const first = await page.locator(".proposals > li").first().textContent()
        expect(first).toMatch(/Rnd 3: /)
        const take = page.getByRole("button", { name: "Take over proposal 1 into the pattern" })
        expect(await take.isDisabled()).toBe(false)
        await page.getByLabel("Corners").fill("6")
        await page.getByLabel("Corners").blur()
        await settled(page)
        expect(await take.isDisabled()).toBe(true)
        expect(await page.locator(".squaring").textContent()).toContain("search again")
        await page.getByRole("button", { name: "Search", exact: true }).click()
        await expect.poll(() => take.isDisabled()).toBe(false)
        expect(await page.locator(".proposals > li").first().textContent()).not.toBe(first)
        await take.click()
        await settled(page)
        expect(await area(page, 1).inputValue()).toMatch(/24 dc\)\nRnd 3: .*\)$/)
        expect(await page.locator("#cell-2").textContent()).toMatch(/3 rounds, 6 corners/)
        expect(await take.isDisabled()).toBe(true)
        expect(await page.locator(".squaring").textContent()).toContain("Taken over")
        await page.keyboard.press("Enter")
        expect(await chosen(page, 1)).toMatch(/^Rnd 3: /)
        await page.getByRole("button", { name: "Undo" }).click()
        await settled(page)
        expect(await area(page, 1).inputValue()).toBe(circle)
        expect(await page.locator(".squaring").textContent()).not.toContain("Taken over")
        expect(await take.isDisabled()).toBe(false)
      },
      {},
      html,
    )
  })
})

describe("the wishes of a squaring", () => {
  it("are named in the pattern's terms, and say on which round it begins and how it ends", async () => {
    const circle = [
      "Terms: UK",
      "Yarn: DK",
      "Hook: 4 mm",
      "",
      "Rnd 1: 12 tr in magic ring; join. (12 tr)",
      "Rnd 2: 2 tr in each st around; join. (24 tr)",
      "Rnd 3: nobody can read this",
    ].join("\n")
    const text = `${fence}pattern name=round\n${circle}\n${fence}\n\n${fence}squaring of=round\nRounds: 1\n${fence}\n`
    const { html } = await renderNotebook(text, { live: true })
    await withPage(
      async (page) => {
        const squaring = page.locator(".squaring")
        expect(await squaring.locator(".answer").textContent()).toContain("From round: 2")
        expect(await squaring.locator(".tick").allTextContents()).toEqual([
          "dc",
          "htr",
          "tr",
          "dtr",
        ])
        await squaring.getByLabel("On round").fill("2")
        await squaring.getByLabel("On round").blur()
        await squaring.getByLabel("Corner style").selectOption("stitches")
        await squaring.getByLabel("Straightening round of").selectOption("dc")
        await squaring.getByLabel("dtr", { exact: true }).uncheck()
        await settled(page)
        await page.getByRole("button", { name: "Search", exact: true }).click()
        const take = page.getByRole("button", { name: "Take over proposal 1 into the pattern" })
        await expect.poll(() => take.count()).toBe(1)
        expect(await squaring.locator(".label").first().textContent()).toBe(
          "4 corners without chain spaces in 1 round of dc, htr and tr and a last one of dc after round 2, best first",
        )
        await take.click()
        await settled(page)
        const taken = await area(page, 1).inputValue()
        expect(taken).toMatch(/24 tr\)\nRnd 3: .*\nRnd 4: .*\)$/)
        expect(taken).not.toMatch(/\b(?:sc|hdc)\b|nobody/)
      },
      {},
      html,
    )
  })
})

describe("a long search", () => {
  it("can be stopped, and the page goes on meanwhile and after", async () => {
    const text = `${notebook}\n${fence}squaring of=disc\n${fence}\n`
    const square = () => ({
      proposals: [],
      heights: [],
      stitches: [],
      straighten: null,
      toKnow: [],
    })
    const { html } = await renderNotebook(text, { live: true, square })
    await withPage(
      async (page) => {
        const search = page.getByRole("button", { name: "Search", exact: true })
        const stop = page.getByRole("button", { name: "Stop the search" })
        await search.click()
        await stop.waitFor()
        expect(await search.isDisabled()).toBe(true)
        await write(page, 1, doubled)
        expect(await said(page)).toMatch(/ruffles/i)
        await stop.click()
        await stop.waitFor({ state: "hidden" })
        expect(await search.isEnabled()).toBe(true)
        await write(page, 1, pattern)
        expect(await said(page)).not.toMatch(/ruffles/i)
      },
      { endlessSearches: true },
      html,
    )
  })
})
