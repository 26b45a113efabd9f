// What the script of live pages leaves out of the drawing libraries no chart misses: what is left draws the same.

import { readdirSync, readFileSync } from "node:fs"
import { runInThisContext } from "node:vm"
import { chartNames, shapeChartNames } from "@roundwright/charts"
import { beforeAll, describe, expect, it } from "vitest"
import { computeNotebook } from "../src/index.ts"
import { bundleScript } from "../src/live/bundle.ts"
import { namedSigns } from "../src/live/leave-out-signs.ts"
import { drawChart } from "../src/page/svg.ts"
import type { ChartPair } from "../src/result.ts"
import { cell } from "./made.ts"

const folder = new URL("../../../reports/", import.meta.url)
const reports = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "index.md")

describe("the drawing of a live page's script", () => {
  let drawn: typeof drawChart
  beforeAll(async () => {
    const script = await bundleScript(new URL("../src/page/svg.ts", import.meta.url), "tool")
    drawn = (
      runInThisContext(`(() => {${script};return tool})()`) as { drawChart: typeof drawChart }
    ).drawChart
  })

  /** Chart names drawn; each drawing is compared on the way. */
  const compare = async (name: string, markdown: string) => {
    const kinds: string[] = []
    for (const { kind, info, content } of (await computeNotebook(markdown)).cells) {
      const pair = content !== null && "charts" in content ? (content.charts as ChartPair) : null
      if (pair === null) continue
      kinds.push(/\bname=(\S+)/.exec(info)?.[1] ?? kind)
      for (const chart of [pair.wide, pair.narrow])
        expect(String(await drawn(chart)), `${name}: ${info}`).toBe(String(await drawChart(chart)))
    }
    return kinds
  }

  it.each(reports)(
    "draws every chart of %s to the letter as the whole libraries do",
    async (name) => {
      await compare(name, readFileSync(new URL(name, folder), "utf8"))
    },
  )

  it("draws every kind of chart, of a piece that ruffles with its gauge and of one that cups without", async () => {
    const ruffled =
      "Hook: 4 mm\nYarn: DK\n\nRnd 1: 6 sc in magic ring.\nRnd 2: 3 dc in each st around.\nRnd 3: [2 dc, ch 1] in each st around."
    const cupped = "Rnd 1: 6 sc in magic ring.\nRnds 2-5: sc in each st around."
    for (const text of [ruffled, cupped]) {
      const names = [...chartNames, ...shapeChartNames]
      const cells = names.map((name) => cell(`chart of=piece name=${name}`))
      const kinds = await compare("piece", cell("pattern name=piece", text) + cells.join(""))
      expect(kinds.toSorted()).toEqual(names.toSorted())
    }
  })
})

describe("signs by their names", () => {
  it("are those of HTML 4, each the sign of its name", () => {
    const signs = namedSigns()
    expect(Object.keys(signs)).toHaveLength(252)
    const known = { nbsp: "\u00a0", eacute: "é", yuml: "ÿ", times: "×", frac12: "½", hellip: "…" }
    expect(signs).toMatchObject({ ...known, mdash: "—", Omega: "Ω", amp: "&", lt: "<", quot: '"' })
  })
})
