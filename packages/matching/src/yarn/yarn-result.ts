// What an estimate of yarn gives.

import type { YarnBasis } from "./yarn-basis.ts"

export interface YarnAmount {
  readonly what: string
  readonly sc: number
  readonly metres: number | null
  readonly grams: number | null
  /** 80 % bands; null with their figure. */
  readonly metresBand: readonly [number, number] | null
  readonly gramsBand: readonly [number, number] | null
  readonly errorShare: number
}

export interface YarnEstimate {
  readonly rounds: readonly (YarnAmount & { readonly round: number })[]
  readonly colours: readonly (YarnAmount & {
    readonly colour: string
    readonly skeins: number | null
  })[]
  readonly piece: YarnAmount
  readonly pieces: YarnAmount & { readonly count: number }
  readonly join: YarnAmount | null
  readonly border: YarnAmount | null
  readonly tails: YarnAmount | null
  readonly total: YarnAmount
  readonly reserveShare: number
  /** To buy, the reserve included; null where neither label nor weight tells. */
  readonly skeins: number | null
  readonly left: {
    readonly grams: number
    readonly pieces: number
    readonly roundsMore: number
  } | null
  readonly basis: YarnBasis
  readonly text: string
}
