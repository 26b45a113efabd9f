import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { beforeAll, describe, expect, it } from "vitest"
import { callIn } from "./calling.ts"

let folder = ""

const flat = `# Button disc
Terms: US
Hook: 4 mm
Yarn: worsted

Rnd 1: 6 sc in magic ring; turn. (6 sc)
Rnd 2: 2 sc in each st around; turn. (12 sc)
Rnd 3: *sc in next st, 2 sc in next st; rep from * around; turn. (18 sc)
Rnd 4: *sc in next 2 sts, 2 sc in next st; rep from * around; turn. (24 sc)
`
const ruffled = `Rnd 1: 12 sc in magic ring. (12 sc)
Rnd 2: 2 sc in each st around. (24 sc)
Rnd 3: 2 sc in each st around. (48 sc)
`

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-"))
  writeFileSync(join(folder, "flat.txt"), flat)
  writeFileSync(join(folder, "ruffled.txt"), ruffled)
  writeFileSync(join(folder, "nonsense.txt"), "The quick brown fox.\nIt jumps.\n")
  writeFileSync(join(folder, "empty.txt"), "")
  writeFileSync(join(folder, "binary.dat"), Buffer.from([0, 1, 2, 255, 254, 0, 10, 0]))
})

const call = (...args: string[]) => callIn(folder, args)

describe("check", () => {
  it("says the verdict in the first line and ends with 0 for a flat piece", async () => {
    const { status, out } = await call("check", "flat.txt")
    expect(out.split("\n")[0]).toMatch(/^Lies flat/)
    expect(status).toBe(0)
  })

  it("ends with 1 for a piece that ruffles, and says from which round", async () => {
    const { status, out } = await call("check", "ruffled.txt")
    expect(out.split("\n")[0]).toMatch(/^Ruffles from round \d/)
    expect(out).toMatch(/What to change/)
    expect(status).toBe(1)
  })

  it.each(["nonsense.txt", "empty.txt", "binary.dat", "missing.txt", "."])(
    "ends with 2 and a clear problem for %s",
    async (file) => {
      const { status, out } = await call("check", file)
      expect(status).toBe(2)
      expect(out).toMatch(/error, line \d+/)
      expect(out).not.toMatch(/\n\s+at /)
    },
  )

  it("keeps to 80 columns", async () => {
    for (const file of ["flat.txt", "ruffled.txt", "nonsense.txt"]) {
      const { out } = await call("check", file)
      for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80)
    }
  })

  it("prints nothing but JSON with --json, one object a line for several files", async () => {
    const one = await call("check", "flat.txt", "--json")
    expect(JSON.parse(one.out).laidOut.verdict).toBe("flat")
    const several = await call("check", "flat.txt", "ruffled.txt", "missing.txt", "--json")
    const results = several.out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line))
    expect(results.map((result) => result.file)).toEqual(["flat.txt", "ruffled.txt", "missing.txt"])
    expect(results.map((result) => result.exitStatus)).toEqual([0, 1, 2])
    expect(several.status).toBe(2)
  })

  it("gives the same bytes for the same input", async () => {
    const first = await call("check", "ruffled.txt", "--json")
    const second = await call("check", "ruffled.txt", "--json")
    expect(second.out).toBe(first.out)
  })
})

describe("usage", () => {
  it.each([[["chek"]], [["check"]], [["check", "--frobnicate", "flat.txt"]], [["report"]], [[]]])(
    "ends with 2 for %j",
    async (args) => {
      const { status } = await call(...(args as string[]))
      expect(status).toBe(2)
    },
  )

  it("explains itself", async () => {
    const { status, out } = await call("help")
    expect(status).toBe(0)
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80)
  })
})

describe("report", () => {
  it("writes a page and writes it anew, but never over a file that is not ours", async () => {
    writeFileSync(join(folder, "note.md"), "# A note\n\nNothing to compute.\n")
    expect((await call("report", "note.md")).status).toBe(0)
    expect((await call("report", "note.md")).status).toBe(0)
    writeFileSync(join(folder, "mine.html"), "<p>mine</p>")
    const refused = await call("report", "note.md", "--out", "mine.html")
    expect(refused.status).toBe(2)
    expect(readFileSync(join(folder, "mine.html"), "utf8")).toBe("<p>mine</p>")
  })
})
