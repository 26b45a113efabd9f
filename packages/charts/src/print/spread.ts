// Places along a repeat kept in order and apart: the nearest to where they are wanted, in the sense of least squares, that
// leave each gap (pool adjacent violators, Ayer et al. 1955, on the angles less the gaps before them).

/**
 * @param wanted angles in order of work, radians
 * @param gaps least distance from each to the next, the last to the first of the next repeat
 * @param turn one repeat; the gaps must not add up to more
 */
export function spread(wanted: readonly number[], gaps: readonly number[], turn: number): number[] {
  const n = wanted.length
  if (n === 0) return []
  if (n === 1) return [...wanted]
  const cut = widest(wanted, turn)
  const order = wanted.map((_, k) => (cut + k) % n)
  const unrolled = order.map((k) => wanted[k]! + (k < cut ? turn : 0))
  const before: number[] = []
  order.reduce((sum, k) => {
    before.push(sum)
    return sum + gaps[k]!
  }, 0)
  const total = gaps.reduce((sum, gap) => sum + gap, 0)
  const pooled = pool(unrolled.map((angle, at) => angle - before[at]!))
  // The last must leave its gap to the first of the next repeat: all lie within so much room.
  const room = Math.max(0, turn - total)
  const middle = pooled.reduce((sum, value) => sum + value, 0) / n
  const low = Math.min(middle, Math.max(pooled[0]!, middle - room / 2))
  const high = low + room
  const placed = pooled.map((value, at) => Math.min(high, Math.max(low, value)) + before[at]!)
  const out = new Array<number>(n)
  order.forEach((k, at) => {
    out[k] = placed[at]! - (k < cut ? turn : 0)
  })
  return out
}

/** The item behind the widest gap: where the repeat is cut open. */
function widest(wanted: readonly number[], turn: number): number {
  const n = wanted.length
  let [best, most] = [0, Number.NEGATIVE_INFINITY]
  for (let k = 0; k < n; k++) {
    const before = k === 0 ? wanted[n - 1]! - turn : wanted[k - 1]!
    const gap = wanted[k]! - before
    if (gap > most + 1e-9) [best, most] = [k, gap]
  }
  return best
}

function pool(values: readonly number[]): number[] {
  const blocks: { sum: number; count: number }[] = []
  for (const value of values) {
    let block = { sum: value, count: 1 }
    for (;;) {
      const last = blocks.at(-1)
      if (!last || last.sum / last.count <= block.sum / block.count) break
      blocks.pop()
      block = { sum: last.sum + block.sum, count: last.count + block.count }
    }
    blocks.push(block)
  }
  return blocks.flatMap(({ sum, count }) => new Array<number>(count).fill(sum / count))
}
