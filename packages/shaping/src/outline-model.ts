// The fast bound: one planned round over half a side, laid out over an edge that is held where it is.
//
// Tops are points, posts and pieces of edge springs of their rest lengths; posts resist leaning a
// little. Energies are those of the elastic net (stiffness x area x half the strain squared), so that
// the model's order of candidates is the net's, at a thousandth of its cost: a chain of points with
// one neighbour on either side is solved by block elimination, a few steps of Gauss and Newton.
// What it leaves out is that the edge below gives way; the laid-out shape of the best few settles that.

import { solveBlocks } from "./block-solver.ts"
import { type HalfEdge, type HalfFoot, squareToEdge } from "./half-edge.ts"
import type { Palette } from "./palette.ts"
import { type HalfPlan, shapeAfter } from "./plan.ts"

/** Longest half a side the model takes: 12 corners down to 3 over edges of some hundred stitches. */
export const mostTopsOfHalf = 256

/** Steps of Gauss and Newton; from the start below the energy has settled to a per mille in four. */
const steps = 4
/** Resistance to leaning as a share of the post's own, and of a chain that is pushed: as in the net. */
const leanShare = 0.15
const slackShare = 0.05
/** Points on a mirror line are held there by a spring this much stiffer than a post. */
const lineStiffness = 100

export interface ModelledRound {
  /** Mean of half the squared strains over the new fabric: 0 where everything has its length. */
  strainEnergy: number
  /** Edge at rest over edge as laid out: above 1 too full, below 1 too lean. */
  fullness: number
  /** Where the outline meets the middle of the side (mm from the centre), and the corner. */
  sideMm: number
  cornerMm: number
  /** Mean of the tops' and the corner tip's distance in the direction of the side. */
  lineMm: number
  /** Greatest departure from it, mm. */
  unevenMm: number
  /** How far the middle third lies outside the straight line through the corner tips, mm. */
  bowMm: number
}

/** Lays rounds out one after the other; keeps its working memory, so make one and use it often. */
export class OutlineModel {
  readonly #palette: Palette
  readonly #x = new Float64Array(mostTopsOfHalf)
  readonly #y = new Float64Array(mostTopsOfHalf)
  readonly #height = new Float64Array(mostTopsOfHalf)
  /** Length of the post at rest: its height, or longer where a corner is mitred. */
  readonly #rest = new Float64Array(mostTopsOfHalf)
  readonly #width = new Float64Array(mostTopsOfHalf)
  readonly #footX = new Float64Array(mostTopsOfHalf)
  readonly #footY = new Float64Array(mostTopsOfHalf)
  readonly #tx = new Float64Array(mostTopsOfHalf)
  readonly #ty = new Float64Array(mostTopsOfHalf)
  readonly #offset = new Float64Array(mostTopsOfHalf)
  readonly #share = new Float64Array(mostTopsOfHalf)
  /** Block rows: a, b, d of the symmetric 2x2 diagonal, right side, and the coupling to the next. */
  readonly #da = new Float64Array(mostTopsOfHalf)
  readonly #db = new Float64Array(mostTopsOfHalf)
  readonly #dd = new Float64Array(mostTopsOfHalf)
  readonly #gx = new Float64Array(mostTopsOfHalf)
  readonly #gy = new Float64Array(mostTopsOfHalf)
  readonly #oa = new Float64Array(mostTopsOfHalf)
  readonly #ob = new Float64Array(mostTopsOfHalf)
  readonly #od = new Float64Array(mostTopsOfHalf)
  #count = 0
  #midOnLine = false
  #cornerOnLine = false
  #tip = 0
  readonly result: ModelledRound = {
    strainEnergy: 0,
    fullness: 1,
    sideMm: 0,
    cornerMm: 0,
    lineMm: 0,
    unevenMm: 0,
    bowMm: 0,
  }

  constructor(palette: Palette) {
    this.#palette = palette
  }

  /** Fills `result`, which the next call overwrites. */
  lay(edge: HalfEdge, plan: HalfPlan): ModelledRound {
    this.#place(edge, plan)
    for (let step = 0; step < steps; step++) this.#improve(edge, plan)
    this.#measure(edge, plan)
    return this.result
  }

