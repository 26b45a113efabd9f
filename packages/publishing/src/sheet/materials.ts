// Yarn, hook and what else is needed. The designer's lines stay hers; of the hook the letter is put beside the millimetres.

import type { Check } from "@roundwright/assessment"
import { nearestHook, yarnWeights } from "@roundwright/stitches"
import { type Manuscript, sectionOf } from "../edit/manuscript.ts"
import { hookName } from "../edit/rules-of-materials.ts"
import { entriesOf } from "./words-of-designer.ts"
import { reckonedYarnLength, statedYarnLength } from "./yarn-length.ts"

/** A hook within this of a size of the table has its letter. */
const sameHookMm = 0.13

export function materialsOf(
  manuscript: Manuscript,
  check: Check,
): { what: string; text: string }[] {
  const { reading } = manuscript
  const yarn = yarnText(manuscript)
  const hook = hookText(manuscript)
  const length = statedYarnLength(manuscript) ?? reckonedYarnLength(check)
  const spiral = reading.motif.rounds.some(({ closing }) => closing === "spiral")
  return [
    ...(yarn === null ? [] : [{ what: "Yarn", text: yarn }]),
    ...(length === null ? [] : [{ what: "Length needed", text: length }]),
    ...(hook === null ? [] : [{ what: "Hook", text: hook }]),
    ...otherMaterials(manuscript).map((text) => ({ what: "Also", text })),
    {
      what: "To finish",
      text: `yarn needle, scissors${spiral ? ", stitch marker" : ""}, pins for blocking`,
    },
  ]
}

function yarnText(manuscript: Manuscript): string | null {
  const own = sectionOf(manuscript, "yarn")
  const weight = manuscript.reading.gauge.yarnWeight
  const facts = weight === undefined ? undefined : yarnWeights[weight]
  const named = facts ? `weight ${facts.weight}, ${facts.name}` : null
  if (own) {
    const text = entriesOf(own.value).join("; ")
    const told =
      named === null || new RegExp(`weight ${weight}|\\(${weight}\\)|#${weight}`, "i").test(text)
    return told ? text : `${text} (${named})`
  }
  return sectionOf(manuscript, "materials") ? null : named
}

function hookText({ reading, sections }: Manuscript): string | null {
  const { hookMm } = reading.gauge
  if (hookMm === undefined) {
    const own = sections.find(({ name }) => name === "hook")
    return own ? entriesOf(own.value).join("; ") : null
  }
  const nearest = nearestHook(hookMm)
  const name = Math.abs(nearest.mm - hookMm) <= sameHookMm ? hookName(nearest) : null
  return `${hookMm} mm${name === null ? "" : ` (US ${name})`}`
}

/** Lines of the list of materials that name neither the hook. */
function otherMaterials(manuscript: Manuscript): string[] {
  const hooked = manuscript.reading.gauge.hookMm !== undefined
  return entriesOf(sectionOf(manuscript, "materials")?.value).filter(
    (line) =>
      !(hooked && /\bhooks?\b/i.test(line)) &&
      !/^(?:yarn|tapestry|darning)?\s*needle|^scissors|^pins/i.test(line),
  )
}
