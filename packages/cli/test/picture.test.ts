import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { encodePng } from "@roundwright/picture/decode"
import { beforeAll, describe, expect, it } from "vitest"
import { drawMotif, tunedKinds } from "../../../test/support/drawn-motif.ts"
import { callIn } from "./calling.ts"

let folder = ""
const drawn = drawMotif(9, { kinds: tunedKinds, tiltDeg: [0, 3], side: 360 })

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-picture-"))
  writeFileSync(join(folder, "piece.png"), await encodePng(drawn.picture))
  writeFileSync(join(folder, "text.png"), "Rnd 1: 12 dc in ring. (12 dc)\n")
  writeFileSync(join(folder, "mine.svg"), "<svg>my own</svg>")
})

const call = (...args: string[]) => callIn(folder, args)

describe("measure", () => {
  it("prints lines and writes a drawing to check them by", async () => {
    const { status, out } = await call("measure", "piece.png", "--across", "18cm")
    expect([0, 1]).toContain(status)
    expect(out).toMatch(
      /^Picture: piece\.png\nPiece: round, (light on dark|dark on light); reach 90 mm \(found\)\n/,
    )
    expect(out).toMatch(/^Ring \d: to \d+ mm; 24 repeats \(found, \d+ %/m)
    const svg = readFileSync(join(folder, "piece.svg"), "utf8")
    expect(svg).toMatch(/^<svg [^>]*role="img"/)
    expect(svg).toContain("data:image/jpeg;base64,")
    expect(svg).not.toContain("NaN")
  })

  it("prints nothing but JSON with --json, inside first, hand counts in place", async () => {
    const { status, out } = await call(
      "measure",
      "piece.png",
      "--json",
      "--ring",
      "2=12",
      "--as-it-is",
    )
    expect([0, 1]).toContain(status)
    const result = JSON.parse(out)
    expect([result.widthPx, result.heightPx]).toEqual([360, 360])
    expect(Math.abs(result.centrePx[0] - drawn.centrePx.x)).toBeLessThan(0.015 * drawn.sidePx)
    expect(result.rings[1]).toMatchObject({ repeats: 12, sureness: 1, by: "hand" })
    const radii = result.rings.map((ring: { outerPx: number }) => ring.outerPx)
    expect(radii).toEqual([...radii].sort((a, b) => a - b))
    for (const ring of result.rings)
      expect(Object.keys(ring)).toEqual(
        expect.arrayContaining([
          "innerPx",
          "outerPx",
          "repeats",
          "strands",
          "sureness",
          "nextBest",
        ]),
      )
  })

  it("leaves a file of yours alone", async () => {
    const { status, out } = await call("measure", "piece.png", "--out", "mine.svg", "--as-it-is")
    expect(status).toBe(2)
    expect(out).toContain("left alone")
    expect(readFileSync(join(folder, "mine.svg"), "utf8")).toBe("<svg>my own</svg>")
  })

  it("refuses what it cannot use in words", async () => {
    for (const [args, message] of [
      [["measure"], /name the picture/i],
      [["measure", "absent.jpg"], /no such file/],
      [["measure", "text.png"], /neither a PNG nor a JPEG/],
      [["measure", "piece.png", "--box", "1,2,3"], /--box takes 4 numbers/],
      [["measure", "piece.png", "--corners", "0,0 1,1 2,2 3,3"], /one\s+line/],
      [["measure", "piece.png", "--tap", "1,2,3"], /--tap takes 2 numbers/],
      [["measure", "piece.png", "--tap", "-5,2"], /outside the picture/],
      [["measure", "piece.png", "--ring", "three"], /--ring takes/],
      [["measure", "piece.png", "--ring", "77=12"], /no ring 77/],
      [["measure", "piece.png", "--side", "15cm"], /round/],
      [["measure", "piece.png", "--side", "15cm", "--across", "9cm"], /one known length/],
    ] as const) {
      const { status, err } = await call(...args)
      expect(status, args.join(" ")).toBe(2)
      expect(err).toMatch(message)
    }
    expect(existsSync(join(folder, "text.svg"))).toBe(false)
  })
})

describe("measure --into a notebook", () => {
  it("brings its lines into the picture cell, names the picture from there, and leaves lines set by hand alone", async () => {
    const fence = "```"
    writeFileSync(
      join(folder, "note.md"),
      `# Old mat\n\n${fence}picture\nView: as it is\nRing 3: to 24 mm; 23 repeats\n${fence}\n\nEnd.\n`,
    )
    const again = async () => {
      const { status, out } = await call(
        "measure",
        "piece.png",
        "--into",
        "note.md",
        "--known",
        "across 18 cm",
      )
      expect([0, 1]).toContain(status)
      expect(out).toContain("Written into note.md")
      return readFileSync(join(folder, "note.md"), "utf8")
    }
    const first = await again()
    expect(first).toMatch(/^# Old mat\n\n```picture\nPicture: piece\.png\nPiece: round/)
    expect(first).toContain("\nRing 3: to 24 mm; 23 repeats\nRing 4: ")
    expect(first).toContain("\nKnown length: across 18 cm\n")
    expect(first.endsWith(`${fence}\n\nEnd.\n`)).toBe(true)
    expect(await again()).toBe(first)
  })

  it("adds a cell to a notebook that has none", async () => {
    writeFileSync(join(folder, "bare.md"), "# Bare")
    await call("measure", "piece.png", "--into", "bare.md", "--as-it-is")
    expect(readFileSync(join(folder, "bare.md"), "utf8")).toMatch(
      /^# Bare\n\n```picture\nPicture: piece\.png\n[\s\S]*\nView: as it is\n[\s\S]*\n```\n$/,
    )
  })
})

describe("gauge", () => {
  it("tells heights and widths of a real piece, its sizes, and what to measure next", async () => {
    writeFileSync(
      join(folder, "disc.txt"),
      "Yarn: DK\nHook: 4 mm\n\nRnd 1: 12 dc in magic ring. (12 dc)\nRnd 2: 2 dc in each st around. (24 dc)\n",
    )
    const { status, out } = await call(
      "gauge",
      "disc.txt",
      "--size",
      "2.4 cm after Rnd 1",
      "--size",
      "4.7 cm",
      "--weighed",
      "2 g",
      "--skein",
      "50 g = 120 m",
      "--json",
    )
    expect(status).toBe(0)
    const { stitches, sizes, residuals, next, notes } = JSON.parse(out)
    expect(stitches).toHaveLength(1)
    expect(stitches[0].stitch).toBe("dc")
    expect(stitches[0].heightErrorMm).toBeGreaterThan(0)
    expect(Math.abs(sizes[1].mm - 47)).toBeLessThan(2 * sizes[1].errorMm)
    expect(residuals).toHaveLength(2)
    expect(next === null || next.narrowsTo < 0.9).toBe(true)
    expect(notes.join(" ")).toMatch(/weight counts for the width/)
    const words = await call("gauge", "disc.txt", "--swatch", "18 dc x 9 rows = 10 cm")
    expect(words.out).toMatch(/^In this hand one dc is \d\.\d ± 0\.\d mm wide and/)
    for (const [args, message] of [
      [["gauge", "disc.txt"], /Nothing of the piece was measured/],
      [["gauge", "disc.txt", "--size", "side 9 cm"], /round: it has no side/],
      [["gauge", "disc.txt", "--size", "9 cm after Rnd 7"], /no round 7/],
      [["gauge", "disc.txt", "--weighed", "much"], /no weight/],
      [["gauge"], /Name the one pattern/],
    ] as const) {
      const refused = await call(...args)
      expect(refused.status).toBe(2)
      expect(refused.err.replace(/\s+/g, " ")).toMatch(message)
    }
  })
})

describe("rebuild", () => {
  const notebook = (lines: string) =>
    `# Found square\n\nGauge: 16 dc x 8 rows = 10 cm\n\n${lines}\n`
  const plain =
    "Known length: across 10 cm\nRing 1: to 12.5 mm; 12 repeats\nRing 2: to 25 mm; 24 repeats\nRing 3: to 37.5 mm; 36 repeats"

  it("proposes rounds that read back as a pattern", async () => {
    writeFileSync(join(folder, "plain.md"), notebook(plain))
    const { status, out } = await call("rebuild", "plain.md", "--json")
    const result = JSON.parse(out)
    expect(status).toBe(0)
    expect(result.question).toBeNull()
    expect(
      result.rounds.map((r: { candidates: { stitch: string }[] }) => r.candidates[0]!.stitch),
    ).toEqual(["dc", "dc", "dc"])
    writeFileSync(join(folder, "rebuilt.txt"), result.text)
    const checked = JSON.parse((await call("check", "rebuilt.txt", "--json", "--quick")).out)
    expect(checked.problems.filter((p: { severity: string }) => p.severity === "error")).toEqual([])
    expect(
      checked.rounds.map((r: { counted: { stitches: number } }) => r.counted.stitches),
    ).toEqual([12, 24, 36])
  })

  it("asks its one question and ends with 1", async () => {
    const open =
      "Ring 1: to 12.5 mm; 12 repeats\nRing 2: to 25 mm; 24 repeats\nRing 3: to 35.2 mm; 33 repeats"
    writeFileSync(join(folder, "open.md"), notebook(open))
    const { status, out } = await call("rebuild", "open.md")
    expect(status).toBe(1)
    expect(out).toMatch(/Look closely at one post of\s+ring 3/)
  })

  it("refuses what it cannot use in words", async () => {
    writeFileSync(join(folder, "shares.md"), notebook("Ring 1: to 30 of 100; 12 repeats"))
    writeFileSync(join(folder, "bare.md"), plain)
    writeFileSync(join(folder, "broken.md"), notebook("Ring 1: 12 repeats"))
    writeFileSync(join(folder, "none.md"), "# Nothing\n")
    for (const [file, message] of [
      ["shares.md", /millimetres/],
      ["bare.md", /how large a\s+stitch is/],
      ["broken.md", /line 5/],
      ["none.md", /how large|no line of a ring/],
      ["absent.md", /no such file/],
    ] as const) {
      const { status, err } = await call("rebuild", file)
      expect(status, file).toBe(2)
      expect(err).toMatch(message)
    }
  })
})
