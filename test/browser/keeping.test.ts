// What a reader made is kept: whatever ends, is closed, is saved or is not.

import { describe, expect, it } from "vitest"
import { area, doubled, livePages, pattern, said, write } from "./live-page.ts"
import { settled } from "./open-page.ts"

const { withPage } = livePages()
describe("a worker that ends by itself", () => {
  it("is followed by another, and the answer comes", () =>
    withPage(async (page) => {
      expect(page.workers().length).toBeGreaterThan(0)
      for (const worker of page.workers()) await worker.evaluate(() => self.close())
      await write(page, 1, doubled)
      expect(await said(page)).toMatch(/ruffles/i)
      // While it works.
      await area(page, 1).fill(pattern)
      await page.waitForFunction(() => document.body.classList.contains("waiting"))
      await Promise.all(
        page.workers().map((worker) => worker.evaluate(() => self.close()).catch(() => {})),
      )
      await settled(page)
      expect(await said(page)).not.toMatch(/ruffles/i)
      expect(await page.evaluate(() => document.body.dataset.computedIn)).toBe("worker")
    }))
})
