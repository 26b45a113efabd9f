// What the words of a round ask for and its work has no room for: a turn in its middle, a round named inside another,
// stitches skipped within one place, a join before the end, chains named at the join that the round does not make.
// The round is counted without it, and that is told.

import type { Finding } from "../base/problem-list.ts"
import { stepsWithin } from "../base/steps-within.ts"
import type { Place, Span, Step } from "../base/tree.ts"
import { idleFigures } from "./idle-figures.ts"

interface Worked {
  /** Number of the round. */
  readonly number: number
  /** The round comes to its stated total without them. */
  readonly settled: boolean
  /** The first round: its stitches have no loops to choose from. */
  readonly onCentre: boolean
  readonly skipsMet: ReadonlySet<Step>
}

export function idleFindings(steps: readonly Step[], worked: Worked): Finding[] {
  const figures = idleFigures(steps, worked.number)
  const idle: Idle[] = [
    ...idleIn(steps, worked, false),
    ...otherLegs(steps),
    ...otherChainJoined(steps),
    ...figures.map((one) => ({ ...one, hint: "Mend the figure.", passing: true as const })),
  ]
  return idle.map(({ message, hint, span, passing }) => ({
    severity: worked.settled || passing ? "note" : "warning",
    code: "step-without-effect",
    start: span.start,
    end: span.end,
    message,
    hint,
  }))
}

interface Idle {
  readonly span: Span
  readonly message: string
  readonly hint: string
  /** Told in passing: it changes no count. */
  readonly passing?: true
}

/** @param inside within a repeat, or within one place */
function idleIn(list: readonly Step[], worked: Worked, inside: boolean): Idle[] {
  return list.flatMap((step, at): Idle[] => {
    const after = list.slice(at + 1)
    const goesOn = after.some(makesStitches)
    const within = inside || (list.slice(0, at).some(makesStitches) && goesOn)
    switch (step.do) {
      case "turn":
        if (list[at - 1]?.do === "turn") return [{ span: step, ...sentences.turnedBack }]
        return within || (worked.onCentre && goesOn) ? [{ span: step, ...sentences.turn }] : []
      case "join":
        return within && !step.ring ? [{ span: step, ...sentences.join, passing: true }] : []
      case "as-round":
        return inside ? [{ span: step, ...sentences.round }] : []
      case "mode":
        return step.loops &&
          (worked.onCentre || !after.some((one) => takesLoops(one) || (inside && slipsOn(one))))
          ? [{ span: step, ...sentences.loops, passing: true }]
          : []
      case "work":
        return step.even && step.extra !== undefined && worked.onCentre
          ? [{ span: step, ...sentences.spread }]
          : []
      case "chain":
        return step.place?.at === "each" ? [{ span: step, ...sentences.chains, passing: true }] : []
      case "skip":
        if (after.some((one) => one.do === "work" && one.even))
          return [{ span: step, ...sentences.even, passing: true }]
        if (step.rest && (inside || after.some(isWorkedOnward)))
          return [{ span: step, ...sentences.rest }]
        if (step.steps?.some(isNothingToSkip))
          return [{ span: step, ...sentences.within, passing: true }]
        if (step.steps?.some((inner) => inner.do === "group"))
          return idleIn(step.steps, worked, true)
        if (step.steps?.some((inner) => inner.do === "repeat"))
          return [{ span: step, ...sentences.often, passing: true }]
        if (!worked.skipsMet.has(step) && step.place)
          return [{ span: step, ...sentences.unmet, passing: true }]
        if (step.steps?.some((inner) => inner.do === "skip"))
          return [{ span: step, ...sentences.skip, passing: true }]
        return worksInSame(after) ? [{ span: step, ...sentences.same, passing: true }] : []
      case "repeat":
        return [...idleIn(step.body, worked, true), ...idleInLast(step.last ?? [], worked, after)]
      case "pass":
        return step.cases.flatMap((one) => idleIn([one], worked, true))
      case "group":
        if (step.place.at === "each" && !step.steps.some(makesStitches))
          return [{ span: step, ...sentences.chains, passing: true }]
        return onePlace(step.place)
          ? step.steps.flatMap((inner): Idle[] =>
              inner.do === "skip"
                ? [{ span: inner, ...sentences.skip }]
                : inner.do === "work" && inner.place?.at === "next" && step.place.at === "each"
                  ? [{ span: inner, ...sentences.inner, passing: true }]
                  : idleIn([inner], worked, true),
            )
          : idleIn(step.steps, worked, true)
      default:
        return []
    }
  })
}

/** The ending of the last repeat: what comes after it stands outside. */
function idleInLast(last: readonly Step[], worked: Worked, after: readonly Step[]): Idle[] {
  const joins = after[0]?.do === "join" || after[0]?.do === "slip"
  const [turns, rounds] = [sentences.turn, sentences.round]
  return [
    ...last.flatMap((one, at): Idle[] => {
      if (one.do === "as-round") return [{ span: one, ...rounds }]
      const behind = [...last.slice(at + 1), ...after]
      if (one.do === "mode" && one.loops && !behind.some(takesLoops))
        return [{ span: one, ...sentences.loops, passing: true }]
      const goesOn = at < last.length - 1 || joins
      return one.do === "turn" && goesOn ? [{ span: one, ...turns, passing: true }] : []
    }),
    ...idleIn(
      last.filter((one) => one.do !== "as-round" && one.do !== "turn" && one.do !== "mode"),
      worked,
      false,
    ),
  ]
}

