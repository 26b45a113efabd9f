// Sound patterns to edit: motifs of the data sets, written out and dressed as makers publish them, in several house styles:
// labels, totals, joins, lists of abbreviations, US or UK terms, yarn, hook, a gauge such as that yarn gives, the size the
// piece comes to. Seeded: the same seed dresses a motif the same way.

import { examinePattern } from "@roundwright/assessment"
import { readPattern, writePattern } from "@roundwright/instructions"
import type { Motif, Round } from "@roundwright/motif"
import { type RandomSource, seededRandom } from "@roundwright/numerics"
import { abbreviationsIn, type EditCode } from "@roundwright/publishing"
import { gaugeFrom, hooks, kindName, sizeOf, type Terms, yarnWeights } from "@roundwright/stitches"
import { caseText, loadCases } from "./cases.ts"

export interface SoundPattern {
  readonly id: string
  readonly text: string
  readonly terms: Terms
}

export interface KnownMotif {
  readonly id: string
  readonly motif: Motif
}

/** Codes that a pattern may have a query of although nothing is wrong with it. */
export type AllowedCode = EditCode

/** Motifs of the data sets that read whole, are written, and have three to fourteen rounds. */
export function knownMotifs(): KnownMotif[] {
  return (["handbook-motifs", "measured-motifs", "flatness-outcomes"] as const).flatMap((set) =>
    loadCases(set).flatMap((one) => {
      const { motif, rounds, problems } = readPattern(caseText(one))
      const whole = rounds.every(({ counted, assumed }) => counted !== null && !assumed)
      const quiet = problems.every(({ severity }) => severity === "note")
      const number = motif.rounds.length
      if (!whole || !quiet || number < 3 || number > 14 || number < rounds.length) return []
      try {
        writePattern(motif, "US")
        return [{ id: `${set}/${one.id}`, motif }]
      } catch {
        return []
      }
    }),
  )
}

const yarns = [
  { weight: 3, name: "DK", hooksMm: [3.5, 4, 4.5] },
  { weight: 4, name: "worsted", hooksMm: [5, 5.5] },
  { weight: 2, name: "sport", hooksMm: [3.25, 3.5] },
  { weight: 5, name: "chunky", hooksMm: [6.5, 8] },
] as const
const fibres = ["cotton", "wool", "acrylic"] as const
const names = [
  "Larder Mat",
  "Orchard Wheel",
  "Slate Court",
  "Ferry Pane",
  "Kiln Tile",
  "Thicket Square",
]

/** @param index place among the motifs, which the style follows with the seed */
export function soundPattern({ id, motif }: KnownMotif, seed: number): SoundPattern {
  const random = seededRandom(seed)
  const pick = <Item>(items: readonly Item[]): Item =>
    items[Math.floor(random.uniform() * items.length)]!
  const terms: Terms = random.uniform() < 0.3 ? "UK" : "US"
  const yarn = pick(yarns)
  const hookMm = pick(yarn.hooksMm)
  const rounds = dressRounds(motif, terms, pick)
  const gauge = gaugeLine(yarn.weight, hookMm, terms, random)
  const title = `${pick(names)} ${1 + Math.floor(random.uniform() * 90)}`
  const fibre = pick(fibres)
  const hook = hooks.find(({ mm }) => mm === hookMm)!
  const letter = hook.usLetter ? `${hook.usLetter}-${hook.usNumber}` : hook.usNumber
  const front = [
    `Terms: ${terms}`,
    `Yarn: ${yarn.name} (weight ${yarn.weight}), ${fibre}`,
    pick([`Hook: ${hookMm} mm (US ${letter})`, `Hook: US ${letter} / ${hookMm} mm`]),
    gauge,
  ]
  const bare = `${front.join("\n")}\n\n${rounds.join("\n")}\n`
  const across = examinePattern(bare, { shape: "net", remedies: false }).result.laidOut?.acrossMm
  if (across)
    front.push(
      `Finished size: ${((across * (0.95 + 0.1 * random.uniform())) / 10).toFixed(1)} cm across`,
    )
  const list = abbreviationList(rounds, terms, pick)
  const ending = pick(["Fasten off and weave in ends.", "Fasten off. Weave in the ends."])
  const head = pick([`# ${title}`, title])
  return {
    id: `${id} ${seed}`,
    terms,
    text: `${[head, "", ...front, "", list, "", ...rounds, ending].join("\n")}\n`,
  }
}

type Pick = <Item>(items: readonly Item[]) => Item

function dressRounds(motif: Motif, terms: Terms, pick: Pick): string[] {
  const label = pick(["Rnd", "Round"])
  const total = pick([
    (inner: string) => `(${inner})`,
    (inner: string) => `[${inner}]`,
    (inner: string) => `– ${inner}`,
  ])
  const joinTo = pick(["top", "chain"])
  const { title: _, ...untitled } = motif
  const lines = writePattern(untitled, terms)
    .split("\n")
    .filter((line) => /^(?:Rnd|Row) \d/.test(line))
  return lines.map((line, index) =>
    line
      .replace(/^Rnd/, label)
      .replace(
        /; join\. /,
        `; join with ${terms === "US" ? "sl st" : "ss"} ${joinPlace(motif.rounds[index]!, joinTo)}. `,
      )
      .replace(/\(([^()]*)\)$/, (_, inner: string) => total(inner)),
  )
}

/** Where a round is joined: the top of what its starting chain stands for. */
function joinPlace({ startChain, elements }: Round, way: string): string {
  const first = elements[0]
  if (!startChain?.counts || first?.type !== "stitch" || !first.madeOfChains || first.kind.gathered)
    return "in first st"
  const top = first.madeOfChains
  if (way === "top" && top === startChain.chains) return `in top of beg ch-${top}`
  return `in ${top === 2 ? "2nd" : top === 3 ? "3rd" : `${top}th`} ch of beg ch-${startChain.chains}`
}

/** What the yarn usually gives, give or take a maker's hand. */
function gaugeLine(weight: number, hookMm: number, terms: Terms, random: RandomSource): string {
  const gauge = gaugeFrom({ swatches: [], yarnWeight: yarnWeights[weight]!.weight, hookMm })
  const dc = { basic: "dc" } as const
  const { widthMm, heightMm } = sizeOf(dc, gauge, { turned: true })
  const hand = Math.exp(0.06 * random.normal())
  const count = (mm: number) => Math.max(1, Math.round((100 * hand) / mm))
  const word = terms === "US" ? "Gauge" : "Tension"
  return `${word}: ${count(widthMm)} ${kindName(dc, terms)} x ${count(heightMm)} rows = 10 cm`
}

function abbreviationList(rounds: readonly string[], terms: Terms, pick: Pick): string {
  const used = new Map(
    abbreviationsIn(rounds.join("\n"), terms).map(({ key, long }) => [key, long]),
  )
  const entries = [...used]
  return pick([
    () => `Abbreviations: ${entries.map(([key, long]) => `${key} = ${long}`).join(", ")}`,
    () => `Abbreviations\n${entries.map(([key, long]) => `${key} - ${long}`).join("\n")}`,
    () => `## Abbreviations\n${entries.map(([key, long]) => `- ${key}: ${long}`).join("\n")}`,
    () => `Abbreviations: ${entries.map(([key, long]) => `${long} (${key})`).join("; ")}`,
  ])()
}
