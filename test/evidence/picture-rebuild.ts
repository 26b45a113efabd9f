// Plain motifs of known rounds, laid out by the net, their radii disturbed, rebuilt: how often the stitch and
// the count of each round come first, and again with the one question answered.

import { buildDisc } from "@roundwright/motif"
import { seededRandom } from "@roundwright/numerics"
import { type RebuildKind, rebuildRounds, type SeenRing } from "@roundwright/picture"
import { layOut } from "@roundwright/relaxation"
import { gaugeFrom, sizeOf } from "@roundwright/stitches"

export interface RebuildScore {
  readonly motifs: number
  readonly rounds: number
  readonly first: number
  readonly amongTwo: number
  readonly counts: number
  readonly answered: number
  readonly hdc: number
  readonly hdcFirst: number
}

const kindsDrawn: readonly RebuildKind[] = ["sc", "hdc", "dc", "dc", "dc", "tr", "sc"]
const repeatsDrawn = [6, 8, 10, 12, 12, 16] as const

/** @param closeUp the width of a stitch is known from close up: the scale is right to 1 % instead of 4 % */
export function scoreRebuilding(from: number, motifs: number, closeUp: boolean): RebuildScore {
  const sum = {
    motifs: 0,
    rounds: 0,
    first: 0,
    amongTwo: 0,
    counts: 0,
    answered: 0,
    hdc: 0,
    hdcFirst: 0,
  }
  for (let seed = from; seed < from + motifs; seed++) {
    const random = seededRandom(seed)
    const pick = <T>(list: readonly T[]) => list[Math.floor(random.uniform() * list.length)]!
    const gauge = gaugeFrom({
      swatches: [{ kind: { basic: "dc" }, widthMm: 4 + 3 * random.uniform() }],
    })
    const repeats = pick(repeatsDrawn)
    let [kind, radius] = [pick(kindsDrawn), 0]
    const rounds = Array.from({ length: 3 + Math.floor(5 * random.uniform()) }, (_, i) => {
      if (i > 0 && random.uniform() < 0.3) kind = pick(kindsDrawn)
      const { heightMm, widthMm } = sizeOf({ basic: kind }, gauge, { turned: false })
      radius += heightMm
      const fits = ((2 * Math.PI * radius) / widthMm) * (1 + 0.06 * random.normal())
      return { kind, count: repeats * Math.max(1, Math.round(fits / repeats)) }
    })
    const disc = buildDisc(
      { basic: "dc" },
      rounds.map(({ count }) => count),
    )
    const motif = {
      ...disc,
      rounds: disc.rounds.map((round, i) => ({
        ...round,
        elements: round.elements.map((element) =>
          element.type === "stitch"
            ? { ...element, kind: { ...element.kind, basic: rounds[i]!.kind } }
            : element,
        ),
      })),
    }
    const across = layOut(motif, gauge, { inSpace: false }).acrossAfterRound
    const scale = Math.exp((closeUp ? 0.01 : 0.04) * random.normal())
    const rings: SeenRing[] = across.map((mm, i) => ({
      ring: i + 1,
      outerMm: (mm / 2) * scale * (1 + 0.01 * random.normal()),
      counts: [{ count: rounds[i]!.count, chance: 1 }],
    }))
    if (rings.some((ring, i) => i > 0 && ring.outerMm <= rings[i - 1]!.outerMm)) continue
    const options = { gauge, scaleKnown: closeUp }
    const rebuilt = rebuildRounds(rings, options)
    sum.motifs += 1
    rebuilt.rounds.forEach(({ candidates }, i) => {
      const truth = rounds[i]!
      const place = candidates.findIndex(({ stitch }) => stitch === truth.kind)
      sum.rounds += 1
      if (place === 0) sum.first += 1
      if (place === 0 || place === 1) sum.amongTwo += 1
      if (candidates[0]!.count === truth.count) sum.counts += 1
      if (truth.kind === "hdc") {
        sum.hdc += 1
        if (place === 0) sum.hdcFirst += 1
      }
    })
    const asked = rebuilt.question?.ring
    const told =
      asked === undefined
        ? rebuilt
        : rebuildRounds(
            rings.map((ring) =>
              ring.ring === asked ? { ...ring, stitch: rounds[asked - 1]!.kind } : ring,
            ),
            options,
          )
    told.rounds.forEach(({ candidates }, i) => {
      if (candidates[0]!.stitch === rounds[i]!.kind) sum.answered += 1
    })
  }
  return sum
}