/** "ch 5 (counts as tr, ch 1) ... join to 3rd ch": another chain than the one that the stitch ends on. */
function otherChainJoined(steps: readonly Step[]): Idle[] {
  const start = steps.find((step) => step.do === "chain" || makesStitches(step))
  if (start?.do !== "chain" || !start.countsAs?.kind || !start.countsAs.chains) return []
  const top = start.chains - start.countsAs.chains
  return steps.flatMap((step): Idle[] =>
    step.do === "join" && step.chain !== undefined && step.chain !== top
      ? [
          {
            span: step,
            message: `The first stitch is ${top} chains tall as the round begins, and the round is joined to chain ${step.chain}.`,
            hint: "Mend the figure of the join or that of the first chain.",
            passing: true,
          },
        ]
      : [],
  )
}

/** "(counts as dc4tog)" in a round whose clusters all have three legs. */
function otherLegs(steps: readonly Step[]): Idle[] {
  const made = new Set<number>()
  const stated: { step: Step; legs: number }[] = []
  const walk = (list: readonly Step[]) => {
    for (const [k, step] of list.entries()) {
      const [before, after] = [list[k - 1], list[k + 1]]
      const own =
        after?.do === "note-counts" || (before?.do === "chain" && before.countsAs?.kind?.gathered)
      if (step.do === "work" && step.stitch.kind.gathered && !own)
        made.add(step.stitch.kind.gathered.legs)
      const counts = "countsAs" in step ? step.countsAs?.kind?.gathered : undefined
      if (counts) stated.push({ step, legs: counts.legs })
      walk(stepsWithin(step))
    }
  }
  walk(steps)
  return stated
    .filter(({ legs }) => made.size > 0 && !made.has(legs))
    .map(({ step, legs }) => ({
      span: step,
      message: `No other stitch of this round is made of ${legs}, as this one is said to count.`,
      hint: "",
      passing: true,
    }))
}

const sentences = {
  turn: {
    message: "The work is turned here in the middle of the round; it is counted as if it were not.",
    hint: "Give what is worked back and forth rows of its own.",
  },
  turnedBack: {
    message: "The work is turned twice here with nothing between; it is counted as if it were not.",
    hint: "Take one of the turns out, or write what is worked between them.",
  },
  rest: {
    message:
      "Nothing can be left unworked here, within one repeat or one place; this is passed over.",
    hint: "Say it at the end of the round.",
  },
  spread: {
    message:
      "There are no stitches yet among which more or fewer could be spread; it is passed over.",
    hint: "Say how many stitches go into the ring.",
  },
  join: {
    message: "The round is joined here before it ends; what follows is counted with it.",
    hint: "",
  },
  round: {
    message: "Another round is named here within this one; it is not worked.",
    hint: "Write out what is worked here.",
  },
  skip: {
    message: "This stands among stitches that all go into one place, where nothing is skipped.",
    hint: "Take it out of the bracket if it is meant after it.",
  },
  even: {
    message:
      "The stitches of this round are spread over all of the round below; nothing is left out.",
    hint: "",
  },
  often: {
    message: "What is skipped here is told more than once; it is skipped once.",
    hint: "",
  },
  within: {
    message: "Among what is skipped here stands something that makes no stitch; it is passed over.",
    hint: "",
  },
  loops: {
    message: "Loops are named here with nothing after it that could go into them.",
    hint: "Name them before the stitches that go into them.",
  },
  chains: {
    message: "Chains are worked into nothing; where they are said to go is not used.",
    hint: "",
  },
  inner: {
    message: "A place is named here within another; all of it goes into the outer one.",
    hint: "",
  },
  same: {
    message: "This is skipped, and what follows goes where the last stitch went all the same.",
    hint: "",
  },
  unmet: {
    message: "Nothing is left to skip when the round comes to this.",
    hint: "",
  },
} as const

export function makesStitches({ do: what }: Step): boolean {
  return what === "work" || what === "group" || what === "repeat" || what === "pass"
}

/** It is of the round itself: stitches, or slip stitches all round. */
export function isOfRound(step: Step): boolean {
  return makesStitches(step) || slipsInEach(step)
}

/** "sl st in each st around": slip stitches that a round is made of. */
function slipsInEach(step: Step): boolean {
  return step.do === "slip" && step.place?.at === "each"
}

/** A turn, loops, stitches spread over a round: nothing that lies on the edge to be skipped. */
function isNothingToSkip(step: Step): boolean {
  return step.do === "turn" || step.do === "mode" || (step.do === "work" && step.even === true)
}

/** Not round a post, nor into something of this round: it goes into loops of the round below. */
function takesLoops(step: Step): boolean {
  if (step.do === "work") {
    const { post, loops } = step.stitch.kind
    const own = post ?? loops ?? step.place?.loops
    return own === undefined && isWorkedOnward(step)
  }
  // One slip stitch by itself leads on or closes; in each, or repeated, they are what the round is made of.
  if (step.do === "slip") return slipsInEach(step)
  if (step.do === "repeat") return step.body.some((one) => takesLoops(one) || slipsOn(one))
  return makesStitches(step)
}

function slipsOn(step: Step): boolean {
  return step.do === "slip" && step.place?.at === "next" && !step.place.order
}

/** It makes stitches, and does not only close the round. */
function isWorkedOnward(step: Step): boolean {
  if (!makesStitches(step)) return false
  if (step.do !== "work" || !step.place) return true
  const { at } = step.place
  const closes = at === "next" && step.place.order === "first" && step.count === 1
  return at !== "made" && !closes
}

/** What comes next goes where the last stitch went. */
function worksInSame(steps: readonly Step[]): boolean {
  const next = steps.find(({ do: what }) => what !== "chain" && what !== "mode")
  return (next?.do === "work" || next?.do === "group") && next.place?.at === "same"
}

function onePlace({ at }: Place): boolean {
  return at === "next" || at === "each" || at === "same" || at === "list" || at === "ring"
}
