// One browser for the tests of a file.

import type { Browser } from "playwright-core"
import { afterAll, afterEach, beforeAll } from "vitest"
import { openBrowser, toldWithLastWords } from "./open-browser.ts"
import { type OpenOptions, type OpenPage, openPage } from "./open-page.ts"

export interface FileBrowser {
  open(html: string, options?: OpenOptions): Promise<OpenPage>
}

/** Opened before the first test, closed after the last; a test in which it dies fails with its last words. */
export function fileBrowser(): FileBrowser {
  let browser: Browser
  beforeAll(async () => {
    browser = await openBrowser()
  })
  afterEach(async () => {
    if (!browser.isConnected()) throw await toldWithLastWords(browser)
  })
  afterAll(() => browser?.close())
  return { open: (html, options) => openPage(browser, html, options) }
}
