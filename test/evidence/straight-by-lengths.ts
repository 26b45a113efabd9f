// A second judge of straightness, which no search has seen: lengths alone, rigid units laid edge to edge, no energy.
//
// Every round is a straight row from corner to corner: its tops and chains lie one beside the other along the side, scaled
// to the side they make. A leg of length l whose foot lies d beside its top along the side reaches out sqrt(l^2 - d^2); what
// legs reach one over the other from the circle outwards is how far the side stands out there. The circle has the ledger's
// radius. A corner's chain is drawn tight to the corner line.

import { keepLedger } from "@roundwright/flatness"
import { chainsBeside, type Round } from "@roundwright/motif"
import { discEndingAt, type Proposal, squareCircle } from "@roundwright/shaping"
import { chainSize, type Gauge, gaugeFrom, sizeOf, widthBesideChains } from "@roundwright/stitches"

/** A round as a row: where each element begins and ends along its edge, and how long that is. */
interface Row {
  readonly starts: readonly number[]
  readonly widths: readonly number[]
  readonly length: number
  /** Middle of each corner along the edge, in working order. */
  readonly corners: readonly number[]
}

interface Spot {
  readonly out: number
  readonly along: number
}

/** How far the middle third of a side lies outside its corners, mean of the sides, as a share of the side. */
export function bowByLengths(proposal: Proposal, gauge: Gauge): number {
  const { motif, from, corners, cornerElements } = proposal
  const half = Math.PI / corners
  const groups = cornersBelow(proposal)
  const rows = motif.rounds.map((round, r) =>
    r < from - 1 ? null : rowOf(round, groups[r] ?? cornerElements, gauge),
  )
  const radius = keepLedger({ ...motif, rounds: motif.rounds.slice(0, from) }, gauge).rows.at(
    -1,
  )!.radiusMm
  const bows: number[] = []
  for (let side = 0; side < corners; side++) {
    let below = baseOf(rows[from - 1]!, side, radius, half)
    let apothem = radius
    for (let r = from; r < motif.rounds.length; r++) {
      const laid = layRow(proposal, r, rows[r]!, rows[r - 1]!, side, below, apothem, half, gauge)
      below = laid.spots
      apothem = laid.apothem
    }
    bows.push(bowOf(proposal, rows.at(-1)!, side, below, apothem, half))
  }
  return bows.reduce((sum, bow) => sum + bow, 0) / bows.length
}

const judged = [24, 30, 36, 48] as const

/** Both judges on the first proposals for discs of dc. */
export function judgeByLengths(): { count: number; byNet: number; byLengths: number }[] {
  const gauge = gaugeFrom({ swatches: [] })
  return judged.map((count) => {
    const options = { corners: 4, rounds: 2, proposals: 1 }
    const [first] = squareCircle(discEndingAt({ basic: "dc" }, count, gauge), gauge, options)
    return { count, byNet: bowByNet(first!), byLengths: bowByLengths(first!, gauge) }
  })
}

/** The same measure of the shape as it was laid out by the net: the mean of its sides. */
export function bowByNet({ shape }: Proposal): number {
  return (
    shape.sides.reduce((sum, { bowMm, lengthMm }) => sum + bowMm / lengthMm, 0) / shape.sides.length
  )
}

/** Elements that stand on each corner in every round from the circle's last on, traced down from the last round's. */
function cornersBelow({
  motif,
  from,
  cornerElements,
}: Proposal): (readonly (readonly number[])[])[] {
  const found: (readonly (readonly number[])[])[] = []
  let groups = cornerElements
  for (let r = motif.rounds.length - 1; r >= from - 1; r--) {
    found[r] = groups
    groups = groups.map((group) => [
      ...new Set(
        group.flatMap((e) => {
          const { elements } = motif.rounds[r]!
          const n = elements.length
          // A corner's space stands over what the stitches on either side of it are worked into.
          const own = elements[e]!.type === "chain" ? [(e - 1 + n) % n, (e + 1) % n] : [e]
          return own.flatMap((i) => {
            const element = elements[i]!
            if (element.type !== "stitch") return []
            return element.anchors.flatMap((anchor) =>
              anchor.at === "centre" ? [] : [anchor.element],
            )
          })
        }),
      ),
    ])
  }
  return found
}

function rowOf(round: Round, groups: readonly (readonly number[])[], gauge: Gauge): Row {
  const beside = chainsBeside(round)
  const chainMm = chainSize(gauge).lengthMm
  const widths = round.elements.map((element, e) =>
    element.type === "chain"
      ? element.chains * chainMm
      : element.type === "stitch"
        ? widthBesideChains(sizeOf(element.kind, gauge, { turned: false }).widthMm, beside[e]!)
        : 0,
  )
  const starts: number[] = []
  let length = 0
  for (const width of widths) {
    starts.push(length)
    length += width
  }
  const corners = groups.map((group) => {
    const anchor = starts[group[0]!]!
    const near = (at: number) => at - length * Math.round((at - anchor) / length)
    const low = Math.min(...group.map((e) => near(starts[e]!)))
    const high = Math.max(...group.map((e) => near(starts[e]!) + widths[e]!))
    return (low + high) / 2
  })
  return { starts, widths, length, corners }
}

/** The place along a side, from its middle, as a share of half the side; beyond 1 it lies past a corner. */
function shareAlong(row: Row, side: number, at: number): number {
  const { corners, length } = row
  const from = corners[side]!
  const wrap = (value: number) => ((value % length) + length) % length
  const reach = wrap(corners[(side + 1) % corners.length]! - from) || length
  const past = wrap(at - from)
  const nearest = past > (length + reach) / 2 ? past - length : past
  return (2 * nearest) / reach - 1
}

