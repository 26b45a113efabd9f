// The strokes of one stitch between its feet and its top.

import type { StitchElement } from "@roundwright/motif"
import { isTall, type StitchKind, yarnOvers } from "@roundwright/stitches"
import { between, type Oval, type Place, type Stroke, shifted, symbolMm, unit } from "./mark.ts"

export interface Drawn {
  readonly strokes: readonly Stroke[]
  readonly ovals: readonly Oval[]
  readonly posts: readonly Stroke[]
}

/** Legs that are drawn of one gathered stitch: more would be a blot. */
const mostLegs = 5

export function drawStitch(stitch: StitchElement, feet: readonly Place[], top: Place): Drawn {
  const { kind } = stitch
  if (kind.gathered) return gathered(kind, feet, top)
  const foot = feet[0]!
  const way = unit(foot, top)
  if (kind.basic === "sl st") return { ...nothing, ovals: [dot(top, way)] }
  const marks = [...loopMark(kind, foot, way), ...postHook(kind, foot, way)]
  if (kind.basic === "sc" || kind.basic === "esc") return crossed(kind, foot, top, marks)
  const post = { from: foot, to: top }
  return {
    strokes: [post, head(top, way, symbolMm.head), ...bars(kind, foot, top), ...marks],
    ovals: [],
    posts: [post],
  }
}

const nothing: Drawn = { strokes: [], ovals: [], posts: [] }

export function dot(at: Place, way: Place): Oval {
  return {
    ...at,
    long: symbolMm.dot,
    short: symbolMm.dot,
    angle: Math.atan2(way.y, way.x),
    filled: true,
  }
}

export function chainOval(at: Place, way: Place): Oval {
  return {
    ...at,
    long: symbolMm.ovalLong,
    short: symbolMm.ovalShort,
    angle: Math.atan2(way.y, way.x),
    filled: false,
  }
}

/** A starting chain in the place of a stitch: ovals on end from its foot up. */
export function chainColumn(foot: Place, top: Place, chains: number): Oval[] {
  const way = unit(foot, top)
  const length = Math.hypot(top.x - foot.x, top.y - foot.y)
  const step = Math.max(symbolMm.columnPitch, length / chains)
  return Array.from({ length: chains }, (_, k) =>
    chainOval(shifted(top, way, -(chains - k - 0.5) * step, 0), way),
  )
}

/** A sc that reaches far down has a stem below its cross. */
const crossStemFrom = 2.6

function crossed(kind: StitchKind, foot: Place, top: Place, marks: readonly Stroke[]): Drawn {
  const way = unit(foot, top)
  const half = symbolMm.cross / 2
  const middle = shifted(top, way, -half, 0)
  const length = Math.hypot(top.x - foot.x, top.y - foot.y)
  const bottom = shifted(top, way, -symbolMm.cross, 0)
  const upright = { from: length > crossStemFrom ? foot : bottom, to: top }
  const across = { from: shifted(middle, way, 0, -half), to: shifted(middle, way, 0, half) }
  const extended = kind.basic === "esc" ? [head(shifted(middle, way, -0.4, 0), way, 0.8)] : []
  return { strokes: [upright, across, ...extended, ...marks], ovals: [], posts: [upright] }
}

/** Whether the symbol of a stitch is a cross. */
export function isCross({ kind }: StitchElement): boolean {
  return (kind.basic === "sc" || kind.basic === "esc") && !kind.gathered && !kind.post
}

/** A foot near enough to the top for a cross without a stem. */
export function shortFoot(foot: Place, top: Place): Place {
  return shifted(top, unit(foot, top), -symbolMm.cross, 0)
}

function head(top: Place, way: Place, wide: number): Stroke {
  return { from: shifted(top, way, 0, -wide / 2), to: shifted(top, way, 0, wide / 2) }
}

/** One slanted bar for each yarn-over, none for a hdc; near the top, where stems of one place stand apart. */
function bars(kind: StitchKind, foot: Place, top: Place): Stroke[] {
  const count = isTall(kind.basic) ? yarnOvers(kind.basic) : 0
  const way = unit(foot, top)
  const length = Math.hypot(top.x - foot.x, top.y - foot.y)
  const span = symbolMm.barGap * (count - 1)
  const centre = Math.min(0.42 * length, 1.5 + span / 2)
  const half = symbolMm.bar / (2 * Math.SQRT2)
  return Array.from({ length: count }, (_, k) => {
    const at = shifted(top, way, -(centre + (k - (count - 1) / 2) * symbolMm.barGap), 0)
    return { from: shifted(at, way, -half * 0.6, -half), to: shifted(at, way, half * 0.6, half) }
  })
}

