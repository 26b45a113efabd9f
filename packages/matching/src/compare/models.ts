// The ways in which two rows of figures can part, each fitted to the differences by least squares from every round on:
// a ratio (all of it larger alike), an offset (a start that differs, the rest alike), a step (one round that differs, the
// rest alike), a growth (from a round on each round adds more). The one that leaves least unexplained is told.

export type PartKind = "ratio" | "offset" | "step"

export interface Parting {
  readonly kind: PartKind
  /** Index of the first round that differs. */
  readonly from: number
  /** b over a for a ratio; b less a for an offset or a step. */
  readonly amount: number
  /** Whether from that round on only what is added differs by the ratio (sizes), not the whole figure. */
  readonly ofGrowth: boolean
  /** Root mean square of what is left, in the unit of the figures. */
  readonly left: number
}

/**
 * How b parts from a; null where they do not within the error.
 * @param a @param b figures of the same rounds, from the first on
 * @param noise standard deviation of one figure
 */
export function partingOf(
  a: readonly number[],
  b: readonly number[],
  noise: number,
): Parting | null {
  const n = a.length
  const differences = a.map((own, i) => b[i]! - own)
  const none = rms(differences)
  if (Math.max(...differences.map(Math.abs)) <= 2 * noise && none <= noise * 1.5) return null
  const found: Parting[] = []
  for (let from = 0; from < n; from += 1) {
    const tail = differences.slice(from)
    const step = mean(tail)
    found.push({
      kind: from === 0 ? "offset" : "step",
      from,
      amount: step,
      ofGrowth: false,
      left: rms(differences.map((d, i) => (i < from ? d : d - step))),
    })
    const [own, other] = [a.slice(from), b.slice(from)]
    const ratio = sum(own.map((x, i) => x * other[i]!)) / sum(own.map((x) => x * x))
    found.push({
      kind: "ratio",
      from,
      amount: ratio,
      ofGrowth: false,
      left: rms(differences.map((d, i) => (i < from ? d : b[i]! - ratio * a[i]!))),
    })
    // A single round that grew differently is a step; a ratio of growth needs two.
    if (from > 0 && from < n - 1) {
      const [ga, gb] = [own.map((x) => x - a[from - 1]!), other.map((x) => x - b[from - 1]!)]
      const growth = sum(ga.map((x, i) => x * gb[i]!)) / sum(ga.map((x) => x * x))
      found.push({
        kind: "ratio",
        from,
        amount: growth,
        ofGrowth: true,
        left: rms([...differences.slice(0, from), ...gb.map((x, i) => x - growth * ga[i]!)]),
      })
    }
  }
  // What explains as well within a third of the noise is preferred where it is simpler: a ratio of all, an offset, a step.
  const least = Math.min(...found.map(({ left }) => left))
  const good = found.filter(({ left }) => left <= least + noise / 3 + 1e-12)
  return good.sort((p, q) => simplicity(p) - simplicity(q) || p.left - q.left)[0]!
}

function simplicity({ kind, from, ofGrowth }: Parting): number {
  if (from === 0) return kind === "ratio" ? 0 : 1
  return kind === "step" ? 2 : ofGrowth ? 3 : 4
}

function sum(values: readonly number[]): number {
  return values.reduce((all, one) => all + one, 0)
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : sum(values) / values.length
}

function rms(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((one) => one * one)))
}
