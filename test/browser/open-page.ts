// Opening pages from disk in a real browser without a network, and hearing every complaint it has.

import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { createRequire } from "node:module"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core"
import { patienceMs, toldWithLastWords } from "./open-browser.ts"

export interface OpenPage {
  readonly page: Page
  readonly context: BrowserContext
  /** Errors of scripts and of the console, breaches of the policy, and requests beyond the disk. */
  readonly complaints: readonly string[]
}

export interface OpenOptions extends BrowserContextOptions {
  /** True: the browser has no workers. */
  readonly withoutWorkers?: boolean
  /** True: searches that are asked of a worker never end. */
  readonly endlessSearches?: boolean
  /** True: where a page asks before it is left, it is left all the same. */
  readonly leaveFreely?: boolean
  /** True: the moment the page has its first answer is marked, as `page-live` among the page's performance marks. */
  readonly markLive?: boolean
}

/** Opens a page's text from a file of its own. Close `context` when done. */
export async function openPage(
  browser: Browser,
  html: string,
  options: OpenOptions = {},
): Promise<OpenPage> {
  try {
    return await open(browser, html, options)
  } catch (fault) {
    throw await toldWithLastWords(browser, fault)
  }
}

async function open(
  browser: Browser,
  html: string,
  {
    withoutWorkers = false,
    endlessSearches = false,
    markLive = false,
    leaveFreely = false,
    ...options
  }: OpenOptions,
): Promise<OpenPage> {
  const folder = mkdtempSync(join(tmpdir(), "page-"))
  const file = join(folder, "page.html")
  writeFileSync(file, html)
  const context = await browser.newContext({ acceptDownloads: true, ...options })
  context.setDefaultTimeout(patienceMs)
  context.on("close", () => rmSync(folder, { recursive: true, force: true }))
  const complaints: string[] = []
  await context.setOffline(true)
  await context.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
      console.error(`policy breached: ${violatedDirective} ${blockedURI}`),
    )
  })
  if (withoutWorkers)
    await context.addInitScript(() => {
      Reflect.deleteProperty(globalThis, "Worker")
    })
  if (endlessSearches)
    await context.addInitScript(() => {
      const post = Worker.prototype.postMessage
      Worker.prototype.postMessage = function (this: Worker, question: object) {
        if (!("request" in question)) post.call(this, question)
      }
    })
  if (markLive)
    await context.addInitScript(() => {
      new MutationObserver((_, observer) => {
        const { classList } = document.body ?? {}
        if (!classList?.contains("live") || classList.contains("waiting")) return
        observer.disconnect()
        performance.mark("page-live")
      }).observe(document, { subtree: true, attributes: true, attributeFilter: ["class"] })
    })
  const page = await context.newPage()
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text())
  })
  page.on("crash", () => complaints.push("the page crashed"))
  page.on("pageerror", (error) => complaints.push(String(error)))
  page.on("request", (request) => {
    if (!/^(?:file|blob|data):/.test(request.url())) complaints.push(`asked for ${request.url()}`)
  })
  page.on("dialog", (dialog) => {
    if (leaveFreely && dialog.type() === "beforeunload") {
      void dialog.accept().catch(() => {})
      return
    }
    complaints.push(`dialog: ${dialog.message()}`)
    void dialog.dismiss().catch(() => {})
  })
  await page.goto(pathToFileURL(file).href)
  return { page, context, complaints }
}

/** Waits until the page shows the answer to what was last asked. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(
    () => document.body.classList.contains("live") && !document.body.classList.contains("waiting"),
  )
}

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8")

interface Violation {
  readonly id: string
  readonly impact: string
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[]
}

/** What axe finds wrong with the page as it stands, of any weight: contrast, names, labels, structure. */
export async function unsoundParts(page: Page): Promise<unknown[]> {
  await page.evaluate(axe)
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(options: object): Promise<{ violations: readonly Violation[] }> }
    }
    const { violations } = await axe.run({ resultTypes: ["violations"] })
    return violations.map(({ id, impact, nodes }) => ({
      ...{ id, impact },
      at: nodes[0]!.html.slice(0, 200),
      why: nodes[0]!.failureSummary,
    }))
  })
}
