// Cells that match pieces and finish a blanket: what they give, what they refuse, what a page carries of them.

import * as v from "valibot"
import { describe, expect, it } from "vitest"
import { carriedAnswers } from "../src/carried.ts"
import { carriedSchemas } from "../src/carried-schemas.ts"
import { computeNotebook, renderNotebook } from "../src/index.ts"

const pattern = `\`\`\`pattern name=square
# Garden square
Terms: US
Yarn: DK
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), 2 dc in magic ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join. (12 dc)
Rnd 2: sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in next 3 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, dc in next 3 sts; join. (28 dc)
\`\`\``

const notebook = (...cells: string[]) => `# A square\n\n${[pattern, ...cells].join("\n\n")}\n`
const cell = (kind: string, lines: string) => `\`\`\`${kind} of=square\n${lines}\n\`\`\``

const all = notebook(
  cell("match", "To: 5.5 cm"),
  cell("compare", "12, 27"),
  cell("yarn", "Layout: 2x3\nWeighed: 4 pieces = 12 g"),
  cell("border", "Layout: 2x3\nRounds: sc, dc\nRepeat: 4 + 1"),
  cell("blanket", "Layout: 2x3\nColours: rose, cream"),
)

describe("finishing cells", () => {
  it("each give a first sentence, and stand on a page", async () => {
    const result = await computeNotebook(all)
    expect(result.problems).toEqual([])
    const found = result.cells.flatMap(({ content }) =>
      content?.kind === "finishing" ? [content.found!] : [],
    )
    expect(found.length).toBe(5)
    for (const { lead } of found) expect(lead.length).toBeGreaterThan(10)
    expect(found[1]!.lead).toMatch(/They part in round 2/)
    expect(found[4]!.drawing).toMatch(/^<svg/)
    const { html, problems } = await renderNotebook(all)
    expect(problems).toEqual([])
    expect(html).toContain("They part in round 2")
    expect(html).toContain("<polygon")
  })

  it("stand by their lines alone where no pattern is named", async () => {
    const alone = (kind: string, lines: string) => `\`\`\`${kind}\n${lines}\n\`\`\``
    const cells = [
      alone("match", "Stitches: 60\nNow: 35 in\nTo: 50 in"),
      alone("compare", "First: 84 rows = 180 cm\nSecond: 66 rows = 180 cm"),
      alone("yarn", "Done: 11 squares\nUsed: 210 g\nAll: 500 g"),
      alone("border", "Stitches: 186\nOnto: 178"),
      alone("blanket", "Edge: 33 groups\nPiece: 5 groups\nAlong: 6"),
      alone("reckon", "3 mats = 42 g\n1 ball = 100 g = 210 m\n58 g"),
    ]
    // Beside a pattern too: the lines are none of a pattern's.
    for (const text of [`# Sums\n\n${cells.join("\n\n")}\n`, notebook(...cells)]) {
      const result = await computeNotebook(text)
      expect(result.problems).toEqual([])
      const leads = result.cells.flatMap(({ content }) =>
        content?.kind === "finishing" ? [content.found!.lead] : [],
      )
      expect(leads).toHaveLength(6)
      for (const [k, held] of [
        "takes 86",
        "1.27 times",
        "26 in all",
        "skip 8 of",
        "3 short",
        "4.14 mats",
      ].entries())
        expect(leads[k]).toContain(held)
      expect((await renderNotebook(text)).html).toContain("takes 86")
    }
    const plan = await computeNotebook(
      `# Sums\n\n${alone("blanket", "Piece: 6 in\nShape: octagon\nLayout: 3x4\nColours: 3\nBorder: 2 in")}\n`,
    )
    expect(plan.problems).toEqual([])
    const drawn = carriedAnswers(plan).finishing!
    expect(drawn[0]![1].lead).toContain("6 fillers")
    expect(v.safeParse(carriedSchemas.finishing, drawn[0]).success).toBe(true)
    const { problems } = await computeNotebook(`# Sums\n\n${alone("yarn", "Used: no end")}\n`)
    expect(problems[0]).toMatchObject({ severity: "error" })
  })

  it("tell what cannot be at their line", async () => {
    const { problems } = await computeNotebook(
      notebook(
        cell("match", "To: -3 cm"),
        cell("yarn", "Sheep: 3"),
        cell("blanket", "Size: 1 x 1 cm"),
        cell("border", "Repeat: often"),
        "```reckon\n62\n```",
      ),
    )
    expect(problems.length).toBe(5)
    expect(problems.every(({ severity, hint }) => severity === "error" && hint !== "")).toBe(true)
    expect(new Set(problems.map(({ cell: index }) => index)).size).toBe(5)
  })

  it("go along with a page, and no drawing but one of ours is taken from it", async () => {
    const { finishing } = carriedAnswers(await computeNotebook(all))
    expect(finishing!.length).toBe(5)
    for (const one of finishing!)
      expect(v.safeParse(carriedSchemas.finishing, one).success).toBe(true)
    const [key, blanket] = finishing![4]!
    for (const bad of [
      "<svg onload=alert(1)></svg>",
      blanket.drawing!.replace("<title>", "<script>alert(1)</script><title>"),
      blanket.drawing!.replace("<polygon ", '<polygon onclick="x" '),
    ])
      expect(
        v.safeParse(carriedSchemas.finishing, [key, { ...blanket, drawing: bad }]).success,
      ).toBe(false)
  })
})
