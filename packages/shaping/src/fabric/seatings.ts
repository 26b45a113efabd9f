// In which ways k corners can fall on the units of a round: all on units, all between two, or each on whichever is nearer
// to its place. Units that k does not divide give sides that differ by one unit, shared out evenly.

import type { Fabric, Spot } from "./fabric-of.ts"
import type { Seat, Seating } from "./fabric-plan.ts"

/** Every seating that differs from the others but for a turn of the whole. */
export function seatingsOf(fabric: Fabric, corners: number, turns: number): Seating[] {
  const { units, joints } = fabric
  const n = units.length
  if (n < corners) return []
  const ways: ((corner: number) => number)[] = [
    (corner) => Math.round((corner * n) / corners),
    (corner) => Math.round((corner * n) / corners - 0.5) + 0.5,
    (corner) => Math.round((2 * corner * n) / corners) / 2,
    (corner) => Math.round((2 * corner * n) / corners + 0.5) / 2,
  ]
  const seen = new Set<string>()
  return ways.flatMap((way) =>
    Array.from({ length: turns }, (_, turn) => turn).flatMap((turn) => {
      const places = Array.from({ length: corners }, (_, corner) => way(corner) + turn)
      const key = places.join()
      if (seen.has(key)) return []
      seen.add(key)
      const seating = seatAt(units, joints, places)
      return seating === null ? [] : [seating]
    }),
  )
}

/** @param places of the corners in units, a half where one falls between two */
function seatAt(
  units: readonly Spot[],
  joints: readonly (Spot | null)[],
  places: readonly number[],
): Seating | null {
  const n = units.length
  const corners: Seat[] = []
  const sides: Spot[][] = []
  for (const [c, place] of places.entries()) {
    const on = Number.isInteger(place)
    const spot = on ? units[place % n] : joints[Math.floor(place) % n]
    if (!spot) return null
    corners.push({ spot, class: on ? "on" : "between" })
    const next = c + 1 < places.length ? places[c + 1]! : places[0]! + n
    const side: Spot[] = []
    for (let u = Math.floor(place) + 1; u < next; u++) side.push(units[u % n]!)
    sides.push(side)
  }
  return { corners, sides }
}

/** Sides of one class are alike, or mirror images: as many units, corners on units or between. */
export function classOf(seating: Seating, side: number): { key: string; mirrored: string } {
  const { corners, sides } = seating
  const n = sides[side]!.length
  const [one, other] = [corners[side], corners[(side + 1) % corners.length]].map(
    (seat) => seat?.class ?? "on",
  )
  return { key: `${n} ${one} ${other}`, mirrored: `${n} ${other} ${one}` }
}
