// Evidence cases as pattern texts: the facts gathered from public sources, written as one pattern
// each in the project's plain style, with the headings the case knows.

import { readFileSync } from "node:fs"
import { readThreadSize } from "@roundwright/stitches"

export interface Source {
  readonly title: string
  readonly by?: string
  readonly url?: string
}

export interface EvidenceCase {
  readonly id: string
  readonly source: Source
  readonly yarn?: { readonly cyc?: number; readonly name?: string }
  readonly hook_mm?: number
  /** Diameter of the bought ring round 1 is worked over. */
  readonly ring_cm?: number
  readonly gauge?: {
    readonly stitch: string
    readonly per_10cm_sts?: number
    readonly per_10cm_rows?: number
  }
  readonly shape: string
  readonly stitch?: string
  readonly counts?: readonly number[]
  readonly rounds: readonly { readonly n: number; readonly text: string }[]
  readonly measured?: {
    readonly what: "side" | "diameter" | "across flats" | "corner to corner"
    readonly cm: readonly number[]
    readonly at_rounds: readonly number[]
  }
  readonly reported?: { readonly flatness: string; readonly remark?: string }
  readonly accept?: readonly string[]
  readonly note?: string
}

/** Cases of one data set beside this file. */
export function loadCases(
  name: "handbook-motifs" | "measured-motifs" | "flatness-outcomes",
): EvidenceCase[] {
  const path = new URL(`./${name}.json`, import.meta.url)
  const data = JSON.parse(readFileSync(path, "utf8"))
  return Array.isArray(data) ? data : data.cases
}

/** The case as a maker would hand it over: headings, then its rounds. */
export function caseText(evidence: EvidenceCase, rounds = evidence.rounds): string {
  const lines = [...headings(evidence), "", ...rounds.map((round) => round.text)]
  return `${lines.join("\n")}\n`
}

/** The same headings over plain rounds with the case's counts, for cases whose text is only a rule. */
export function countsText(evidence: EvidenceCase): string {
  const stitch = evidence.stitch ?? "sc"
  const turn = evidence.rounds.some((round) => /(^|[^t] )turn\b/.test(round.text)) ? "; turn" : ""
  const rounds = (evidence.counts ?? []).map((count, index) => {
    const below = evidence.counts![index - 1]
    const work =
      below === undefined
        ? `${count} ${stitch} in magic ring`
        : `${count} ${stitch} evenly, increasing ${count - below}`
    return `Rnd ${index + 1}: ${work}${turn}. (${count} ${stitch})`
  })
  return `${[...headings(evidence), "", ...rounds].join("\n")}\n`
}

function headings(evidence: EvidenceCase): string[] {
  const lines = [`# ${evidence.id}`, "Terms: US"]
  const { cyc, name } = evidence.yarn ?? {}
  const thread = name === undefined ? undefined : readThreadSize(name)
  const yarn = [
    ...(cyc === undefined ? [] : [`weight ${cyc}`]),
    ...(thread === undefined ? [] : [`size ${thread} crochet cotton`]),
    // Without a weight the yarn's own name may tell it ("rug yarn").
    ...(cyc === undefined && thread === undefined && name !== undefined ? [name] : []),
  ]
  if (yarn.length > 0) lines.push(`Yarn: ${yarn.join(", ")}`)
  if (evidence.ring_cm !== undefined) lines.push(`Materials: ${evidence.ring_cm} cm plastic ring`)
  if (evidence.hook_mm !== undefined) lines.push(`Hook: ${evidence.hook_mm} mm`)
  const gauge = evidence.gauge
  if (gauge?.per_10cm_sts && gauge.per_10cm_rows)
    lines.push(`Gauge: ${gauge.per_10cm_sts} ${gauge.stitch} x ${gauge.per_10cm_rows} rows = 10 cm`)
  else if (gauge?.per_10cm_sts) lines.push(`Gauge: ${gauge.per_10cm_sts} ${gauge.stitch} = 10 cm`)
  return lines
}
