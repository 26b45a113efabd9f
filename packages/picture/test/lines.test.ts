import {
  countsByHand,
  mergeLines,
  openQuestions,
  type PublishedMeasurement,
  readLines,
  seenOfLines,
  writeLines,
} from "@roundwright/picture"
import { describe, expect, it } from "vitest"

const ring = {
  innerPx: 10,
  strands: 12,
  repeats: 12,
  sureness: 0.98,
  nextBest: null,
  halfOrTwice: false,
  by: "found" as const,
  closed: true,
}
const published: PublishedMeasurement = {
  widthPx: 600,
  heightPx: 600,
  centrePx: [301.4, 298.6],
  centreSureness: 0.97,
  lightOnDark: true,
  outline: { kind: "polygon", corners: 4, sideReachPx: 200, cornerReachPx: 270 },
  view: { by: "as it is", foreshortening: 1, doubtful: false },
  mmPerPx: 0.38,
  rings: [
    { ...ring, outerPx: 37 },
    { ...ring, outerPx: 66, strands: 24, sureness: 0.91, nextBest: 24, halfOrTwice: true },
    { ...ring, outerPx: 99, repeats: 16, strands: 16, by: "hand", sureness: 1 },
    { ...ring, outerPx: 200, repeats: null, strands: null, sureness: 0 },
  ],
}

describe("lines of a measurement", () => {
  const lines = writeLines(published, { picture: "old-square.jpg", known: "side 15.2 cm" })

  it("say what was found and how sure", () => {
    expect(lines).toEqual([
      "Picture: old-square.jpg",
      "Piece: square, light on dark; side 76 mm, corner 103 mm from the centre (found)",
      "Known length: side 15.2 cm",
      "Centre: 301 299 (found, 97 %)",
      "Ring 1: to 14.1 mm; 12 repeats (found, 98 %)",
      "Ring 2: to 25 mm; 12 repeats, 24 strands (found, 91 %; or 24 repeats)",
      "Ring 3: to 38 mm; 16 repeats",
      "Ring 4: to 76 mm; not read",
    ])
  })

  it("are shares of the side without a known length", () => {
    const [, , , first] = writeLines({ ...published, mmPerPx: null }, { picture: "a.png" })
    expect(first).toBe("Ring 1: to 18.5 of 100; 12 repeats (found, 98 %)")
  })

  it("read back", () => {
    const read = readLines(lines.join("\n"))
    expect(read.problems).toEqual([])
    expect(read.picture).toBe("old-square.jpg")
    expect(read.known).toBe("side 15.2 cm")
    expect(read.centre).toBeNull()
    expect(
      read.rings.map(({ toMm, repeats, strands, sureness, nextBest }) => [
        toMm,
        repeats,
        strands,
        sureness,
        nextBest,
      ]),
    ).toEqual([
      [14.1, 12, null, 0.98, null],
      [25, 12, 24, 0.91, 24],
      [38, 16, null, null, null],
      [76, null, null, null, null],
    ])
    expect(readLines("Centre: 12 14").centre).toEqual([12, 14])
    expect(readLines("Corners: 1,2 3,4 5,6 7,8").corners).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  })

  it("with the bracket deleted stay as they are", () => {
    const own =
      "# My square\n\nRing 1: to 14.1 mm; 10 repeats\nRing 2: to 25 mm; 12 repeats (found, 91 %)\nGood."
    const merged = mergeLines(own, lines)
    expect(merged).toContain("Ring 1: to 14.1 mm; 10 repeats\n")
    expect(merged).toContain(
      "Ring 2: to 25 mm; 12 repeats, 24 strands (found, 91 %; or 24 repeats)",
    )
    expect(merged.startsWith("# My square\n\n")).toBe(true)
    expect(merged.endsWith("\nGood.")).toBe(true)
    expect(mergeLines(merged, lines)).toBe(merged)
  })

  it("come in their own order, and go where nothing is found any more", () => {
    const own = "Ring 2: to 25 mm; 9 repeats\nRing 7: to 90 mm; 6 repeats (found, 50 %)"
    expect(mergeLines(own, lines).split("\n")).toEqual([
      ...lines.slice(0, 5),
      "Ring 2: to 25 mm; 9 repeats",
      ...lines.slice(6),
    ])
  })

  it("are counts by hand where they stand without a bracket, strands being the posts", () => {
    const read = readLines(
      "Ring 1: to 9 mm; 12 repeats, 24 strands\nRing 2: to 19 mm; 8 repeats (found, 90 %)",
    )
    expect([...countsByHand(read)]).toEqual([[1, { repeats: 12, strands: 24 }]])
    expect(seenOfLines(read).rings[0]!.counts).toEqual([{ count: 24, chance: 1 }])
  })

  it("tell what they do not understand by line", () => {
    const { problems } = readLines("Picture: a.png\nRing 2: 12 repeats\nBox: 1 2 3")
    expect(problems).toEqual([
      { line: 2, message: 'Ring 2 does not say how far it reaches ("to 25 mm").' },
      { line: 3, message: "A box takes 4 numbers, not 3." },
    ])
    expect(readLines(`Ring 1: ${"(".repeat(5000)}`).rings).toHaveLength(1)
  })

  it("become rings to rebuild, the unread middle being the hole", () => {
    const seen = seenOfLines(
      readLines(
        "Ring 1: to 8 mm; not read\nRing 2: to 20 mm; 12 repeats; dc\nRing 3: to 31 mm; 8 repeats; 2 posts between spokes",
      ),
    )
    expect(seen.holeMm).toBe(8)
    expect(seen.rings).toEqual([
      { ring: 2, outerMm: 20, counts: [{ count: 12, chance: 1 }], stitch: "dc" },
      { ring: 3, outerMm: 31, counts: [{ count: 24, chance: 1 }], stitch: undefined },
    ])
    expect(() => seenOfLines(readLines("Ring 1: to 8 of 100; 6 repeats"))).toThrow(/millimetres/)
    expect(() => seenOfLines(readLines("nothing"))).toThrow(/no line of a ring/)
  })

  it("ask about what is not sure, in order", () => {
    expect(openQuestions(published)).toEqual([
      "Look at ring 2: it shows 12 repeats or 24, one may be the legs of the other.",
      "Count ring 4: it could not be read.",
    ])
  })
})
