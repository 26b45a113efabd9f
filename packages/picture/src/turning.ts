// The centre by turning the picture into itself: turned by 360/n degrees it matches itself where it is
// shifted so that the centre stays put. All shifts are tried at once by a normalised cross-correlation
// through the Fourier transform, for several n, and each shift stands for one centre.
// Source: D. Padfield, "Masked object registration in the Fourier domain", IEEE Trans. Image Proc. 21 (2012).

import { climbTo } from "./climb-to.ts"
import { transformField } from "./fourier.ts"
import { brightnessAt, type GreyPicture, type Point, shrink } from "./grey.ts"

export interface TurnedCentre extends Point {
  /** Correlation of the picture with itself turned, times the root of the share that overlaps. */
  readonly score: number
  /** Turns that matched best. */
  readonly turns: number
}

const turnsTried = [3, 4, 5, 6, 7, 8, 9, 11, 12] as const
/** Pixels of the shrunk picture, and the field it is padded to. */
const [side, field] = [128, 256]
/** A centre that a second turn also finds is likelier: several turns leave the same piece as it is. */
const secondShare = 0.5
/** Overlaps below this share of the picture match by chance. */
const leastOverlap = 0.2

/** Centres from the likeliest down, no two within 4 % of the picture. `picture` is 0 outside the piece. */
export function centresByTurning(picture: GreyPicture, most = 3): TurnedCentre[] {
  const { picture: small, scale } = shrink(picture, side)
  const { width, height } = small
  const own = fieldsOf(small, 0)
  const maps = turnsTried.map((turns) => centreMap(small, own, turns))
  const total = new Float64Array(width * height)
  const best = new Int32Array(width * height)
  for (let i = 0; i < total.length; i++) {
    let [first, second] = [-1, -1]
    maps.forEach((map, m) => {
      if (map[i]! > first) {
        second = first
        first = map[i]!
        best[i] = m
      } else if (map[i]! > second) second = map[i]!
    })
    total[i] = first + secondShare * second
  }
  const found: TurnedCentre[] = []
  const apart = 0.04 * Math.max(width, height)
  while (found.length < most) {
    let at = -1
    for (let i = 0; i < total.length; i++) if (at < 0 || total[i]! > total[at]!) at = i
    if (at < 0 || !(total[at]! > 0)) break
    const [x, y] = [at % width, Math.floor(at / width)]
    found.push({
      x: (x + 0.5) / scale - 0.5,
      y: (y + 0.5) / scale - 0.5,
      score: maps[best[at]!]![at]!,
      turns: turnsTried[best[at]!]!,
    })
    for (let i = 0; i < total.length; i++)
      if (Math.hypot((i % width) - x, Math.floor(i / width) - y) <= apart) total[i] = -1
  }
  return found
}

/** Score of each pixel as the centre of a turn by 360 / turns. */
function centreMap(small: GreyPicture, own: Fields, turns: number): Float64Array {
  const { width, height } = small
  const angle = (2 * Math.PI) / turns
  const scores = correlate(own, fieldsOf(small, angle), width * height)
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2]
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const map = new Float64Array(width * height)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      // The shift that keeps (x, y) in place: (1 - turn)(p - middle).
      const [px, py] = [x - cx, y - cy]
      map[y * width + x] = at(scores, px - (c * px - s * py), py - (s * px + c * py))
    }
  return map
}

function at(scores: Float64Array, dx: number, dy: number): number {
  const [i, j] = [Math.floor(dx), Math.floor(dy)]
  const [u, v] = [dx - i, dy - j]
  const get = (a: number, b: number) =>
    scores[(((b % field) + field) % field) * field + (((a % field) + field) % field)]!
  return (
    (get(i, j) * (1 - u) + get(i + 1, j) * u) * (1 - v) +
    (get(i, j + 1) * (1 - u) + get(i + 1, j + 1) * u) * v
  )
}

/** Steps of the refining, pixels of the picture at the size below. */
const refiningSteps = [4, 2, 1, 0.5] as const
const refiningSide = 320

