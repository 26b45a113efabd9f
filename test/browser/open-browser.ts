// Opens the browser that chromium.ts chooses, for tests and for the bench. One that dies is told with its own last words
// instead of by a time-out elsewhere.

import { type Browser, chromium } from "playwright-core"
import { chooseChromium } from "./chromium.ts"

/** Long enough for a cold machine of two busy cores; what is waited for is a state, and comes sooner. */
export const patienceMs = 120_000

const lastWords = new WeakMap<Browser, Promise<string>>()

export async function openBrowser(): Promise<Browser> {
  const { executablePath, args, env, origin } = await chooseChromium()
  const browser = await chromium.launch({
    executablePath,
    args: [...args],
    env: { ...process.env, ...env } as Record<string, string>,
    timeout: patienceMs,
  })
  // What the browser wrote is handed to whoever waits for an answer when it ends: so somebody always waits.
  const watcher = await browser.newPage()
  const words = watcher.evaluate(() => new Promise<string>(() => {})).catch(String)
  lastWords.set(
    browser,
    words.then((said) => `${origin}, Chromium ${browser.version()}\n${said}`),
  )
  return browser
}

/** The fault itself, or, where the browser has died, that and what it said last. */
export async function toldWithLastWords(browser: Browser, fault?: unknown): Promise<unknown> {
  if (browser.isConnected()) return fault
  return new Error(`The browser died: ${await lastWords.get(browser)}`, { cause: fault })
}
