// Stitches: "3 dc in next st", "dc in next 3 sts", "2 sc in each st around", "dc3tog over next 3 dc",
// "36 sc evenly, increasing 6", "1 dark sc and 1 light sc in next sc".

import { readSteps } from "./grammar.ts"
import { readNoun } from "./nouns.ts"
import { readPlace, readTarget, readUntil } from "./place-grammar.ts"
import { isColour, readStitch } from "./stitch-grammar.ts"
import type { Place, Step, StitchName } from "./tree.ts"
import type { LocalStitch, Words } from "./words.ts"

/** Work in one stitch or several, with its places; null when no stitch is named here. */
export function readWork(words: Words, _steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    const shared = readShared(words, start)
    if (shared) return shared
    const local = readLocal(words, start)
    if (local) return local
    const plain = readWholeRound(words, start)
    if (plain) return plain
    const counted = readCounted(words)
    if (!counted) return null
    const { count } = counted
    let { stitch } = counted
    const ends = readFirstAndLast(words, stitch, count, start)
    if (ends) return ends
    const legs = stitch.kind.gathered ? readLegs(words) : null
    if (legs) return [{ ...words.since(start), do: "work", stitch, count, place: null, legs }]
    const even = readEven(words)
    if (even !== null)
      return [
        {
          ...words.since(start),
          do: "work",
          stitch,
          count: even > 0 && count === 1 ? 0 : count,
          place: null,
          even: true,
          ...(even > 0 ? { extra: even } : {}),
        },
      ]
    const until = aroundThing(words) ? null : readUntil(words)
    if (until && stitch.tog && stitch.kind.gathered?.how === "together") {
      // "sc2tog around": one after the other until the round is used up.
      const body: Step[] = [{ ...words.since(start), do: "work", stitch, count, place: null }]
      return [
        {
          ...words.since(start),
          do: "repeat",
          body,
          last: null,
          ending: null,
          times: { kind: "until", until },
        },
      ]
    }
    if (until) {
      const growth = readGrowth(words)
      if (growth !== null)
        return [
          {
            ...words.since(start),
            do: "work",
            stitch,
            count: 0,
            place: null,
            even: true,
            extra: growth,
          },
        ]
      const place: Place = { ...words.since(start), at: "each", nouns: [{ what: "stitch" }], until }
      return [{ ...words.since(start), do: "work", stitch, count, place }]
    }
    const place = readWorkPlace(words)
    stitch = formed(stitch, place)
    const between = readBetween(words)
    const spread = between !== null && !place && count > 1 && readSpread(words)
    if (spread)
      return [
        { ...words.since(start), do: "work", stitch, count, place: null, even: true, between },
      ]
    const step: Step = {
      ...words.since(start),
      do: "work",
      stitch,
      count,
      place,
      ...(between === null ? {} : { between }),
    }
    return [step, ...furtherPlaces(words, stitch, place)]
  })
}

/** "with ch 2 between", ", ch 3 between each": chains after every stitch. */
function readBetween(words: Words): number | null {
  return words.attempt(() => {
    words.accept(",")
    words.accept("with")
    if (!words.accept("ch", "chain") || !words.isNumber()) return null
    const chains = words.value()
    words.at += 1
    if (!words.accept("between")) return null
    words.accept("each", "every", "them")
    words.accept("st", "stitch", "one")
    return chains
  })
}

/** "2 dc in first and last dc of the side, 1 dc in each between": three steps of one side. */
function readFirstAndLast(
  words: Words,
  stitch: StitchName,
  count: number,
  start: number,
): Step[] | null {
  return words.attempt((): Step[] | null => {
    if (!words.accept("in")) return null
    words.accept("the")
    if (!words.acceptAll("first", "and", "last")) return null
    words.accept("of")
    readNoun(words)
    if (words.accept("of", "on")) {
      words.accept("the", "each", "a", "next")
      readNoun(words)
    }
    words.accept(",", ";")
    words.accept("and")
    const inner = readCounted(words)
    if (!inner || !words.accept("in")) return null
    if (!words.accept("each", "all")) return null
    words.accept("st", "stitch", "of")
    words.accept("the", "those")
    words.accept("sts", "stitches", "others")
    words.accept("between", "in", "other", "others")
    words.accept("between")
    const span = words.since(start)
    const next: Place = { ...span, at: "next", noun: { what: "stitch" }, count: 1 }
    const between: Place = {
      ...span,
      at: "each",
      nouns: [{ what: "stitch" }],
      until: { kind: "leaving", count: 1, ofGroup: true },
    }
    return [
      { ...span, do: "work", stitch, count, place: next },
      { ...span, do: "work", stitch: inner.stitch, count: inner.count, place: between },
      { ...span, do: "work", stitch, count, place: next },
    ]
  })
}

