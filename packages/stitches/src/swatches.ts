// Brings several swatches of one stitch together: widths from one, rows from another; and says so
// when two of them disagree instead of averaging in silence.

import type { Swatch } from "./gauge.ts"
import { sameKind } from "./kind.ts"
import { kindName } from "./kind-names.ts"
import type { StitchKind } from "./kinds.ts"

export interface MeasuredKind {
  readonly kind: StitchKind
  readonly widthMm?: number
  readonly heightMm?: number
  readonly worked?: "rows" | "rounds"
  /** Half the relative difference between disagreeing swatches; 0 when they agree or there is one. */
  readonly disagreement: number
  readonly notes: readonly string[]
}

/** Swatches that differ by more than this share are told of: twice what one hand varies (4 %). */
const tolerated = 0.08

/** One record per kind and manner of working, in order of first mention. */
export function gatherSwatches(swatches: readonly Swatch[]): MeasuredKind[] {
  const groups: Swatch[][] = []
  for (const swatch of swatches) {
    if (swatch.widthMm === undefined && swatch.heightMm === undefined) continue
    const group = groups.find((other) => belongsTogether(other[0]!, swatch))
    if (group === undefined) groups.push([swatch])
    else group.push(swatch)
  }
  return groups.map(join)
}

/** A swatch that does not say how it was worked belongs with any. */
function belongsTogether(a: Swatch, b: Swatch): boolean {
  if (!sameKind(a.kind, b.kind)) return false
  return a.worked === undefined || b.worked === undefined || a.worked === b.worked
}

function join(group: readonly Swatch[]): MeasuredKind {
  const first = group[0]!
  const width = middle(group.map((swatch) => swatch.widthMm))
  const height = middle(group.map((swatch) => swatch.heightMm))
  const worked = group.find((swatch) => swatch.worked !== undefined)?.worked
  const notes: string[] = []
  for (const [what, size] of [
    ["width", width],
    ["height", height],
  ] as const) {
    if (size === undefined || 2 * size.disagreement <= tolerated) continue
    notes.push(
      `Swatches of ${kindName(first.kind)} disagree in ${what}, ${size.least.toFixed(1)} against ${size.most.toFixed(1)} mm; the middle is used and the answer is less sure.`,
    )
  }
  return {
    kind: first.kind,
    ...(width === undefined ? {} : { widthMm: width.value }),
    ...(height === undefined ? {} : { heightMm: height.value }),
    ...(worked === undefined ? {} : { worked }),
    disagreement: Math.hypot(width?.disagreement ?? 0, height?.disagreement ?? 0),
    notes,
  }
}

/** Geometric middle of what was measured, undefined when nothing was. */
function middle(sizes: readonly (number | undefined)[]) {
  const known = sizes.filter((size) => size !== undefined)
  if (known.length === 0) return undefined
  const least = Math.min(...known)
  const most = Math.max(...known)
  const value = known.length === 1 ? known[0]! : Math.sqrt(least * most)
  return { value, least, most, disagreement: Math.log(most / least) / 2 }
}
