// Where the first stitch of a round stands.

import type { Anchor } from "@roundwright/motif"
import type { Step } from "../base/tree.ts"
import type { Site } from "../edge/site.ts"
import type { RoundWork } from "./round-work.ts"

export type ChainStep = Extract<Step, { do: "chain" }>

/** Where the first stitch stands: the place of the join, slip or group, which is then used. */
export function startAnchors(work: RoundWork, step: ChainStep): Anchor[] {
  if (work.inPlace) return [...work.inPlace]
  const ring = step.place?.at === "ring" || work.main.edge.round < 0
  if (ring && work.main.edge.size === 0) return [{ at: "centre" }]
  if (ring) {
    // A ring worked chain by chain: the chain stands on the first of them.
    return passesChains(work.allSteps) ? [takeCell(work)] : [{ at: "centre" }]
  }
  const site = work.startSite
  if (!site) return [{ at: "centre" }]
  const cell =
    work.main.edge.cells[
      ((site.from % work.main.edge.size) + work.main.edge.size) % work.main.edge.size
    ]
  const moved = work.used.some((use) => use.use === "slipped")
  if (cell?.type === "chain" && !moved && !work.startPassed) {
    if (passesChains(work.allSteps)) return [takeCell(work)]
    return [lastTop(work)]
  }
  if (cell?.type === "chain" && passesChains(work.allSteps) && !work.startPassed)
    return [takeCell(work)]
  work.use(work.main, site, "worked")
  work.main.at = Math.max(work.main.at, site.to)
  work.current = site
  return [site.anchor]
}

/** The round goes over chains one by one ("dc in each st and ch"). */
function passesChains(steps: readonly Step[]): boolean {
  return steps.some((step) => {
    const cases =
      step.do === "pass" ? step.cases : step.do === "work" || step.do === "group" ? [step] : []
    return cases.some(
      (part) => part.place?.at === "each" && part.place.nouns.some((noun) => noun.what === "chain"),
    )
  })
}

function takeCell(work: RoundWork): Anchor {
  const { main } = work
  const index = ((main.at % main.edge.size) + main.edge.size) % main.edge.size
  const site = { from: main.at, to: main.at + 1, anchor: main.edge.anchorAt(index, false) }
  work.use(main, site, "worked")
  work.startTaken = false
  main.at += 1
  work.current = site
  return site.anchor
}

/** The top the hook stands on where the round before simply ran on: its last stitch. */
function lastTop(work: RoundWork): Anchor {
  const { edge } = work.main
  for (let index = edge.size - 1; index >= 0; index--)
    if (edge.cells[index]?.type === "stitch") return edge.anchorAt(index, false)
  return edge.anchorAt(0, true)
}

/** The loop that a single chain the hook was led to is one of; null for any other place. */
export function wholeLoop(work: RoundWork, site: Site): Site | null {
  const { edge } = work.main
  if (site.anchor.at !== "chain" || site.anchor.round !== edge.round || edge.round < 0) return null
  const index = (at: number) => ((at % edge.size) + edge.size) % edge.size
  const { element } = edge.cells[index(site.from)]!
  let { from, to } = site
  const inside = (at: number) => edge.cells[index(at)]!.element === element
  while (from > 0 && inside(from - 1)) from -= 1
  while (to < from + edge.size && inside(to)) to += 1
  return { from, to, anchor: { at: "space", round: edge.round, element } }
}

/** A loop begun at the join starts from that stitch, so "next" is the one after it. */
export function leaveStart(work: RoundWork): void {
  const before = work.shared.rounds[work.index - 1]
  const site = work.startSite
  if (
    before?.closing !== "joined" ||
    !site ||
    work.startPassed ||
    work.startTaken ||
    site.anchor.at !== "stitch"
  )
    return
  if (work.main.at !== site.from) return
  work.startPassed = true
  work.main.at = site.to
}