/** ", placed by turns 2 and 3 dc apart", ", evenly spaced". */
function readSpread(words: Words): boolean {
  return (
    words.attempt(() => {
      words.accept(",")
      if (words.accept("evenly")) {
        words.accept("spaced", "placed", "around")
        return true
      }
      if (!words.accept("placed", "spaced", "set")) return null
      if (words.accept("evenly")) return true
      words.accept("by", "in")
      words.accept("turns", "turn")
      while (words.isNumber() || words.accept("and", "or", ",")) if (words.isNumber()) words.at += 1
      readNoun(words)
      return words.accept("apart", "between") ? true : null
    }) !== null
  )
}

/** Legs spelled out: "tr4tog (3 legs in next ch-3 sp, 1 leg in next dc)". */
function readLegs(words: Words): { count: number; place: Place }[] | null {
  return words.attempt(() => {
    if (!words.accept("(", "[")) return null
    const legs: { count: number; place: Place }[] = []
    while (!words.done() && !/^[)\]]$/.test(words.text())) {
      if (words.accept(",", "and", ";", "&")) continue
      if (!words.isNumber()) return null
      const count = words.value()
      words.at += 1
      if (!words.accept("leg", "legs")) return null
      const place = readPlace(words)
      if (!place) return null
      legs.push({ count, place })
    }
    if (!words.accept(")", "]") || legs.length === 0) return null
    return legs
  })
}

/** "work even", "inc 6 evenly around", "dec 4 evenly": the round's own stitch over the whole round. */
function readWholeRound(words: Words, start: number): Step[] | null {
  return words.attempt((): Step[] | null => {
    const same: StitchName = { kind: { basic: "sc" }, tog: false, shape: "same" }
    if (words.accept("even") || words.acceptAll("work", "even")) {
      readUntil(words)
      const place: Place = {
        ...words.since(start),
        at: "each",
        nouns: [{ what: "stitch" }],
        until: { kind: "around" },
      }
      return [{ ...words.since(start), do: "work", stitch: same, count: 1, place }]
    }
    const growth = readGrowth(words)
    if (growth === null) return null
    readUntil(words)
    return [
      {
        ...words.since(start),
        do: "work",
        stitch: same,
        count: 0,
        place: null,
        even: true,
        extra: growth,
      },
    ]
  })
}

/** ", increasing 6 sts evenly", "inc 6 evenly", "decreasing 4 evenly": how many more or fewer. */
function readGrowth(words: Words): number | null {
  return words.attempt(() => {
    words.accept(",")
    words.accept("and", "with")
    const word = words.text()
    if (!words.accept("inc", "increase", "increasing", "dec", "decrease", "decreasing")) return null
    if (!words.isNumber() || !Number.isInteger(words.value())) return null
    const count = words.value()
    words.at += 1
    words.accept("st", "sts", "stitches", "times", "sc", "dc", "hdc")
    if (!words.accept("evenly")) return null
    words.accept("spaced", "spread")
    return word.startsWith("d") ? -count : count
  })
}

/** "around the ring", "around next dc": a place, not an end. */
function aroundThing(words: Words): boolean {
  if (!/^(around|round|across|all)$/.test(words.text())) return false
  return /^(the|a|each|next|post|front|back|cord|ring|same|every|this|plastic|entire)$/.test(
    words.text(1),
  )
}

/** "in back loop of", "around post of": the place says how the stitch is worked. */
function formed(stitch: StitchName, place: Place | null): StitchName {
  if (!place || (!place.loops && !place.post)) return stitch
  const kind = {
    ...stitch.kind,
    ...(place.loops ? { loops: place.loops } : {}),
    ...(place.post && !stitch.kind.post ? { post: place.post } : {}),
  }
  return { ...stitch, kind }
}

