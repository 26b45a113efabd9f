// Steps worked if there is enough for them, and whether anything is left to work into.

import { CannotWork } from "../base/cannot-work.ts"
import type { Step } from "../base/tree.ts"
import type { Cell } from "../edge/edge.ts"
import type { RoundWork } from "./round-work.ts"

/** True when no stitch or space, or nothing of the one kind asked for, lies between the hook and the end of the round. */
export function nothingLeft(
  work: RoundWork,
  kinds: readonly Cell["type"][] = ["stitch", "chain"],
): boolean {
  const { edge, at } = work.main
  for (let k = at; k < work.end; k++) {
    const type = edge.cells[((k % edge.size) + edge.size) % edge.size]?.type
    if (type !== undefined && kinds.includes(type)) return false
  }
  return true
}

/** The steps worked if the round below has enough for them; else why not, with nothing changed but what the caller takes back. */
export function tryOnce(work: RoundWork, steps: readonly Step[]): CannotWork | null {
  const inPlace = work.inPlace
  const depth = work.repeatDepth
  try {
    work.performers.steps(work, steps)
    return null
  } catch (stop) {
    if (!(stop instanceof CannotWork)) throw stop
    work.inPlace = inPlace
    work.repeatDepth = depth
    if (!isShortage(stop.code)) throw stop
    return stop
  }
}

/** The round below has less than is asked for. */
export function isShortage(code: string): boolean {
  return code === "needs-more-than-there-is" || code === "nothing-left"
}
