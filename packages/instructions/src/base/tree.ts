// What the grammar makes of a round's words: steps to be worked, the places they are worked into,
// and asides. Every step keeps the stretch of text it came from.

import type { StitchKind } from "@roundwright/stitches"

export interface Span {
  readonly start: number
  readonly end: number
}

/** A stitch as named: `tog` when its legs may be spread over several places. */
export interface StitchName {
  readonly kind: StitchKind
  /** "dc3tog" and clusters: legs that may go into one place or several. */
  readonly tog: boolean
  /** "inc" and "dec" stand for two in one and two together of the round's stitch. */
  readonly shape?: "increase" | "decrease" | "same"
}

/** What a place is called. */
export interface Noun {
  readonly what:
    | "stitch"
    | "space"
    | "chain"
    | "gap"
    | "group"
    | "picot"
    | "corner"
    | "ring"
    | "any"
    /** A stitch or a single chain. */
    | "cell"
    /** Called by a word nobody knows: the next natural unit, a space, a petal or a stitch. */
    | "unit"
  readonly kind?: StitchKind
  /** Chains of a space ("ch-3 sp"), stitches of a group ("3-dc group"). */
  readonly size?: number
  /** "5 ch sps": the figure may say how many rather than of which size. */
  readonly sizeOrCount?: true
  readonly corner?: boolean
  /** "side sp": one that is no corner. */
  readonly side?: boolean
  /** "small loop": a picot, or the smallest spaces. */
  readonly small?: boolean
  /** "top of petal": the space at the middle of a group. */
  readonly middle?: boolean
  /** "skipped st of Rnd 2": one nobody has worked into yet. */
  readonly unworked?: boolean
  /** "sp between groups": only where groups meet. */
  readonly betweenGroups?: boolean
  /** "sp between 3-dc groups": how large these are. */
  readonly groupSize?: number
  /** "sp between hdc and dc": what stands on either side of a gap. */
  readonly sides?: readonly [StitchKind, StitchKind] | undefined
  /** "sp before next dc": the gap just before a stitch. */
  readonly before?: boolean
}

/** Which of several; "dip" is half-way between one group and the next. */
export type Pick = number | "centre" | "last" | "dip"

export type Place = Span & {
  readonly loops?: "front" | "back" | "third"
  readonly post?: "front" | "back"
  /** A round named: "of Rnd 2". */
  readonly ofRound?: number
  /** "4 rnds below". */
  readonly below?: number
  readonly passes?: "behind" | "front"
  /** Said with "over": may mean the stitch below the round just made. */
  readonly over?: boolean
  /** What lies between and is worked over. */
  readonly covers?: Noun
  readonly coversCount?: number
  /** Said with "each of": every place gets the whole. */
  readonly each?: boolean
} & (
    | { readonly at: "ring"; readonly made?: "adjustable" | "solid" }
    /** Back along the chain just made, `skip` of its last chains left out. */
    | { readonly at: "own-chain"; readonly skip: number }
    /** Into the n-th chain from the hook. */
    | { readonly at: "hook-chain"; readonly nth: number }
    /** Where the last stitch went, or the join. */
    | {
        readonly at: "same"
        readonly noun: Noun
        /** "same place as beginning", "joining st": where the round began. */
        readonly begins?: true
      }
    /** The next `count` of them; with `pick` one inside that run, group or space. */
    | {
        readonly at: "next"
        readonly noun: Noun
        readonly count: number
        readonly pick?: Pick
        readonly pickNoun?: Noun
        /** "each of the 5 centre sc of next group": so many at its middle. */
        readonly middle?: boolean
        /** "same and next 2", "st last worked in and next 4". */
        readonly withLast?: boolean
        /** Said to be the first, last or any one of its kind rather than the next. */
        readonly order?: "first" | "last" | "any"
        /** "ch-1 sp left of any corner", "3rd sc before any corner st". */
        readonly beside?: {
          readonly noun: Noun
          readonly side: "after" | "before"
          readonly nth: number
        }
        /** "in sp": neither next nor same is said. */
        readonly bare?: boolean
        /** "in 3rd": counted from the last one used, whether or not those before are said to be skipped. */
        readonly afterSkip?: boolean
        /** Once the round is used up it means the place the round began in. */
        readonly closes?: boolean
        /** "starting at the 5th of a group" moves on once. */
        readonly startAt?: number
        /** "every other of next 6": only each so-many-th of them; the others are passed over. */
        readonly every?: number
      }
    | {
        readonly at: "each"
        readonly nouns: readonly Noun[]
        readonly until: Until
        readonly every?: number
        readonly pick?: Pick
        readonly pickNoun?: Noun
        readonly total?: number
        /** "24 dc around": whether so many go into each or are all there are, nothing says. */
        readonly unsaid?: true
        /** "in each other": those the case before leaves out. */
        readonly others?: boolean
      } /** Several places named in a row, one after the other. */
    | { readonly at: "list"; readonly places: readonly Place[] }
    /** Something made in this round: "top of that dc", "last sc", "first sc". */
    | { readonly at: "made"; readonly which: "last" | "first"; readonly noun: Noun }
  )

export type Until =
  | {
      readonly kind: "around"
      readonly implied?: boolean
      readonly rest?: boolean
      /** "across": as far as a space of another size, where there is one. */
      readonly side?: true
    }
  /** Up to the next of a kind, not using it. */
  | { readonly kind: "to"; readonly noun: Noun; readonly ofRound?: number }
  /** Up to the last `count` of what is left. */
  | {
      readonly kind: "leaving"
      readonly count: number
      readonly ofGroup: boolean
      readonly noun?: Noun
    }

