// Parentheses and brackets: a group worked in one place, a repeat, a total, how a chain counts, or
// an aside. What follows the bracket decides, then what is in it.

import { isTotalBracket, readAside } from "./bracket-kinds.ts"
import { readCountsNote, readSumNote } from "./counts-grammar.ts"
import { isRepeatWord, readSteps } from "./grammar.ts"
import { atPlace, readPlace } from "./place-grammar.ts"
import { readEnding } from "./repeat-ending-grammar.ts"
import { readTimes } from "./repeat-grammar.ts"
import { readStitch } from "./stitch-grammar.ts"
import { table } from "../base/table.ts"
import { readTotal } from "./total-grammar.ts"
import type { Place, StatedTotal, Step, Times } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { Words } from "./words.ts"

export const closers: Readonly<Record<string, string>> = table({ "(": ")", "[": "]", "{": "}" })

/** A bracket and what belongs to it. */
export function readBracket(
  words: Words,
  steps: readonly Step[],
  totals: StatedTotal[],
): Step[] | null {
  const opening = words.peek()
  const close = closers[opening?.text ?? ""]
  if (!opening || !close) return null
  const start = opening.start
  const counts = words.attempt(() => {
    words.at += 1
    const chain = steps[steps.length - 1]
    const note =
      readCountsNote(words) ?? (chain?.do === "chain" ? readSumNote(words, chain.chains) : null)
    words.accept(".")
    if (!note || !words.accept(close)) return null
    return note
  })
  if (counts) return [{ ...words.since(start), ...counts, do: "note-counts" }]
  if (isTotalBracket(words, close, steps)) {
    const total = words.attempt(() => {
      words.at += 1
      const found = readTotal(words, close)
      if (!found || !words.accept(close)) return null
      return found
    })
    if (total) {
      totals.push(total)
      return []
    }
  }
  const inside = words.at + 1
  const aside = words.attempt(() => readAside(words, close))
  if (aside) {
    nameMade(words, steps, inside)
    return []
  }
  words.at += 1
  const run = readSteps(words, () => false)
  totals.push(...run.totals)
  if (!words.accept(close)) {
    const wrong = words.accept(")", "]", "}")
    if (!wrong)
      words.report({
        severity: "warning",
        code: "bracket-not-closed",
        start: opening.start,
        end: opening.end,
        message: `The bracket "${opening.text}" is not closed.`,
        hint: `Put a "${close}" where it ends.`,
      })
  }
  return afterGroup(words, run.steps, start)
}

/** "(2 dc, ch 2, 2 dc) in next sp (shell made)": from here on "shell" is that. */
function nameMade(words: Words, steps: readonly Step[], from: number): void {
  const last = steps[steps.length - 1]
  const made = words.tokens[words.at - 2]?.text
  if (last?.do !== "group" || !/^(?:made|formed|completed|complete)$/.test(made ?? "")) return
  const named = words.tokens.slice(from, words.at - 2)
  if (named.length > 3 || named.some((token) => token.type === "number")) return
  const name = named.map((token) => token.text).join("")
  const plain = last.steps.every((step) => /^(?:work|chain|picot)$/.test(step.do))
  if (!plain || !/^[a-z]{2,20}$/.test(name) || words.locals.has(name)) return
  const inner = last.steps.map((step) => (step.do === "work" ? { ...step, place: null } : step))
  // A shell that begins the round starts with chains, which the others do not.
  if (inner.some((step) => step.do === "work") && inner[0]?.do === "work")
    words.locals.set(name, { steps: inner })
}

