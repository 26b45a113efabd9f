// What a reader made is kept: whatever ends by itself, is still being worked out, is closed, or is not saved after all.

import { readFileSync } from "node:fs"
import { renderNotebook } from "@roundwright/notebook"
import type { Page } from "playwright-core"
import { beforeAll, describe, expect, it } from "vitest"
import { area, doubled, livePages, notebook, pattern, said, write } from "./live-page.ts"
import { settled } from "./open-page.ts"

const { open, withPage } = livePages()

const tube = [
  "Terms: US",
  "Hook: 4 mm",
  "Rnd 1: 6 sc in magic ring. (6 sc)",
  "Rnd 2: 2 sc in each st around. (12 sc)",
  "Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)",
  "Rnds 4-200: sc in each st around.",
].join("\n")

async function save(page: Page, choice: RegExp) {
  await page.locator(".save > summary").click()
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: choice }).click(),
  ])
  return download
}

/** Whether the page would ask before it is left. */
const asksToStay = (page: Page) =>
  page.evaluate(() => {
    const event = new Event("beforeunload", { cancelable: true })
    window.dispatchEvent(event)
    return event.defaultPrevented
  })

const notices = (page: Page) => page.locator(".notice p").allTextContents()

describe("a worker that ends by itself", () => {
  it("is followed by another, and the answer comes", () =>
    withPage(async (page) => {
      for (const worker of page.workers()) await worker.evaluate(() => self.close())
      await write(page, 1, doubled)
      expect(await said(page)).toMatch(/ruffles/i)
      await area(page, 1).fill(pattern)
      for (const worker of page.workers()) await worker.evaluate(() => self.close()).catch(() => {})
      await settled(page)
      expect(await said(page)).not.toMatch(/ruffles/i)
    }))
})

describe("saving a page while its answer is still to come", () => {
  it("gives the page as it stands, says what is old in it, and the saved page works that out", () =>
    withPage(async (page) => {
      const old = await said(page)
      const saved = await page.evaluate(async (text) => {
        const box = document.querySelector<HTMLTextAreaElement>("#cell-1-text")!
        box.value = text
        box.dispatchEvent(new Event("input", { bubbles: true }))
        // In the same breath: nothing can have been worked out.
        const made = new Promise<Blob>((resolve) => {
          const create = URL.createObjectURL.bind(URL)
          URL.createObjectURL = (blob) => {
            if (blob instanceof Blob && blob.type === "text/html") resolve(blob)
            return create(blob)
          }
        })
        const buttons = [...document.querySelectorAll("button")]
        buttons.find(({ textContent }) => /HTML/.test(textContent ?? ""))!.click()
        return (await made).text()
      }, tube)
      expect(saved).toContain("Licences of the software in this page")
      const still = await open(saved, { javaScriptEnabled: false })
      expect(await still.page.locator("#cell-1 pre").textContent()).toContain("Rnds 4-200")
      expect(await still.page.locator("#cell-3").textContent()).toContain("An earlier answer")
      expect(await still.page.locator("#cell-3").textContent()).toContain(old)
      await still.context.close()
      await withPage(
        async (again) => {
          expect(await area(again, 1).inputValue()).toBe(tube)
          expect(await said(again)).not.toBe(old)
          expect(await again.locator("main").textContent()).not.toContain("An earlier answer")
        },
        {},
        saved,
      )
    }))
})

describe("a download", () => {
  it("that is called off leaves the changes unsaved, until the reader says that they are saved", () =>
    withPage(async (page) => {
      expect(await asksToStay(page)).toBe(false)
      await write(page, 1, doubled)
      const kept = () => page.evaluate(() => Object.values(localStorage))
      for (const choice of [/Markdown/, /HTML/]) {
        await (await save(page, choice)).cancel()
        expect(await asksToStay(page)).toBe(true)
        expect(await kept()).toEqual([notebook.replace(pattern, doubled)])
      }
      const text = readFileSync(await (await save(page, /Markdown/)).path(), "utf8")
      expect(text).toBe(notebook.replace(pattern, doubled))
      await page.getByRole("button", { name: "It is saved" }).last().click()
      expect(await asksToStay(page)).toBe(false)
      expect(await kept()).toEqual([])
      await write(page, 1, pattern)
      expect(await asksToStay(page)).toBe(true)
    }))
})

