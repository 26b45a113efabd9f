// Motifs of our own drawn from a seed: rounds of several kinds whose counts and radii are known, worked
// as unevenly as hands work, then photographed: turned, tilted, badly lit, blurred and noisy.

import { type RandomSource, seededRandom } from "@roundwright/numerics"
import type { GreyPicture, Point } from "@roundwright/picture"
import { drawStrokes, type Stroke } from "./strokes.ts"

/** Kinds that constants of the measuring were chosen on, and kinds they were not. */
export const tunedKinds = ["posts", "spokes", "arches", "fans"] as const
export const untunedKinds = ["petals", "puffs", "pairs", "crossed"] as const
export type RoundKind = (typeof tunedKinds)[number] | (typeof untunedKinds)[number]

export interface DrawnRound {
  readonly kind: RoundKind
  readonly count: number
  /** Radii of base and top, pixels before the view; to the middle of a side where there are corners. */
  readonly innerPx: number
  readonly outerPx: number
  /** No closed line at its top. */
  readonly open: boolean
}

export interface DrawnMotif {
  readonly picture: GreyPicture
  readonly rounds: readonly DrawnRound[]
  readonly corners: number
  readonly centrePx: Point
  /** Reach of the last round, to the middle of a side and to a corner. */
  readonly sidePx: number
  readonly cornerPx: number
  /** Where the four corners of a square frame of twice the side about the piece come to lie. */
  readonly framePx: readonly Point[]
}

export interface DrawOptions {
  readonly kinds: readonly RoundKind[]
  readonly tiltDeg: readonly [number, number]
  /** Picture side. */
  readonly side?: number
  /** Share of motifs that are squared. */
  readonly squared?: number
}

const repeatsTried = [6, 8, 8, 9, 10, 12, 12, 14, 16, 16, 18, 20] as const

export function drawMotif(seed: number, options: DrawOptions): DrawnMotif {
  const random = seededRandom(seed)
  const pick = <T>(from: readonly T[]) => from[Math.floor(random.uniform() * from.length)]!
  const between = (low: number, high: number) => low + (high - low) * random.uniform()
  const side = options.side ?? 480
  const reach = side * between(0.34, 0.42)
  const repeats = pick(repeatsTried)
  const squared = random.uniform() < (options.squared ?? 0.3)
  const corners = squared ? pick([4, 4, 4, 6, 3]) : 0
  const rounds: (DrawnRound & { bend: number; bendBelow: number })[] = []
  let radius = reach * between(0.08, 0.13)
  let bend = 0
  const cornerRounds = squared ? pick([1, 2]) : 0
  const limit = reach * (corners === 3 ? 0.6 : corners === 4 ? 0.8 : corners === 6 ? 0.95 : 1)
  while (radius < limit * 0.94 && rounds.length < 8) {
    const kind: RoundKind = pick(options.kinds)
    const deep = reach * depths[kind] * between(0.85, 1.2)
    const left = limit - radius
    const outer = left < deep * 1.5 ? limit : radius + deep
    const last = outer >= limit - 1e-9
    const middle = (radius + outer) / 2
    const fits = Math.floor((2 * Math.PI * middle) / (spacings[kind] * side))
    const count =
      kind === "posts"
        ? repeats * Math.max(1, Math.round(fits / repeats))
        : repeats * Math.max(1, Math.min(3, Math.floor(fits / repeats)))
    const bendBelow = bend
    if (squared && last) bend = 1
    else if (squared && cornerRounds === 2 && outer > limit * 0.72) bend = 0.5
    rounds.push({
      kind,
      count,
      innerPx: radius,
      outerPx: outer,
      open: openKinds.has(kind),
      bend,
      bendBelow,
    })
    radius = outer
  }
  const turn = between(0, 2 * Math.PI)
  const view = tiltedView(random, options.tiltDeg, side, between, turn)
  const strokes = rounds.flatMap((round, i) =>
    roundStrokes(round, corners, random, side, i === 0).map((stroke) => ({
      ...stroke,
      points: stroke.points.map(view),
    })),
  )
  const lastRound = rounds.at(-1)!
  const corner = corners > 0 ? lastRound.outerPx / Math.cos(Math.PI / corners) : lastRound.outerPx
  const picture = photograph(drawStrokes(side, side, strokes), random, between)
  const frame = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ].map(([x, y]) => view({ x: x! * lastRound.outerPx, y: y! * lastRound.outerPx }))
  return {
    picture,
    rounds,
    corners,
    centrePx: view({ x: 0, y: 0 }),
    sidePx: lastRound.outerPx,
    cornerPx: corner,
    framePx: frame,
  }
}

/** Depth of a round as a share of the piece's reach, and least spacing of its repeats as a share of the picture. */
const depths: Record<RoundKind, number> = {
  posts: 0.15,
  spokes: 0.19,
  arches: 0.14,
  fans: 0.17,
  petals: 0.22,
  puffs: 0.15,
  pairs: 0.16,
  crossed: 0.17,
}
const spacings: Record<RoundKind, number> = {
  posts: 0.021,
  spokes: 0.036,
  arches: 0.045,
  fans: 0.062,
  petals: 0.07,
  puffs: 0.042,
  pairs: 0.045,
  crossed: 0.045,
}
const openKinds = new Set<RoundKind>(["arches", "fans", "petals"])