  /** The round laid out last, as the edge of the next. */
  edgeAfter(edge: HalfEdge, plan: HalfPlan): HalfEdge {
    const { half } = edge
    const [cos, sin] = [Math.cos(half), Math.sin(half)]
    const last = this.#count - 1
    const feet: HalfFoot[] = this.tops().map(({ x, y }) => ({
      x,
      y,
      nx: 1,
      ny: 0,
      chains: 0,
      spanMm: 0,
    }))
    if (plan.cornerChains > 0)
      feet.push({
        x: this.#tip * cos,
        y: this.#tip * sin,
        nx: cos,
        ny: sin,
        chains: plan.cornerChains,
        spanMm: Math.min(
          plan.cornerChains * this.#palette.chainMm,
          2 * Math.abs(this.#x[last]! * sin - this.#y[last]! * cos),
        ),
      })
    return squareToEdge({ shape: shapeAfter(edge.shape, plan), half, feet })
  }

  /** Tops of the round laid out last, from the middle out: x, y of each, mm. */
  tops(): { x: number; y: number }[] {
    return Array.from({ length: this.#count }, (_, j) => ({ x: this.#x[j]!, y: this.#y[j]! }))
  }

  #place(edge: HalfEdge, plan: HalfPlan): void {
    const { heightMm, widthMm, chainMm } = this.#palette
    const { feet, shape } = edge
    const last = feet.length - 1
    const tan = Math.tan(edge.half)
    let j = 0
    for (let i = 0; i <= last; i++) {
      const foot = feet[i]!
      const whole = plan.tops[i]!
      const mid = i === 0 && shape.midOn
      const corner = i === last && shape.cornerOn
      const own = mid || corner ? (whole + 1) >> 1 : whole
      const first = j
      let span = 0
      for (let k = 0; k < own; k++) {
        const kind = plan.heights[j]!
        this.#height[j] = heightMm[kind]!
        this.#width[j] = widthMm[kind]!
        this.#share[j] = 1
        span += widthMm[kind]!
        j++
      }
      if (own === 0) continue
      // A fan: tops side by side over one foot. On a mirror line only half of it is listed.
      let at = -span / 2
      if (mid) {
        at = 0
        if (whole % 2 === 1) {
          at = -this.#width[first]! / 2
          this.#share[first] = 0.5
        }
      }
      if (corner) {
        at = -span - (plan.cornerChains * chainMm) / 2
        if (whole % 2 === 1 && plan.cornerChains === 0) {
          at = -span + this.#width[j - 1]! / 2
          this.#share[j - 1] = 0.5
        }
      }
      for (let k = first; k < j; k++) {
        const width = this.#width[k]!
        const offset = at + width / 2
        at += width
        // Feet in a chain space spread along it in step with their tops.
        const full = whole > 1 ? whole - 1 : 1
        const rank = mid
          ? k - first + (whole % 2 === 1 ? 0 : 0.5)
          : corner
            ? -(j - 1 - k) - (whole % 2 === 1 ? 0 : 0.5)
            : k - first - (own - 1) / 2
        const spread = foot.chains > 0 ? (rank / full) * foot.spanMm * (1 - 1 / (full + 1)) : 0
        this.#rest[k] = this.#height[k]!
        if (corner && turnsCorner(whole, foot.chains, plan.cornerChains)) {
          // Rows square to both sides meet at the tip: a post there leans by as much as it stands off.
          const height = this.#height[k]!
          const lean = Math.min(height, Math.max(-height, height * tan - spread + offset))
          this.#rest[k] = Math.hypot(height, lean)
        }
        this.#tx[k] = -foot.ny
        this.#ty[k] = foot.nx
        this.#footX[k] = foot.x - foot.ny * spread
        this.#footY[k] = foot.y + foot.nx * spread
        this.#offset[k] = own > 1 || whole > 1 || corner ? offset - spread : 0
        this.#x[k] = this.#footX[k]! + foot.nx * this.#rest[k]! - foot.ny * this.#offset[k]!
        this.#y[k] = this.#footY[k]! + foot.ny * this.#rest[k]! + foot.nx * this.#offset[k]!
      }
    }
    this.#count = j
    this.#midOnLine = shape.midOn && plan.tops[0]! % 2 === 1
    this.#cornerOnLine = shape.cornerOn && plan.cornerChains === 0 && plan.tops[last]! % 2 === 1
  }

  #improve(edge: HalfEdge, plan: HalfPlan): void {
    const n = this.#count
    const [x, y, da, db, dd] = [this.#x, this.#y, this.#da, this.#db, this.#dd]
    const [gx, gy, oa, ob, od] = [this.#gx, this.#gy, this.#oa, this.#ob, this.#od]
    for (let j = 0; j < n; j++) {
      const height = this.#height[j]!
      const k = (this.#share[j]! * this.#width[j]!) / height
      const dx = x[j]! - this.#footX[j]!
      const dy = y[j]! - this.#footY[j]!
      const length = Math.sqrt(dx * dx + dy * dy) || 1e-9
      const [ux, uy] = [dx / length, dy / length]
      const off = length - this.#rest[j]!
      const across = off > 0 ? (k * off) / length : 0
      const [tx, ty] = [this.#tx[j]!, this.#ty[j]!]
      const lean = dx * tx + dy * ty - this.#offset[j]!
      const l = leanShare * k
      da[j] = (k - across) * ux * ux + across + l * tx * tx
      db[j] = (k - across) * ux * uy + l * tx * ty
      dd[j] = (k - across) * uy * uy + across + l * ty * ty
      gx[j] = k * off * ux + l * lean * tx
      gy[j] = k * off * uy + l * lean * ty
    }
    for (let j = 0; j + 1 < n; j++) {
      const rest = (this.#width[j]! + this.#width[j + 1]!) / 2
      const k = (this.#height[j]! + this.#height[j + 1]!) / 2 / rest
      const dx = x[j + 1]! - x[j]!
      const dy = y[j + 1]! - y[j]!
      const length = Math.sqrt(dx * dx + dy * dy) || 1e-9
      const [ux, uy] = [dx / length, dy / length]
      const off = length - rest
      const across = off > 0 ? (k * off) / length : 0
      const a = (k - across) * ux * ux + across
      const b = (k - across) * ux * uy
      const d = (k - across) * uy * uy + across
      da[j]! += a
      db[j]! += b
      dd[j]! += d
      da[j + 1]! += a
      db[j + 1]! += b
      dd[j + 1]! += d
      oa[j] = -a
      ob[j] = -b
      od[j] = -d
      gx[j]! -= k * off * ux
      gy[j]! -= k * off * uy
      gx[j + 1]! += k * off * ux
      gy[j + 1]! += k * off * uy
    }
    this.#holdEnds(edge, plan)
    solveBlocks(n, da, db, dd, oa, ob, od, gx, gy)
    for (let j = 0; j < n; j++) {
      x[j]! -= gx[j]!
      y[j]! -= gy[j]!
    }
  }

  /** At a mirror line a point lies on it, or is held off its own image by half a piece of edge. */
  #holdEnds(edge: HalfEdge, plan: HalfPlan): void {
    const last = this.#count - 1
    const [x, y] = [this.#x, this.#y]
    const k0 = this.#height[0]! / this.#width[0]!
    if (this.#midOnLine) {
      this.#dd[0]! += lineStiffness * k0
      this.#gy[0]! += lineStiffness * k0 * y[0]!
    } else {
      this.#dd[0]! += 2 * k0
      this.#gy[0]! += 2 * k0 * (y[0]! - this.#width[0]! / 2)
    }
    const [sin, cos] = [Math.sin(edge.half), Math.cos(edge.half)]
    const away = x[last]! * sin - y[last]! * cos
    let k = this.#height[last]! / this.#width[last]!
    let off = away
    if (this.#cornerOnLine) k *= lineStiffness
    else {
      const rest = this.#width[last]! + plan.cornerChains * this.#palette.chainMm
      off = away - rest / 2
      k = (2 * this.#height[last]!) / rest
      if (plan.cornerChains > 0 && off < 0) k *= slackShare
    }
    this.#da[last]! += k * sin * sin
    this.#db[last]! -= k * sin * cos
    this.#dd[last]! += k * cos * cos
    this.#gx[last]! += k * off * sin
    this.#gy[last]! -= k * off * cos
  }

  #measure(edge: HalfEdge, plan: HalfPlan): void {
    const n = this.#count
    const [x, y] = [this.#x, this.#y]
    let energy = 0
    let area = 0
    let laid = 0
    let rest = 0
    for (let j = 0; j < n; j++) {
      const height = this.#height[j]!
      const own = this.#share[j]! * this.#width[j]! * height
      const dx = x[j]! - this.#footX[j]!
      const dy = y[j]! - this.#footY[j]!
      const length = Math.sqrt(dx * dx + dy * dy)
      energy += (own * (length / this.#rest[j]! - 1) ** 2) / 2
      area += own
      if (j + 1 === n) break
      const piece = (this.#width[j]! + this.#width[j + 1]!) / 2
      const ex = x[j + 1]! - x[j]!
      const ey = y[j + 1]! - y[j]!
      const now = Math.sqrt(ex * ex + ey * ey)
      const band = (this.#height[j]! + this.#height[j + 1]!) / 2
      energy += (band * piece * (now / piece - 1) ** 2) / 2
      // Measured over every other top: an edge that zigzags for want of room is no longer for it.
      if (j > 0) laid += Math.hypot(x[j + 1]! - x[j - 1]!, y[j + 1]! - y[j - 1]!) / 2
      if (j === 0) laid += now / 2
      if (j + 2 === n) laid += now / 2
      rest += piece
    }
    if (!this.#midOnLine) {
      const piece = this.#width[0]! / 2
      energy += (this.#height[0]! * piece * (y[0]! / piece - 1) ** 2) / 2
      laid += y[0]!
      rest += piece
    }
    const [sin, cos] = [Math.sin(edge.half), Math.cos(edge.half)]
    const last = n - 1
    const away = x[last]! * sin - y[last]! * cos
    const reach = x[last]! * cos + y[last]! * sin
    this.#tip = reach
    if (!this.#cornerOnLine) {
      const chains = plan.cornerChains * this.#palette.chainMm
      const piece = (this.#width[last]! + chains) / 2
      const strain = away / piece - 1
      const give = chains > 0 && strain < 0 ? slackShare : 1
      energy += (give * this.#height[last]! * piece * strain * strain) / 2
      // A chain drawn outwards by pins or by the next round: straight strands, one chain across the tip
      // where their number is even.
      const flat = plan.cornerChains % 2 === 0 ? Math.min(away, this.#palette.chainMm / 2) : 0
      const strand = (piece - flat) ** 2 - (away - flat) ** 2
      this.#tip = reach + (chains > 0 ? Math.sqrt(Math.max(0, strand)) : 0)
      // Slack chain is no fullness: it counts as long as it lies.
      laid += away
      rest += chains > 0 ? Math.max(this.#width[last]! / 2, Math.min(piece, away)) : piece
    }
    const tip = this.#tip * cos
    let sum = tip
    let low = tip
    let high = tip
    let middle = 0
    let counted = 0
    const third = (this.#tip * sin) / 3
    for (let j = 0; j < n; j++) {
      const at = x[j]!
      sum += at
      if (at < low) low = at
      if (at > high) high = at
      if (y[j]! <= third || j === 0) {
        middle += at
        counted++
      }
    }
    const line = sum / (n + 1)
    const out = this.result
    out.strainEnergy = energy / area
    out.fullness = rest / laid
    out.sideMm = x[0]!
    out.cornerMm = this.#tip
    out.lineMm = line
    out.unevenMm = Math.max(high - line, line - low)
    out.bowMm = middle / counted - tip
  }
}

/**
 * Whether stitches in one place at the corner make a sharp corner: three or more, more than the chains of
 * the space they fill, or some on either side of a chain.
 */
export function turnsCorner(inCorner: number, chainsBelow: number, cornerChains: number): boolean {
  if (cornerChains > 0) return inCorner >= 2
  return inCorner >= 3 && inCorner > chainsBelow
}
