import {
  computeNotebook,
  measureCell,
  type PictureAnswer,
  renderNotebook,
} from "@roundwright/notebook"
import { describe, expect, it } from "vitest"
import { drawMotif, tunedKinds } from "../../../test/support/drawn-motif.ts"
import {
  centreIn,
  countRing,
  findRing,
  forPicture,
  keepRing,
  setLine,
} from "../src/live/picture/edit-lines.ts"
import { toggled } from "../src/live/picture/strip-ticks.ts"

const fence = "```"
const drawn = drawMotif(9, { kinds: tunedKinds, tiltDeg: [0, 3], side: 360 })
const decoded = { picture: drawn.picture, widthPx: 720, heightPx: 720, scale: 0.5 }
const text = "Picture: piece.png\nView: as it is\nKnown length: across 18 cm"
const found = measureCell(text, decoded)
if ("fault" in found) throw new Error(found.fault)
const { strip, repeat, ...figures } = found
const dot = "data:image/png;base64,AAAA"
const answer: PictureAnswer = { ...figures, images: { given: dot, strip: dot, repeat: dot } }

describe("a picture cell measured", () => {
  it("writes its lines between those set by hand, in pixels of the picture as it is looked at", () => {
    expect(found.lines.split("\n").slice(0, 2)).toEqual([
      "Picture: piece.png",
      expect.stringMatching(/^Piece: round, .*; reach 90 mm \(found\)$/),
    ])
    expect(found.lines).toContain("\nView: as it is\nKnown length: across 18 cm\nCentre: ")
    const [x, y] = centreIn(found.lines)!
    const off = Math.hypot(
      (x + 0.5) / 2 - 0.5 - drawn.centrePx.x,
      (y + 0.5) / 2 - 0.5 - drawn.centrePx.y,
    )
    expect(off).toBeLessThan(0.015 * drawn.sidePx)
  })

  it("has a tick for every counted strand, in order round the piece, and rings that lie one outside the other", () => {
    for (const { ticks, strands, from, to, edge } of found.rings) {
      expect(ticks).toHaveLength(strands ?? 0)
      expect([...ticks].every((turns) => turns >= 0 && turns < 1)).toBe(true)
      expect(from).toBeLessThan(to)
      expect(edge.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true)
    }
    expect(found.rings.slice(1).every(({ from }, i) => from === found.rings[i]!.to)).toBe(true)
    expect(found.strip.values.every(Number.isFinite)).toBe(true)
    expect(found.repeat!.values.every(Number.isFinite)).toBe(true)
  })

  it("measures nothing anew for a count set by hand, and never overwrites it", () => {
    const memory = { key: "", measured: null }
    const stages: string[] = []
    const tell = (stage: string) => stages.push(stage)
    const first = measureCell(text, decoded, memory, tell)
    expect("fault" in first ? first.fault : first.lines).toBe(found.lines)
    expect(stages).toEqual(["piece", "rings"])
    const ring = found.rings.findIndex(({ repeats }) => repeats === 24) + 1
    const own = countRing(found.lines, ring, 23, 23)
    const again = measureCell(own, decoded, memory, tell)
    if ("fault" in again) throw new Error(again.fault)
    expect(stages).toHaveLength(2)
    expect(again.rings[ring - 1]).toMatchObject({
      repeats: 23,
      strands: 23,
      sureness: 1,
      by: "hand",
    })
    expect(again.rings[ring - 1]!.ticks).toHaveLength(23)
    expect(again.lines).toBe(own)
  })

  it("says in words what it cannot use", () => {
    for (const [lines, message] of [
      ["Box: 1 2", /Line 1: A box takes 4 numbers/],
      ["Known length: long", /does not say how long/],
      ["View: askew", /can be "as it is"/],
      ["Box: 5000 5000 10 10\nView: as it is", /leaves too little/],
    ] as const) {
      const refused = measureCell(lines, decoded)
      expect("fault" in refused ? refused.fault : "").toMatch(message)
    }
  })
})

