// The last touch of a layout: small symbols that lie on others are moved a little to where they lie on nothing. A chain, a
// cross or a dot says as much a millimetre further; all its images move alike, so that a turn still maps marks on marks.

import type { Place, PrintMark, Stroke } from "./mark.ts"
import { crossingsOf, overlapsOf } from "./overlaps.ts"

/** Steps out from the centre and along the round, mm: the smallest that helps is taken. */
const steps: readonly (readonly [out: number, along: number])[] = [0.5, 0.9, 1.4].flatMap(
  (mm) =>
    [
      [mm, 0],
      [0, mm],
      [0, -mm],
      [-mm, 0],
      [0.7 * mm, 0.7 * mm],
      [0.7 * mm, -0.7 * mm],
    ] as const,
)

/** Symbols moved at most: where more lie on others the layout needs more room, and no touch. */
const mostMoved = 24

/** A symbol with a stem is held by its foot: it is moved last, and hardly. */
const stemFrom = 2.2
const mostWithStem = 0.9

/** Posts that cross mislead; symbols that touch are only ugly. */
export const worseThanTouching = 20

/** How bad a layout is; 0 where nothing lies on anything. @param inked the marks that may not lie on one another */
export function faultsOf(inked: readonly PrintMark[]): number {
  return overlapsOf(inked).length + worseThanTouching * crossingsOf(inked).length
}

/**
 * @param inked marks that may not lie on one another, and no others
 * @param perRepeat elements of one repeat, by round
 * @returns the marks that moved, by the marks they were
 */
export function nudge(
  inked: readonly PrintMark[],
  perRepeat: (round: number) => number,
): ReadonlyMap<PrintMark, PrintMark> {
  const keys = keysOf(inked, perRepeat)
  const moved = new Map<PrintMark, PrintMark>()
  const now = () => inked.map((mark) => moved.get(mark) ?? mark)
  const origin = new Map(inked.map((mark) => [mark, mark]))
  let faults = faultsOf(inked)
  const tried = new Set<string>()
  while (faults > 0 && tried.size < mostMoved) {
    const pairs = overlapsOf(now()).flat()
    const untried = pairs
      .map((mark) => origin.get(mark)!)
      .filter((mark) => !tried.has(keys.get(mark)!))
    const next = untried.find(isSmall) ?? untried.find(({ kind }) => kind === "stitch")
    if (!next) break
    const most = isSmall(next) ? Number.POSITIVE_INFINITY : mostWithStem
    const key = keys.get(next)!
    tried.add(key)
    const images = inked.filter((mark) => keys.get(mark) === key)
    for (const [out, along] of steps) {
      if (Math.hypot(out, along) > most) continue
      const before = images.map((mark) => moved.get(mark))
      for (const mark of images) moved.set(mark, shiftedMark(mark, out, along))
      const after = faultsOf(now())
      if (after < faults) {
        faults = after
        for (const mark of images) origin.set(moved.get(mark)!, mark)
        break
      }
      images.forEach((mark, k) => {
        const old = before[k]
        if (old) moved.set(mark, old)
        else moved.delete(mark)
      })
    }
  }
  return moved
}

/** Images of one symbol have one key: round, kind, place in the repeat, and which chain of a run. */
function keysOf(
  marks: readonly PrintMark[],
  perRepeat: (round: number) => number,
): ReadonlyMap<PrintMark, string> {
  const seen = new Map<string, number>()
  return new Map(
    marks.map((mark) => {
      const { round, element, posts } = mark
      // The chain that stands for the first stitch is one of the images of a stitch.
      const kind = mark.kind === "start" && posts.length > 0 ? "stitch" : mark.kind
      const own = `${round}:${kind}:${element}`
      const place = seen.get(own) ?? 0
      seen.set(own, place + 1)
      const alone = kind === "join" || kind === "slip" || kind === "yarn-off" || isAside(mark)
      const within = alone ? `alone ${element}` : element % Math.max(1, perRepeat(round))
      return [mark, `${round}:${kind}:${within}:${place}`]
    }),
  )
}

/** A starting chain that stands for no stitch, beside the first: there is one in a round. */
function isAside({ kind, posts }: PrintMark): boolean {
  return kind === "start" && posts.length === 0
}

function isSmall(mark: PrintMark): boolean {
  const { kind, strokes, ovals } = mark
  if (kind === "chain" || kind === "join" || kind === "slip" || isAside(mark)) return true
  const long = strokes.reduce(
    (most, { from, to }) => Math.max(most, Math.hypot(to.x - from.x, to.y - from.y)),
    0,
  )
  return kind === "stitch" && ovals.length === 0 && long < stemFrom
}

function shiftedMark(mark: PrintMark, out: number, along: number): PrintMark {
  const radius = Math.hypot(mark.at.x, mark.at.y)
  const [ux, uy] = radius > 0 ? [mark.at.x / radius, mark.at.y / radius] : [1, 0]
  const [dx, dy] = [out * ux - along * uy, out * uy + along * ux]
  const place = <P extends Place>(one: P): P => ({ ...one, x: one.x + dx, y: one.y + dy })
  const stroke = ({ from, to }: Stroke): Stroke => ({ from: place(from), to: place(to) })
  return {
    ...mark,
    at: place(mark.at),
    strokes: mark.strokes.map(stroke),
    ovals: mark.ovals.map(place),
    posts: mark.posts.map(stroke),
  }
}