/** A place, or one without its preposition ("sc next st", "2 dc each st"). */
function readWorkPlace(words: Words): Place | null {
  if (words.acceptAll("in", "the", "same", "place"))
    return { ...words.since(words.start()), at: "same", noun: { what: "any" } }
  const place = readPlace(words)
  if (place?.over && /^(in|into)$/.test(words.text())) {
    // "over ch-3 in 2nd tr of ...": what is worked over, then the place.
    const real = readPlace(words)
    if (real)
      return { ...real, passes: "front", ...(place.at === "next" ? { covers: place.noun } : {}) }
  }
  if (place) return place
  if (/^(next|each|every|same|blo|flo)$/.test(words.text()))
    return words.attempt(() => readTarget(words, words.start(), "in"))
  return null
}

/** "... and in next 2 dc", "..., and in each ch-1 sp". */
function furtherPlaces(words: Words, stitch: StitchName, first: Place | null): Step[] {
  const steps: Step[] = []
  if (!first) return steps
  for (;;) {
    const start = words.start()
    const place = words.attempt(() => {
      words.accept(",")
      if (!words.accept("and", "&")) return null
      if (!/^(in|into|next|on|over|each)$/.test(words.text())) return null
      return readPlace(words) ?? readTarget(words, words.start(), "in")
    })
    if (!place) return steps
    steps.push({ ...words.since(start), do: "work", stitch, count: 1, place })
  }
}

function readCounted(words: Words): { count: number; stitch: StitchName } | null {
  return words.attempt(() => {
    let count = 1
    let counted = false
    if (words.isNumber()) {
      count = words.value()
      // "3-dc cluster" is a name; "3 dc" a count and a name.
      const named = words.text(1) === "-" ? readStitch(words) : null
      if (named) return { count: 1, stitch: named }
      words.at += 1
      counted = true
      words.accept("x", "more")
    } else words.accept("a", "an", "one")
    words.accept("work")
    const stitch = readStitch(words)
    if (
      stitch &&
      !counted &&
      words.isNumber() &&
      /^[,;.)\]*]?$/.test(words.text(1)) &&
      words.peek()?.type === "number"
    ) {
      // "sc 2, inc 1": the count after the name.
      count = words.value()
      words.at += 1
    }
    if (!stitch || !Number.isInteger(count)) {
      if (counted) {
        words.at -= 1
      }
      return null
    }
    return { count, stitch }
  })
}

/** "1 dark sc and 1 light sc in next sc": stitches of one place. */
function readShared(words: Words, start: number): Step[] | null {
  return words.attempt((): Step[] | null => {
    const parts: Step[] = []
    for (;;) {
      const from = words.start()
      const part = readCounted(words)
      if (!part) return null
      parts.push({
        ...words.since(from),
        do: "work",
        stitch: part.stitch,
        count: part.count,
        place: null,
      })
      if (!words.accept("and", "&", "+")) break
      if (!words.isNumber()) return null
    }
    if (parts.length < 2) return null
    const place = readPlace(words)
    if (!place || place.at === "list") return null
    return [{ ...words.since(start), do: "group", steps: parts, place }]
  })
}

/** Stitches the pattern defines itself: "shell in next st". */
function readLocal(words: Words, start: number): Step[] | null {
  return words.attempt((): Step[] | null => {
    let count = 1
    if (words.isNumber() && words.text(1) !== "-") {
      count = words.value()
      words.at += 1
    } else words.accept("a", "one")
    words.accept("beg", "beginning")
    const shell = readShell(words, start)
    const found = shell ? { steps: shell } : localHere(words)
    if (!found?.steps) return null
    words.accept("st", "stitch")
    const until = readUntil(words)
    const place: Place = until
      ? { ...words.since(start), at: "each", nouns: [{ what: "stitch" }], until }
      : (readWorkPlace(words) ?? {
          ...words.since(start),
          at: "next",
          noun: { what: "stitch" },
          count: 1,
        })
    const span = words.since(start)
    return Array.from({ length: Math.min(count, 50) }, () => ({
      ...span,
      do: "group" as const,
      steps: found.steps ?? [],
      place,
    }))
  })
}