function roundStrokes(
  round: DrawnRound & { bend: number; bendBelow: number },
  corners: number,
  random: RandomSource,
  side: number,
  first: boolean,
): Stroke[] {
  const thread = 0.0095 * side
  const { count, innerPx: inner, outerPx: outer, kind } = round
  const spacing = (2 * Math.PI) / count
  const off = { x: 0.008 * inner * random.normal(), y: 0.008 * inner * random.normal() }
  const waves = [2, 3, 5].map((k) => ({
    k,
    size: 0.009 * random.normal(),
    phase: 6.3 * random.uniform(),
  }))
  const contour = (bend: number, angle: number) => {
    if (corners === 0 || bend === 0) return 1
    const sector = (2 * Math.PI) / corners
    const from = angle - sector * Math.round(angle / sector)
    return 1 + bend * (1 / Math.cos(from) - 1)
  }
  // Stitches of a squared round stand evenly along its edge, not in angle.
  const even = evenAlong((angle) => contour(round.bend, angle))
  const start = random.uniform() * spacing
  const at = (angle: number, height: number): Point => {
    const wave = waves.reduce((sum, w) => sum + w.size * Math.cos(w.k * angle + w.phase), 1)
    const low = inner * contour(round.bendBelow, angle)
    const high = outer * contour(round.bend, angle)
    const r = (low + (high - low) * height) * wave
    return { x: r * Math.cos(angle) + off.x, y: r * Math.sin(angle) + off.y }
  }
  const uneven = Array.from({ length: count }, () => 0.08 * spacing * random.normal())
  const tall = Array.from({ length: count }, () => 1 + 0.04 * random.normal())
  // Where a round was joined its stitches stand wider: half a place is lost to the others.
  const joinGap = random.uniform() < 0.25 ? 0.5 * spacing : 0
  const angleOf = (i: number) => {
    const whole = ((i % count) + count) % count
    const turns = Math.floor(i / count)
    const base = start + (whole * spacing * (2 * Math.PI - joinGap)) / (2 * Math.PI)
    return even(base) + uneven[Math.floor(whole)]! + 2 * Math.PI * turns
  }
  const line = (points: Point[], width = thread): Stroke => ({
    points,
    widthPx: width,
    plyPx: 2.6 * thread,
  })
  const post = (from: number, low: number, to: number, high: number, width = thread) =>
    line([at(from, low), at((from + to) / 2, (low + high) / 2), at(to, high)], width)
  const closedTop = (height: number, width = 0.9 * thread): Stroke[] => {
    const chains = Math.max(24, Math.round((2 * Math.PI * outer) / (1.9 * thread)))
    return Array.from({ length: chains }, (_, i) => {
      const from = (2 * Math.PI * i) / chains
      const to = (2 * Math.PI * (i + 1.15)) / chains
      return line([at(from, height - 0.03), at(to, height + 0.03)], width)
    })
  }
  const out: Stroke[] = first
    ? Array.from({ length: 40 }, (_, i) =>
        line([at((2 * Math.PI * i) / 40, 0), at((2 * Math.PI * (i + 1.2)) / 40, 0)]),
      )
    : []
  for (let i = 0; i < count; i++) {
    const [here, next] = [angleOf(i), angleOf(i + 1)]
    const gap = next - here
    const top = tall[i]!
    const lean = 0.05 * gap * random.normal()
    if (kind === "posts") out.push(post(here, 0, here + lean, Math.min(1, top)))
    else if (kind === "spokes") out.push(post(here, 0, here + lean, 1, 1.2 * thread))
    else if (kind === "arches")
      out.push(
        line(
          Array.from({ length: 13 }, (_, k) =>
            at(here + (gap * k) / 12, top * Math.sin((Math.PI * k) / 12) ** 0.7),
          ),
        ),
      )
    else if (kind === "fans") {
      const spread = [-0.36, -0.18, 0, 0.18, 0.36]
      for (const s of spread) out.push(post(here, 0, here + s * gap, top * (1 - 1.1 * s * s)))
      out.push(
        line(
          Array.from({ length: 9 }, (_, k) => {
            const s = -0.4 + 0.1 * k
            return at(here + s * gap, top * (1 - 1.1 * s * s))
          }),
        ),
      )
    } else if (kind === "petals") {
      for (const s of [-0.42, -0.28, -0.14, 0, 0.14, 0.28, 0.42])
        out.push(
          line(
            Array.from({ length: 7 }, (_, k) => {
              const h = k / 6
              return at(
                here + s * gap * Math.sin(Math.PI * (0.18 + 0.72 * h)),
                top * h * (1 - 0.9 * s * s),
              )
            }),
          ),
        )
    } else if (kind === "puffs") {
      for (const s of [-0.22, -0.11, 0, 0.11, 0.22])
        out.push(line([at(here, 0.02), at(here + s * gap, 0.5), at(here, 0.98)], 1.2 * thread))
    } else if (kind === "pairs") {
      out.push(post(here, 0, here - 0.22 * gap, 1), post(here, 0, here + 0.22 * gap, 1))
    } else {
      out.push(
        post(here - 0.3 * gap, 0, here + 0.3 * gap, 1),
        post(here + 0.3 * gap, 0, here - 0.3 * gap, 1),
      )
    }
  }
  if (!round.open) out.push(...closedTop(1))
  return out
}