/** The circle's last round as places under a side: each element's spot by its share of the angle. */
function baseOf(row: Row, side: number, radius: number, half: number): (at: number) => Spot {
  return (at) => {
    const angle = shareAlong(row, side, at) * half
    return { out: radius * Math.cos(angle), along: radius * Math.sin(angle) }
  }
}

function layRow(
  { motif, shape }: Proposal,
  r: number,
  row: Row,
  lower: Row,
  side: number,
  below: (at: number) => Spot,
  apothemBelow: number,
  half: number,
  gauge: Gauge,
): { spots: (at: number) => Spot; apothem: number } {
  const { elements } = motif.rounds[r]!
  const posts = shape.net.springs.filter(({ role, round }) => role === "post" && round === r)
  const rest = new Map(posts.map(({ element, restMm }) => [element, restMm / shape.net.mmPerUnit]))
  const tops = elements.flatMap((element, e) => {
    if (element.type !== "stitch") return []
    const share = shareAlong(row, side, row.starts[e]! + row.widths[e]! / 2)
    if (Math.abs(share) > 1.0001) return []
    const foot = below(footAlong(motif.rounds[r]!, e, lower))
    return [
      { share, foot, leg: rest.get(e) ?? sizeOf(element.kind, gauge, { turned: false }).heightMm },
    ]
  })
  const depth = tops.reduce((sum, { leg }) => sum + leg, 0) / tops.length
  let apothem = apothemBelow + depth
  let outs: { share: number; out: number }[] = []
  for (let turn = 0; turn < 4; turn++) {
    const reach = apothem * Math.tan(half)
    outs = tops.map(({ share, foot, leg }) => {
      const beside = share * reach - foot.along
      return { share, out: foot.out + Math.sqrt(Math.max(0, leg * leg - beside * beside)) }
    })
    apothem = outs.reduce((sum, { out }) => sum + out, 0) / outs.length
  }
  outs.sort((a, b) => a.share - b.share)
  const reach = apothem * Math.tan(half)
  return {
    apothem,
    spots: (at) => {
      const share = shareAlong(row, side, at)
      return { out: between(outs, share), along: share * reach }
    },
  }
}

/** Where a stitch stands along the round below: the middle of a stitch, its share of a space. */
function footAlong({ elements }: Round, e: number, lower: Row): number {
  const own = elements[e]!
  const anchor = own.type === "stitch" ? own.anchors[0]! : null
  if (anchor === null || anchor.at === "centre") return 0
  const place = anchor.element
  if (anchor.at === "between") return lower.starts[place]! + lower.widths[place]!
  const sharing = elements.flatMap((other, i) =>
    other.type === "stitch" && JSON.stringify(other.anchors[0]) === JSON.stringify(anchor)
      ? [i]
      : [],
  )
  // A place's stitches that run over the round's start come first at its end.
  const turned = sharing.findIndex((i, k) => k > 0 && i - sharing[k - 1]! > elements.length / 2)
  const order = turned > 0 ? [...sharing.slice(turned), ...sharing.slice(0, turned)] : sharing
  const share = anchor.at === "stitch" ? 0.5 : (order.indexOf(e) + 0.5) / order.length
  return lower.starts[place]! + share * lower.widths[place]!
}

function between(outs: readonly { share: number; out: number }[], share: number): number {
  const next = outs.findIndex((one) => one.share >= share)
  if (next < 0) return outs.at(-1)!.out
  if (next === 0) return outs[0]!.out
  const [a, b] = [outs[next - 1]!, outs[next]!]
  const part = b.share > a.share ? (share - a.share) / (b.share - a.share) : 0
  return a.out + part * (b.out - a.out)
}

function bowOf(
  { motif, cornerElements }: Proposal,
  row: Row,
  side: number,
  spots: (at: number) => Spot,
  apothem: number,
  half: number,
): number {
  const { elements } = motif.rounds.at(-1)!
  const middleOf = (e: number) => row.starts[e]! + row.widths[e]! / 2
  const inside = elements.flatMap((_, e) =>
    Math.abs(shareAlong(row, side, middleOf(e))) <= 1.0001 ? [e] : [],
  )
  const ends = [side, (side + 1) % cornerElements.length].map((corner, end) => {
    const way = end === 0 ? -1 : 1
    const outermost = inside
      .filter((e) => elements[e]!.type === "stitch")
      .reduce((a, b) =>
        way * shareAlong(row, side, middleOf(b)) > way * shareAlong(row, side, middleOf(a)) ? b : a,
      )
    const top = spots(middleOf(outermost))
    // A corner of stitches ends in its middle one; a chain is drawn tight from the last top to the corner line.
    const strand = Math.abs(
      ((1 - Math.abs(shareAlong(row, side, middleOf(outermost)))) * sideLength(row, side)) / 2,
    )
    if (!cornerElements[corner]!.some((e) => elements[e]!.type === "chain")) return top.out
    const beside = Math.abs(top.along)
    const away = top.out * Math.sin(half) - beside * Math.cos(half)
    const foot = top.out * Math.cos(half) + beside * Math.sin(half)
    return (foot + Math.sqrt(Math.max(0, strand ** 2 - away ** 2))) * Math.cos(half)
  })
  const middle = inside
    .map(middleOf)
    .filter((at) => Math.abs(shareAlong(row, side, at)) <= 1 / 3)
    .map((at) => spots(at).out)
  const mean = middle.reduce((sum, out) => sum + out, 0) / middle.length
  return (mean - (ends[0]! + ends[1]!) / 2) / (2 * apothem * Math.tan(half))
}

/** Edge from one corner's middle to the next one's. */
function sideLength({ corners, length }: Row, side: number): number {
  const reach = corners[(side + 1) % corners.length]! - corners[side]!
  return ((reach % length) + length) % length || length
}
