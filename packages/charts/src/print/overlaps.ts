// Whether symbols lie on one another: every stroke and oval as a capsule, tested against those of other marks near it.

import type { Place, PrintMark } from "./mark.ts"
import { symbolMm } from "./mark.ts"

interface Capsule {
  readonly mark: number
  readonly a: Place
  readonly b: Place
  readonly radius: number
}

/** Side of a cell of the search, mm: about as long as the longest short symbol. */
const cellMm = 4
/** Ink may touch by so little without being seen, mm. */
const unseenMm = 0.03

/** Pairs of marks whose ink meets. */
export function overlapsOf(marks: readonly PrintMark[]): [PrintMark, PrintMark][] {
  const capsules = marks.flatMap((mark, k) => capsulesOf(mark, k))
  const cells = new Map<string, number[]>()
  const found = new Map<string, [PrintMark, PrintMark]>()
  capsules.forEach((one, index) => {
    const seen = new Set<number>()
    for (const key of cellsOf(one)) {
      const there = cells.get(key)
      if (!there) {
        cells.set(key, [index])
        continue
      }
      for (const other of there) {
        if (seen.has(other)) continue
        seen.add(other)
        const two = capsules[other]!
        if (two.mark === one.mark) continue
        if (distance(one, two) >= one.radius + two.radius - unseenMm) continue
        const pair = [Math.min(one.mark, two.mark), Math.max(one.mark, two.mark)] as const
        found.set(pair.join(), [marks[pair[0]]!, marks[pair[1]]!])
      }
      there.push(index)
    }
  })
  return [...found.values()]
}

/** Pairs of posts of one round that cross. */
export function crossingsOf(marks: readonly PrintMark[]): [PrintMark, PrintMark][] {
  const found: [PrintMark, PrintMark][] = []
  const withPosts = marks.filter(({ posts }) => posts.length > 0)
  const byRound = new Map<number, PrintMark[]>()
  for (const mark of withPosts) byRound.set(mark.round, [...(byRound.get(mark.round) ?? []), mark])
  for (const own of byRound.values())
    for (let i = 0; i < own.length; i++)
      for (let j = i + 1; j < own.length; j++)
        if (own[i]!.posts.some((a) => own[j]!.posts.some((b) => cross(a.from, a.to, b.from, b.to))))
          found.push([own[i]!, own[j]!])
  return found
}

function capsulesOf(mark: PrintMark, k: number): Capsule[] {
  const strokes = mark.strokes.map(({ from, to }) => ({
    mark: k,
    a: from,
    b: to,
    radius: symbolMm.stroke / 2,
  }))
  const ovals = mark.ovals.map(({ x, y, long, short, angle }) => {
    const half = Math.max(0, long - short)
    const [dx, dy] = [half * Math.cos(angle), half * Math.sin(angle)]
    return {
      mark: k,
      a: { x: x - dx, y: y - dy },
      b: { x: x + dx, y: y + dy },
      radius: short + symbolMm.stroke / 2,
    }
  })
  return [...strokes, ...ovals]
}

function cellsOf({ a, b, radius }: Capsule): string[] {
  const cell = (value: number) => Math.floor(value / cellMm)
  const keys: string[] = []
  for (let x = cell(Math.min(a.x, b.x) - radius); x <= cell(Math.max(a.x, b.x) + radius); x++)
    for (let y = cell(Math.min(a.y, b.y) - radius); y <= cell(Math.max(a.y, b.y) + radius); y++)
      keys.push(`${x}:${y}`)
  return keys
}

function distance(one: Capsule, two: Capsule): number {
  if (cross(one.a, one.b, two.a, two.b)) return 0
  return Math.min(
    fromSegment(one.a, two),
    fromSegment(one.b, two),
    fromSegment(two.a, one),
    fromSegment(two.b, one),
  )
}

function fromSegment(p: Place, { a, b }: Pick<Capsule, "a" | "b">): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const square = dx * dx + dy * dy
  const share =
    square > 0 ? Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy)
}

function side(p: Place, q: Place, r: Place): number {
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)
}

/** Whether two segments cross inside both. */
export function cross(p: Place, q: Place, r: Place, s: Place): boolean {
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0
}
