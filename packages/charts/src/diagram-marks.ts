// What a stitch diagram is drawn from: one mark for every post, chain, picot and join of a laid-out piece,
// where it lies, how long it is and which way it points.

import type { Element, Motif, StitchElement } from "@roundwright/motif"
import { type LaidOutShape, measureStrain, type Net, type Point } from "@roundwright/relaxation"
import type { FlatPiece, FlatPlace } from "./laid-out-piece.ts"
import {
  chainSymbol,
  closingSymbol,
  coilSymbol,
  dotSymbol,
  legSymbol,
  patchSymbol,
  picotSymbol,
  type StitchSymbol,
  stitchSymbol,
} from "./symbols.ts"

/** A symbol in its place: the middle of its box, its length and the way its top points, degrees clockwise from up. */
export interface DiagramMark extends FlatPlace {
  readonly symbol: StitchSymbol
  readonly length: number
  readonly angle: number
  readonly filled: boolean
  readonly round: number
}

/** The stretch of fabric a post or chain stands for, and its strain. */
export interface StrainedPatch {
  readonly mark: DiagramMark
  /** Of the post or of the top beside it, whichever is larger in size; positive when stretched. */
  readonly strain: number
}

export interface RoundStart extends FlatPlace {
  readonly number: number
  /** Degrees clockwise from up: the way the round is worked from here. */
  readonly angle: number
  /** Room between this round and the one below. */
  readonly depth: number
}

export interface DiagramMarks {
  readonly marks: readonly DiagramMark[]
  readonly patches: readonly StrainedPatch[]
  readonly starts: readonly RoundStart[]
}

export function diagramMarks(motif: Motif, shape: LaidOutShape, piece: FlatPiece): DiagramMarks {
  const { net } = piece
  const posts = postsOf(piece)
  return {
    marks: [
      ...centreMarks(motif, piece, posts),
      ...net.edges.flatMap((_, round) => roundMarks(motif, piece, posts, round)),
    ],
    patches: patchesOf(piece, posts, measureStrain(net, shape.flat.xy, 2)),
    starts: net.edges.map((_, round) => startOf(motif, piece, posts, round)),
  }
}

/** A post of the net with the places of its ends. */
interface Post {
  readonly foot: FlatPlace
  readonly top: FlatPlace
  readonly spring: number
}

/** Posts of every element of every round, in the order of its anchors. */
type Posts = readonly ReadonlyMap<number, readonly Post[]>[]

function postsOf(piece: FlatPiece): Posts {
  const posts = piece.net.edges.map(() => new Map<number, Post[]>())
  piece.net.springs.forEach((spring, index) => {
    if (spring.role !== "post" || spring.round < 0) return
    const own = posts[spring.round]!
    const post = {
      foot: placeOf(spring.from, piece),
      top: placeOf(spring.to, piece),
      spring: index,
    }
    own.set(spring.element, [...(own.get(spring.element) ?? []), post])
  })
  return posts
}

function placeOf({ nodes, weights }: Point, { places }: FlatPiece): FlatPlace {
  let [x, y] = [0, 0]
  nodes.forEach((node, k) => {
    x += weights[k]! * places[node]!.x
    y += weights[k]! * places[node]!.y
  })
  return { x, y }
}

function roundMarks(motif: Motif, piece: FlatPiece, posts: Posts, round: number): DiagramMark[] {
  const { elements, closing } = motif.rounds[round]!
  const edge = piece.net.edges[round]!
  const marks: DiagramMark[] = []
  edge.nodes.forEach((node, k) => {
    const element = edge.elements[k]!
    const item = elements[element]!
    if (item.type === "chain") marks.push(chainMark(piece, round, k))
    else if (item.type === "stitch")
      marks.push(...stitchMarks(item, posts[round]!.get(element) ?? [], piece, round, node))
  })
  elements.forEach((item, element) => {
    if (item.type === "picot") marks.push(...picotMark(piece, elements, posts, round, element))
  })
  if (closing === "joined") marks.push(...joinMark(piece, round, elements))
  return marks
}

function stitchMarks(
  stitch: StitchElement,
  posts: readonly Post[],
  piece: FlatPiece,
  round: number,
  node: number,
): DiagramMark[] {
  if (stitch.madeOfChains !== undefined && stitch.madeOfChains > 0 && posts[0])
    return chainColumn(posts[0], stitch.madeOfChains, round)
  if (posts.length <= 1)
    return posts.map(({ foot, top }) =>
      between(stitchSymbol(stitch.kind), foot, top, round, stitch),
    )
  const legs = posts.map(({ foot, top }) => between(legSymbol(stitch.kind), foot, top, round))
  const mean = {
    x: posts.reduce((sum, { foot }) => sum + foot.x, 0) / posts.length,
    y: posts.reduce((sum, { foot }) => sum + foot.y, 0) / posts.length,
  }
  const whole = between(closingSymbol(stitch.kind), mean, piece.places[node]!, round)
  return [...legs, { ...whole, ...piece.places[node]! }]
}