/** Half of an arc at a foot: two feet in one place stand side by side, mm. */
const loopMm = 0.2

/** Back loop: an arc open to the foot; front loop: one open to the top. */
function loopMark({ loops }: StitchKind, foot: Place, way: Place): Stroke[] {
  if (loops === undefined) return []
  const bend = loops === "front" ? -0.26 : 0.26
  const at = shifted(foot, way, 0.25, 0)
  const [left, right] = [shifted(at, way, -bend / 2, loopMm), shifted(at, way, -bend / 2, -loopMm)]
  const middle = shifted(at, way, bend / 2, 0)
  return [
    { from: left, to: middle },
    { from: middle, to: right },
  ]
}

/** Round the post: a hook at the foot, to the right for the front and to the left for the back. */
function postHook({ post }: StitchKind, foot: Place, way: Place): Stroke[] {
  if (post === undefined) return []
  const aside = post === "front" ? -0.5 : 0.5
  const low = shifted(foot, way, 0, aside)
  return [
    { from: foot, to: low },
    { from: low, to: shifted(low, way, 0.5, 0) },
  ]
}

function gathered(kind: StitchKind, feet: readonly Place[], top: Place): Drawn {
  const how = kind.gathered!.how
  const middle = {
    x: feet.reduce((sum, { x }) => sum + x, 0) / feet.length,
    y: feet.reduce((sum, { y }) => sum + y, 0) / feet.length,
  }
  const way = unit(middle, top)
  const apart = new Set(feet.map(({ x, y }) => `${x.toFixed(3)}:${y.toFixed(3)}`)).size > 1
  const legs = Math.min(mostLegs, Math.max(2, kind.gathered!.legs))
  const crest = shifted(top, way, how === "popcorn" ? -0.7 : 0, 0)
  const posts: Stroke[] = []
  const strokes: Stroke[] = []
  if (apart && how === "together")
    for (const foot of feet) {
      const post = { from: foot, to: crest }
      posts.push(post)
      strokes.push(post, ...bars(kind, foot, crest))
    }
  else {
    const bulge = 2.1 / (legs - 1)
    for (let leg = 0; leg < legs; leg++) {
      const aside = (leg - (legs - 1) / 2) * bulge
      const knee = shifted(between(middle, crest, 0.55), way, 0, aside)
      strokes.push({ from: middle, to: knee }, { from: knee, to: crest })
      if (how !== "puff" && isTall(kind.basic)) strokes.push(...kneeBar(knee, way))
    }
    posts.push({ from: middle, to: crest })
  }
  if (how !== "popcorn") strokes.push(head(crest, way, 1.4))
  const ovals =
    how === "popcorn" ? [chainOval(shifted(crest, way, 0.4, 0), { x: -way.y, y: way.x })] : []
  return { strokes, ovals, posts }
}

function kneeBar(knee: Place, way: Place): Stroke[] {
  return [{ from: shifted(knee, way, -0.2, -0.25), to: shifted(knee, way, 0.2, 0.25) }]
}

/** A picot: a small ring of ovals on a top, closed by a dot. */
export function drawPicot(top: Place, way: Place, chains: number): Oval[] {
  const count = Math.max(3, Math.min(6, chains))
  const radius = Math.max(0.95, (count * 1.25) / (2 * Math.PI))
  const centre = shifted(top, way, radius + 0.75, 0)
  const start = Math.atan2(-way.y, -way.x)
  const ring = Array.from({ length: count }, (_, k) => {
    const angle = start + ((k + 0.5) * 2 * Math.PI) / count
    const at = { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
    return { ...at, long: 0.55, short: 0.3, angle: angle + Math.PI / 2, filled: false }
  })
  return [...ring, dot(shifted(top, way, 0.6, 0), way)]
}

/** How far a picot stands out, mm. */
export function picotReach(chains: number): number {
  const count = Math.max(3, Math.min(6, chains))
  return 2 * Math.max(0.95, (count * 1.25) / (2 * Math.PI)) + 1.2
}
