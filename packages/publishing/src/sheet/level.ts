// The project level, proposed. The trade knows four: basic, easy, intermediate, complex (Craft Yarn Council, "Project
// levels"): plain stitches and increases; repeats of two kinds of stitch; patterned work such as clusters, post
// stitches and lace; more than that at once. Where the lines run is ours.

import type { Motif } from "@roundwright/motif"
import { isTall } from "@roundwright/stitches"

export function levelOf(motif: Motif): { name: string; why: string } {
  const elements = motif.rounds.flatMap(({ elements }) => elements)
  const stitches = elements.flatMap((element) => (element.type === "stitch" ? [element] : []))
  const kinds = new Set(stitches.map(({ kind }) => kind.basic))
  const rounds = motif.rounds.length
  const layers = stitches.some(({ passes, free }) => passes !== undefined || free === true)
  const below = motif.rounds.some((round, index) =>
    round.elements.some(
      (element) =>
        element.type === "stitch" &&
        element.anchors.some((anchor) => anchor.at !== "centre" && anchor.round < index - 1),
    ),
  )
  const gathered = stitches.some(({ kind }) => kind.gathered !== undefined)
  const posts = stitches.some(({ kind }) => kind.post !== undefined)
  const spread = stitches.some(({ anchors }) => anchors.length > 1)
  const lace = elements.some(
    (element) =>
      element.type === "picot" || (element.type === "chain" && element.chains >= longLoop),
  )
  const tall = [...kinds].some((kind) => isTall(kind) && kind !== "dc")
  const found = [
    layers ? "layers worked behind or in front" : "",
    below ? "stitches worked into earlier rounds" : "",
    gathered ? "stitches gathered into one" : "",
    posts ? "post stitches" : "",
    spread && !gathered ? "decreases" : "",
    lace ? "open lace" : "",
    tall ? "tall stitches" : "",
  ].filter((word) => word !== "")
  if (found.length >= 3 || (layers && found.length >= 2))
    return { name: "Complex", why: `${listed(found)}.` }
  if (found.length > 0) return { name: "Intermediate", why: `${listed(found)}.` }
  const chains = elements.some((element) => element.type === "chain")
  if (kinds.size <= 2 && !chains && rounds <= fewRounds)
    return { name: "Basic", why: "plain stitches and increases." }
  return {
    name: "Easy",
    why: chains
      ? "plain stitches and chain spaces in simple repeats."
      : "plain stitches in simple repeats.",
  }
}

/** Loops from this many chains on are lace rather than spaces. */
const longLoop = 5
/** A piece of more rounds keeps a maker counting. */
const fewRounds = 12

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`
}
