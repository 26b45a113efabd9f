// Shells, Vs and whatever the pattern defines itself, worked as one thing.

import type { Place, Step, StitchName } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause, isUnplaced } from "./clauses.ts"
import type { Cursor, LocalStitch } from "./cursor.ts"
import { readChainCount } from "./make-extras.ts"
import { readWorkPlace } from "./make-places.ts"
import { asPasses } from "./passes.ts"
import { readCounted, readStitch } from "./stitch-names.ts"
import { readUntil } from "./until.ts"

/** Most of one thing worked in a row; more is a slip of the pen. */
const mostInRow = 50

/** "shell in next st", "2 shells in corner", "V-st in next dc", "3-dc shell in next sp", "shell of 5 dc". */
export function localGroup(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  let count = 1
  while (cursor.is("work") && !cursor.isNumber()) cursor.at += 1
  if (cursor.isNumber() && cursor.text(1) !== "-") count = cursor.takeCount(1) ?? 1
  const begins = cursor.take("start")
  const named = readShell(chart, cursor, start, begins)
  if (!named) return []
  cursor.take("stitch")
  const afterName = cursor.at
  const until = readUntil(cursor)
  const said = until
    ? ({ ...cursor.since(start), at: "each", nouns: [{ what: "stitch" }], until } as Place)
    : readWorkPlace(cursor)
  if (!said) cursor.at = afterName
  const place: Place = said ?? {
    ...cursor.since(start),
    at: "next",
    noun: { what: "stitch" },
    count: 1,
  }
  const span = cursor.since(start)
  const groups = Array.from({ length: Math.min(count, mostInRow) }, () => ({
    ...span,
    do: "group" as const,
    steps: named.steps,
    place,
  }))
  const cost = said ? named.cost : named.cost + 0.1
  const plain = clause(
    cursor,
    groups,
    begins || count !== 1 || said?.at !== "same" ? cost : cost + 0.2,
    { names: named.names },
  )
  if (count !== 1 || (!begins && said?.at !== "same")) return [plain]
  return [
    clause(
      cursor,
      (before) => {
        // "ch 3 and make a starting shell": the chain is its first stitch.
        const chained =
          before.some((step) => step.do === "chain" && step.chains > 1) &&
          !before.some((step) => step.do === "work" || step.do === "group")
        if (!chained && !begins) return null
        return [
          ...before,
          ...(chained
            ? groups.map((group) => ({ ...group, steps: withoutFirst(group.steps) }))
            : groups),
        ]
      },
      cost,
      { names: named.names },
    ),
    ...(begins ? [] : [plain]),
  ]
}

function withoutFirst(steps: readonly Step[]): readonly Step[] {
  const [first, ...rest] = steps
  if (first?.do !== "work") return steps
  return first.count > 1 ? [{ ...first, count: first.count - 1 }, ...rest] : rest
}

interface Shell {
  readonly steps: readonly Step[]
  readonly cost: number
  readonly names: readonly (readonly [string, readonly Step[]])[]
}

function readShell(chart: Chart, cursor: Cursor, start: number, begins: boolean): Shell | null {
  const known = cursor.attempt(() => localHere(cursor))
  if (known?.steps) {
    // "V-st (dc, ch 1, dc) in next st": told once more what it is.
    const told = cursor.attempt(() => {
      cursor.take("stitch")
      if (cursor.accept("of")) {
        const list = readList(cursor)
        return list && list.length > 1 ? { steps: list, cost: 0 } : null
      }
      const again = bracketed(chart, cursor, "")
      return again?.steps.every((step) => isUnplaced(step)) ? again : null
    })
    return told ? { ...told, names: [] } : { steps: known.steps, cost: 0, names: [] }
  }
  const sized = cursor.attempt(() => {
    if (!cursor.isNumber() || cursor.text(1) !== "-") return null
    const count = cursor.takeCount(2)
    cursor.at += 1
    const stitch = readStitch(cursor)
    cursor.accept("-")
    if (count === null || !stitch || !/^(?:shells?|fans?)$/.test(cursor.text())) return null
    cursor.at += 1
    return { count, stitch }
  })
  if (sized)
    return {
      steps: [
        {
          ...cursor.since(start),
          do: "work",
          stitch: sized.stitch,
          count: sized.count,
          place: null,
        },
      ],
      cost: 0,
      names: [],
    }
  if (/^(?:shells?|fans?)$/.test(cursor.text())) {
    const name = cursor.text().replace(/s$/, "")
    cursor.at += 1
    if (cursor.accept("of")) {
      const list = readList(cursor)
      if (list) return { steps: list, cost: 0, names: list.length > 1 ? [[name, list]] : [] }
      return null
    }
    return bracketed(chart, cursor, name)
  }
  if (
    /^(?:v-st|vst|v-stitch|v-stitches)$/.test(cursor.text()) ||
    (cursor.text() === "v" &&
      (cursor.is("stitch", 1) || (cursor.text(1) === "-" && cursor.is("stitch", 2))))
  ) {
    while (!cursor.is("stitch") && !/^(?:v-st|vst|v-stitch|v-stitches)$/.test(cursor.text()))
      cursor.at += 1
    cursor.at += 1
    return (
      bracketed(chart, cursor, "v") ?? { steps: usualV(cursor.since(start)), cost: 0, names: [] }
    )
  }
  if (begins && cursor.is("corner")) {
    cursor.at += 1
    return bracketed(chart, cursor, "corner")
  }
  return null
}

