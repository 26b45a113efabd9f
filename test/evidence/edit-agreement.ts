// How many planted faults the edit finds at their round, and how often it tells a sound pattern that something must be mended.

import { seededRandom } from "@roundwright/numerics"
import { type EditFinding, editPattern } from "@roundwright/publishing"
import { faultKinds } from "./edit-faults.ts"
import { type KnownMotif, knownMotifs, soundPattern } from "./edit-sound.ts"

export interface EditScore {
  readonly planted: number
  readonly found: number
  readonly byKind: readonly {
    readonly name: string
    readonly planted: number
    readonly found: number
  }[]
  readonly sound: number
  /** Findings of sound patterns that must be mended. */
  readonly falseMends: number
  readonly missed: readonly string[]
}

/** Motifs that may be looked at while building; the others are kept back. */
export function developed(motifs: readonly KnownMotif[]): KnownMotif[] {
  return motifs.filter((_, index) => index % 2 === 0)
}

export function keptBack(motifs: readonly KnownMotif[]): KnownMotif[] {
  return motifs.filter((_, index) => index % 2 === 1)
}

/**
 * Plants each kind of fault in so many patterns, a motif and a seed of its own for each, and edits them.
 * @param perKind patterns a kind is planted in
 */
export function scoreEdits(
  motifs: readonly KnownMotif[],
  firstSeed: number,
  perKind: number,
  kinds = faultKinds,
): EditScore {
  const sounds = motifs.map((motif, k) => soundPattern(motif, firstSeed + k))
  const before = sounds.map(({ text }) => editPattern(text).findings)
  const missed: string[] = []
  const byKind = kinds.map((kind) => {
    const kindIndex = faultKinds.indexOf(kind)
    let [planted, found] = [0, 0]
    for (let tried = 0; planted < perKind && tried < 2 * motifs.length; tried++) {
      const k = (tried + kindIndex) % motifs.length
      const fault = kind.plant(sounds[k]!, seededRandom(firstSeed + 1000 * kindIndex + tried))
      if (fault === null) continue
      planted += 1
      const fresh = editPattern(fault.text).findings.filter(
        (finding) => !isAmong(finding, before[k]!),
      )
      if (fresh.some(({ code, round }) => round === fault.round && fault.codes.includes(code)))
        found += 1
      else
        missed.push(
          `${kind.name}: ${sounds[k]!.id}, round ${fault.round}; told: ${fresh.map(({ severity, code, round }) => `${severity} ${code} ${round}`).join(", ")}`,
        )
    }
    return { name: kind.name, planted, found }
  })
  return {
    planted: byKind.reduce((sum, one) => sum + one.planted, 0),
    found: byKind.reduce((sum, one) => sum + one.found, 0),
    byKind,
    sound: sounds.length,
    falseMends: before.flat().filter(({ severity }) => severity === "must-mend").length,
    missed,
  }
}

function isAmong(finding: EditFinding, others: readonly EditFinding[]): boolean {
  return others.some(
    ({ code, round, message }) =>
      code === finding.code && round === finding.round && message === finding.message,
  )
}

export { knownMotifs }
