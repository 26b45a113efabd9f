// Special stitches in words of our own, put together from what the stitch is: its yarn-overs, its legs, the loop or post it
// is worked in.

import { kindKey, type Motif } from "@roundwright/motif"
import {
  type BasicStitch,
  kindName,
  type StitchKind,
  type Terms,
  yarnOvers,
} from "@roundwright/stitches"
import { type Manuscript, sectionOf } from "../edit/manuscript.ts"

export function specialStitchesOf(
  motif: Motif,
  terms: Terms,
  manuscript: Manuscript,
): { name: string; how: string }[] {
  const told = (sectionOf(manuscript, "special")?.value ?? "").toLowerCase()
  const kinds = new Map<string, StitchKind>()
  const found: { name: string; how: string }[] = []
  let picot: number | null = null
  for (const { elements } of motif.rounds)
    for (const element of elements) {
      if (element.type === "picot") picot ??= element.chains
      if (element.type !== "stitch") continue
      const { kind } = element
      if (kind.gathered || kind.post || kind.loops) kinds.set(kindKey(kind), kind)
    }
  for (const kind of kinds.values()) {
    const name = kindName(kind, terms)
    if (!told.includes(name.toLowerCase())) found.push({ name, how: howOf(kind, terms) })
  }
  if (picot !== null && !told.includes("picot"))
    found.push({
      name: "picot",
      how: `ch ${picot}, then close the loop with a ${terms === "US" ? "sl st" : "ss"} in the first of these chains, unless the round says otherwise.`,
    })
  return found
}

function howOf(kind: StitchKind, terms: Terms): string {
  const where = [
    kind.loops === "back"
      ? "in the back loop only"
      : kind.loops === "front"
        ? "in the front loop only"
        : kind.loops === "third"
          ? "in the third loop, the bar behind the stitch"
          : "",
    kind.post === "front"
      ? "round the post of the stitch below, the hook going in from the front and out to the front again"
      : "",
    kind.post === "back"
      ? "round the post of the stitch below, the hook going in from the back and out to the back again"
      : "",
  ].filter((part) => part !== "")
  const plain = kindName({ basic: kind.basic }, terms)
  const { gathered } = kind
  if (!gathered) return `work a ${plain} ${where.join(", ")}.`
  const leg = legOf(kind.basic, terms)
  const over = terms === "US" ? "yarn over" : "yarn over hook"
  const there = where.length > 0 ? ` (${where.join(", ")})` : ""
  switch (gathered.how) {
    case "together":
      return `${leg}, once in each of the ${gathered.legs} places named${there}; ${over} and pull through all loops on the hook.`
    case "cluster":
    case "bobble":
      return `${leg}, ${gathered.legs} times in the place named${there}; ${over} and pull through all loops on the hook.`
    case "puff":
      return `${over}, insert the hook and pull up a long loop, ${gathered.legs} times in the place named${there}; ${over} and pull through all loops on the hook.`
    case "popcorn":
      return `${gathered.legs} ${plain} in the place named${there}; take the hook out of the loop, put it into the top of the first of them, and draw the loop through.`
  }
}

/** A leg left on the hook with its last loop. */
function legOf(basic: BasicStitch, terms: Terms): string {
  const over = terms === "US" ? "yarn over" : "yarn over hook"
  const overs = yarnOvers(basic)
  const begin = overs === 0 ? "" : `${over}${overs > 1 ? ` ${overs} times` : ""}, `
  const draw = basic === "hdc" ? 0 : overs
  const pull =
    draw === 0 ? "" : `, (${over}, pull through 2 loops)${draw > 1 ? ` ${draw} times` : ""}`
  return `${begin}insert the hook and pull up a loop${pull}`
}
