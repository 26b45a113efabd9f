// A maker who takes a written round to the letter: what it says is done and nothing else, "next" is the place after the
// last one, and "around" goes on while there are places. A second reader beside the one of `instructions`, with none
// of its indulgence and no look at the total, for rounds as the project's own writer tells them.

import type { Motif } from "@roundwright/motif"
import { isCornerSpace } from "./corner-spaces.ts"

/** Thrown for words this reader does not know. */
class Beyond extends Error {}

/** Places of the round below in working order, and how far the hook has come. */
class Walk {
  /** First place not passed yet; the hook after the last one that was worked into. */
  at = 0
  /** A place was asked for that there is not on this round. */
  over = false
  /** The place the round begins in. */
  first: number | undefined = undefined

  constructor(readonly places: readonly { readonly name: string; readonly corner: boolean }[]) {}

  back(at: number): void {
    this.at = at
    this.over = false
  }

  next(name: string, corner: boolean, skipping: boolean): void {
    const size = this.places.length
    // The round ends where it began, which may lie beyond the join.
    const end = size + (this.first ?? size)
    for (let k = this.at; k < end; k++) {
      const place = this.places[k % size]!
      const fits = corner
        ? place.corner && (name === "st") === (place.name === "st")
        : place.name === name
      if (!fits) continue
      if (!skipping) this.first ??= k
      this.at = k + 1
      return
    }
    // What is skipped at the end may lie before the start of the round.
    if (!skipping) this.over = true
    this.at = end
  }
}

/** Stitches of a written round by its letter; null where its words are beyond this reader. */
export function countByLetter(line: string, motif: Motif, index: number): number | null {
  const body = line
    .replace(/^(?:Rnd|Row) \d+: /, "")
    .replace(/ \([^()]*\)$/, "")
    .replace(/ Fasten off\.$|\.$/, "")
  const parts = splitAt(body, "; ")
  while (/^(?:join\b|turn$|ch \d+, \S+ in (?:first|last|sl st))/.test(parts.at(-1) ?? ""))
    parts.pop()
  const work = parts
    .filter((part) => !/form a ring$|^ch \d+$|skipped ch do not count\)$/.test(part))
    .join("; ")
  const below = motif.rounds[index - 1]
  const joined = below?.closing === "joined" && below.elements[0]?.type === "stitch"
  const places = (below?.elements ?? []).flatMap((element, e) =>
    element.type === "picot"
      ? []
      : [
          {
            name: element.type === "chain" ? `ch-${element.chains} sp` : "st",
            corner: isCornerSpace(motif, index - 1, e),
          },
        ],
  )
  const walk = new Walk(places)
  // The join stands in the first stitch: the next one is the one after it.
  if (joined) walk.at = 1
  try {
    const made = roundMade(work, walk)
    return walk.over ? Number.NaN : made
  } catch (error) {
    if (error instanceof Beyond) return null
    throw error
  }
}

function roundMade(work: string, walk: Walk): number {
  const skipped = /^ch \d+ \(\d+ skipped ch count as [^()]*\)(?:; )?/.exec(work)
  const rest = skipped ? work.slice(skipped[0].length) : work
  const star = rest.indexOf("*")
  const before =
    opened(splitAt(star < 0 ? rest : rest.slice(0, star), ", "), walk) + (skipped ? 1 : 0)
  if (star < 0) return before
  const told =
    /^\*(.*?); rep from \* (around|once more|twice more|(\d+) more times)(, ending at \*\*)?(?:, (.*))?$/.exec(
      rest.slice(star),
    )
  if (!told) throw new Beyond()
  const [, inside, often, number, inPart, tail] = told
  const [head, last = []] = inside!.split("**, ").map((part) => splitAt(part, ", "))
  const rest2 = inPart ? last : []
  const around = often === "around"
  const times = around ? Infinity : (number ? Number(number) : often === "once more" ? 1 : 2) + 1
  let made = 0
  for (let k = 0; k < times; k++) {
    const { at } = walk
    const whole = doneInOrder(head!, walk)
    if (around && walk.over) {
      walk.back(at)
      break
    }
    made += whole
    if (k === times - 1) break
    const after = walk.at
    const more = doneInOrder(rest2, walk)
    // The last time ends before what would lead past the end of the round.
    if (around && (walk.over || !goesOn(head!, walk))) {
      walk.back(after)
      if (inPart) break
    }
    made += more
    if (around && walk.at === at) throw new Beyond()
  }
  return before + made + (tail ? doneInOrder(splitAt(tail, ", "), walk) : 0)
}

/** Whether the phrases can be worked once more from here. */
function goesOn(phrases: readonly string[], walk: Walk): boolean {
  const { at } = walk
  doneInOrder(phrases, walk)
  const can = !walk.over
  walk.back(at)
  return can
}

const startChain = /^ch \d+(?: \((counts as (?:first )?([^()]*)|does not count)\))?$/

/** The phrases that open a round, before its repeat. */
function opened(phrases: readonly string[], walk: Walk): number {
  let made = 0
  let begun = false
  phrases.forEach((phrase, i) => {
    const sides = sidesMade(phrase, phrases[i + 1] ?? "", walk)
    if (sides !== null) {
      begun = true
      made += sides
      return
    }
    if (phrase === "starting in same st") {
      walk.at = 0
      return
    }
    const way = begun ? null : /^sl st (?:in|to) (.*)$/.exec(phrase)
    if (way) {
      goTo(way[1]!, walk, true)
      return
    }
    const start = begun ? null : startChain.exec(phrase)
    if (start) {
      begun = true
      // A chain that counts stands in the place the hook has come to.
      if (start[2] !== undefined && walk.at === 0 && walk.places.length > 0) walk.at = 1
      const loop = /^ch-/.test(start[2] ?? "")
      if (start[2] !== undefined && walk.at > 0) walk.first ??= loop ? walk.at : walk.at - 1
      const leg = /\(counts as \S+tog\)$/.test(phrases[i + 1] ?? "")
      if (start[2] !== undefined && !/^ch-/.test(start[2])) made += 1
      else if (start[1] === undefined && !leg && phrase !== "ch 1") throw new Beyond()
      return
    }
    begun = true
    made += done(phrase, walk)
  })
  return made
}

