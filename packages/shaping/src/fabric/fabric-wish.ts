// What a search of rounds in a fabric is given.

import type { Palette } from "../palette.ts"
import type { CornerWork } from "./fabric-plan.ts"
import type { Filling } from "./fit-fabric.ts"

export interface FabricWish {
  readonly fillings: readonly Filling[]
  readonly corners: readonly Omit<CornerWork, "kind">[]
  readonly rounds: number
  readonly palette: Palette
  /** Kinds allowed, indices into the palette, lowest first. */
  readonly kinds: readonly number[]
  /** Rounds whose heights may differ. */
  readonly gradedRounds: number
  /** Nothing is improved that is straight, true and flat already. */
  readonly brief?: boolean
  /** Pieces laid out at most. */
  readonly budget: number
}