/** Angle from even parameter 0 to 2 pi by length along a contour. */
function evenAlong(contour: (angle: number) => number): (even: number) => number {
  const n = 720
  const lengths = [0]
  const place = (i: number) => {
    const angle = (2 * Math.PI * i) / n
    return [contour(angle) * Math.cos(angle), contour(angle) * Math.sin(angle)] as const
  }
  for (let i = 1; i <= n; i++) {
    const [a, b] = [place(i - 1), place(i)]
    lengths.push(lengths[i - 1]! + Math.hypot(b[0] - a[0], b[1] - a[1]))
  }
  return (even) => {
    const wanted = ((even / (2 * Math.PI)) % 1) * lengths[n]!
    const i = Math.max(0, lengths.findIndex((length) => length > wanted) - 1)
    const share = (wanted - lengths[i]!) / (lengths[i + 1]! - lengths[i]!)
    return (2 * Math.PI * (i + share)) / n
  }
}

function tiltedView(
  random: RandomSource,
  tilt: readonly [number, number],
  side: number,
  between: (low: number, high: number) => number,
  turn: number,
): (point: Point) => Point {
  const angle = (between(tilt[0], tilt[1]) * Math.PI) / 180
  const axis = between(0, 2 * Math.PI)
  const distance = 3.2 * side
  const [ox, oy] = [0.03 * side * random.normal(), 0.03 * side * random.normal()].map((v) =>
    Math.max(-0.05 * side, Math.min(0.05 * side, v)),
  ) as [number, number]
  return ({ x, y }) => {
    const [px, py] = [
      x * Math.cos(turn) - y * Math.sin(turn),
      x * Math.sin(turn) + y * Math.cos(turn),
    ]
    const u = px * Math.cos(axis) + py * Math.sin(axis)
    const v = -px * Math.sin(axis) + py * Math.cos(axis)
    const near = distance / (distance + v * Math.sin(angle))
    const [fu, fv] = [u * near, v * Math.cos(angle) * near]
    return {
      x: side / 2 + ox + fu * Math.cos(axis) - fv * Math.sin(axis),
      y: side / 2 + oy + fu * Math.sin(axis) + fv * Math.cos(axis),
    }
  }
}

/** Light or dark thread on a ground, light that falls off, a soft lens, grain. */
function photograph(
  thread: GreyPicture,
  random: RandomSource,
  between: (low: number, high: number) => number,
): GreyPicture {
  const { width, height } = thread
  const light = random.uniform() < 0.5
  const [ground, yarn] = light
    ? [between(0.1, 0.35), between(0.7, 0.95)]
    : [between(0.75, 0.95), between(0.1, 0.35)]
  const fall = between(0.4, 1)
  const from = between(0, 2 * Math.PI)
  const noise = between(0.01, 0.06)
  // Cloth under the piece: cloudy and woven.
  const clouds = Array.from({ length: 5 }, () => ({
    x: (1 + 5 * random.uniform()) * 2 * Math.PI,
    y: (1 + 5 * random.uniform()) * 2 * Math.PI,
    phase: 6.3 * random.uniform(),
    size: 0.02 * random.uniform(),
  }))
  const weave = 0.02 * random.uniform()
  const soft = softened(thread, between(0.5, 1.6))
  const values = soft.map((cover, i) => {
    const [x, y] = [(i % width) / width - 0.5, Math.floor(i / width) / height - 0.5]
    const along = 0.5 + (x * Math.cos(from) + y * Math.sin(from)) / Math.SQRT2
    const lit = 1 - (1 - fall) * along
    const cloth = clouds.reduce(
      (sum, c) => sum + c.size * Math.cos(c.x * x + c.y * y + c.phase),
      weave * Math.cos(i % width) * Math.cos(Math.floor(i / width)),
    )
    const under = ground + cloth
    const value = (under + (yarn - under) * cover) * lit + noise * random.normal()
    return Math.max(0, Math.min(1, value))
  })
  return { width, height, values }
}

/** Blur by a bell curve of a given width. */
export function softened({ width, height, values }: GreyPicture, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma)
  const bell = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  )
  const sum = bell.reduce((a, b) => a + b, 0)
  const pass = (from: Float32Array, step: number, length: number, place: (i: number) => number) =>
    from.map((_, i) => {
      const at = place(i)
      let total = 0
      for (let k = -reach; k <= reach; k++) {
        const to = Math.max(0, Math.min(length - 1, at + k))
        total += (bell[k + reach]! / sum) * from[i + (to - at) * step]!
      }
      return total
    })
  const across = pass(values, 1, width, (i) => i % width)
  return pass(across, width, height, (i) => Math.floor(i / width))
}
