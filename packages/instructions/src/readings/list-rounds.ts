// The rounds a text has, ranges written out, with "as Rnd 2" put in place; gaps in the numbering told.

import { mostRounds } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Instead, RoundTree, StatedTotal, Step } from "../base/tree.ts"
import { withOtherEnding } from "../grammar/repeat-endings.ts"
import type { PatternText, RoundText } from "../text/layout.ts"
import { grown } from "./grow-round.ts"

export type Located = Finding & { readonly round: number | null }

export interface NumberedTree {
  readonly number: number
  readonly tree: RoundTree
}

export interface OneRound {
  readonly number: number
  readonly text: RoundText
  /** Which of a range of rounds this is, and how many there are. */
  readonly nth: number
  readonly of: number
}

/** Rounds one by one, ranges written out; gaps and doubles in the numbering told. */
export function listRounds(layout: PatternText, findings: Located[]): OneRound[] {
  const list = inOrder(written(layout, findings))
  tellNumbering(list, findings)
  return list
}

/** "Rnds 4, 6 and 8: ..." before "Rnds 5 and 7: ...": in the order of their numbers. */
function inOrder(list: readonly OneRound[]): OneRound[] {
  const numbers = new Set(list.map(({ number }) => number))
  if (numbers.size < list.length || list.every(({ text }) => !text.label.list)) return [...list]
  return [...list].sort((a, b) => a.number - b.number)
}

function tellNumbering(list: readonly OneRound[], findings: Located[]): void {
  let last = 0
  for (const { number, text, nth } of list) {
    const { label } = text
    const place = { start: label.start, end: Math.min(label.end, text.end) }
    if (last > 0 && number > last + 1)
      findings.push({
        severity: "warning",
        code: "round-missing",
        ...place,
        round: number,
        message:
          number === last + 2
            ? `Round ${last + 1} is missing before this one.`
            : `Rounds ${last + 1} to ${number - 1} are missing before this one.`,
        hint: "Look for a lost line; this round is read as following the one before it in the text.",
      })
    if (last > 0 && number <= last && nth === 0)
      findings.push({
        severity: "warning",
        code: "round-number-again",
        ...place,
        round: number,
        message: `Round ${number} comes after round ${last}.`,
        hint: "Number the rounds in the order they are worked.",
      })
    last = number
  }
}

function written(layout: PatternText, findings: Located[]): OneRound[] {
  const list: OneRound[] = []
  for (const text of layout.rounds) {
    const { label } = text
    const place = { start: label.start, end: Math.min(label.end, text.end) }
    if (label.unnumbered) {
      findings.push({
        severity: "error",
        code: "round-without-number",
        ...place,
        round: null,
        message: "A rule for every round is not worked; rounds need numbers.",
        hint: 'Write the rounds out, or as a range such as "Rnds 2-6:".',
      })
      continue
    }
    if (label.unlabelled && list.length === 0)
      findings.push({
        severity: "note",
        code: "rounds-by-paragraph",
        ...place,
        round: null,
        message: "Nothing labels the rounds; every paragraph of work is taken for one.",
        hint: 'Begin each round with a label such as "Rnd 1:".',
      })
    const of = label.list?.length ?? label.to - label.from + 1
    for (let nth = 0; nth < of; nth++) {
      if (list.length >= mostRounds) {
        findings.push({
          severity: "error",
          code: "too-many-rounds",
          ...place,
          round: label.from,
          message: `More than ${mostRounds.toLocaleString("en")} rounds are not read.`,
          hint: "Split the text.",
        })
        return list
      }
      list.push({ number: label.list?.[nth] ?? label.from + nth, text, nth, of })
    }
  }
  if (list.length === 0 && findings.length < 1000)
    findings.push({
      severity: "error",
      code: "no-rounds",
      start: 0,
      end: Math.min(1, layout.clean.length),
      round: null,
      message: "No round was found in this text.",
      hint: 'Label the rounds: "Rnd 1: ch 4, join to form a ring; 12 dc in ring."',
    })
  return list
}