/** "dc in each st around, working 3 dc in each corner st": every place from here on that is one or the other. */
function sidesMade(phrase: string, next: string, walk: Walk): number | null {
  const side = /^(.*) in each (\S+(?: sp)?) around$/.exec(phrase)
  const corner = /^working (.*) in each (?:remaining )?corner (sp|st)$/.exec(next)
  if (!side || !corner) return null
  const group = /^\((.*)\)$/.exec(corner[1]!)
  const inCorner = madeIn(group ? group[1]! : corner[1]!)
  const size = walk.places.length
  let made = 0
  for (let k = walk.at; k < size + (walk.first ?? 0); k++) {
    const { name, corner: own } = walk.places[k % size]!
    if (own && (name === "st") === (corner[2] === "st")) made += inCorner
    else if (name === side[2]) made += madeIn(side[1]!)
  }
  return made
}

function doneInOrder(phrases: readonly string[], walk: Walk): number {
  return phrases.reduce((sum, phrase) => sum + done(phrase, walk), 0)
}

/** Stitches made by a phrase, the hook moved on. */
function done(told: string, walk: Walk): number {
  const phrase = told.replace(/ \((?:corner|corner made|counts as [^()]*)\)/g, "")
  if (/^(?:working|picot of|ch \d)/.test(phrase)) return 0
  const skip = /^skip (?:next )?(.*)$/.exec(phrase)
  if (skip) {
    goTo(`next ${skip[1]!}`, walk, true)
    return 0
  }
  const bracket = /^\[(.*)\] (?:(\d+) times|twice)(?: in (.*))?$/.exec(phrase)
  if (bracket && isBalanced(bracket[1]!)) {
    const times = bracket[2] ? Number(bracket[2]) : 2
    if (bracket[3] !== undefined) return times * madeIn(bracket[1]!) * goTo(bracket[3], walk, false)
    let made = 0
    for (let k = 0; k < times; k++) made += doneInOrder(splitAt(bracket[1]!, ", "), walk)
    return made
  }
  const over = /^\S+tog over (?:st last worked in and )?(next .*)$/.exec(phrase)
  if (over) {
    goTo(over[1]!, walk, false)
    return 1
  }
  const placed = /^(.*?) in ([^()[\]]*)$/.exec(phrase)
  if (!placed) throw new Beyond()
  const group = /^\((.*)\)$/.exec(placed[1]!)
  return madeIn(group ? group[1]! : placed[1]!) * goTo(placed[2]!, walk, false)
}

/** Stitches of what is worked into one place: "2 dc, ch 2, [dc, ch 1] 3 times". */
function madeIn(text: string): number {
  return splitAt(text, ", ").reduce((sum, piece) => {
    if (/^(?:ch \d|picot of)/.test(piece)) return sum
    const bracket = /^\[(.*)\] (?:(\d+) times|twice)$/.exec(piece)
    if (bracket) return sum + (bracket[2] ? Number(bracket[2]) : 2) * madeIn(bracket[1]!)
    const several = /^(\d+) (?!-)/.exec(piece)
    return sum + (several ? Number(several[1]) : 1)
  }, 0)
}

/** How many places the words name, each gone to in turn. */
function goTo(words: string, walk: Walk, skipping: boolean): number {
  if (/\bof (?:Rnd|next|same)\b|ch from hook|just made|between|\bch$|picot/.test(words))
    throw new Beyond()
  if (/^same (?:st|sp)$/.test(words)) {
    walk.first ??= Math.max(0, walk.at - 1)
    return 1
  }
  if (/^(?:first sp|ring|magic ring|the .*ring)$/.test(words)) return 1
  const each = /^each (?:corner )?(.*) around$/.exec(words)
  if (each) {
    if (each[1] === "ch") throw new Beyond()
    const named = walk.places.filter(({ name, corner }) =>
      each[1] === "sp" ? corner && name !== "st" : name === each[1],
    )
    const all = named.length
    walk.at = walk.places.length
    return all
  }
  const next = /^(?:each of )?next (?:(\d+) )?(corner )?(.*)$/.exec(words)
  if (!next) throw new Beyond()
  const count = next[1] ? Number(next[1]) : 1
  const name = next[3]!.replace(/^sts$/, "st").replace(/sps$/, "sp")
  for (let k = 0; k < count; k++) walk.next(name, next[2] !== undefined, skipping)
  return count
}

/** Split where no bracket is open. */
function splitAt(text: string, mark: string): string[] {
  const parts: string[] = []
  let depth = 0
  let from = 0
  for (let i = 0; i < text.length; i++) {
    if (/[([]/.test(text[i]!)) depth += 1
    if (/[)\]]/.test(text[i]!)) depth -= 1
    if (depth === 0 && text.startsWith(mark, i)) {
      parts.push(text.slice(from, i))
      from = i + mark.length
    }
  }
  return [...parts, text.slice(from)].map((part) => part.trim()).filter((part) => part !== "")
}

function isBalanced(text: string): boolean {
  let depth = 0
  for (const letter of text) {
    if (letter === "[") depth += 1
    if (letter === "]") depth -= 1
    if (depth < 0) return false
  }
  return depth === 0
}
