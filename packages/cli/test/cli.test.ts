import { mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import { beforeAll, describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { printResult, run } from "../src/index.ts"
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
  it("prints the verdict before it looks for what to change", async () => {
    const printed: string[] = []
    await run(["check", "ruffled.txt", "--quick"], {
      cwd: folder,
      out: (text) => printed.push(text),
      err: () => {},
    })
    expect(printed).toHaveLength(2)
    expect(printed[0]).toMatch(/^Ruffles/)
    expect(printed[0]).not.toContain("What to change")
    expect(printed[1]).toContain("What to change")
  })

  it("tells a terminal what it is working at, and takes that away before it prints", async () => {
    const seen: string[] = []
    await run(["check", "ruffled.txt", "--quick"], {
      cwd: folder,
      out: () => seen.push("printed"),
      err: () => {},
      progress: (text) => seen.push(text),
    })
    expect(seen).toEqual([
      "Working ruffled.txt stitch by stitch ...",
      "",
      "printed",
      "Looking for what to change; Ctrl-C breaks that off ...",
      "",
      "printed",
    ])
  })

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

  it("says how the piece lies, one wave as one, and nothing where there is nothing to say", async () => {
    const sized = ruffled.replace("Rnd 1", "Yarn: DK\nRnd 1")
    writeFileSync(join(folder, "sized.txt"), sized)
    expect((await call("check", "sized.txt")).out).toMatch(
      /cm across, pressed flat; US terms\.\nLaid out: lifts .* off the table, \d waves\./,
    )
    expect((await call("check", "flat.txt")).out).toMatch(/Laid out: stays on the table\./)
    writeFileSync(join(folder, "bare.txt"), flat.replace(/Hook.*\nYarn.*\n/, ""))
    expect((await call("check", "bare.txt")).out).not.toMatch(/Laid out/)
    const result = { ...checkPattern(sized, { shape: "net" }) }
    const once = { ...result, laidOut: { ...result.laidOut!, waves: 1 } }
    expect(printResult(once, sized)).toMatch(/, 1 wave\./)
  })

  it("says of how many rounds the verdict is, and of sizes only where there is a piece", async () => {
    writeFileSync(
      join(folder, "half.txt"),
      flat.replace(/Rnd 4: .*/, "Rnd 4: *ch 4, skip next st; rep from * around; join."),
    )
    const { out } = await call("check", "half.txt", "--quick")
    expect(out).toMatch(/^Lies flat \(3 of 4 rounds read\)\.\n/)
    writeFileSync(join(folder, "assumed.txt"), flat.replace("Rnd 4: *sc", "Rnd 4: *blurp"))
    const assumed = (await call("check", "assumed.txt", "--quick")).out
    expect(assumed).toMatch(/^Lies flat; 1 of its 4 rounds is assumed\.\n/)
    expect(assumed.replace(/\s+/g, " ")).toMatch(/line 9: "blurp in next 2 sts" is not understood/)
    expect((await call("check", "flat.txt", "--quick")).out).toMatch(/^Lies flat\.\n/)
    expect((await call("check", "nonsense.txt")).out).not.toMatch(/To know/)
  })

  it("measures in the pattern's own stitches where it knows no mm", async () => {
    writeFileSync(join(folder, "uk.txt"), `Terms: UK\n${ruffled.replace(/\bsc\b/g, "dc")}`)
    const { out } = await call("check", "uk.txt", "--quick")
    expect(out).toMatch(/edge dc\s+across dc/)
    expect(out).not.toMatch(/\bsc\b/)
  })

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

describe("check of a notebook", () => {
  // Line 6 of the notebook is the first line of the gauge cell, line 11 the first of the pattern "disc".
  const notebook = `# Two pieces

Some words. Rnd 1: 6 sc in magic ring.

\`\`\`gauge for=disc
Hook: 5 mm
Yarn: nonsense of a yarn
\`\`\`

\`\`\`pattern name=disc
${flat}\`\`\`

\`\`\`pattern name=frill
${ruffled}Rnd 4: work as you like.
\`\`\`

\`\`\`squaring of=disc
Corners: 4
\`\`\`
`

  it("reads each pattern block by itself, with the gauge set over it", async () => {
    writeFileSync(join(folder, "two.md"), notebook)
    const { status, out } = await call("check", "two.md", "--json", "--quick")
    const results = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line))
    expect(results.map(({ file, pattern }) => [file, pattern])).toEqual([
      ["two.md", "disc"],
      ["two.md", "frill"],
    ])
    const [disc, frill] = results
    const alone = JSON.parse((await call("check", "ruffled.txt", "--json", "--quick")).out)
    expect(disc.rounds.map((round: { counted: object }) => round.counted)).toHaveLength(4)
    expect(disc.gauge.hookMm).toBe(5)
    expect(frill.rounds.slice(0, 3)).toEqual(alone.rounds)
    expect(disc.laidOut.verdict).toBe("flat")
    expect(frill.laidOut.verdict).toBe("ruffles")
    expect(status).toBeGreaterThan(0)
  })

  it("places problems in the notebook and names the pattern", async () => {
    writeFileSync(join(folder, "two.md"), notebook)
    const { out } = await call("check", "two.md", "--quick")
    expect(out).toMatch(/^two\.md, pattern disc: Lies flat/)
    expect(out).toMatch(/^two\.md, pattern frill: Ruffles/m)
    const line = notebook.split("\n").findIndex((text) => text.startsWith("Rnd 4: work as")) + 1
    expect(out).toContain(`line ${line}, column`)
    expect(out).toContain("Rnd 4: work as you like.")
    for (const text of out.split("\n")) expect(text.length).toBeLessThanOrEqual(80)
  })

  it("tells what is wrong with a block that cannot be used, and reads the others", async () => {
    const unnamed = notebook.replace("pattern name=frill", "pattern")
    writeFileSync(join(folder, "unnamed.md"), unnamed)
    const { status, out } = await call("check", "unnamed.md", "--quick")
    expect(status).toBe(2)
    expect(out).toMatch(/^unnamed\.md, pattern disc: Lies flat/)
    const line = unnamed.split("\n").indexOf("```pattern") + 1
    expect(out).toContain(`the pattern in line ${line}: No verdict`)
    expect(out).toContain(`error, line ${line}`)
  })

  it("of several patterns cannot be squared as one, of a single pattern can", async () => {
    writeFileSync(join(folder, "two.md"), notebook)
    const { status, err } = await call("square", "two.md", "--rounds", "1")
    expect(status).toBe(2)
    expect(err.replace(/\s+/g, " ")).toContain(
      "two.md is a notebook of 2 patterns (disc and frill)",
    )
    writeFileSync(join(folder, "one.md"), `# One\n\n\`\`\`pattern name=disc\n${flat}\`\`\`\n`)
    const args = ["--rounds", "1", "--stitches", "hdc,dc"]
    const [text, one] = [
      await call("square", "flat.txt", ...args),
      await call("square", "one.md", ...args),
    ]
    expect(one.out).toBe(text.out)
  })

  it("leaves a pattern written in Markdown a pattern", async () => {
    writeFileSync(join(folder, "plain.md"), flat)
    const [text, markdown] = [await call("check", "flat.txt"), await call("check", "plain.md")]
    expect(markdown.out).toBe(text.out)
  })
})

