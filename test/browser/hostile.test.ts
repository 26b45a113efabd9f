// Notebooks that mean harm, opened and typed into a browser: nothing of theirs runs, and the page goes
// on answering.

import { renderNotebook } from "@roundwright/notebook"
import { describe, expect, it } from "vitest"
import { fileBrowser } from "./file-browser.ts"
import { settled } from "./open-page.ts"

const fence = "```"
const cell = (info: string, text = "") => `\n${fence}${info}\n${text}\n${fence}\n`

/** Would set `harmed` if any of it ran. */
const script = "<script>globalThis.harmed=1</script>"
const evil = `${script}<img src=x onerror="globalThis.harmed=1">"'><svg onload="globalThis.harmed=1"></svg></textarea></pre></style></script>${script}`

const pattern = (title: string) =>
  `# ${title}\nTerms: US\nHook: 4 mm\n\nRnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\nRnd 3: 2 sc in each st around. (24 sc) ${title}\nRnd 4: ${title}`

const results = (name: string) =>
  ["verdict", "ledger", "remedies", "problems"].map((kind) => cell(`${kind} of=${name}`)).join("") +
  cell(`chart of=${name} name=growth`)

const hostile: readonly (readonly [string, string])[] = [
  [
    "script in every field",
    `# ${evil}\n\n${evil} [a](javascript:globalThis.harmed=1) \`= ${evil}\` \`= "${script}"\`\n\n|${evil}|\n|---|\n|${evil}|\n${cell("pattern name=a", pattern(evil))}${cell("gauge for=a", `Yarn: ${evil}\nHook: ${evil}`)}${cell("calculation", `x = "${script}" # ${evil}\n${evil}`)}${results("a")}${cell(`chart of=a name=${evil}`)}${cell(`html ${evil}`, evil)}`,
  ],
  [
    "names of the language itself",
    ["constructor", "__proto__", "toString", "hasOwnProperty", "valueOf"]
      .map(
        (name) =>
          cell(`pattern name=${name}`, pattern(name)) +
          results(name) +
          cell("calculation", `${name} = 1\n${name}.constructor\nconstructor.constructor("x")()`),
      )
      .join(""),
  ],
  [
    "huge numbers",
    cell(
      "pattern name=a",
      `Hook: 4 mm\nRnd 1: ${"9".repeat(400)} sc in magic ring.\nRnd 2: *2 sc in next st; rep from * ${"9".repeat(30)} times. (1e308 sc)\nRnd 999999999999: ch 99999999999999999999.`,
    ) +
      results("a") +
      cell("calculation", "9^9^9^9\n1e308 * 10\n1/0\n10^-400\nsqrt(-1)"),
  ],
  [
    "deep nesting",
    `${"> ".repeat(30)}deep\n\n${"[".repeat(500)}${"]".repeat(500)}\n${cell("pattern name=a", `Rnd 1: ${"*(".repeat(400)}sc${")".repeat(400)} in ring`)}${results("a")}${cell("calculation", `${"(".repeat(140)}1${")".repeat(140)}`)}`,
  ],
  [
    "ten megabytes",
    `# Long\n${cell("pattern name=a", "sc in next st, ".repeat(700_000))}${results("a")}`,
  ],
]

const { open } = fileBrowser()

describe("a notebook that means harm", () => {
  it.each(hostile)("%s: nothing runs, and the page answers", async (_, markdown) => {
    const { html } = await renderNotebook(`${markdown}\n\nlast words\n`, { live: true })
    const { page, context, complaints } = await open(html)
    const cells = await page.locator("textarea").count()
    if (cells > 0) {
      await settled(page)
      const box = page.locator("textarea").first()
      await box.fill(pattern(evil))
      await settled(page)
      await box.fill(pattern("calm again"))
      await settled(page)
      expect(await page.locator(".saying").textContent()).toMatch(/calm again/)
    }
    const found = await page.evaluate(() => ({
      harmed: "harmed" in globalThis,
      scripts: document.querySelectorAll("script").length,
      foreign: document.querySelectorAll("img, iframe, object, embed, form, link, base").length,
      handlers: [...document.querySelectorAll("*")].filter((element) =>
        element.getAttributeNames().some((name) => name.startsWith("on")),
      ).length,
      links: [...document.querySelectorAll("a")].map((link) => link.protocol),
      text: document.body.textContent,
    }))
    expect({ ...found, links: [], text: "" }).toEqual({
      ...{ harmed: false, scripts: 2, foreign: 0, handlers: 0, links: [], text: "" },
    })
    expect(found.links.filter((protocol) => /script|data/.test(protocol))).toEqual([])
    expect(found.text).toMatch(/last words|characters, more than/)
    expect(complaints).toEqual([])
    await context.close()
  })

  it("typed into a cell ten megabytes long, it is told so, and the way back is open", async () => {
    const text = `# Small\n${cell("pattern name=a", pattern("Small"))}${results("a")}`
    const { html } = await renderNotebook(text, { live: true })
    const { page, context, complaints } = await open(html)
    await settled(page)
    const verdict = await page.locator(".said").textContent()
    await page.locator("textarea").evaluate((box: HTMLTextAreaElement) => {
      box.value = "sc in next st, ".repeat(700_000)
      box.dispatchEvent(new Event("input", { bubbles: true }))
    })
    await settled(page)
    expect(await page.locator(".saying").textContent()).toMatch(
      /could not be worked out.*characters/,
    )
    expect(await page.locator(".said").textContent()).toBe(verdict)
    await page.getByRole("button", { name: "Undo" }).click()
    await settled(page)
    expect(await page.locator(".said").textContent()).toBe(verdict)
    expect(await page.locator("textarea").inputValue()).toBe(pattern("Small"))
    expect(complaints).toEqual([])
    await context.close()
  })
})
