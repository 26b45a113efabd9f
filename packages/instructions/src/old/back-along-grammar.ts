// Leaves and points: a chain with stitches worked back along it. "ch 11, skip the last, over the next
// ch: 1 sc, 1 dc, 2 tr", "a point of ch 3 with (1 sc, 2 dc) back on it", "six points, each: ...".

import { readSteps } from "./grammar.ts"
import { readPlace } from "./place-grammar.ts"
import type { Place, Span, Step } from "../base/tree.ts"
import type { Words } from "./words.ts"
import { readCounted } from "./work-grammar.ts"

const chainWord = /^(?:ch|chs|chain|chains)$/

/** After "ch 11": ", skip the last, over the other 10 ch: ..."; null when the chain is left as it is. */
export function readBackAlong(words: Words, chains: number, start: number): Step | null {
  return words.attempt((): Step | null => {
    const from = words.start()
    words.accept(",", ";")
    words.accept("and", "then")
    const skip = readSkipped(words)
    if (skip === null || skip >= chains) return null
    words.accept(",", ";")
    words.accept("and", "then")
    words.accept("work", "working", "back")
    if (!words.accept("over", "on", "along", "in", "into", "back")) return null
    words.accept("along", "over", "on", "in")
    words.accept("the")
    words.accept("next", "other", "remaining", "rem", "rest")
    words.accept("of")
    words.accept("the")
    if (words.isNumber()) words.at += 1
    if (!chainWord.test(words.text())) return null
    words.at += 1
    words.accept(":", ",", "work")
    const steps = readRow(words, chains - skip)
    return steps && groupOn({ ...words.since(Math.min(start, from)) }, steps, skip)
  })
}

/** "a point of ch 3 with (1 sc, 2 dc) back on it". */
export function readPointOf(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.accept("a", "one", "1")
    if (!words.accept("point", "leaf", "spike", "tooth") || !words.accept("of")) return null
    if (!chainWord.test(words.text()) || !words.isNumber(1)) return null
    const chains = words.value(1)
    words.at += 2
    if (!words.accept("with") || !words.accept("(", "[")) return null
    const steps = readRow(words, chains)
    if (!steps || !words.accept(")", "]")) return null
    words.accept("worked")
    if (!words.accept("back") || !words.accept("on", "along", "over")) return null
    if (!words.accept("it", "them")) {
      words.accept("the")
      if (!chainWord.test(words.text())) return null
      words.at += 1
    }
    const span = words.since(start)
    const worked = steps.reduce((sum, step) => sum + (step.do === "work" ? step.count : 1), 0)
    return [
      { ...span, do: "chain", chains, place: null },
      groupOn(span, steps, Math.max(0, chains - worked)),
    ]
  })
}

const startsEachOf = new Set(
  "small large pointed tapering points leaves petals spokes rays spikes loops scallops arms".split(
    " ",
  ),
)

/** "six points, each: ...", "seven leaves in a ring, each: ...": so many times what follows. */
export function readEachOf(words: Words): Step[] | null {
  if (!startsEachOf.has(words.text(1))) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    if (!words.isNumber()) return null
    const count = words.value()
    words.at += 1
    words.accept("small", "large", "pointed", "tapering")
    if (!/^(?:points|leaves|petals|spokes|rays|spikes|loops|scallops|arms)$/.test(words.text()))
      return null
    words.at += 1
    words.attempt(() =>
      words.accept("in") && words.accept("a") && words.accept("ring") ? true : null,
    )
    words.accept(",", ":", "-")
    if (!words.accept("each")) return null
    words.accept("one")
    words.accept("of", "worked", "made", "as", "thus")
    words.accept("follows")
    words.accept(":", ",")
    const run = readSteps(words, (w) => w.text() === ";" || w.text() === ".")
    if (run.steps.length === 0) return null
    return [
      {
        ...words.since(start),
        do: "repeat",
        body: run.steps,
        last: null,
        ending: null,
        times: { kind: "total", count },
      },
    ]
  })
}

/** "10 groups of (3 dc, ch 1, 3 dc), each in the 3rd of next 6 sc": so many, each in its place. */
export function readGroupsEach(words: Words): Step[] | null {
  if (words.text(2) !== "of") return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    if (!words.isNumber()) return null
    const count = words.value()
    words.at += 1
    if (!/^(?:groups|shells|sets|fans|petals|points)$/.test(words.text())) return null
    words.at += 1
    if (!words.accept("of") || !words.accept("(", "[")) return null
    const run = readSteps(words, () => false)
    if (!words.accept(")", "]") || run.steps.length === 0) return null
    words.accept(",", ":")
    if (!words.accept("each", "one")) return null
    words.accept("worked")
    const place = readPlace(words)
    if (place?.at !== "next") return null
    const span = words.since(start)
    return [
      {
        ...span,
        do: "repeat",
        body: [{ ...span, do: "group", steps: run.steps, place }],
        last: null,
        ending: null,
        times: { kind: "total", count },
      },
    ]
  })
}

/** "skip the last", "skip 1 ch", "miss first ch". */
function readSkipped(words: Words): number | null {
  if (!words.accept("skip", "sk", "miss")) return null
  words.accept("the")
  let count = 1
  const last = words.accept("last", "first")
  if (words.isNumber()) {
    count = words.value()
    words.at += 1
  } else if (!last) return null
  if (chainWord.test(words.text())) words.at += 1
  words.accept("from")
  words.accept("hook")
  return Number.isInteger(count) ? count : null
}

/** Plain stitches one after the other, until the chain is covered. */
function readRow(words: Words, places: number): Step[] | null {
  const steps: Step[] = []
  let worked = 0
  while (!words.done() && worked < places) {
    const start = words.start()
    const at = words.at
    words.accept(",")
    words.accept("and", "then")
    if (steps.length > 0 && closesTogether(words, steps)) continue
    const counted = readCounted(words)
    if (!counted || counted.stitch.shape || worked + counted.count > places) {
      words.at = at
      break
    }
    worked += counted.count
    steps.push({
      ...words.since(start),
      do: "work",
      stitch: counted.stitch,
      count: counted.count,
      place: null,
    })
  }
  words.attempt(() => {
    words.accept(",")
    return closesTogether(words, steps) ? true : null
  })
  return steps.length > 0 ? steps : null
}

/** ", the last two closed together": two legs with one top. */
function closesTogether(words: Words, steps: Step[]): boolean {
  return (
    words.attempt(() => {
      words.accept("the")
      if (!words.accept("last") || !words.isNumber()) return null
      const legs = words.value()
      words.at += 1
      if (!words.accept("closed", "worked", "drawn") || !words.accept("together", "tog"))
        return null
      const last = steps[steps.length - 1]
      if (last?.do !== "work" || last.count < legs || last.stitch.kind.gathered) return null
      const kind = { ...last.stitch.kind, gathered: { how: "together" as const, legs } }
      steps.pop()
      if (last.count > legs) steps.push({ ...last, count: last.count - legs })
      steps.push({ ...last, stitch: { kind, tog: true }, count: 1 })
      return true
    }) !== null
  )
}

function groupOn(span: Span, steps: readonly Step[], skip: number): Step {
  const place: Place = { ...span, at: "own-chain", skip }
  return { ...span, do: "group", steps, place }
}
