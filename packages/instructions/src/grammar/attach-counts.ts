// Brings what is said in brackets about a chain ("counts as dc, ch 2") to the chain it is said of.

import type { CountsAs, Step } from "../base/tree.ts"

type Note = Extract<Step, { do: "note-counts" }>

/** The steps with such notes taken up; notes about skipped chains at the start of the piece stay. */
export function attachCounts(steps: readonly Step[]): Step[] {
  const result: Step[] = []
  for (const raw of steps) {
    const step = inside(raw)
    const last = result[result.length - 1]
    // "Chain 2. Remember that the (chain 2) counts": the same chain, told twice.
    if (
      step.do === "chain" &&
      last?.do === "chain" &&
      step.countsAs &&
      !last.countsAs &&
      step.chains === last.chains &&
      !step.place
    ) {
      result[result.length - 1] = { ...last, countsAs: step.countsAs }
      continue
    }
    if (step.do !== "note-counts") {
      result.push(step)
      continue
    }
    if (!takeUp(result, step)) result.push(step)
  }
  return result
}

function inside(step: Step): Step {
  if (step.do === "group") return { ...step, steps: attachCounts(step.steps) }
  if (step.do === "repeat")
    return {
      ...step,
      body: attachCounts(step.body),
      last: step.last ? attachCounts(step.last) : null,
    }
  return step
}

function takeUp(result: Step[], note: Note): boolean {
  const last = result[result.length - 1]
  if (!last) return false
  if (last.do === "chain") {
    result[result.length - 1] = { ...last, countsAs: note.countsAs }
    return true
  }
  if (last.do === "work") {
    if (last.place?.at === "hook-chain") return false
    const before = result[result.length - 2]
    if (note.countsAs.tog && before?.do === "chain") {
      // "ch 2, dc in next 2 sts (counts as dc3tog)": the stitches are its other legs.
      const own = last.place?.at === "next" ? last.place.count : last.count
      const countsAs = last.stitch.kind.gathered ? note.countsAs : ofSoMany(note.countsAs, own + 1)
      const legs = (countsAs.kind?.gathered?.legs ?? 0) - 1
      if (legs > 0 && !last.stitch.kind.gathered && own === legs) {
        const kind = { ...last.stitch.kind, gathered: { how: "together" as const, legs } }
        result[result.length - 1] = {
          ...last,
          count: last.place?.at === "next" ? last.count : 1,
          stitch: { kind, tog: true },
        }
      }
      // "ch 3, dc2tog in ring (counts as dc3tog)": both together are the first cluster.
      result[result.length - 2] = { ...before, countsAs }
      return true
    }
    if (note.countsAs.space !== undefined) {
      result[result.length - 1] = { ...last, countsAs: note.countsAs }
      return true
    }
    if (before?.do === "chain") {
      result[result.length - 2] = { ...before, countsAs: note.countsAs }
      return true
    }
  }
  return false
}

/** "Ch 3, dc in ring (counts as first cluster)": a cluster of which no more is said has as many legs as are told with it. */
function ofSoMany(countsAs: CountsAs, legs: number): CountsAs {
  const { kind } = countsAs
  if (kind?.gathered?.how !== "cluster" || kind.gathered.legs !== 3) return countsAs
  return { ...countsAs, kind: { ...kind, gathered: { how: "cluster", legs } } }
}

/** "Ch 3 (counts as dc)" said once holds for a later start of as many chains. */
export function rememberCounts(steps: readonly Step[], said: Map<number, CountsAs>): void {
  for (const step of steps) {
    if (step.do === "group") rememberCounts(step.steps, said)
    if (/^(?:work|group|repeat|pass)$/.test(step.do)) return
    // The chain of the ring comes first and has nothing to count as.
    if (step.do !== "chain" || !step.countsAs) continue
    if (!step.countsAs.tog && step.countsAs.space === undefined)
      said.set(step.chains, step.countsAs)
    return
  }
}