/** More chains than this in a column are drawn as this many. */
const mostDrawnChains = 12

/** A starting chain that stands for a stitch: ovals on end, one for each chain. */
function chainColumn({ foot, top }: Post, chains: number, round: number): DiagramMark[] {
  const count = Math.min(mostDrawnChains, chains)
  return Array.from({ length: count }, (_, k) =>
    between(chainSymbol, along(foot, top, k / count), along(foot, top, (k + 1) / count), round),
  )
}

/** A chain is drawn half way to its neighbours on either side, no longer than it is. */
function chainMark(piece: FlatPiece, round: number, k: number): DiagramMark {
  const { net, places } = piece
  const { nodes, closed } = net.edges[round]!
  const n = nodes.length
  const own = places[nodes[k]!]!
  const before = places[nodes[k > 0 ? k - 1 : closed ? n - 1 : 0]!]!
  const after = places[nodes[k + 1 < n ? k + 1 : closed ? 0 : n - 1]!]!
  const rest = net.nodes[nodes[k]!]!.widthMm / piece.mmPerUnit
  const mark = between(chainSymbol, before, after, round)
  const room = (distance(before, own) + distance(own, after)) / 2
  return { ...mark, ...own, length: Math.min(rest, room > 0 ? room : rest) }
}

function picotMark(
  piece: FlatPiece,
  elements: readonly Element[],
  posts: Posts,
  round: number,
  element: number,
): DiagramMark[] {
  const edge = piece.net.edges[round]!
  const n = elements.length
  let before = element
  do before = (before - 1 + n) % n
  while (elements[before]!.type === "picot" && before !== element)
  const k = edge.elements.indexOf(before)
  const node = edge.nodes[k]
  if (node === undefined) return []
  const top = piece.places[node]!
  const post = posts[round]!.get(before)?.[0]
  const wide = piece.net.nodes[node]!.widthMm / piece.mmPerUnit
  const out = post ? unitVector(post.foot, top) : unitVector({ x: 0, y: 0 }, top)
  return [between(picotSymbol, top, { x: top.x + wide * out.x, y: top.y + wide * out.y }, round)]
}

/** The slip stitch that joins a round: a dot on the edge between its last and its first top. */
function joinMark(piece: FlatPiece, round: number, elements: readonly Element[]): DiagramMark[] {
  const { first, last } = endsOf(piece.net, round, elements)
  if (first === last) return []
  const [a, b] = [piece.places[first]!, piece.places[last]!]
  const wide = piece.net.nodes[first]!.widthMm / piece.mmPerUnit
  const length = joinShare * Math.min(distance(a, b), wide)
  return [{ ...along(a, b, 0.5), symbol: dotSymbol, length, angle: 0, filled: true, round }]
}

/** The box of a join's dot against the width of a stitch. */
const joinShare = 0.3

interface Ends {
  readonly first: number
  readonly last: number
  /** Worked clockwise. */
  readonly backwards: boolean
}

/** First and last node of a round in working order. */
function endsOf(net: Net, round: number, elements: readonly Element[]): Ends {
  const { nodes, elements: order } = net.edges[round]!
  const firstElement = elements.findIndex((element) => element.type !== "picot")
  // Laid counterclockwise; a round worked the other way begins at the end of its edge.
  return order[0] === firstElement
    ? { first: nodes[0]!, last: nodes.at(-1)!, backwards: false }
    : { first: nodes.at(-1)!, last: nodes[0]!, backwards: true }
}

function startOf(motif: Motif, piece: FlatPiece, posts: Posts, round: number): RoundStart {
  const { elements, number } = motif.rounds[round]!
  const { first, last, backwards } = endsOf(piece.net, round, elements)
  const [a, b] = [piece.places[first]!, piece.places[last]!]
  const footOf = (node: number) => posts[round]!.get(piece.net.nodes[node]!.element)?.[0]?.foot
  const { closed } = piece.net.edges[round]!
  const top = closed ? along(a, b, 0.5) : a
  const foot = footOf(first) ?? footOf(last) ?? along(top, { x: 0, y: 0 }, 1 / (round + 2))
  const base = closed ? along(foot, footOf(last) ?? foot, 0.5) : foot
  const middle = along(base, top, 0.5)
  const out = unitVector({ x: 0, y: 0 }, middle)
  const ahead = backwards ? { x: out.y, y: -out.x } : { x: -out.y, y: out.x }
  return { ...middle, number, angle: angleOf({ x: 0, y: 0 }, ahead), depth: distance(base, top) }
}

