// Charts for print of twenty motifs, lace and doilies among them: no two posts of a round cross, no symbol lies on another, and
// a turn by one repeat maps marks on marks. All of them were looked at while the layout was built: they guard what is reached.
// How many of the motifs kept back came out so at the first look is told by `pnpm evidence`.

import { describe, expect, it } from "vitest"
import { caseText, loadCases } from "./cases.ts"
import { chartFaults } from "./chart-faults.ts"

const chosen = [
  "happy-clusters",
  "frost-flowers",
  "stardust-doily",
  "tiny-flower-coaster",
  "arabian-nights-motif",
  "polka-dot-afghan",
  "rh-three-tone-square",
  "cozy-coaster",
  "cb-granny-circle",
  "dillmont-485-five-star",
  "mycraftsideas-hexagon",
  "cluster-hexagon-09",
  "squares-n-squares",
  "granny-ring-coaster",
  "beginners-luck-dishcloth",
  "beeton-d6-no4-snowflake",
  "dillmont-441-sc-square",
  "dillmont-484-wheel16",
  "ladies-workbook-star-doily-a",
  "beeton-d1-no2-rose",
  "beeton-280-rosette11",
  "princess-charming",
  "blue-lagoon",
  "crochet-garden-square",
  "crochet-now-flower-square",
  "vcp-daisy-square",
  "dorothy-hexagon",
]

const cases = (["handbook-motifs", "measured-motifs", "flatness-outcomes"] as const).flatMap(
  (set) => loadCases(set),
)

describe("charts for print", () => {
  it.each(chosen)("%s", (id) => {
    const faults = chartFaults(caseText(cases.find((one) => one.id === id)!))!
    expect(faults.crossings).toBe(0)
    expect(faults.overlaps).toBe(0)
    // A tenth of a mm is half the width of a printed line.
    expect(faults.offTurn).toBeLessThan(0.1)
  })
})
