// What a page knows from those who take their time: searches and plans made and shapes laid out, by it or before it was
// opened. It grows while the page is open, and goes along when the page is saved.

import type { CarriedAnswers } from "../carried.ts"
import type { CirclePlan } from "../circle.ts"
import type { FinishingAnswer } from "../finishing/types.ts"
import type { ShapeFound } from "../laid-out-pattern.ts"
import type { SquaringResult } from "../squaring.ts"
import type { TransitionsResult } from "../transitions.ts"
import type { KnownAnswers } from "./messages.ts"

export class Known implements KnownAnswers {
  readonly searches: Map<string, SquaringResult>
  readonly transitions: Map<string, TransitionsResult>
  readonly finishing: Map<string, FinishingAnswer>
  readonly plans: Map<string, CirclePlan>
  readonly shapes: Map<string, ShapeFound>

  constructor({ searches, transitions, finishing, plans, shapes }: CarriedAnswers) {
    this.searches = new Map(searches)
    this.transitions = new Map(transitions)
    this.finishing = new Map(finishing)
    this.plans = new Map(plans)
    this.shapes = new Map(shapes)
  }

  /** To be asked with: plain maps, which can be sent to a worker. */
  get plain(): KnownAnswers {
    const { searches, transitions, finishing, plans, shapes } = this
    return { searches, transitions, finishing, plans, shapes }
  }

  /** To be carried by the page when it is saved. */
  carried(): CarriedAnswers {
    const { searches, transitions, finishing, plans, shapes } = this
    // What could not be laid out here may be where the page is opened next.
    const laidOut = [...shapes].filter(([, { laidOut }]) => laidOut?.by === "net")
    return {
      ...(searches.size > 0 ? { searches: [...searches] } : {}),
      ...(transitions.size > 0 ? { transitions: [...transitions] } : {}),
      ...(finishing.size > 0 ? { finishing: [...finishing] } : {}),
      ...(plans.size > 0 ? { plans: [...plans] } : {}),
      ...(laidOut.length > 0 ? { shapes: laidOut } : {}),
    }
  }
}
