// Fans told stitch by stitch up to their top: "a fan of 9: hdc, dc, tr, ..., then down again"; and
// stitches that share their legs with a neighbour: "8 dc2tog, each over the last used dc and the 2nd along".

import type { Place, Step } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readCounted, readKind } from "./stitch-names.ts"

/** "a fan of 9: hdc, dc, tr, dtr, tr, dc ..."; with "then down again" the second half mirrors the first. */
export function readFan(cursor: Cursor): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    cursor.accept("a", "one", "1")
    if (!cursor.take("group") || !cursor.accept("of")) return null
    if (!cursor.isNumber()) return null
    const wanted = cursor.value()
    cursor.at += 1
    cursor.accept("sts", "stitches")
    if (!cursor.accept(":")) return null
    const steps: Extract<Step, { do: "work" }>[] = []
    let made = 0
    while (!cursor.done() && made < wanted) {
      const at = cursor.at
      cursor.accept(",")
      cursor.take("and")
      const start = cursor.start()
      const counted = readCounted(cursor)
      if (!counted || counted.stitch.shape) {
        cursor.at = at
        break
      }
      made += counted.count
      steps.push({
        ...cursor.since(start),
        do: "work",
        stitch: counted.stitch,
        count: counted.count,
        place: null,
      })
    }
    const top = steps[steps.length - 1]
    if (!top || made > wanted) return null
    const mirrored = cursor.attempt(() => {
      cursor.accept(",")
      cursor.take("and")
      cursor.accept("go")
      if (!cursor.accept("down", "back", "reversed")) return null
      cursor.accept("again", "down")
      return true
    })
    if (!mirrored) return made === wanted ? steps : null
    const withoutTop = made - top.count
    if (withoutTop * 2 + top.count === wanted) return [...steps, ...steps.slice(0, -1).reverse()]
    return made * 2 === wanted ? [...steps, ...steps.slice().reverse()] : null
  })
}

/** "8 dc2tog, each over the last used dc and the 2nd dc along, ch 3 between". */
export function readLinked(cursor: Cursor): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    const start = cursor.start()
    if (!cursor.isNumber()) return null
    const counted = readCounted(cursor)
    if (counted?.stitch.kind.gathered?.legs !== 2 || !counted.stitch.tog) return null
    cursor.accept(",", "(")
    if (!cursor.accept("each") || !cursor.accept("over", "in", "into")) return null
    cursor.accept("the")
    cursor.accept("last", "same")
    cursor.accept("used", "worked")
    cursor.attempt(() => readKind(cursor) ?? (cursor.accept("st", "stitch") ? true : null))
    cursor.accept("used", "worked", "last")
    cursor.accept("in", "into")
    if (!cursor.take("and")) return null
    cursor.accept("in", "into", "the")
    const ahead = cursor.peek()
    let along = 1
    if (ahead?.type === "ordinal") {
      along = ahead.value
      cursor.at += 1
    } else if (!cursor.accept("next")) return null
    cursor.attempt(() => readKind(cursor) ?? (cursor.accept("st", "stitch") ? true : null))
    cursor.accept("along", "on", "further", "from")
    cursor.accept("it", "that")
    cursor.accept(",", ")")
    const chains = cursor.attempt(() => {
      cursor.accept("with")
      const before = cursor.isNumber() && /^(?:ch|chs|chain|chains)$/.test(cursor.text(1))
      if (!before && (!cursor.accept("ch", "chain") || !cursor.isNumber())) return null
      const value = cursor.value()
      cursor.at += before ? 2 : 1
      return cursor.accept("between") ? value : null
    })
    const span = cursor.since(start)
    const same: Place = { ...span, at: "same", noun: { what: "any" } }
    const next: Place = {
      ...span,
      at: "next",
      noun: { what: "stitch" },
      count: along,
      closes: true,
    }
    const work: Step = {
      ...span,
      do: "work",
      stitch: counted.stitch,
      count: 1,
      place: null,
      legs: [
        { count: 1, place: same },
        { count: 1, place: along > 1 ? { ...next, pick: along } : next },
      ],
    }
    const chain: Step[] = chains === null ? [] : [{ ...span, do: "chain", chains, place: null }]
    return [
      {
        ...span,
        do: "repeat",
        body: [work, ...chain],
        last: null,
        ending: null,
        times: { kind: "total", count: counted.count },
      },
    ]
  })
}