/** "shell (3 dc, ch 1, 3 dc)": what it is, in a bracket behind it. */
function bracketed(chart: Chart, cursor: Cursor, name: string): Shell | null {
  if (!/^[([]$/.test(cursor.text())) return null
  const from = cursor.at + 1
  let depth = 1
  let end = from
  for (; end < chart.lexemes.length && depth > 0; end++) {
    if (/^[([]$/.test(chart.lexemes[end]!.text)) depth += 1
    if (/^[)\]]$/.test(chart.lexemes[end]!.text)) depth -= 1
  }
  const inner = chart.readInner(from, end - 1)[0]
  cursor.at = end
  if (!inner?.steps.some((step) => step.do === "work" || step.do === "group")) return null
  const steps = asPasses(inner.steps)
  return { steps, cost: inner.cost, names: [[name, steps]] }
}

const dc: StitchName = { kind: { basic: "dc" }, tog: false }

/** The usual V is a stitch, one chain and a stitch: common practice, no source. */
function usualV(span: { start: number; end: number }): Step[] {
  const one: Step = { ...span, do: "work", stitch: dc, count: 1, place: null }
  return [one, { ...span, do: "chain", chains: 1, place: null }, one]
}

/** "2 dc, ch 2, 2 dc in": a list as far as the place it goes into; else its first stitch alone. */
function readList(cursor: Cursor): Step[] | null {
  const first = readPart(cursor)
  if (!first) return null
  const list = cursor.attempt(() => {
    const parts = [first]
    while (cursor.accept(",") || cursor.take("and")) {
      cursor.take("and")
      const part = readPart(cursor)
      if (!part) return null
      parts.push(part)
    }
    return parts.length > 1 && cursor.is("in") ? parts : null
  })
  return list ?? [first]
}

function readPart(cursor: Cursor): Step | null {
  const start = cursor.start()
  const chains = readChainCount(cursor)
  if (chains !== null) return { ...cursor.since(start), do: "chain", chains, place: null }
  const counted = readCounted(cursor)
  return (
    counted && {
      ...cursor.since(start),
      do: "work",
      stitch: counted.stitch,
      count: counted.count,
      place: null,
    }
  )
}

/** The pattern's own name here, of up to three words. */
function localHere(cursor: Cursor): LocalStitch | null {
  for (const length of [3, 2, 1]) {
    if (cursor.at + length > cursor.lexemes.length) continue
    const words = cursor.lexemes.slice(cursor.at, cursor.at + length)
    if (words.some(({ type, text }) => type !== "word" && text !== "-")) continue
    const local = cursor.locals.get(
      words
        .map(({ text }) => text)
        .join("")
        .replace(/[^a-z]/g, ""),
    )
    if (!local?.steps) continue
    cursor.at += length
    cursor.accept("-")
    return local
  }
  return null
}

/** True where the pattern's own name begins. */
export function namesLocal(cursor: Cursor): boolean {
  const at = cursor.at
  while (cursor.is("work") && !cursor.isNumber()) cursor.at += 1
  if (cursor.isNumber()) cursor.at += 1
  cursor.take("start")
  const found = cursor.locals.size > 0 && cursor.attempt(() => localHere(cursor)) !== null
  cursor.at = at
  return found
}