function centreMarks(motif: Motif, piece: FlatPiece, posts: Posts): DiagramMark[] {
  const { net, places } = piece
  if (net.centre.length >= 3 && motif.centre.kind === "chain-ring")
    return net.centre.map((node, k) => {
      const n = net.centre.length
      const [before, after] = [net.centre[(k - 1 + n) % n]!, net.centre[(k + 1) % n]!]
      const mark = between(chainSymbol, places[before]!, places[after]!, -1)
      return { ...mark, ...places[node]!, length: mark.length / 2 }
    })
  const ring = net.centre.map((node) => distance(places[node]!, { x: 0, y: 0 }))
  const radius = Math.max(0, ...ring)
  const depth = Math.min(
    ...[...posts[0]!.values()].flat().map(({ foot, top }) => distance(foot, top)),
    piece.reach,
  )
  const symbol = motif.centre.kind === "adjustable-ring" ? coilSymbol : ringSymbol
  const length = radius > 0 ? 2 * radius : 0.3 * depth
  return [{ x: 0, y: 0, symbol, length, angle: 0, filled: false, round: -1 }]
}

/** A ring that is no row of chains: a cord, a bought ring, or the one chain all of round 1 stands in. */
const ringSymbol: StitchSymbol = { key: "ring", path: coilSymbol.path.split("M0,")[0]! }

function patchesOf(piece: FlatPiece, posts: Posts, strains: Float64Array): StrainedPatch[] {
  const { net, places, mmPerUnit } = piece
  const beside = net.nodes.map(() => 0)
  const patches: StrainedPatch[] = []
  net.springs.forEach((spring, index) => {
    if (spring.role === "post" || spring.round < 0) return
    const [from, to] = [spring.from.nodes[0]!, spring.to.nodes[0]!]
    // A slack chain is not strained; a taut one is.
    const strain = spring.role === "chain" ? Math.max(0, strains[index]!) : strains[index]!
    for (const node of [from, to])
      if (net.nodes[node]!.kind === "top" && Math.abs(strain) > Math.abs(beside[node]!))
        beside[node] = strain
    if (spring.role !== "chain") return
    const [a, b] = [places[from]!, places[to]!]
    const wide = (cordShare * net.nodes[from]!.widthMm) / mmPerUnit
    const share = wide / (distance(a, b) || wide)
    patches.push({
      mark: between(patchSymbol({ foot: [share, share], top: [share, share] }), a, b, spring.round),
      strain,
    })
  })
  posts.forEach((ofRound, round) => {
    const { elements, closed } = net.edges[round]!
    const row = [...new Set(elements)].flatMap((element) => ofRound.get(element) ?? [])
    row.forEach((post, k) => {
      const node = net.springs[post.spring]!.to.nodes[0]!
      const own = strains[post.spring]!
      const strain = Math.abs(beside[node]!) > Math.abs(own) ? beside[node]! : own
      const most = net.nodes[node]!.widthMm / mmPerUnit
      const length = distance(post.foot, post.top) || most
      // Rows run counterclockwise: with the top outward, the next post stands to the left.
      const [right, left] = [row.at(k - 1)!, row[(k + 1) % row.length]!]
      // Legs that fan out of one place share the room at their foot.
      const half = (end: "foot" | "top", other: Post, atEnd: boolean): number =>
        Math.min(most, atEnd && !closed ? most : distance(post[end], other[end])) / length
      const halves = (end: "foot" | "top"): [number, number] => [
        half(end, left, k === row.length - 1),
        half(end, right, k === 0),
      ]
      const symbol = patchSymbol({ foot: halves("foot"), top: halves("top") })
      patches.push({ mark: between(symbol, post.foot, post.top, round), strain })
    })
  })
  return patches
}

/** A chain is shaded this wide against its length: a cord and not a patch of fabric. */
const cordShare = 0.6

function between(
  symbol: StitchSymbol,
  foot: FlatPlace,
  top: FlatPlace,
  round: number,
  stitch?: StitchElement,
): DiagramMark {
  return {
    ...along(foot, top, 0.5),
    symbol,
    length: distance(foot, top),
    angle: angleOf(foot, top),
    filled: stitch?.kind.basic === "sl st",
    round,
  }
}

function along(a: FlatPlace, b: FlatPlace, share: number): FlatPlace {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }
}

function distance(a: FlatPlace, b: FlatPlace): number {
  return Math.hypot(b.x - a.x, b.y - a.y)
}

function angleOf(foot: FlatPlace, top: FlatPlace): number {
  return (Math.atan2(top.x - foot.x, top.y - foot.y) * 180) / Math.PI
}

function unitVector(a: FlatPlace, b: FlatPlace): FlatPlace {
  const length = distance(a, b)
  return length > 0 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 0, y: 1 }
}
