// What a round asks of the round below, read off its own words: "*3 dc in next ch-2 sp, sk 1 dc, dc in next dc; rep
// from * 5 more times" asks for six times a space of 2 chains and two stitches. Where the round below is not known, or
// has not what is asked for, such a ground lets the counts go on.

import type { Element, Round } from "@roundwright/motif"
import type { Noun, Place, Step } from "../base/tree.ts"

/** Elements of the largest ground built. */
const mostElements = 2_000
/** Chains of a space of which no size is said, stitches of a group likewise. */
const usualSize = 3

/**
 * A ground with what the steps ask for; null where they do not tell how much that is ("around", "in each st").
 * @param leads the round begins on a stitch of its own
 */
export function groundAskedFor(
  steps: readonly Step[],
  leads: boolean,
  given: { readonly number: number; readonly index: number },
): Round | null {
  const ground = new Asked(given.index)
  if (leads) ground.stitches({ what: "stitch" }, 1)
  try {
    ground.ask(steps, true)
  } catch (stop) {
    if (stop instanceof NotTold) return null
    throw stop
  }
  const elements = ground.closed()
  return elements.length >= usualSize
    ? { number: given.number, elements, turned: false, closing: "joined" }
    : null
}

class NotTold extends Error {}

class Asked {
  private readonly elements: Element[] = []
  /** Chains left of a chain of the round itself that is worked back along. */
  private own = 0
  private lastChain = 0
  private begun = false

  constructor(private readonly index: number) {}

  closed(): Element[] {
    const { elements } = this
    if (elements[0]?.type === "chain" && elements.at(-1)?.type === "chain") this.divide()
    return elements
  }

  ask(steps: readonly Step[], top: boolean): void {
    for (const [i, step] of steps.entries()) this.step(step, top && i === steps.length - 1)
  }

  private step(step: Step, last: boolean): void {
    switch (step.do) {
      case "work":
        this.begun = true
        if (step.even || step.legs || step.corner) throw new NotTold()
        this.work(step)
        return
      case "group":
        this.begun = true
        this.place(step.place, 1)
        return
      case "chain":
        this.lastChain = step.chains
        return
      case "skip":
        for (const part of step.steps ?? [])
          if (part.do === "work") this.stitches({ what: "stitch" }, part.count)
          else if (part.do === "chain") this.space(part.chains)
          else throw new NotTold()
        if (step.place) this.place(step.place, 1)
        return
      case "slip":
        if (!step.place || last || step.place.at === "same" || step.place.at === "made") return
        if (step.place.at === "next" && step.place.order === "first" && this.begun) return
        this.place(step.place, step.count)
        return
      case "attach":
        if (step.place) this.place(step.place, 1)
        return
      case "repeat": {
        const times = this.timesOf(step)
        const whole = step.last && step.ending === "replaces" ? times - 1 : times
        for (let k = 0; k < whole; k++) this.ask(step.body, false)
        if (step.last) this.ask(step.last, false)
        return
      }
      case "pass":
      case "as-round":
        throw new NotTold()
      default:
        return
    }
  }

  private timesOf(step: Extract<Step, { do: "repeat" }>): number {
    const { times } = step
    if (times.kind === "total") return times.count
    if (times.kind === "more") return times.count + (times.ofBracket ? 0 : 1)
    throw new NotTold()
  }

  private work(step: Extract<Step, { do: "work" }>): void {
    const legs = step.stitch.tog ? (step.stitch.kind.gathered?.legs ?? 1) : 1
    if (step.place) {
      this.place(step.place, 1)
      return
    }
    if (step.stitch.shape) {
      this.stitches({ what: "stitch" }, step.count * (step.stitch.shape === "decrease" ? 2 : 1))
      return
    }
    for (let k = 0; k < step.count * legs; k++)
      if (this.own > 0) this.own -= 1
      else this.stitches({ what: "stitch" }, 1)
  }

  private place(place: Place, times: number): void {
    if (place.ofRound !== undefined || place.below !== undefined) throw new NotTold()
    switch (place.at) {
      case "same":
      case "made":
        return
      case "list":
        for (const part of place.places) this.place(part, 1)
        return
      case "hook-chain":
      case "own-chain": {
        const skipped = place.at === "hook-chain" ? place.nth : place.skip
        this.own = Math.max(0, this.lastChain - skipped)
        return
      }
      case "next":
        this.next(place, times)
        return
      default:
        throw new NotTold()
    }
  }

  private next(place: Extract<Place, { at: "next" }>, times: number): void {
    if (place.withLast || place.beside || place.startAt !== undefined || place.covers)
      throw new NotTold()
    const { noun } = place
    if (place.pick !== undefined) {
      if (place.pick === "dip") throw new NotTold()
      if (noun.what === "group") this.group(noun)
      else if (noun.what === "space" || noun.what === "corner") this.space(noun.size ?? usualSize)
      else if (noun.what === "stitch") this.stitches(noun, Math.max(1, place.count))
      else throw new NotTold()
      return
    }
    for (let k = 0; k < place.count * times; k++) {
      if (noun.what === "chain" && this.own > 0) this.own -= 1
      else if (noun.what === "stitch" && this.own > 0 && !noun.kind) this.own -= 1
      else if (noun.what === "stitch") this.stitches(noun, 1)
      else if (noun.what === "space" && !noun.middle) this.space(noun.size ?? usualSize)
      else if (noun.what === "corner") this.space(usualSize)
      else if (noun.what === "group") this.group(noun)
      else throw new NotTold()
    }
  }

  stitches(noun: Noun, count: number): void {
    const kind = noun.kind ?? { basic: "sc" as const }
    for (let k = 0; k < count; k++) {
      const at = this.elements.length
      this.push({ type: "stitch", kind, anchors: [this.anchor(at)] })
    }
  }

  private space(chains: number): void {
    if (this.elements.at(-1)?.type === "chain") this.divide()
    this.push({ type: "chain", chains })
  }

  /** Between two spaces stands a stitch nobody works into. */
  private divide(): void {
    this.stitches({ what: "stitch" }, 1)
  }

  private group(noun: Noun): void {
    const anchor = this.anchor(this.elements.length)
    for (let k = 0; k < (noun.size ?? usualSize); k++)
      this.push({ type: "stitch", kind: { basic: "dc" }, anchors: [anchor] })
  }

  private anchor(element: number) {
    return { at: "stitch" as const, round: Math.max(0, this.index - 1), element }
  }

  private push(element: Element): void {
    if (this.elements.length >= mostElements) throw new NotTold()
    this.elements.push(element)
  }
}
