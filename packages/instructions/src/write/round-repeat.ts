// The repeat of a whole round: "..., *...; rep from * around". Of all places to set the star the one is taken that
// leaves nothing over at the end, and of those the one that reads shortest.

import { Folder, isPower, listParts, timesFrom } from "./fold.ts"
import type { Voice } from "./house-style.ts"
import type { Part, Wording } from "./part.ts"
import { sidesAround } from "./sides-around.ts"

export interface RoundParts {
  readonly parts: readonly Part[]
  /** What would be passed over between the last part and the start of the round. */
  readonly skipAtEnd: Part | null
  /** The parts begin in the stitch that the round before is joined to, which "next" would pass by. */
  readonly begins: boolean
  /** The parts are all of the round: nothing was made before them. */
  readonly whole: boolean
}

/** Longest repeat looked for, and how far on it may begin. */
const longestBody = 80
const longestStart = 80
/** In characters: what is left over after a repeat is easily lost. */
const tailCost = 90
/** "ending at **" has to be held in mind: worth it where much would be said twice, and the more the longer the round. */
const lastPartCost = 25
const lastPartCostOfLong = 5
/** Characters of a round from which on, and by which, the one cost becomes the other. */
const longRound = { from: 100, by: 160 } as const
/** A round that comes again and again is told by its repeat, though a bracket might be shorter. */
const starGain = 14
/** From so many on "around" is easier followed than a number. */
const fewestAround = 4
/** Parts of a round that a bracket may hold however short the round is. */
const fewestShared = 6

export function roundText(told: RoundParts, voice: Voice, wording: Wording): string {
  const { begins } = told
  const sides = wording.sides && !told.skipAtEnd ? sidesAround(told.parts) : null
  if (sides) return begins ? `starting in same st, ${sides}` : sides
  if (!wording.repeats) return listParts(told.parts).join(", ")
  const folder = new Folder(voice)
  if (!begins || !wording.start) return repeatText(told, folder, wording).text
  const each = eachAround(told, wording)
  if (each) return each
  const place = "same st"
  // In the stitch of the join: said before all, or of the first part alone.
  const before = repeatText(told, folder, wording)
  const prefix = `starting in ${place}, `
  const [first, ...rest] = told.parts
  const moved = first && inPlace(first, place)
  if (!moved) return prefix + before.text
  const apart = repeatText({ ...told, parts: [moved, ...rest] }, folder, wording)
  return apart.cost <= before.cost + prefix.length ? apart.text : prefix + before.text
}

/** "dc in next st" as "dc in same st as join"; null for a part that spans more than one place. */
function inPlace({ text, each }: Part, place: string): Part | null {
  if (each && text.startsWith(`${each.work} in next st`))
    return { text: text.replace(" in next st", ` in ${place}`) }
  return / in next st(?: \(|$)/.test(text)
    ? { text: text.replace(/ in next st(?= \(|$)/, ` in ${place}`) }
    : null
}

/** "2 sc in each st around"; null where places differ. */
function eachAround({ parts, whole, skipAtEnd }: RoundParts, wording: Wording): string | null {
  const [first] = parts
  if (!whole || skipAtEnd || !wording.around || !first?.each || parts.length < 2) return null
  if (!parts.every(({ text, each }) => each && text === first.text)) return null
  return `${first.each.work} in each ${first.each.several.replace(/sts$/, "st").replace(/sps$/, "sp")} around`
}

function repeatText(
  told: RoundParts,
  folder: Folder,
  wording: Wording,
): { text: string; cost: number } {
  const { parts, skipAtEnd } = told
  const each = eachAround(told, wording)
  if (each) return { text: each, cost: each.length }
  const share = Math.max(fewestShared, Math.floor(parts.length / 2))
  const folded = folder.fold(parts, share)
  let best = { text: folded.phrases.join(", "), cost: folded.cost }
  const offer = (list: readonly Part[], start: number, length: number, times: number) => {
    const found = withStar(list, start, length, times, folder, wording)
    if (found && found.cost < best.cost) best = found
  }
  for (const list of skipAtEnd ? [parts, [...parts, skipAtEnd]] : [parts])
    for (let length = 1; length <= Math.min(longestBody, list.length / 2); length++)
      for (let start = 0; start <= Math.min(longestStart, list.length - 2 * length); start++) {
        const times = timesFrom(list, start, length)
        if (times < 2 || times * length * 3 < list.length) continue
        // What would be passed over at the very end is said within a repeat or not at all.
        if (list !== parts && start + length * times < list.length) continue
        if (!isPower(list.slice(start, start + length))) offer(list, start, length, times)
      }
  return best
}

/** The parts with a star at `start` and so many times its body; null where the body is one run told shorter. */
function withStar(
  list: readonly Part[],
  start: number,
  length: number,
  times: number,
  folder: Folder,
  wording: Wording,
): { text: string; cost: number } | null {
  const body = list.slice(start, start + length)
  const after = list.slice(start + length * times)
  const { phrases } = folder.fold(body)
  if (phrases.length < 2 && body[0]!.each) return null
  const head = start > 0 ? `${folder.words(list.slice(0, start))}, ` : ""
  const inPart = after.length > 0 && after.every(({ text }, i) => text === body[i]?.text)
  const rounds = times + (start > 0 || inPart ? 1 : 0)
  const around = wording.around && rounds >= fewestAround && (after.length === 0 || inPart)
  const more = (count: number) => (around ? "around" : timesMore(count))
  if (inPart) {
    const first = folder.words(after)
    const rest = folder.words(body.slice(after.length))
    const text = `${head}*${first}**, ${rest}; rep from * ${more(times)}, ending at **`
    return { text, cost: text.length - starGain + costOfLastPart(text.length) }
  }
  const tail = after.length > 0 ? `, ${folder.words(after)}` : ""
  const text = `${head}*${phrases.join(", ")}; rep from * ${more(times - 1)}${tail}`
  return { text, cost: text.length - starGain + (after.length > 0 ? tailCost : 0) }
}

function costOfLastPart(length: number): number {
  const { from, by } = longRound
  const share = Math.min(1, Math.max(0, (length - from) / (by - from)))
  return lastPartCost + share * (lastPartCostOfLong - lastPartCost)
}

function timesMore(times: number): string {
  return times === 1 ? "once more" : times === 2 ? "twice more" : `${times} more times`
}