/** Moves a centre to where the picture turned about it matches itself best. */
export function refineByTurning(picture: GreyPicture, from: TurnedCentre): TurnedCentre {
  const { picture: small, scale } = shrink(picture, refiningSide)
  const start = { x: (from.x + 0.5) * scale - 0.5, y: (from.y + 0.5) * scale - 0.5 }
  const { point } = climbTo(start, refiningSteps, (p) => matchAbout(small, p, from.turns))
  return { ...from, x: (point.x + 0.5) / scale - 0.5, y: (point.y + 0.5) / scale - 0.5 }
}

/** Correlation of the picture with itself turned about a point, times the root of the overlap. */
function matchAbout(small: GreyPicture, about: Point, turns: number): number {
  const [c, s] = [Math.cos((2 * Math.PI) / turns), Math.sin((2 * Math.PI) / turns)]
  const { width, height, values } = small
  let [n, sf, sg, ff, gg, fg] = [0, 0, 0, 0, 0, 0]
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [dx, dy] = [x - about.x, y - about.y]
      const [tx, ty] = [about.x + c * dx + s * dy, about.y - s * dx + c * dy]
      if (tx < 0 || ty < 0 || tx > width - 1 || ty > height - 1) continue
      const f = values[y * width + x]!
      const g = brightnessAt(small, tx, ty)
      n += 1
      sf += f
      sg += g
      ff += f * f
      gg += g * g
      fg += f * g
    }
  const spread = (ff - (sf * sf) / n) * (gg - (sg * sg) / n)
  if (!(n > leastOverlap * width * height) || !(spread > 1e-12)) return -1
  return ((fg - (sf * sg) / n) / Math.sqrt(spread)) * Math.sqrt(n / (width * height))
}

interface Fields {
  /** Transforms of the values, of the mask, and of the squared values. */
  readonly values: Float64Array
  readonly mask: Float64Array
  readonly squares: Float64Array
}

/** The picture turned by `angle` about its middle; the mask is 1 where the picture has values. */
function fieldsOf(small: GreyPicture, angle: number): Fields {
  const { width, height } = small
  const make = () => new Float64Array(2 * field * field)
  const [values, mask, squares] = [make(), make(), make()]
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2]
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [px, py] = [x - cx, y - cy]
      const [fx, fy] = [c * px + s * py + cx, -s * px + c * py + cy]
      if (fx < -0.5 || fy < -0.5 || fx > width - 0.5 || fy > height - 0.5) continue
      const value = brightnessAt(small, fx, fy)
      const i = 2 * (y * field + x)
      values[i] = value
      mask[i] = 1
      squares[i] = value * value
    }
  for (const one of [values, mask, squares]) transformField(one, field, false)
  return { values, mask, squares }
}

function correlate(f: Fields, g: Fields, pixels: number): Float64Array {
  const product = (a: Float64Array, b: Float64Array) => {
    const out = new Float64Array(a.length)
    for (let i = 0; i < a.length; i += 2) {
      out[i] = a[i]! * b[i]! + a[i + 1]! * b[i + 1]!
      out[i + 1] = a[i + 1]! * b[i]! - a[i]! * b[i + 1]!
    }
    return out
  }
  // Two real results come back from one inverse transform: one as its real part, one as its imaginary part.
  const pair = (a: Float64Array, b: Float64Array) => {
    const out = new Float64Array(a.length)
    for (let i = 0; i < a.length; i += 2) {
      out[i] = a[i]! - b[i + 1]!
      out[i + 1] = a[i + 1]! + b[i]!
    }
    transformField(out, field, true)
    return out
  }
  const both = pair(product(f.values, g.values), product(f.mask, g.mask))
  const sums = pair(product(f.values, g.mask), product(f.mask, g.values))
  const squares = pair(product(f.squares, g.mask), product(f.mask, g.squares))
  const scores = new Float64Array(field * field)
  for (let i = 0; i < scores.length; i++) {
    const n = both[2 * i + 1]!
    if (n < leastOverlap * pixels) continue
    const [sf, sg] = [sums[2 * i]!, sums[2 * i + 1]!]
    const spread = (squares[2 * i]! - (sf * sf) / n) * (squares[2 * i + 1]! - (sg * sg) / n)
    if (!(spread > 1e-12)) continue
    const score = (both[2 * i]! - (sf * sg) / n) / Math.sqrt(spread)
    scores[i] = Math.max(-1, Math.min(1, score)) * Math.sqrt(Math.min(1, n / pixels))
  }
  return scores
}
