// Rounds one change away from a round of fabric: a chain more or fewer at the corner or in a gap, another stitch.

import {
  type CornerWork,
  type FabricRound,
  kindsOf,
  mirroredSide,
  type SeatClass,
  type SideWork,
} from "./fabric-plan.ts"
import type { FabricWish } from "./fabric-wish.ts"

export function* neighboursOfFabric(plan: FabricRound, wish: FabricWish): Generator<FabricRound> {
  const sides = (change: (side: SideWork) => SideWork): FabricRound => ({
    ...plan,
    sides: new Map([...plan.sides].map(([key, side]) => [key, change(side)])),
  })
  // Where the next round is built on spaces, every unit keeps its chains.
  const fewest = plan.next === "spaces" ? 1 : 0
  const more = (side: SideWork, by: number, outer: boolean): SideWork => ({
    ...side,
    gaps: side.gaps.map((gap, i) =>
      !outer || i === 0 || i === side.gaps.length - 1 ? Math.max(fewest, gap + by) : gap,
    ),
  })
  for (const by of [1, -1]) {
    for (const [seat, corner] of plan.corners)
      for (const changed of [
        { ...corner, chains: corner.chains + by },
        { ...corner, each: corner.each + by },
      ])
        if (wish.corners.some((one) => alike(one, changed)))
          yield { ...plan, corners: new Map(plan.corners).set(seat, changed) }
    yield sides((side) => more(side, by, false))
    yield sides((side) => more(side, by, true))
    if (plan.sides.size > 1)
      for (const [key, side] of plan.sides)
        for (const outer of [false, true])
          yield { ...plan, sides: withSide(plan.sides, key, more(side, by, outer)) }
    yield* withOtherKinds(plan, wish, by)
  }
}

function alike(one: Omit<CornerWork, "kind">, other: CornerWork): boolean {
  return one.each === other.each && one.chains === other.chains && one.inner === other.inner
}

/** The taller or lower stitch in the corners, in a pair of units, or in all of a plain round. */
function* withOtherKinds(plan: FabricRound, wish: FabricWish, by: number): Generator<FabricRound> {
  const { kinds } = wish
  const step = (kind: number) => kinds[kinds.indexOf(kind) + by]
  const sides = (change: (side: SideWork) => SideWork) =>
    new Map([...plan.sides].map(([key, side]) => [key, change(side)]))
  const used = kindsOf(plan)
  const only = used.size === 1 ? step([...used][0]!) : undefined
  if (used.size === 1) {
    if (only === undefined) return
    yield {
      ...plan,
      corners: new Map(
        [...plan.corners].map(([seat, corner]) => [seat, { ...corner, kind: only }]),
      ),
      sides: sides((side) => ({
        ...side,
        works: side.works.map((work) => ({ ...work, kind: only })),
      })),
    }
    return
  }
  for (const [seat, corner] of plan.corners) {
    const kind = step(corner.kind)
    if (kind === undefined) continue
    const changed = { ...plan, corners: new Map(plan.corners).set(seat, { ...corner, kind }) }
    if (isMonotone(changed)) yield changed
  }
  const longest = Math.max(...[...plan.sides.values()].map(({ works }) => works.length))
  for (let fromEnd = 0; fromEnd < (longest + 1) >> 1; fromEnd++) {
    const changed = {
      ...plan,
      sides: sides((side) => ({
        ...side,
        works: side.works.map((work, i) =>
          i === fromEnd || i === side.works.length - 1 - fromEnd
            ? { ...work, kind: step(work.kind) ?? work.kind }
            : work,
        ),
      })),
    }
    if (isMonotone(changed)) yield changed
  }
}

/** The sides with one changed, and its mirror image with it. */
function withSide(
  sides: ReadonlyMap<string, SideWork>,
  key: string,
  side: SideWork,
): Map<string, SideWork> {
  const [n, one, other] = key.split(" ")
  const mirrored = `${n} ${other} ${one}`
  const changed = new Map(sides).set(key, side)
  return mirrored !== key && sides.has(mirrored)
    ? changed.set(mirrored, mirroredSide(side))
    : changed
}

/** Whether heights only rise or only fall from the middle of every side to its corners. */
export function isMonotone(plan: FabricRound): boolean {
  let rises = true
  let falls = true
  for (const [key, { works }] of plan.sides) {
    const [, one, other] = key.split(" ") as [string, SeatClass, SeatClass]
    const at = (seat: SeatClass) => plan.corners.get(seat)!.kind
    const kinds = [at(one), ...works.map(({ kind }) => kind), at(other)]
    rises &&= oneTurn(kinds, 1)
    falls &&= oneTurn(kinds, -1)
  }
  return rises || falls
}

/** Whether a row goes one way (down for 1) and then the other, once. */
function oneTurn(row: readonly number[], way: 1 | -1): boolean {
  let turned = false
  for (let i = 1; i < row.length; i++) {
    const step = way * Math.sign(row[i]! - row[i - 1]!)
    if (step > 0) turned = true
    if (step < 0 && turned) return false
  }
  return true
}
