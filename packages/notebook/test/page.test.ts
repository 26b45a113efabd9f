import { createHash } from "node:crypto"
import { describe, expect, it } from "vitest"
import { computeNotebook, linksIn, renderIndex, renderNotebook } from "../src/index.ts"
import { cell, checkCounts, layOutCounts } from "./made.ts"

const render = (markdown: string) =>
  renderNotebook(markdown, { check: checkCounts, layOut: layOutCounts })
const compute = (markdown: string) =>
  computeNotebook(markdown, { check: checkCounts, layOut: layOutCounts })
const disc = cell("pattern name=disc", "6 12 18 44 50")
const everything =
  disc +
  ["verdict", "ledger", "remedies", "problems"].map((kind) => cell(`${kind} of=disc`)).join("") +
  ["growth", "fullness", "curvature", "reach"].map((name) => cell(`chart name=${name}`)).join("") +
  cell("gauge for=disc", "Hook: 5 mm") +
  cell("calculation", "a = 2 * edge_2 # twice")

describe("a page", () => {
  it("stands alone: no script, nothing fetched, a policy that forbids both", async () => {
    const { html } = await render(`# A page\n${everything}`)
    expect(html.startsWith('<!doctype html>\n<html lang="en">')).toBe(true)
    expect(html).not.toMatch(/<script|<link|<iframe|<img|<object|<base/i)
    expect(html).not.toMatch(/\s(?:src|srcset|on\w+|style)=/i)
    expect(html).not.toMatch(/url\(|@import/i)
    const style = /<style>([\s\S]*?)<\/style>/.exec(html)![1]!
    const hash = createHash("sha256").update(style).digest("base64")
    expect(html).toContain(`default-src &#39;none&#39;; style-src &#39;sha256-${hash}&#39;`)
    expect(html).toContain("<title>A page</title>")
  })

  it("says the verdict in a strong sentence and shows table, remedies and drawings", async () => {
    const { html, problems } = await render(everything)
    expect(problems).toEqual([])
    expect(html).toMatch(/<p class="said"><strong>[A-Z][^<]+\.<\/strong><\/p>/)
    expect(html.match(/<svg /g)).toHaveLength(8)
    expect(
      html.match(/role="img" viewBox="0 0 (?:544|328) \d+" aria-label="[^"]{40,}"/g),
    ).toHaveLength(8)
    expect(html).toContain("Do &lt;it&gt; otherwise.")
    expect(html).toContain("A &lt;note&gt;.")
    expect(html).toContain("Nothing to mend in the text.")
    expect(html).not.toMatch(/NaN|Infinity|undefined|\[object/)
  })

  it("tells the bow of sides, but not of a piece that is round to the eye", async () => {
    const laid = async (corners: number) => {
      const { found, piece } = layOutCounts("6 12 18")
      const lift = { by: "net" as const, liftMm: 3, waves: 2 }
      const shape = { ...lift, acrossMm: 60, bowMm: -1.6, cornerAngleDeg: 82, corners }
      const { html } = await renderNotebook(
        `${cell("pattern name=disc", "6 12 18")}${cell("verdict")}`,
        {
          check: checkCounts,
          layOut: () => ({ found: { ...found, laidOut: { ...found.laidOut!, ...shape } }, piece }),
        },
      )
      return html.replaceAll("\u00a0", " ")
    }
    const square = await laid(4)
    expect(square).toContain("it rises 3 mm in 2 waves.")
    expect(square).toContain("sides bow in by 2 mm, corners of 82°")
    expect(square.match(/sides/g)).toHaveLength(1)
    const round = await laid(0)
    expect(round).toContain("it rises 3 mm in 2 waves.")
    expect(round).not.toContain("sides")
  })

  it("names the stitch whose width lengths are in by the pattern's own terms", async () => {
    const pattern = (terms: string, stitch: string) =>
      cell(
        "pattern name=disc",
        `Terms: ${terms}\nRnd 1: Make an adjustable ring, 6 ${stitch} in ring; join. (6 ${stitch})`,
      ) + cell("ledger")
    const said = async (terms: string, stitch: string) =>
      (await renderNotebook(pattern(terms, stitch))).html
    expect(await said("UK", "dc")).toContain("Lengths are in widths of one dc: no gauge is known.")
    expect(await said("UK", "dc")).toContain("Growth, dc")
    expect(await said("US", "sc")).toContain("Lengths are in widths of one sc: no gauge is known.")
  })

  it("is the same bytes for the same text", async () => {
    const [first, second] = [await render(everything), await render(everything)]
    expect(second.html).toBe(first.html)
  })

  it("puts values into the prose, with what they were computed from", async () => {
    const { html } = await render("# It is `= 1 + 1`\n\nTwice `= 1.5`, not `= x` nor `code`.")
    expect(html).toContain("<title>It is 2</title>")
    expect(html).toContain('<span class="value" title="1 + 1">2</span>')
    expect(html).toMatch(/<span class="value failed" title="[^"]+">\[no value: Nothing here/)
    expect(html).toContain("<code>code</code>")
  })

  it("keeps prose and cells in order, with rules and footnotes of the writer's own", async () => {
    const { html } = await render(
      `one[^1]\n\n---\n${disc}\ntwo\n\n---\n${cell("verdict")}\nthree\n\n[^1]: foot`,
    )
    const order = ["one", "<hr>", 'id="cell-1"', "two", "<hr>", 'id="cell-2"', "three", "foot"]
    let at = 0
    for (const part of order) {
      const found = html.indexOf(part, at)
      expect(found, part).toBeGreaterThanOrEqual(at)
      at = found + part.length
    }
    expect(html.match(/<hr>/g)).toHaveLength(2)
  })

  it("marks problems in the pattern where they are, and lists them once", async () => {
    const text = cell("pattern name=a", "6 12\n18 ?odd\n24")
    const alone = await render(text)
    expect(alone.html).toContain(
      '18 <mark class="error" title="Not understood: ?odd Write it another way.">?odd</mark>',
    )
    expect(alone.html.match(/<li>/g)?.length).toBe(1)
    const listed = await render(text + cell("problems of=a"))
    expect(listed.html).not.toContain('class="found"')
    expect(listed.html).toContain("Found in the text")
  })

  it("says of a pattern read in part how much the verdict is of, and draws nothing of one without rounds", async () => {
    const real = (text: string) =>
      renderNotebook(cell("pattern name=a", text) + cell("verdict") + cell("chart name=growth"))
    const partly = await real("Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sx in each st around.")
    expect(partly.html).toMatch(/class="said"><strong>[^<]*\(1 of 2 rounds read\)/)
    const none = await real("milk, eggs")
    expect(none.html).toContain("No verdict: no round could be read.")
    expect(none.html).toContain("Nothing to draw: no round could be read.")
    expect(none.html).not.toMatch(/class="fault"|Size from|<svg/)
  })

  it("tells a failed cell in its place and goes on", async () => {
    const { html, problems } = await render(
      `before\n${cell("chart of=nobody name=growth")}\nbetween\n${cell("calculation", "1/0\n2 + 2")}\nafter`,
    )
    expect(problems).toHaveLength(2)
    const parts = [
      "before",
      "This chart cell could not be computed.",
      "no pattern called nobody",
      "chart of=nobody name=growth",
      "between",
      "No value. ",
      "no finite value",
      ">4<",
      "after",
    ]
    let at = 0
    for (const part of parts) {
      at = html.indexOf(part, at)
      expect(at, part).toBeGreaterThan(0)
    }
  })

  it("answers for an empty text", async () => {
    const { html, title } = await render("")
    expect(title).toBe("Notebook")
    expect(html).toContain("<main></main>".slice(0, 6))
  })
})

describe("hostile text", () => {
  const script = "<script>alert(1)</script>"
  const evil = `${script}<img src=x onerror=alert(1)>"'><svg onload=alert(1)>`

  it.each([
    ["prose", `${evil}\n\ntext ${evil}`],
    ["a heading", `# ${evil}`],
    [
      "links",
      `[a](javascript:alert(1)) [b](data:text/html,x) <javascript:alert(1)> [c]: javascript:x\n\n[d][e]\n\n[e]: vbscript:x`,
    ],
    [
      "pictures",
      `![alt${script}](https://example.org/x.png "t") ![r][p]\n\n[p]: //example.org/y.png`,
    ],
    ["a table", `|${evil}|\n|---|\n|${evil}|`],
    ["footnotes", `x[^__proto__]\n\n[^__proto__]: ${evil}`],
    ["task lists", `- [x] ${evil}`],
    ["a pattern", cell("pattern name=a", `${evil} 6 12 ?${evil}`)],
    ["a gauge", disc + cell("gauge for=disc", evil)],
    ["an info string", cell(`pattern name=${evil}`, "6") + cell(`verdict of="${evil}"`)],
    ["a plain fence", cell(`html ${evil}`, evil)],
    ["a calculation", cell("calculation", `${evil} # ${evil}\n"${script}"\nx = "${script}"`)],
    ["a value", `\`= ${evil}\` \`= "${script}"\``],
    ["odd characters", "\u0000\u2028\u202e\ufeff\ud800 </style></title><!--"],
    ["closing marks", `</main></body></html>${cell("pattern name=a", "</pre></section>")}`],
    [
      "prototype names",
      ["__proto__", "constructor", "toString", "hasOwnProperty"]
        .map(
          (name) =>
            cell(`pattern name=${name}`, "6 12") +
            cell(`verdict of=${name}`) +
            cell(`chart of=${name} name=${name}`),
        )
        .join(""),
    ],
  ])("in %s neither runs nor breaks the page", async (_, markdown) => {
    const { html } = await render(`${markdown}\n\nlast words`)
    // Titles may hold any character between their quotes, which are escaped inside them.
    const bare = html.replace(/<style>[\s\S]*?<\/style>/, "").replace(/ title="[^"]*"/g, "")
    expect(bare).not.toMatch(/<(?:script|img|iframe|object|embed|form|input|link|base)\b/i)
    expect(bare.replace(/"[^"]*"/g, '""')).not.toMatch(/<[^>]*\son\w+=/i)
    expect(bare).not.toMatch(/href="(?:javascript|data|vbscript):/i)
    expect(bare.match(/<svg/g)?.length ?? 0).toBe(
      bare.match(/<svg xmlns="[^"]*" role="img"/g)?.length ?? 0,
    )
    expect(html.match(/<\/main>/g)).toHaveLength(1)
    expect(html.match(/<\/style>/g)).toHaveLength(1)
    expect(html).toContain("last words")
  })

  it.each([
    ["brackets", "[".repeat(3_900)],
    ["emphasis", "*a_".repeat(1_300)],
    ["links", "[a](".repeat(900)],
    ["back ticks", "`".repeat(3_000) + "a".repeat(100)],
    ["entities", "&amp".repeat(2_400)],
    ["angles", "<a ".repeat(1_300)],
    ["quotes", `${"> ".repeat(30)}x\n`.repeat(200)],
    ["nested lists", Array.from({ length: 39 }, (_, i) => `${"  ".repeat(i)}- x`).join("\n")],
    ["bars", `${"|".repeat(5_000)}\n${"|-".repeat(2_500)}`],
    ["fences without end", "```pattern name=a\n".repeat(400)],
    ["definitions", Array.from({ length: 2_000 }, (_, i) => `[a${i}]: b${i}`).join("\n")],
    ["footnote chains", Array.from({ length: 300 }, (_, i) => `[^${i}]: [^${i + 1}]`).join("\n\n")],
    ["a huge number in a cell", cell("pattern name=a", "9".repeat(9_000))],
    ["ten megabytes", "words and words\n".repeat(700_000)],
  ])("%s end in a page", async (_, markdown) => {
    const { html } = await render(markdown)
    expect(html.endsWith("</html>\n")).toBe(true)
  })
})

describe("an index", () => {
  it("leads to each page, with its title and its first paragraph computed", async () => {
    const entries = [
      { file: "a.html", markdown: `# First\n\nIt is \`= 1 + 1\`.\n\nMore.\n${disc}` },
      {
        file: `"><script>&.html`,
        markdown: "# <script>Second\n\n<img src=x> and [a](javascript:x)",
      },
      { file: "c.html", markdown: "" },
    ]
    const computed = await Promise.all(
      entries.map(async ({ file, markdown }) => ({ file, notebook: await compute(markdown) })),
    )
    const introduction = await compute("# Not this\n\nTwice two is `= 2 * 2`.\n\n- [a](a.md)")
    const html = await renderIndex({ title: "Reports", introduction }, computed)
    expect(html).toContain('<h2><a href="./a.html">First</a></h2>')
    expect(html).toContain('<span class="value" title="1 + 1">2</span>')
    expect(html).not.toContain("More.")
    expect(html).toContain('href="./%22%3E%3Cscript%3E%26.html"')
    expect(html).not.toMatch(/<script|<img|javascript:/)
    expect(html.match(/<li>/g)).toHaveLength(3)
    expect(html).toMatch(/<h1>Reports<\/h1><p>Twice two is <span[^>]*>4<\/span>\.<\/p><ul/)
    expect(html).not.toContain("Not this")
    expect(await renderIndex({ title: "Reports", introduction }, computed)).toBe(html)
  })

  it("knows the files a text links to, in order and once", () => {
    const text = "[b](./b.md) and [a](a.md#part), [b](b.md)\n\n`[c](c.md)` [d](https://d.example)"
    expect(linksIn(text)).toEqual(["b.md", "a.md", "https://d.example"])
  })
})
