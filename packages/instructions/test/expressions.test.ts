// No expression of the reader walks over the same run of a text again and again.

import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { describe, expect, it } from "vitest"
import { expressionsIn, faultOf } from "./expressions.ts"

const root = fileURLToPath(new URL("../../", import.meta.url))
const files = ["instructions", "stitches"].flatMap((name) =>
  readdirSync(`${root}${name}/src`, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => `${name}/src/${file}`),
)

describe("expressions", () => {
  it.each([
    ["a run in a run", /^(?:a+)+$/],
    ["runs side by side", /^a*a*b/],
    ["runs with what both take between them", /^\s*\(?\s*x/],
    ["a run looked for anywhere", /\s+$/],
    ["a run behind what it takes too", /x[^.]*y/],
  ])("with %s are found out", (_, expression) => {
    expect(faultOf(expression)).not.toBeNull()
  })

  it.each([/^\s+x/, /\b\d+ sc/, /[,;]/, /^(?:\w+,)+$/, /\s+/g, /x[^.x]*y/, /a{1,30}b/])(
    "that go over a text once are let pass: %s",
    (expression) => {
      expect(faultOf(expression)).toBeNull()
    },
  )

  it("are met in the sources", () => {
    const all = files.flatMap((file) => expressionsIn(readFileSync(root + file, "utf8")))
    expect(all.length).toBeGreaterThan(300)
  })

  it.each(files)("of %s go over a text once", (file) => {
    const faults = expressionsIn(readFileSync(root + file, "utf8")).flatMap(
      ({ written, expression }) => {
        const fault = faultOf(expression)
        return fault ? [`${written}: ${fault}`] : []
      },
    )
    expect(faults).toEqual([])
  })
})