describe("changes that were not saved", () => {
  it("are back after going away and back, and can be undone", () =>
    withPage(
      async (page) => {
        await write(page, 1, doubled)
        await page.goto("about:blank")
        await page.goBack()
        await settled(page)
        expect(await area(page, 1).inputValue()).toBe(doubled)
        expect((await notices(page)).join()).toContain("are back")
        await page.getByRole("button", { name: "Undo" }).click()
        await settled(page)
        expect(await area(page, 1).inputValue()).toBe(pattern)
      },
      { leaveFreely: true },
    ))

  it("of two tabs do not write over one another; another tab may take them up or throw them away", () =>
    withPage(async (page) => {
      const tab = async () => {
        const opened = await page.context().newPage()
        await opened.goto(page.url())
        await settled(opened)
        return opened
      }
      const kept = () => page.evaluate(() => Object.values(localStorage).sort())
      const second = await tab()
      const other = `${pattern}\n\nnote of the other tab`
      await write(page, 1, doubled)
      await write(second, 1, other)
      const both = [doubled, other].map((text) => notebook.replace(pattern, text)).sort()
      expect(await kept()).toEqual(both)
      await second.close()
      const third = await tab()
      expect(await area(third, 1).inputValue()).toBe(pattern)
      await third.getByRole("button", { name: "Take them up" }).click()
      await settled(third)
      expect([doubled, other]).toContain(await area(third, 1).inputValue())
      expect(await kept()).toEqual(both)
      const fourth = await tab()
      await fourth.getByRole("button", { name: "Throw them away" }).click()
      expect(await kept()).toHaveLength(1)
      expect(await area(fourth, 1).inputValue()).toBe(pattern)
    }))
})

describe("what a page carries", () => {
  let html = ""
  beforeAll(async () => {
    html = (await renderNotebook(notebook, { live: true })).html
  })
  /** The page with its carried JSON changed. */
  const carrying = (change: (json: string) => string) =>
    html.replace(
      /(<script type="application\/json"[^>]*>)([\s\S]*?)(<\/script>)/,
      (_, start, json, end) => start + change(json) + end,
    )

  it("is left out where it does not fit, told, and worked out anew", () =>
    withPage(
      async (page) => {
        expect((await notices(page)).join()).toContain(
          "One answer that this page carries does not fit",
        )
        expect(await said(page)).toMatch(/flat|cups|ruffles/i)
        await write(page, 1, doubled)
        expect(await said(page)).toMatch(/ruffles/i)
      },
      {},
      carrying((json) => {
        const carried = JSON.parse(json)
        carried.shapes[0][1].laidOut.odds.flat = "most"
        return JSON.stringify(carried).replace(/</g, "\\u003c")
      }),
    ))

  it("gives its text even where the rest cannot be read", () =>
    withPage(
      async (page) => {
        expect((await notices(page)).join()).toContain("Part of what this page carries")
        await write(page, 1, doubled)
        expect(await said(page)).toMatch(/ruffles/i)
      },
      {},
      carrying((json) => json.slice(0, -9)),
    ))

  it("that cannot be read at all leaves the page as it was written, and says so", async () => {
    const { page, context, complaints } = await open(carrying((json) => json.slice(0, 40)))
    await page.locator(".fault").waitFor()
    expect(await page.locator("main").textContent()).toContain("cannot be read")
    expect(await page.locator("#cell-1 pre").textContent()).toContain("Rnd 4")
    expect(complaints).toEqual([])
    await context.close()
  })

  it("does not take the place of words that were changed in the file itself", () => {
    const mine = html.replace(
      "stitches; twice that is",
      "stitches, as my aunt made it; twice that is",
    )
    expect(mine).not.toBe(html)
    return withPage(
      async (page) => {
        expect((await notices(page)).join()).toContain("changed in the file itself")
        await write(page, 1, doubled)
        expect(await page.locator("#prose-0").textContent()).toContain("as my aunt made it")
        const saved = readFileSync(await (await save(page, /HTML/)).path(), "utf8")
        await withPage(
          async (again) => {
            expect(await again.locator("#prose-0").textContent()).toContain("as my aunt made it")
          },
          {},
          saved,
        )
      },
      {},
      mine,
    )
  })

  it("gives way to a pattern that was changed in the file itself, and can be gone back to", () => {
    const mine = html.replace(">Rnd 4:</span> *sc", ">Rnd 4:</span> 2 sc in next st, *sc")
    expect(mine).not.toBe(html)
    return withPage(
      async (page) => {
        expect((await notices(page)).join()).toContain("changed in the file itself")
        expect(await area(page, 1).inputValue()).toContain("Rnd 4: 2 sc in next st, *sc in next 2")
        await page.getByRole("button", { name: "Undo" }).click()
        await settled(page)
        expect(await area(page, 1).inputValue()).toBe(pattern)
      },
      {},
      mine,
    )
  })

  it("may be of an earlier version, without what pages bring along today", () =>
    withPage(
      async (page) => {
        expect(await notices(page)).toEqual([])
        await write(page, 1, doubled)
        expect(await page.locator("#prose-0").textContent()).toContain("has 72 stitches")
      },
      {},
      carrying((json) => {
        const { notebook: text } = JSON.parse(json)
        return JSON.stringify({ notebook: text }).replace(/</g, "\\u003c")
      }),
    ))
})