export type Times =
  | { readonly kind: "total"; readonly count: number }
  | {
      readonly kind: "more"
      readonly count: number
      /** Nothing says whether the first time is counted. */
      readonly plain: boolean
      /** It is said of a bracket just closed, whose first time is then usually counted. */
      readonly ofBracket?: true
      /** "until 8 are made": one of them may stand before the repeat. */
      readonly untilMade?: true
    }
  | { readonly kind: "until"; readonly until: Until }

export interface CountsAs {
  readonly counts: boolean
  readonly kind?: StitchKind
  readonly tog?: boolean
  readonly chains?: number
  readonly space?: number
}

/** How a round differs from the one it is worked like: stitches between its increases. */
export interface Growth {
  readonly plain: number
  readonly how: "more" | "exactly"
  /** Nothing is said of it but "continue in this way". */
  readonly implied?: boolean
}

/** So many in place of so many. */
export interface Instead {
  /** Absent where it is said of every loop: "having 5 chs in each loop". */
  readonly from?: number
  readonly to: number
  /** Chains rather than stitches. */
  readonly chains: boolean
}

export type Step =
  | (Span & {
      readonly do: "work"
      readonly stitch: StitchName
      readonly count: number
      readonly place: Place | null
      readonly even?: boolean
      readonly extra?: number
      readonly countsAs?: CountsAs
      /** Chains between one stitch and the next ("with ch 2 between"). */
      readonly between?: number
      /** "increasing in each corner": how many go there is not said. */
      readonly corner?: boolean
      /** "7 sc with 1 increase in the 4th": which of them is doubled. */
      readonly doubled?: number
      /** Legs spelled out: how many in which place. */
      readonly legs?: readonly { readonly count: number; readonly place: Place }[]
    })
  | (Span & {
      readonly do: "group"
      readonly steps: readonly Step[]
      readonly place: Place
      /** No bracket holds it together: its steps before the last may go one by one instead. */
      readonly loose?: true
    })
  | (Span & {
      readonly do: "chain"
      readonly chains: number
      readonly place: Place | null
      readonly countsAs?: CountsAs
      /** "ch 1 between groups": after every one of those named before it. */
      readonly between?: boolean
    })
  /** Several "each" that go round together. */
  | (Span & {
      readonly do: "pass"
      readonly cases: readonly Extract<Step, { do: "work" | "group" }>[]
    })
  | (Span & {
      readonly do: "skip"
      readonly place: Place | null
      readonly steps?: readonly Step[]
      /** "leave remaining sts unworked": all that are left. */
      readonly rest?: true
    })
  | (Span & {
      readonly do: "slip"
      readonly count: number
      readonly place: Place | null
      readonly kind?: StitchKind
      readonly to: boolean
    })
  | (Span & {
      readonly do: "join"
      readonly place: Place | null
      readonly chain?: number
      readonly ring?: boolean
    })
  | (Span & { readonly do: "attach"; readonly place: Place | null })
  | (Span & { readonly do: "turn" })
  | (Span & {
      readonly do: "repeat"
      readonly body: readonly Step[]
      readonly last: readonly Step[] | null
      readonly ending: "replaces" | "follows" | null
      /** The last time as it would be were the ending its tail rather than something after it. */
      readonly tail?: readonly Step[]
      /** The ending is followed by the slip stitch that joins the round. */
      readonly joins?: boolean
      readonly times: Times
    })
  | (Span & { readonly do: "picot"; readonly chains: number; readonly every?: number })
  | (Span & {
      readonly do: "ring"
      readonly centre: "adjustable" | "solid"
    })
  | (Span & {
      readonly do: "mode"
      readonly loops?: "front" | "back" | "third" | "both"
      readonly passes?: "behind" | "front"
      readonly ofRound?: number
      /** "Working along the opposite side of the chain": from here on. */
      readonly otherSide?: true
    })
  | (Span & {
      readonly do: "as-round"
      /** Printed number; absent for the round before. */
      readonly round?: number
      readonly to?: number
      readonly growth?: Growth
      /** ", making 9 dc instead of 7": figures that are others this time. */
      readonly instead?: readonly Instead[]
      /** ", ending with 1 dc in each of last 5 dc": how its last repeat ends this time. */
      readonly ending?: readonly Step[]
    })
  | (Span & { readonly do: "note-counts"; readonly countsAs: CountsAs; readonly chains?: number })

/** One figure of a stated total. */
export interface StatedItem extends Span {
  readonly count: number
  readonly unit:
    | "stitches"
    | "with-chains"
    | "kind"
    | "space"
    | "chains"
    | "picots"
    | "groups"
    | "repeats"
  readonly kind?: StitchKind
  readonly size?: number
  /** "6 petals of 7 sts": stitches of each group. */
  readonly each?: number
  /** The unit as written. */
  readonly word: string
}

export interface StatedTotal extends Span {
  readonly items: readonly StatedItem[]
  /** False for "if", "about", "or", "between": told, but not checked. */
  readonly firm: boolean
  /** "between 96 and 104", "14 or 15": not firm, but ours must be one of these. */
  readonly range?: "between" | "or"
  /** "+12 dc": so many more than the round before. */
  readonly more?: true
  /** "9 sts per side", "3 between corners": a part of the round. */
  readonly perSide?: true
  /** "24 dc, including beg ch": the starting chain is one of them. */
  readonly withStart?: true
}

export interface RoundTree {
  readonly steps: readonly Step[]
  /** What is told after the join and begins the next round. */
  readonly next?: readonly Step[]
  readonly totals: readonly StatedTotal[]
}
