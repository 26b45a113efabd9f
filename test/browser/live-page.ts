// A notebook as a live page for the browser tests, and the hands to use it with.

import { renderNotebook } from "@roundwright/notebook"
import type { Page } from "playwright-core"
import { beforeAll, expect } from "vitest"
import { fileBrowser } from "./file-browser.ts"
import { type OpenOptions, settled } from "./open-page.ts"

export const fence = "```"
const disc = ["Terms: US", "Hook: 4 mm", "Yarn: DK", ""]
export const rounds = [
  "Rnd 1: 6 sc in magic ring. (6 sc)",
  "Rnd 2: *2 sc in next st; rep from * around. (12 sc)",
  "Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)",
  "Rnd 4: *sc in next 2 sts, 2 sc in next st; rep from * around. (24 sc)",
]
export const pattern = [...disc, ...rounds].join("\n")
export const notebook = `# A small disc

It \`= disc.verdict\` and has \`= disc.stitches_last\` stitches; twice that is \`= double\`.

${fence}pattern name=disc
${pattern}
${fence}

${fence}gauge for=disc
Hook: 4.5 mm
${fence}

${fence}verdict of=disc
${fence}

${fence}calculation
double = 2 * disc.stitches_last # both sides
${fence}

${fence}chart of=disc name=growth
${fence}

${fence}remedies of=disc
${fence}
`

/** Opens the browser for the tests of a file; `run` works on a fresh page of the notebook, or of another text. */
export function livePages() {
  const { open } = fileBrowser()
  let html: string
  beforeAll(async () => {
    html = (await renderNotebook(notebook, { live: true })).html
  })
  return {
    open,
    async withPage(
      run: (page: Page, complaints: readonly string[]) => Promise<void>,
      options: OpenOptions = {},
      text = html,
    ): Promise<void> {
      const { page, context, complaints } = await open(text, options)
      try {
        await settled(page)
        await run(page, complaints)
        expect(complaints).toEqual([])
      } finally {
        await context.close()
      }
    },
  }
}

export const area = (page: Page, cell: number) => page.locator(`#cell-${cell}-text`)
export const said = (page: Page) => page.locator("#cell-3 .said").textContent()

/** Puts a text into a cell and waits for the answer. */
export async function write(page: Page, cell: number, text: string): Promise<void> {
  await area(page, cell).fill(text)
  await settled(page)
}

export const doubled = pattern.replace(
  "Rnd 4: *sc in next 2 sts, 2 sc in next st; rep from * around. (24 sc)",
  "Rnd 4: *2 sc in next st; rep from * around. (36 sc)\nRnd 5: *2 sc in next st; rep from * around. (72 sc)",
)
