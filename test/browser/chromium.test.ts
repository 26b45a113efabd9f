// The browser the tests run in: which one is chosen, and that one that dies is told.

import { mkdtempSync, rmSync, symlinkSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { chooseChromium } from "./chromium.ts"
import { openBrowser } from "./open-browser.ts"
import { openPage } from "./open-page.ts"

describe("the choice of a browser", () => {
  it("is the one named, before one on the path, before the carried one", async () => {
    const folder = mkdtempSync(join(tmpdir(), "browsers-"))
    symlinkSync(process.execPath, join(folder, "chromium"))
    try {
      const onPath = join(folder, "chromium")
      expect(await chooseChromium({ PATH: folder })).toMatchObject({ executablePath: onPath })
      const named = await chooseChromium({ PATH: folder, CHROMIUM: process.execPath })
      expect(named.executablePath).toBe(process.execPath)
      for (const environment of [{ PATH: folder, CHROMIUM: "carried" }, { PATH: "" }, {}]) {
        const { origin, args } = await chooseChromium(environment)
        expect(origin).toMatch(/^carried by/)
        expect(args).not.toContain("--single-process")
      }
    } finally {
      rmSync(folder, { recursive: true })
    }
  })

  it("that names no program is refused, not passed over", async () => {
    await expect(chooseChromium({ CHROMIUM: "/no/such/browser" })).rejects.toThrow(/no program/)
    await expect(chooseChromium({ CHROMIUM: tmpdir() })).rejects.toThrow(/no program/)
  })
})

describe("a browser", () => {
  it("stands one context after another", async () => {
    const browser = await openBrowser()
    for (let turn = 0; turn < 6; turn += 1) {
      const { page, context } = await openPage(browser, `<title>${turn}</title>`)
      expect(await page.title()).toBe(String(turn))
      await context.close()
    }
    await browser.close()
  })

  it("that dies is told with its own last words by whatever meets it next", async () => {
    const browser = await openBrowser()
    const session = await browser.newBrowserCDPSession()
    const died = new Promise((resolve) => browser.on("disconnected", resolve))
    session.send("Browser.crash").catch(() => {})
    await died
    await expect(openPage(browser, "")).rejects.toThrow(
      /The browser died: .*Chromium [\d.]+\n.*Browser logs:.*pid=/s,
    )
  })
})