describe("a skewed piece", () => {
  const square = (skew: string) => `Driftwood square
Terms: US
Yarn: DK
Hook: 4 mm
${skew}

Rnd 1: 8 sc in magic ring; join. (8 sc)
Rnd 2: *3 sc in next st, sc in next st; rep from * around; join. (16 sc)
Rnd 3: *sc in next st, 3 sc in next st, sc in next 2 sts; rep from * around; join. (24 sc)
`

  it("says the skew, what it comes from and what brings the corners back", async () => {
    writeFileSync(join(folder, "skewed.txt"), square("Skew: -8 degrees"))
    const { out } = await call("check", "skewed.txt")
    expect(out).toContain("skew -8°")
    expect(out).toContain("against the direction of work")
    expect(out).toContain("Work turned after every round would keep the corners")
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80)
    writeFileSync(join(folder, "even.txt"), square(""))
    expect((await call("check", "even.txt")).out).toContain("no skew")
  })

  it("is squared as it leans, and a skew that cannot be used is told there too", async () => {
    const squared = async (skew: string) => {
      writeFileSync(join(folder, "skewed.txt"), square(skew))
      return call("square", "skewed.txt", "--rounds", "1", "--stitches", "sc")
    }
    const [even, skewed] = [await squared(""), await squared("Skew: 12 degrees")]
    expect(skewed.out).not.toBe(even.out)
    expect((await squared("Skew: 175 degrees")).out).toMatch(/skew of 175 degrees was not used/)
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

  it("tells what is wrong with an option in a line or two, without the whole help", async () => {
    const { err } = await call("check", "--frobnicate", "flat.txt")
    expect(err).toMatch(/^roundwright check: Unknown option '--frobnicate'\./)
    expect(err.trimEnd().split("\n").length).toBeLessThanOrEqual(2)
    expect((await call("plan-circle", "flat.txt")).err).toMatch(/Unexpected argument 'flat\.txt'\./)
    expect((await call("square", "")).err).toMatch(/The name of a file is empty\./)
  })

  it("explains itself", async () => {
    const { status, out } = await call("help")
    expect(status).toBe(0)
    expect(out.split("\n").length).toBeLessThanOrEqual(40)
    const all = await call("help", "all")
    for (const line of `${out}${all.out}`.split("\n")) expect(line.length).toBeLessThanOrEqual(80)
    // Every command that the whole help tells of is named in the short one, and no other.
    const names = (text: string, at: RegExp) => [
      ...new Set(Array.from(text.matchAll(at), ([, name]) => name)),
    ]
    const told = names(all.out, /^ {2}roundwright ([a-z][a-z-]*)/gm).filter(
      (name) => name !== "help",
    )
    expect(names(out, /^ {2}([a-z-]+) {2}/gm).sort()).toEqual(told.sort())
  })

  it.each(["check", "square", "plan-circle", "measure", "rebuild", "report", "new"])(
    "explains %s alone, whether asked by help or by --help",
    async (name) => {
      const { status, out } = await call("help", name)
      expect(status).toBe(0)
      expect(out).toMatch(new RegExp(`^roundwright ${name}\\b`))
      const others = out.match(/^roundwright (?!help)[a-z-]+/gm)!
      expect(new Set(others)).toEqual(new Set([`roundwright ${name}`]))
      expect((await call(name, "--help")).out).toBe(out)
    },
  )

  it("proposes the command that was meant", async () => {
    for (const [typed, meant] of [
      ["sqaure", "square"],
      ["plancircle", "plan-circle"],
      ["mesure", "measure"],
      ["rep", "report"],
    ] as const) {
      const { status, err } = await call(typed, "flat.txt")
      expect(status).toBe(2)
      expect(err).toContain(`Do you mean "${meant}"?`)
      expect(err.trimEnd().split("\n").length).toBe(2)
    }
    expect((await call("embroider")).err).toMatch(
      /there is no command "embroider"\.\n\nroundwright: does/,
    )
  })

  it("tells its version", async () => {
    expect((await call("--version")).out).toMatch(/^roundwright \d+\.\d+\.\d+\n$/)
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
    const nameless = await call("report", "note.md", "--out", "")
    expect([nameless.status, nameless.err]).toEqual([
      2,
      "roundwright report: The name of the page is empty.\n",
    ])
  })
})

describe("another hook", () => {
  const rounds = `
Rnd 1: 12 dc in magic ring; join. (12 dc)
Rnd 2: 2 dc in each st around; join. (24 dc)
`
  const factor = async (headings: string, ...hand: string[]) => {
    writeFileSync(join(folder, "hand.txt"), `${headings}\n${rounds}`)
    const { out } = await call("check", "hand.txt", "--json", "--quick", ...hand)
    return JSON.parse(out).inYourHands.sizeFactor as number
  }
  const dk = "Yarn: DK\nHook: 4 mm"

  it.each([
    dk,
    `${dk}\nGauge: 17 dc x 9 rows = 10 cm`,
    `${dk}\nSize: 6 cm after Rnd 2`,
    "Hook: 4 mm",
  ])("keeps the pattern's yarn and what was measured: %s", async (headings) => {
    const reason = "4 to 4.5 mm is 6.1 % of yarn, whichever way it is asked"
    expectClose(await factor(headings, "--hook", "4.5 mm"), 1.125 ** 0.5, 1e-6, reason)
    expectClose(await factor(headings, "--hook", "4 mm"), 1, 1e-9, "the pattern's own hook")
  })

  it("beside a named yarn is that yarn's, and the pattern's own yarn changes nothing", async () => {
    const gauge = `${dk}\nGauge: 17 dc x 9 rows = 10 cm`
    expectClose(await factor(gauge, "--yarn", "DK"), 1, 1e-9, "the same yarn")
    expect(await factor(gauge, "--yarn", "worsted")).toBeGreaterThan(1.1)
    expect(await factor(gauge, "--yarn", "DK held double")).toBeGreaterThan(1.1)
    const thread = "Yarn: size 10 crochet thread\nHook: 3 mm"
    expectClose(await factor(thread, "--hook", "1.8 mm"), 0.75, 0.005, "a quarter smaller")
  })

  it("is beaten by a round of her own, measured", async () => {
    const measured = await factor(dk, "--gauge", "Rnds 1-2 = 7 cm")
    expect(measured).toBeGreaterThan(1.1)
  })
})