describe("a page with a picture", () => {
  const notebook = `# A piece\n\n${fence}picture\n${text}\n${fence}\n`

  it("is complete without its script: picture, strip, one repeat, rings and lines, told apart by dash and number", async () => {
    const { html, problems } = await renderNotebook(notebook, { picture: async () => answer })
    expect(problems).toEqual([])
    expect(html).not.toContain("<script")
    expect(html).toContain("img-src data:")
    expect(html.match(/<image /g)).toHaveLength(3)
    const dashes = [...html.matchAll(/<polygon [^>]*class="ring-edge" stroke-dasharray="([^"]+)"/g)]
    expect(new Set(dashes.slice(0, 5).map(([, dash]) => dash)).size).toBe(5)
    for (const [i, { strands }] of found.rings.entries())
      if (strands !== null) expect(html).toContain(`>${i + 1}: ${strands}</text>`)
    expect(html).toContain(`<td>${found.rings.at(-1)!.strands}</td>`)
    expect(html).toContain("Known length: across 18 cm")
    expect(html).not.toMatch(/NaN|Infinity|style="/)
  })

  it("shows its lines where the picture is not at hand, and why where it cannot be used", async () => {
    const { html } = await renderNotebook(`${notebook.replace(text, found.lines)}`)
    expect(html).toContain("is not in this page")
    expect(html).toMatch(/<td>24<\/td><td>24<\/td><td class="word">found, 98\u00a0%/)
    const refused = await computeNotebook(notebook, {
      picture: async () => ({ fault: "The file is empty.", hint: "Save it." }),
    })
    expect(refused.problems).toMatchObject([{ code: "no-picture", message: "The file is empty." }])
  })
})

describe("a hand cell", () => {
  const pattern =
    "Yarn: DK\nHook: 4 mm\n\nRnd 1: 12 dc in magic ring. (12 dc)\nRnd 2: 2 dc in each st around. (24 dc)"
  const notebook = (lines: string) =>
    `# A disc\n\n${fence}pattern name=disc\n${pattern}\n${fence}\n\n${fence}hand of=disc\n${lines}\n${fence}\n`

  it("tells stitches and sizes with their errors, and refuses a line it does not understand", async () => {
    const told = await computeNotebook(notebook("Size: 2.4 cm after Rnd 1\nSize: 4.7 cm"))
    const content = told.cells[1]?.content
    const found = content?.kind === "finishing" ? content.found : null
    expect(found?.lead).toMatch(/^In this hand one dc is \d\.\d ± 0\.\d mm wide/)
    expect(found?.table?.rows.map(([, , of]) => of)).toEqual([
      "width of one dc",
      "height of one dc",
      "across after round 1",
      "across after round 2",
    ])
    const refused = await computeNotebook(notebook("Size: 2.4 cm after Rnd 1\nMood: good"))
    expect(refused.problems).toMatchObject([
      { code: "no-hand", message: expect.stringMatching(/Line 2/) },
    ])
  })
})

describe("lines changed by handles and fields", () => {
  const lines =
    "Picture: a.png\nCentre: 10 12 (found, 90 %)\nRing 1: to 9 mm; 6 repeats, 12 strands (found, 80 %; or 12 repeats); dc"

  it("are set, added where they belong, and taken out", () => {
    expect(setLine(lines, "Centre", "11 12")).toContain("\nCentre: 11 12\n")
    expect(setLine(lines, "Box", "0 0 9 9").split("\n")[1]).toBe("Box: 0 0 9 9")
    expect(setLine(setLine(lines, "Box", "1 1 2 2"), "Box", null)).toBe(lines)
  })

  it("are the reader's own without the bracket, and keep what else was said of the ring", () => {
    expect(countRing(lines, 1, 8, 16)).toContain("Ring 1: to 9 mm; 8 repeats, 16 strands; dc")
    expect(keepRing(lines, 1)).toContain("Ring 1: to 9 mm; 6 repeats, 12 strands; dc")
    expect(findRing(keepRing(lines, 1), 1)).toContain("(found, 0 %)")
    expect(countRing(lines, 7, 8, 8)).toBe(lines)
  })

  it("forget places of another picture", () => {
    expect(
      forPicture(setLine(lines, "Box", "0 0 9 9"), "b.jpg")
        .split("\n")
        .slice(0, 2),
    ).toEqual(["Picture: b.jpg", expect.stringMatching(/^Ring 1/)])
  })

  it("count a tick less where one is tapped and one more in a gap, across the seam too", () => {
    expect(toggled([0.1, 0.35, 0.6, 0.85], 0.36)).toEqual([0.1, 0.6, 0.85])
    expect(toggled([0.1, 0.35, 0.6, 0.85], 0.22)).toEqual([0.1, 0.22, 0.35, 0.6, 0.85])
    expect(toggled([0.01, 0.5], 0.99)).toEqual([0.5])
    expect(toggled([], 0.4)).toEqual([0.4])
  })
})
