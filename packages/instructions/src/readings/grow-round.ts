// A round like an earlier one, its plain stretches longer: the stitches between increases or corners.

import type { Growth, Place, Step } from "../base/tree.ts"

type Work = Extract<Step, { do: "work" }>

/** The steps of an earlier round grown by the rule; null where no increases are found to grow between. */
export function grown(steps: readonly Step[], growth: Growth): readonly Step[] | null {
  const at = steps.findIndex((step) => step.do === "repeat" && step.body.some(isIncrease))
  const repeat = steps[at]
  if (repeat?.do === "repeat") {
    const first = repeat.body.findIndex(isPlain)
    const plain = repeat.body[first] as Work | undefined
    const old = plain ? lengthOf(plain) : 0
    const length = growth.how === "more" ? old + growth.plain : growth.plain
    const body = plain
      ? repeat.body.map((step, i) => (i === first ? withLength(plain, length) : step))
      : withPlain(repeat.body, length)
    const started = plain ? withLongerStart(steps, at, plain, old, length) : null
    return (started ?? steps).map((step) => {
      if (step === repeat) return { ...repeat, body }
      return !started && plain && isPlain(step) && lengthOf(step) === old
        ? withLength(step, length)
        : step
    })
  }
  const each = steps.findIndex((step) => isIncrease(step) && step.place?.at === "each")
  const increase = steps[each] as Work | undefined
  if (!increase) return null
  // "2 sc in each st": between its increases there is nothing yet.
  const next: Place = { ...spanOf(increase), at: "next", noun: { what: "stitch" }, count: 1 }
  const body = withPlain([{ ...increase, place: next }], growth.plain)
  const repeated: Step = {
    ...spanOf(increase),
    do: "repeat",
    body,
    last: null,
    ending: null,
    times: { kind: "until", until: { kind: "around" } },
  }
  return steps.map((step, i) => (i === each ? repeated : step))
}

/** "Ch 3, 2 dc in next st, *dc in next st, 2 dc in next st": the chain is the first of the plain stitches. */
function withLongerStart(
  steps: readonly Step[],
  repeat: number,
  plain: Work,
  old: number,
  length: number,
): readonly Step[] | null {
  const chain = steps.findIndex((step) => step.do === "chain" && step.chains > 1)
  if (chain < 0 || chain > repeat) return null
  let next = chain + 1
  while (steps[next]?.do === "note-counts") next += 1
  const after = steps[next]
  if (after === undefined || next >= repeat) return null
  if (old === 1 && isIncrease(after) && after.place?.at === "next")
    return [...steps.slice(0, next), withLength(plain, length - 1), ...steps.slice(next)]
  if (old > 1 && isPlain(after) && lengthOf(after) === old - 1)
    return steps.map((step) => (step === after ? withLength(after, length - 1) : step))
  return null
}

function isIncrease(step: Step): step is Work {
  if (step.do !== "work" || step.even || step.stitch.kind.gathered) return false
  if (step.stitch.shape === "increase") return true
  return (
    step.count > 1 && step.place !== null && (step.place.at === "next" || step.place.at === "each")
  )
}

function isPlain(step: Step): step is Work {
  if (step.do !== "work" || step.even || step.stitch.shape || step.stitch.kind.gathered)
    return false
  return step.place === null || (step.place.at === "next" && step.count === 1)
}

function lengthOf(step: Work): number {
  return step.place?.at === "next" ? step.place.count : step.count
}

function withLength(step: Work, length: number): Work {
  return step.place?.at === "next"
    ? { ...step, place: { ...step.place, count: length } }
    : { ...step, count: length }
}

function withPlain(body: readonly Step[], length: number): readonly Step[] {
  const increase = body.find(isIncrease)
  if (!increase || length < 1) return body
  const { shape: _shape, ...stitch } = increase.stitch
  const named =
    increase.stitch.shape === "increase" ? { ...stitch, shape: "same" as const } : stitch
  const place: Place = { ...spanOf(increase), at: "next", noun: { what: "stitch" }, count: length }
  return [{ ...spanOf(increase), do: "work", stitch: named, count: 1, place }, ...body]
}

function spanOf(step: Step): { start: number; end: number } {
  return { start: step.start, end: step.end }
}
