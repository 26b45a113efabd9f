// What a live page withstands: a tube that takes long to lay out, edits and stops that come faster than answers, two tabs
// and the back button in between, and what a page of an earlier version carries.

import { readFileSync } from "node:fs"
import { renderNotebook } from "@roundwright/notebook"
import type { Page } from "playwright-core"
import { describe, expect, it } from "vitest"
import { randomFrom } from "../../packages/instructions/test/mutate.ts"
import { area, doubled, livePages, notebook, pattern, rounds, said, write } from "./live-page.ts"
import { settled } from "./open-page.ts"

const { withPage } = livePages()

const growing = Array.from(
  { length: 6 },
  (_, k) =>
    `Rnd ${k + 5}: *sc in next ${k + 3} sts, 2 sc in next st; rep from * around. (${6 * (k + 5)} sc)`,
)
/** 200 rounds, all but ten of them of 60 stitches. */
const tube = [
  ...["Terms: US", "Hook: 4 mm", "", ...rounds, ...growing],
  "Rnds 11-200: sc in each st around.",
].join("\n")

/** Puts a text into a cell as keys do, and goes on without waiting for anything. */
const put = (page: Page, cell: number, text: string) =>
  page.evaluate(
    ([id, value]) => {
      const box = document.querySelector<HTMLTextAreaElement>(`#${id}`)!
      box.value = value!
      box.dispatchEvent(new Event("input", { bubbles: true }))
    },
    [`cell-${cell}-text`, text] as const,
  )

/** The verdict of the same texts in a page that is opened fresh. */
async function freshVerdict(disc: string, gauge: string): Promise<string> {
  const text = notebook.replace(pattern, () => disc).replace("Hook: 4.5 mm", () => gauge)
  const { html } = await renderNotebook(text)
  const [, words] = /class="said"[^>]*>([\s\S]*?)<\//.exec(html)!
  return words!.replace(/<[^>]*>/g, "").trim()
}

describe("a long tube typed into a page", () => {
  it("is judged by its growth; meanwhile the page is saved, stopped and typed into", () =>
    withPage(async (page) => {
      await put(page, 1, tube)
      await page.locator(".provisional").first().waitFor()
      expect(await said(page)).toMatch(/cups from round 1\d/i)
      expect(await page.evaluate(() => document.body.classList.contains("waiting"))).toBe(true)
      const stop = page.getByRole("button", { name: /^Stop/ }).first()
      await stop.waitFor()
      // Saved and stopped in the same breath: neither takes anything from the other.
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.evaluate(() => {
          const buttons = [...document.querySelectorAll("button")]
          buttons.find(({ textContent }) => /HTML/.test(textContent ?? ""))!.click()
          buttons.find(({ textContent }) => /^Stop/.test(textContent ?? ""))!.click()
        }),
      ])
      expect(readFileSync(await download.path(), "utf8")).toContain("Rnds 11-200")
      await settled(page)
      expect(await said(page)).toMatch(/cups from round 1\d/i)
      await write(page, 1, doubled)
      expect(await said(page)).toMatch(/ruffles/i)
    }))
})

describe("edits and stops that come faster than answers", () => {
  it("end in the answer to the last edit", () =>
    withPage(async (page) => {
      const random = randomFrom(15)
      const below = (n: number) => Math.floor(random() * n)
      const texts = [pattern, doubled, tube, "", "Rnd 1: 6 sx", `${pattern}\nRnd 5: what`]
      for (let turn = 0; turn < 60; turn += 1) {
        const what = below(8)
        if (what === 0)
          await page.evaluate(() => {
            const buttons = [...document.querySelectorAll("button")]
            buttons.find(({ textContent }) => /^Stop/.test(textContent ?? ""))?.click()
          })
        else if (what === 1) await page.keyboard.press("Control+z")
        else if (what < 4) await put(page, 2, `Hook: ${2 + below(8)} mm`)
        else await put(page, 1, texts[below(texts.length)]!.slice(0, below(2) ? undefined : 40))
        await page.waitForTimeout(below(30))
      }
      await put(page, 2, "Hook: 6 mm")
      await put(page, 1, doubled)
      await settled(page)
      expect(await said(page)).toBe(await freshVerdict(doubled, "Hook: 6 mm"))
    }))

  it("in two tabs of one page leave each with its own, and the back button brings it back", () =>
    withPage(
      async (page) => {
        const second = await page.context().newPage()
        await second.goto(page.url())
        await settled(second)
        const texts = [`${pattern}\n\nof one`, `${pattern}\n\nof the other`]
        for (let turn = 0; turn < 10; turn += 1) {
          await put(page, 1, turn % 2 ? doubled : texts[0]!)
          await put(second, 1, turn % 3 ? tube : texts[1]!)
        }
        await put(page, 1, texts[0]!)
        await put(second, 1, texts[1]!)
        await Promise.all([settled(page), settled(second)])
        for (const [tab, text] of [
          [page, texts[0]],
          [second, texts[1]],
        ] as const) {
          await tab.goto("about:blank")
          await tab.goBack()
          await settled(tab)
          expect(await area(tab, 1).inputValue()).toBe(text)
        }
      },
      { leaveFreely: true },
    ))
})

describe("what a page of an earlier version carries", () => {
  it("gives its notebook; answers of another shape are told and worked out anew", async () => {
    const earlier = readFileSync(new URL("earlier-page.json", import.meta.url), "utf8")
    const json = JSON.stringify(JSON.parse(earlier)).replace(/</g, "\\u003c")
    const { html } = await renderNotebook(notebook, { live: true })
    const carrying = html.replace(
      /(<script type="application\/json"[^>]*>)[\s\S]*?(<\/script>)/,
      (_, start, end) => start + json + end,
    )
    await withPage(
      async (page) => {
        const notices = (await page.locator(".notice p").allTextContents()).join()
        expect(notices).toContain("One answer that this page carries does not fit")
        expect(await area(page, 1).inputValue()).toBe(pattern)
        expect(await said(page)).toBe(await freshVerdict(pattern, "Hook: 4.5 mm"))
        await write(page, 1, doubled)
        expect(await said(page)).toMatch(/ruffles/i)
      },
      {},
      carrying,
    )
  })
})
