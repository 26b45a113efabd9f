// Fans told stitch by stitch up to their top: "a fan of 9: hdc, dc, tr, ..., then down again"; and
// stitches that share their legs with a neighbour: "8 dc2tog, each over the last used dc and the 2nd along".

import { readKind } from "./stitch-grammar.ts"
import type { Place, Step } from "../base/tree.ts"
import type { Words } from "./words.ts"
import { readCounted } from "./work-grammar.ts"

/** "a fan of 9: hdc, dc, tr, dtr, tr, dc ..."; with "then down again" the second half mirrors the first. */
export function readFan(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    words.accept("a", "one", "1")
    if (!words.accept("fan", "shell", "petal", "scallop", "group") || !words.accept("of"))
      return null
    if (!words.isNumber()) return null
    const wanted = words.value()
    words.at += 1
    words.accept("sts", "stitches")
    if (!words.accept(":")) return null
    const steps: Extract<Step, { do: "work" }>[] = []
    let made = 0
    while (!words.done() && made < wanted) {
      const at = words.at
      words.accept(",")
      words.accept("and", "then")
      const start = words.start()
      const counted = readCounted(words)
      if (!counted || counted.stitch.shape) {
        words.at = at
        break
      }
      made += counted.count
      steps.push({
        ...words.since(start),
        do: "work",
        stitch: counted.stitch,
        count: counted.count,
        place: null,
      })
    }
    const top = steps[steps.length - 1]
    if (!top || made > wanted) return null
    const mirrored = words.attempt(() => {
      words.accept(",")
      words.accept("and", "then")
      words.accept("go")
      if (!words.accept("down", "back", "reversed")) return null
      words.accept("again", "down")
      return true
    })
    if (!mirrored) return made === wanted ? steps : null
    const withoutTop = made - top.count
    if (withoutTop * 2 + top.count === wanted) return [...steps, ...steps.slice(0, -1).reverse()]
    return made * 2 === wanted ? [...steps, ...steps.slice().reverse()] : null
  })
}

/** "8 dc2tog, each over the last used dc and the 2nd dc along, ch 3 between". */
export function readLinked(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    if (!words.isNumber()) return null
    const counted = readCounted(words)
    if (counted?.stitch.kind.gathered?.legs !== 2 || !counted.stitch.tog) return null
    words.accept(",", "(")
    if (!words.accept("each") || !words.accept("over", "in", "into")) return null
    words.accept("the")
    words.accept("last", "same")
    words.accept("used", "worked")
    words.attempt(() => readKind(words) ?? (words.accept("st", "stitch") ? true : null))
    words.accept("used", "worked", "last")
    words.accept("in", "into")
    if (!words.accept("and", "&")) return null
    words.accept("in", "into", "the")
    const ahead = words.peek()
    let along = 1
    if (ahead?.type === "ordinal") {
      along = ahead.value
      words.at += 1
    } else if (!words.accept("next")) return null
    words.attempt(() => readKind(words) ?? (words.accept("st", "stitch") ? true : null))
    words.accept("along", "on", "further", "from")
    words.accept("it", "that")
    words.accept(",", ")")
    const chains = words.attempt(() => {
      words.accept("with")
      const before = words.isNumber() && /^(?:ch|chs|chain|chains)$/.test(words.text(1))
      if (!before && (!words.accept("ch", "chain") || !words.isNumber())) return null
      const value = words.value()
      words.at += before ? 2 : 1
      return words.accept("between") ? value : null
    })
    const span = words.since(start)
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
