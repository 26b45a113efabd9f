// How fast the inverse is: candidate rounds bounded in a second, and one whole squaring of 36 stitches. Times depend
// on the machine and what else it does; they are printed, never asserted.

import {
  circleHalf,
  discEndingAt,
  halfOf,
  OutlineModel,
  paletteOf,
  squareCircle,
  usualStitches,
} from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"

export interface ShapingSpeed {
  readonly boundedPerSecond: number
  readonly squaringMs: number
  readonly candidates: number
}

const laidOut = 300_000

/** Time of the processor and not of the clock, so that other work on the machine counts less. */
function processorMs(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

export function measureShapingSpeed(): ShapingSpeed {
  const gauge = gaugeFrom({ swatches: [] })
  const palette = paletteOf(usualStitches, gauge)
  const shape = halfOf(9, true)
  const ones = Array.from({ length: shape.feet }, () => 1)
  const edge = circleHalf(
    shape,
    4,
    36 / (2 * Math.PI),
    ones,
    ones.map(() => 0),
  )
  const model = new OutlineModel(palette)
  const plans = Array.from({ length: 256 }, (_, i) => ({
    tops: [1, 1, 1, 1, 4],
    heights: [i % 4, (i >> 2) % 4, (i >> 4) % 4, (i >> 6) % 4, 3, 3],
    cornerChains: i % 3,
  }))
  const start = processorMs()
  for (let i = 0; i < laidOut; i++) model.lay(edge, plans[i % plans.length]!)
  const boundedPerSecond = (1000 * laidOut) / (processorMs() - start)
  const motif = discEndingAt({ basic: "dc" }, 36, gauge)
  const count = { bounded: 0 }
  const times = Array.from({ length: 3 }, () => {
    const from = processorMs()
    count.bounded = 0
    squareCircle(motif, gauge, { corners: 4, rounds: 2 }, count)
    return processorMs() - from
  })
  times.sort((a, b) => a - b)
  return { boundedPerSecond, squaringMs: times[1]!, candidates: count.bounded }
}