/** A tree with "as Rnd 2" put in place, and of a range of totals the one of this round. */
export function resolved(
  tree: RoundTree,
  one: OneRound,
  trees: readonly NumberedTree[],
  own: Located[],
): RoundTree {
  const steps: Step[] = []
  for (const step of tree.steps) {
    if (step.do !== "as-round") {
      steps.push(step)
      continue
    }
    const last = trees.at(-1)?.number ?? 0
    const from = step.round ?? last
    const wanted = from + (one.nth % ((step.to ?? from) - from + 1))
    const other = trees.findLast(({ number }) => number === wanted)?.tree
    if (!other || wanted === one.number) {
      own.push({
        severity: "error",
        code: "no-such-round",
        start: step.start,
        end: step.end,
        round: one.number,
        message: `Round ${wanted} is not there to repeat.`,
        hint: "Name a round that stands before this one.",
      })
      continue
    }
    const worked = other.steps.filter((part) => !(part.do === "join" && part.ring))
    const told = step.instead ? replaced(worked, step.instead) : worked
    const grows = step.growth ? grown(told, step.growth) : told
    const longer = grows && step.ending ? withOtherEnding(grows, step.ending) : grows
    if (longer === null)
      own.push({
        severity: "error",
        code: "growth-not-placed",
        start: step.start,
        end: step.end,
        round: one.number,
        message: `Round ${wanted} has no increases that could be told apart, so how this round grows on it is not known.`,
        hint: "Write the round out.",
      })
    else {
      if (step.growth?.implied)
        own.push({
          // A note once the total bears it out.
          severity: "warning",
          code: "growth-implied",
          start: step.start,
          end: step.end,
          round: one.number,
          message: `Read as round ${wanted} with one more stitch between its increases.`,
          hint: "Say how many stitches there are between the increases.",
        })
      steps.push(...longer)
    }
  }
  return { steps, totals: tree.totals.flatMap((total) => ofRange(total, one) ?? []) }
}

/** "(24, 36, 48 dc)": one figure for each round, not one for each kind. */
function alike({ items }: StatedTotal): boolean {
  return items
    .slice(0, -1)
    .every(({ kind, word }) => kind === undefined || word === items[items.length - 1]!.word)
}

/** The steps with their figures changed: "9 dc instead of 7". */
function replaced(steps: readonly Step[], instead: readonly Instead[]): readonly Step[] {
  const usual = instead.some(({ from }) => from === undefined) ? usualChains(steps) : null
  const told = instead.map((one) => ({ ...one, from: one.from ?? usual }))
  const figure = (count: number, chains: boolean) =>
    told.find((one) => one.chains === chains && one.from === count)?.to ?? count
  const again = (inner: readonly Step[]) =>
    replaced(
      inner,
      told.flatMap(({ from, ...one }) => (from === null ? [] : [{ ...one, from }])),
    )
  return steps.map((step): Step => {
    if (step.do === "work") return { ...step, count: figure(step.count, false) }
    if (step.do === "chain") return { ...step, chains: figure(step.chains, true) }
    if (step.do === "group") return { ...step, steps: again(step.steps) }
    if (step.do === "repeat")
      return { ...step, body: again(step.body), last: step.last && again(step.last) }
    if (step.do === "pass") return { ...step, cases: again(step.cases) as typeof step.cases }
    return step
  })
}

/** The chains of the loops a round makes: the most frequent of its last repeat, else of the round. */
function usualChains(steps: readonly Step[]): number | null {
  const repeat = steps.findLast((step) => step.do === "repeat")
  const found = new Map<number, number>()
  for (const count of chainsIn(repeat?.do === "repeat" ? repeat.body : steps))
    found.set(count, (found.get(count) ?? 0) + 1)
  return [...found].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? null
}

function chainsIn(steps: readonly Step[]): number[] {
  return steps.flatMap((step) =>
    step.do === "chain"
      ? [step.chains]
      : step.do === "group"
        ? chainsIn(step.steps)
        : step.do === "repeat"
          ? chainsIn(step.body)
          : [],
  )
}

/** "(12, 24, 48, 96)" over rounds 2-5: the figure of this round; a single figure is that of the last; a list of another length is not firm. */
function ofRange(total: StatedTotal, one: OneRound): StatedTotal | null {
  if (one.of === 1 || total.more) return total
  const bare = total.items.filter((item) => item.unit === "stitches" || item.unit === "kind")
  const list = bare.length === total.items.length && total.items.length > 1 && alike(total)
  // "-16 dc, 4 ch-2 sps, 56 fpdc" after a range is what its last round has.
  if (!list) return one.nth < one.of - 1 ? null : total
  const item = total.items[one.nth]
  const unit = total.items[total.items.length - 1]
  if (!item || !unit || total.items.length !== one.of) return { ...total, firm: false }
  return {
    ...total,
    items: [unit.kind ? { ...item, unit: "kind", kind: unit.kind, word: unit.word } : item],
  }
}