/** "3-dc shell", "shell of 5 dc", "V-st", with "(dc, ch 1, dc)" after it if it says so. */
function readShell(words: Words, start: number): Step[] | null {
  return words.attempt((): Step[] | null => {
    let steps: Step[] | null = null
    const span = () => words.since(start)
    const sized = words.attempt(() => {
      if (!words.isNumber() || words.text(1) !== "-") return null
      const count = words.value()
      words.at += 2
      const stitch = readStitch(words)
      words.accept("-")
      return stitch && words.accept("shell", "fan", "shells", "fans") ? { count, stitch } : null
    })
    if (sized)
      steps = [{ ...span(), do: "work", stitch: sized.stitch, count: sized.count, place: null }]
    else if (words.accept("shell", "fan")) {
      const of = words.attempt(() => (words.accept("of") ? readCounted(words) : null))
      if (!of && !/^[([]$/.test(words.text())) return null
      if (of) steps = [{ ...span(), do: "work", stitch: of.stitch, count: of.count, place: null }]
    } else if (
      words.text() === "v" &&
      words.text(1) === "-" &&
      /^(st|sts|stitch)$/.test(words.text(2)) &&
      !words.locals.has("v")
    ) {
      words.at += 3
      const dc: StitchName = { kind: { basic: "dc" }, tog: false }
      // The usual V is a stitch, one chain and a stitch: common practice, no source.
      steps = [
        { ...span(), do: "work", stitch: dc, count: 1, place: null },
        { ...span(), do: "chain", chains: 1, place: null },
        { ...span(), do: "work", stitch: dc, count: 1, place: null },
      ]
    } else return null
    const said = words.attempt(() => {
      if (!words.accept("(", "[")) return null
      words.accept("made", "of", "=")
      const run = readSteps(words, () => false)
      return words.accept(")", "]") && run.steps.some((step) => step.do === "work")
        ? run.steps
        : null
    })
    return said ?? steps
  })
}

function localHere(words: Words): LocalStitch | null {
  const three = [0, 1, 2].map((i) => words.text(i)).join("")
  const two = words.text() + words.text(1)
  for (const [text, length] of [
    [three, 3],
    [two, 2],
    [words.text(), 1],
  ] as const) {
    const local = words.locals.get(text)
    if (local?.steps && words.at + length <= words.tokens.length) {
      words.at += length
      return local
    }
  }
  return null
}

/** "evenly", "evenly, increasing 6", ", 1 increase spread evenly": the increases, 0 if none are named. */
function readEven(words: Words): number | null {
  return words.attempt(() => {
    let increases = 0
    let even = words.accept("evenly")
    if (even) words.accept("spaced", "spread", "around")
    words.attempt(() => {
      words.accept(",")
      words.accept("with")
      if (words.accept("increasing", "inc", "decreasing")) {
        if (!words.isNumber()) return null
        increases = words.value()
        words.at += 1
        words.accept("st", "sts", "stitches", "times")
        if (words.accept("evenly")) even = true
        return true
      }
      if (!words.isNumber()) return null
      const count = words.value()
      if (words.text(1) === "equally" || words.text(1) === "evenly") words.at += 1
      if (
        !/^(increase|increases|inc|incs|spaced)$/.test(words.text(1)) &&
        !/^(increases|increase)$/.test(words.text(2))
      )
        return null
      words.at += 2
      words.accept("increase", "increases")
      words.accept("spread", "spaced", "placed", "distributed")
      if (words.accept("evenly")) even = true
      increases = count
      return even ? true : null
    })
    if (!even) return null
    words.accept("around", "across")
    words.attempt(() => {
      // ", the first in the first st of the round" says where they begin.
      words.accept(",")
      words.accept("the")
      if (!words.accept("first")) return null
      const place = readPlace(words)
      if (!place) return null
      words.acceptAll("of", "the", "round") || words.acceptAll("of", "the", "rnd")
      return true
    })
    return increases
  })
}

export function acceptsColour(words: Words): boolean {
  return isColour(words.text())
}
