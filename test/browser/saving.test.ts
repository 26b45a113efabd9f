// The way back on a live page, and what is saved of it.

import { readFileSync } from "node:fs"
import type { Page } from "playwright-core"
import { describe, expect, it } from "vitest"
import { area, doubled, livePages, notebook, pattern, said, write } from "./live-page.ts"
import { settled } from "./open-page.ts"

const { open, withPage } = livePages()

describe("the way back", () => {
  it("undo goes step by step, restore goes to the original and can itself be undone", () =>
    withPage(async (page) => {
      const undo = page.getByRole("button", { name: "Undo" })
      expect(await undo.isDisabled()).toBe(true)
      await write(page, 1, doubled)
      await write(page, 2, "Hook: 6 mm")
      await undo.click()
      await settled(page)
      expect(await area(page, 2).inputValue()).toBe("Hook: 4.5 mm")
      expect(await area(page, 1).inputValue()).toBe(doubled)
      await write(page, 2, "Hook: 5 mm")
      await page.getByRole("button", { name: "Restore the original of every cell" }).click()
      await settled(page)
      expect(await area(page, 1).inputValue()).toBe(pattern)
      expect(await said(page)).not.toMatch(/ruffles/i)
      expect(await page.locator(".edited:visible").count()).toBe(0)
      await area(page, 1).focus()
      await page.keyboard.press("Control+z")
      await settled(page)
      expect(await area(page, 1).inputValue()).toBe(doubled)
      expect(await area(page, 2).inputValue()).toBe("Hook: 5 mm")
      expect(await said(page)).toMatch(/ruffles/i)
      await page.keyboard.press("Control+Shift+z")
      await settled(page)
      expect(await area(page, 1).inputValue()).toBe(pattern)
    }))
})

describe("saving", () => {
  const save = async (page: Page, choice: RegExp) => {
    await page.locator(".save > summary").click()
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: choice }).click(),
    ])
    return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") }
  }

  it("gives the notebook as Markdown, changed where it was changed and nowhere else", () =>
    withPage(async (page) => {
      expect((await save(page, /Markdown/)).text).toBe(notebook)
      await write(page, 1, doubled)
      const { name, text } = await save(page, /Markdown/)
      expect(name).toBe("a-small-disc.md")
      expect(text).toBe(notebook.replace(pattern, doubled))
    }))

  it("gives the page, which opens as the same notebook with the way back in it", () =>
    withPage(async (page) => {
      await write(page, 1, `${doubled}\n# </script><script>alert(1)</script>`)
      const verdict = await said(page)
      const { name, text } = await save(page, /HTML/)
      expect(name).toBe("a-small-disc.html")
      const still = await open(text, { javaScriptEnabled: false })
      expect(await still.page.locator("#cell-3 .said").textContent()).toBe(verdict)
      expect(await still.page.locator("#cell-1 pre").textContent()).toContain("72 sc")
      await still.context.close()
      await withPage(
        async (again) => {
          expect(await area(again, 1).inputValue()).toContain("Rnd 5")
          expect(await said(again)).toBe(verdict)
          expect(await again.locator("#cell-1 .edited").isVisible()).toBe(true)
          expect((await save(again, /HTML/)).text).toBe(text)
          await again.getByRole("button", { name: "Restore the original of every cell" }).click()
          await settled(again)
          expect((await save(again, /Markdown/)).text).toBe(notebook)
        },
        {},
        text,
      )
    }))

  it("copies the pattern", () =>
    withPage(async (page) => {
      await page.context().grantPermissions(["clipboard-read", "clipboard-write"])
      await page.getByRole("button", { name: /^Copy/ }).click()
      await expect.poll(() => page.locator(".heard").textContent()).toBe("Copied.")
      expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(pattern)
    }))
})
