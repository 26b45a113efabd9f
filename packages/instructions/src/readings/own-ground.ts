// What a round asks of the round below, read off its own words: "*3 dc in next ch-2 sp, sk 1 dc, dc in next dc; rep
// from * 5 more times" asks for six times a place for three stitches and a stitch. Each place, whatever it is called, is
// the next natural one of a round nobody needs to know; what is passed over makes nothing and is left out.

import type { Element, Round } from "@roundwright/motif"
import type { Place, Step } from "../base/tree.ts"

/** Elements of the largest ground built. */
const mostElements = 2_000
/** Chains of a space: what is worked into one place of any name is worked into such a one. */
const spaceChains = 3
const fewestElements = 3

type Next = Extract<Place, { at: "next" }>

class NotTold extends Error {}

/** How often what goes "around" or into "each" is worked: null where the words tell it themselves. */
export type TimesAround = number | null

/** The steps with every place a plain one and every "around" a number; null where it takes the round below to tell. */
export function onPlainPlaces(steps: readonly Step[], around: TimesAround): readonly Step[] | null {
  try {
    return plainSteps(steps, around)
  } catch (stop) {
    if (stop instanceof NotTold) return null
    throw stop
  }
}

function plainSteps(steps: readonly Step[], around: TimesAround): Step[] {
  const plain: Step[] = []
  for (const step of steps) {
    const one = plainStep(step, around)
    if (one) plain.push(one)
  }
  return plain
}

function plainStep(step: Step, around: TimesAround): Step | null {
  switch (step.do) {
    case "pass":
    case "as-round":
      throw new NotTold()
    case "skip":
      return null
    case "work": {
      if (step.legs || step.corner) throw new NotTold()
      const { even, ...rest } = step
      return { ...rest, place: even ? null : plainPlace(step.place, around) }
    }
    case "group": {
      const { loose, ...rest } = step
      const place = plainPlace(step.place, around)!
      return { ...rest, steps: plainSteps(step.steps, around), place }
    }
    case "slip":
    case "join":
    case "attach":
      return { ...step, place: plainPlace(step.place, around) }
    case "mode":
      return null
    case "repeat": {
      const { times } = step
      if (times.kind === "until" && (times.until.kind !== "around" || !around)) throw new NotTold()
      return {
        ...step,
        body: plainSteps(step.body, null),
        last: step.last && plainSteps(step.last, null),
        times: times.kind === "until" ? { kind: "total", count: around! } : times,
      }
    }
    default:
      return step
  }
}

function plainPlace(place: Place | null, around: TimesAround): Place | null {
  if (!place) return null
  const { start, end } = place
  const next = (what: "stitch" | "space", count: number, said?: Partial<Next>): Next => ({
    start,
    end,
    at: "next",
    noun: { what },
    count,
    ...said,
  })
  switch (place.at) {
    case "same":
    case "made":
    case "hook-chain":
    case "own-chain":
      return place
    case "ring":
      throw new NotTold()
    case "list":
      return { start, end, at: "list", places: place.places.map((one) => plainPlace(one, around)!) }
    case "each": {
      const [noun, other] = place.nouns
      if (!noun || other || place.until.kind !== "around") throw new NotTold()
      if (place.total !== undefined)
        return next(isStitch(noun.what) ? "stitch" : "space", place.total, { each: true })
      // Stitch into stitch all around is as many as there are.
      if (!around || (isStitch(noun.what) && place.pick === undefined && !place.every))
        throw new NotTold()
      return next("space", around, { each: true })
    }
    case "next": {
      const stitch = isStitch(place.noun.what) && place.pick === undefined
      const { order, closes, each } = place
      const said = {
        ...(order && { order }),
        ...(closes && { closes }),
        ...(each && { each }),
      }
      return next(stitch ? "stitch" : "space", place.pick === undefined ? place.count : 1, said)
    }
  }
}

function isStitch(what: string): boolean {
  return what === "stitch" || what === "chain" || what === "cell" || what === "any"
}

/**
 * The ground of steps on plain places.
 * @param leads the round begins on a stitch of its own
 */
export function groundOf(
  steps: readonly Step[],
  leads: boolean,
  given: { readonly number: number; readonly index: number },
): Round | null {
  const ground = new Ground(given.index)
  if (leads) ground.stitches(1)
  try {
    ground.take(steps, true)
  } catch (stop) {
    if (stop instanceof NotTold) return null
    throw stop
  }
  const elements = ground.closed()
  return elements.length >= fewestElements
    ? { number: given.number, elements, turned: false, closing: "joined" }
    : null
}

class Ground {
  private readonly elements: Element[] = []
  /** Chains left of a chain of the round itself that is worked back along. */
  private own = 0
  private lastChain = 0
  private begun = false

  constructor(private readonly index: number) {}

  closed(): Element[] {
    const { elements } = this
    if (elements[0]?.type === "chain" && elements.at(-1)?.type === "chain") this.stitches(1)
    return elements
  }

  take(steps: readonly Step[], top: boolean): void {
    for (const [i, step] of steps.entries()) this.step(step, top && i === steps.length - 1)
  }

  private step(step: Step, last: boolean): void {
    switch (step.do) {
      case "work": {
        this.begun = true
        const legs = step.stitch.tog ? (step.stitch.kind.gathered?.legs ?? 1) : 1
        if (step.place) this.place(step.place)
        else if (step.stitch.shape)
          this.stitches(step.count * (step.stitch.shape === "decrease" ? 2 : 1))
        else this.stitches(step.count * legs)
        return
      }
      case "group":
        this.begun = true
        this.place(step.place)
        return
      case "chain":
        this.lastChain = step.chains
        return
      case "slip": {
        const { place } = step
        if (!place || last || (place.at === "next" && place.order === "first" && this.begun)) return
        for (let k = 0; k < step.count; k++) this.place(place)
        return
      }
      case "attach":
        if (step.place) this.place(step.place)
        return
      case "repeat": {
        const { times } = step
        if (times.kind === "until") throw new NotTold()
        const count = times.count + (times.kind === "more" && !times.ofBracket ? 1 : 0)
        const whole = step.last && step.ending === "replaces" ? count - 1 : count
        for (let k = 0; k < whole; k++) this.take(step.body, false)
        if (step.last) this.take(step.last, false)
        return
      }
      default:
        return
    }
  }

  private place(place: Place): void {
    if (place.at === "list") for (const part of place.places) this.place(part)
    else if (place.at === "hook-chain") this.own = Math.max(0, this.lastChain - place.nth)
    else if (place.at === "own-chain") this.own = Math.max(0, this.lastChain - place.skip)
    else if (place.at === "next") {
      if (place.noun.what === "stitch") this.stitches(place.count)
      else for (let k = 0; k < place.count; k++) this.space()
    }
  }

  stitches(count: number): void {
    const past = Math.min(this.own, count)
    this.own -= past
    for (let k = past; k < count; k++) {
      const anchor = {
        at: "stitch" as const,
        round: Math.max(0, this.index - 1),
        element: this.elements.length,
      }
      this.push({ type: "stitch", kind: { basic: "sc" }, anchors: [anchor] })
    }
  }

  private space(): void {
    // Between two spaces stands a stitch nobody works into.
    if (this.elements.at(-1)?.type === "chain") this.stitches(1)
    this.push({ type: "chain", chains: spaceChains })
  }

  private push(element: Element): void {
    if (this.elements.length >= mostElements) throw new NotTold()
    this.elements.push(element)
  }
}