/** What is done with a bracket's steps: repeated, worked in one place, or simply worked. */
function afterGroup(words: Words, inner: readonly Step[], start: number): Step[] {
  if (inner.length === 0) return []
  const times = readBracketTimes(words) ?? readTimes(words, false)
  if (times && times.kind !== "until") {
    const repeat: Step = {
      ...words.since(start),
      do: "repeat",
      body: inner,
      last: null,
      ending: null,
      times,
    }
    const shared = words.attempt(() => readSharedPlace(words, repeat))
    if (shared) return shared
    const place = atPlace(words) && words.text() !== "to" ? readPlace(words) : null
    if (place)
      return [
        { ...words.since(start), do: "group", steps: [repeat], place },
        ...furtherGroups(words, [repeat]),
      ]
    words.attempt(() => readUntil(words))
    const ended = readBracketEnding(words, inner)
    return [ended ? { ...repeat, ...ended, end: words.lastEnd() } : repeat]
  }
  if (times)
    return [{ ...words.since(start), do: "repeat", body: inner, last: null, ending: null, times }]
  const until = words.attempt(() => (words.text() === "along" ? readUntil(words) : null))
  if (until)
    return [
      {
        ...words.since(start),
        do: "repeat",
        body: inner,
        last: null,
        ending: null,
        times: { kind: "until", until },
      },
    ]
  const place = atPlace(words) && words.text() !== "to" ? readPlace(words) : null
  if (place) {
    const later = words.attempt(() => {
      // "in each st *6 times": the asterisk says no more than "times" does.
      const stray = words.stars === 0 && words.text() === "*" && words.isNumber(1)
      if (stray && words.text(2) === "times") words.at += 1
      return readTimes(words, false)
    })
    if (later?.kind === "total" && place.at === "each" && place.nouns[0] && !place.total) {
      // So many times in all: one place each time.
      const next: Place = { ...words.since(start), at: "next", noun: place.nouns[0], count: 1 }
      const body: Step[] = [{ ...words.since(start), do: "group", steps: inner, place: next }]
      return [{ ...words.since(start), do: "repeat", body, last: null, ending: null, times: later }]
    }
    const group: Step = { ...words.since(start), do: "group", steps: inner, place }
    if (later && place.at === "ring" && later.kind !== "until")
      return [
        {
          ...group,
          steps: [
            {
              ...words.since(start),
              do: "repeat",
              body: inner,
              last: null,
              ending: null,
              times: later,
            },
          ],
        },
      ]
    if (later)
      return [
        {
          ...words.since(start),
          do: "repeat",
          body: [group],
          last: null,
          ending: null,
          times: later,
        },
      ]
    return [group, ...furtherGroups(words, inner)]
  }
  if (/^(corner|corners)$/.test(words.text()) && !atPlace(words)) {
    // "(2 dc, ch 2, 2 dc) corners": one in each.
    words.at += 1
    const corners: Place = {
      ...words.since(start),
      at: "each",
      nouns: [{ what: "corner", corner: true }],
      until: { kind: "around" },
    }
    return [{ ...words.since(start), do: "group", steps: inner, place: corners }]
  }
  return [...inner]
}

/** "(...) 6 times, ending last rep with sc in next st", "(...) 4 times, omitting last ch 1". */
function readBracketEnding(
  words: Words,
  inner: readonly Step[],
): { last: readonly Step[]; ending: "replaces" | "follows" } | null {
  return words.attempt(() => {
    const word = words.text() === "," ? words.text(1) : words.text()
    if (!/^(?:ending|omitting|omit)$/.test(word)) return null
    const found = readEnding(words, { steps: [...inner], markAt: null, totals: [] })
    return found.last && found.how ? { last: found.last, ending: found.how } : null
  })
}

/** "(2 sc, inc) repeat 6 times", "(2 sc, inc) * 6": said of the bracket just closed. */
function readBracketTimes(words: Words): Times | null {
  return words.attempt((): Times | null => {
    if (isRepeatWord(words.text()) || words.text() === "repeated") {
      words.at += 1
      const times = readTimes(words, true)
      if (times?.kind !== "more") return times?.kind === "until" ? times : null
      return times.plain ? { ...times, ofBracket: true } : times
    }
    if (words.text() !== "*" || !words.isNumber(1) || !endsTimes(words)) return null
    const count = words.value(1)
    words.at += 2
    return { kind: "total", count }
  })
}

/** After "* 6": the end, a total, or a join; a stitch would make the asterisk open a repeat. */
export function endsTimes(words: Words): boolean {
  // "(sc, inc) * 6 -> 18"
  if (words.text(2) === "-" && words.text(3) === ">") return true
  return /^$|^[.,;=([]$|^(?:join|sl|slst|ss)$/.test(words.text(2))
}

/** "(...) in same sp and in each ch-3 sp around": the same group again in other places. */
function furtherGroups(words: Words, steps: readonly Step[]): Step[] {
  const groups: Step[] = []
  for (;;) {
    const start = words.start()
    const place = words.attempt(() => {
      words.accept(",")
      return words.accept("and", "&") && atPlace(words) ? readPlace(words) : null
    })
    if (!place) return groups
    groups.push({ ...words.since(start), do: "group", steps, place })
  }
}

/** "(1 sc, ch 3) twice and 1 sc in top of that dc": the place is that of the whole. */
function readSharedPlace(words: Words, repeat: Step): Step[] | null {
  if (!words.accept("and", "&")) return null
  const start = words.start()
  let count = 1
  if (words.isNumber()) {
    count = words.value()
    words.at += 1
  }
  const stitch = readStitch(words)
  const place = stitch ? readPlace(words) : null
  if (!stitch || !place || place.at === "each") return null
  const last: Step = { ...words.since(start), do: "work", stitch, count, place: null }
  return [{ ...words.since(repeat.start), do: "group", steps: [repeat, last], place }]
}
