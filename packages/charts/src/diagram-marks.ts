// The symbols of a stitch diagram: one mark for every post, chain, picot and join of a laid-out piece, where it
// lies, how long it is and which way it points.

import type { Element, Motif, StitchElement } from "@roundwright/motif"
import {
  along,
  between,
  type DiagramMark,
  distance,
  type Post,
  type Posts,
  unitVector,
} from "./diagram-geometry.ts"
import { endsOf } from "./diagram-starts.ts"
import type { FlatPiece, FlatPlace } from "./laid-out-piece.ts"
import {
  chainSymbol,
  closingSymbol,
  coilSymbol,
  dotSymbol,
  legSymbol,
  picotSymbol,
  type StitchSymbol,
  stitchSymbol,
} from "./symbols.ts"

/** From the centre out, so that later rounds lie over earlier ones. */
export function diagramMarks(motif: Motif, piece: FlatPiece, posts: Posts): DiagramMark[] {
  return [
    ...centreMarks(motif, piece, posts),
    ...piece.net.edges.flatMap((_, round) => roundMarks(motif, piece, posts, round)),
  ]
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
  const own = edge.elements.indexOf(element)
  const node = edge.nodes[own >= 0 ? own : edge.elements.indexOf(before)]
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

/** The chains of the ring, evenly along it: the net may hold it in more pieces. */
function ringChains(chains: number, ring: readonly FlatPlace[]): DiagramMark[] {
  const at = (share: number): FlatPlace => {
    const along = share * ring.length
    const k = Math.floor(along)
    const [a, b] = [ring[k % ring.length]!, ring[(k + 1) % ring.length]!]
    return { x: a.x + (along - k) * (b.x - a.x), y: a.y + (along - k) * (b.y - a.y) }
  }
  return Array.from({ length: chains }, (_, k) => {
    const [before, after] = [at((k - 0.5 + chains) / chains), at((k + 0.5) / chains)]
    return { ...between(chainSymbol, before, after, -1), ...at(k / chains) }
  })
}

function centreMarks(motif: Motif, piece: FlatPiece, posts: Posts): DiagramMark[] {
  const { net, places } = piece
  if (net.centre.length >= 3 && motif.centre.kind === "chain-ring")
    return ringChains(
      motif.centre.chains,
      net.centre.map((node) => places[node]!),
    )
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
