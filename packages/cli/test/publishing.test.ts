// The commands that publish: `edit`, `sheet` and `chart`, called as functions in a folder of their own.

import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { beforeEach, describe, expect, it } from "vitest"
import { callIn } from "./calling.ts"

const pattern = `# Peg Mat
Terms: US
Yarn: DK
Hook: 4 mm (I-9)
Gauge: 17 dc x 9 rows = 10 cm

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (25 dc)
Rnd 3: ch 3 (counts as dc), dc in same st, dc in next st, *2 dc in next st, dc in next st; rep from * around; join. (36 dc)
`
let folder = ""
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-"))
  writeFileSync(join(folder, "mat.txt"), pattern)
})
const call = (...args: string[]) => callIn(folder, args)

describe("edit", () => {
  it("prints JSON in the published shape, and writes nothing", async () => {
    const { status, out } = await call("edit", "mat.txt", "--json")
    expect(status).toBe(1)
    const { findings, corrected, ...rest } = JSON.parse(out)
    expect(rest).toEqual({})
    expect(corrected).toContain("(24 dc)")
    expect(corrected).toContain("(G-6)")
    const keys = ["severity", "code", "round", "line", "column", "length", "message", "wording"]
    for (const finding of findings) for (const key of keys) expect(finding).toHaveProperty(key)
    expect(findings.find(({ code }: { code: string }) => code === "total-wrong")).toMatchObject({
      severity: "must-mend",
      round: 2,
      line: 8,
      wording: "24 dc",
    })
    expect(readdirSync(folder)).toEqual(["mat.txt"])
  })

  it("tells what must be mended first and writes a copy beside the file, never over one", async () => {
    const first = await call("edit", "mat.txt")
    expect(first.out).toMatch(/^2 things must be mended/)
    expect(first.out.indexOf("Must be mended")).toBeLessThan(
      first.out.indexOf("Queries to the designer"),
    )
    await call("edit", "mat.txt")
    expect(readdirSync(folder).sort()).toEqual([
      "mat-corrected-2.txt",
      "mat-corrected.txt",
      "mat.txt",
    ])
    expect(readFileSync(join(folder, "mat.txt"), "utf8")).toBe(pattern)
    expect(readFileSync(join(folder, "mat-corrected.txt"), "utf8")).toContain("(24 dc)")
    const taken = await call("edit", "mat.txt", "--out", "mat-corrected.txt")
    expect(taken.status).toBe(2)
  })

  it("places findings of a notebook's pattern in the notebook", async () => {
    writeFileSync(join(folder, "book.md"), `# Notes\n\n\`\`\`pattern name=mat\n${pattern}\`\`\`\n`)
    const { findings } = JSON.parse((await call("edit", "book.md", "--json")).out)
    expect(findings.find(({ code }: { code: string }) => code === "total-wrong").line).toBe(11)
  })

  it("refuses what is no pattern", async () => {
    writeFileSync(join(folder, "prose.txt"), "Nothing to hook here.\n")
    expect((await call("edit", "prose.txt")).status).toBe(2)
    expect((await call("edit", "missing.txt")).status).toBe(2)
    expect((await call("edit")).status).toBe(2)
  })
})

describe("sheet and chart", () => {
  it("prints the sheet in either terms and every format", async () => {
    writeFileSync(join(folder, "good.txt"), pattern.replace("(25 dc)", "(24 dc)"))
    const md = await call("sheet", "good.txt")
    expect(md.status).toBe(0)
    expect(md.out).toMatch(/^# Peg Mat\n/)
    expect((await call("sheet", "good.txt", "--terms", "UK")).out).toContain("Terms: UK")
    expect((await call("sheet", "good.txt", "--format", "html")).out).toContain("<svg")
    expect((await call("sheet", "good.txt", "--format", "large")).out).toContain("24pt")
    expect((await call("sheet", "good.txt", "--format", "txt")).out).toContain("ROUNDS")
    expect((await call("sheet", "good.txt", "--format", "pdf")).status).toBe(2)
    await call("sheet", "good.txt", "--out", "sheet.md")
    expect(readFileSync(join(folder, "sheet.md"), "utf8")).toBe(md.out)
    expect((await call("sheet", "good.txt", "--out", "sheet.md")).status).toBe(2)
  })

  it("draws the chart at a width, and refuses what cannot be drawn", async () => {
    const { status, out } = await call(
      "chart",
      "mat.txt",
      "--width",
      "80mm",
      "--emphasis",
      "repeat",
    )
    expect(status).toBe(0)
    expect(out).toContain('width="80mm"')
    expect((await call("chart", "mat.txt", "--emphasis", "glitter")).status).toBe(2)
    expect((await call("chart", "nothing.txt")).status).toBe(2)
    await call("chart", "mat.txt", "--out", "mat.svg")
    const [same, other] = [
      await call("edit", "mat.txt", "--chart", "mat.svg"),
      await call("edit", "mat.txt", "--chart", "missing.svg"),
    ]
    expect(same.out).not.toContain("The chart has")
    expect(other.status).toBe(2)
    await call("chart", "mat.txt", "--width", "80mm", "--out", "mat.png")
    const png = readFileSync(join(folder, "mat.png"))
    expect(png.subarray(1, 4).toString()).toBe("PNG")
    // 80 mm at 300 dots an inch.
    expect(png.readUInt32BE(16)).toBe(Math.round((80 / 25.4) * 300))
    writeFileSync(join(folder, "short.txt"), "Rnd 1: 12 dc in magic ring. (12 dc)\n")
    const short = await call("edit", "short.txt", "--chart", "mat.svg")
    expect(short.out.replace(/\s+/g, " ")).toContain("The chart has a round 2, the text has none.")
  })
})
