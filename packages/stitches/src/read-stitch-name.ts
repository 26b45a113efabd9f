// Reads one stitch name as patterns write it: an abbreviation or full words, any case, with stops,
// spaces or hyphens inside, with post, loop and gathering marks before or after.
//
// The word is squeezed to small letters and digits; marks are then peeled off both ends, outermost
// first, and what is left must be a known spelling of a basic stitch.

import type { BasicStitch, Gathering, StitchKind, Terms } from "./kinds.ts"
import { stitchWords } from "./stitch-words.ts"

/** More legs than any yarn allows in one top; a number above it is a misprint, not a stitch. */
const mostLegs = 30

/** The kind a name stands for in these terms, or undefined when it is not one stitch's name. */
export function readStitchName(word: string, terms: Terms): StitchKind | undefined {
  if (word.length > longestName) return undefined
  const squeezed = word
    .toLowerCase()
    .replace(/½/g, "half")
    .replace(/[^a-z0-9]/g, "")
  return readLoops(squeezed, terms)
}

/** The longest spelling in words with all its marks is about 70 letters; more is not a name. */
const longestName = 120

const loopMarks: readonly (readonly [RegExp, NonNullable<StitchKind["loops"]>])[] = [
  [/^(?:blo|backlooponly|backloop|bl|tbl)(?=.)/, "back"],
  [/^(?:flo|frontlooponly|frontloop|fl)(?=.)/, "front"],
  [/^(?:thirdlooponly|thirdloop|3rdloop|tlo)(?=.)/, "third"],
  [/(?:(?:in|thru|through)(?:the)?)?(?:blo|backlooponly|backloops?|bl|tbl)$/, "back"],
  [/(?:(?:in|thru|through)(?:the)?)?(?:flo|frontlooponly|frontloops?|fl|tfl)$/, "front"],
  [/(?:(?:in|thru|through)(?:the)?)?(?:thirdlooponly|thirdloop|3rdloop)$/, "third"],
]

function readLoops(text: string, terms: Terms): StitchKind | undefined {
  const plain = readPost(text, terms)
  if (plain !== undefined) return plain
  for (const [mark, loops] of loopMarks) {
    if (!mark.test(text)) continue
    const rest = readPost(text.replace(mark, ""), terms)
    if (rest !== undefined) return { ...rest, loops }
  }
  return undefined
}

const postMarks: readonly (readonly [RegExp, NonNullable<StitchKind["post"]>])[] = [
  [/^(?:fp|frontpost)(.+)$/, "front"],
  [/^(?:bp|backpost)(.+)$/, "back"],
  [/^(?:raised|r)(.+?)(?:front|f)$/, "front"],
  [/^(?:raised|r)(.+?)(?:back|b)$/, "back"],
  [/^(.+?)rf$/, "front"],
  [/^(.+?)rb$/, "back"],
  [/^(.+?)(?:around|round)(?:the)?frontpost$/, "front"],
  [/^(.+?)(?:around|round)(?:the)?backpost$/, "back"],
]

function readPost(text: string, terms: Terms): StitchKind | undefined {
  const plain = readGathered(text, terms)
  if (plain !== undefined) return plain
  for (const [mark, post] of postMarks) {
    const inner = mark.exec(text)?.[1]
    const rest = inner === undefined ? undefined : readGathered(inner, terms)
    if (rest !== undefined) return { ...rest, post }
  }
  return undefined
}

const numberWords: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
}
const count = String.raw`(\d{1,2}|two|three|four|five|six|seven)`

/** Spellings of each way of gathering; the longer come first so that none is cut short. */
const gatherings: readonly (readonly [string, Gathering])[] = [
  ["(?:clusters?|clust|closedtoacluster|cls?)", "cluster"],
  ["(?:puffstitch|puffst|puffs?|closedtoapuff)", "puff"],
  ["(?:bobblestitch|bobblest|bobbles?|closedtoabobble|bob)", "bobble"],
  ["(?:popcornstitch|popcornst|popcorns?|foldedtoapopcorn|pop|pc)", "popcorn"],
]
const together = "(?:tog|together|workedtogether)"

function readGathered(text: string, terms: Terms): StitchKind | undefined {
  const basic = readBasic(text, terms)
  if (basic !== undefined) return { basic }
  const shared = readTogether(text, terms)
  if (shared !== undefined) return shared
  for (const [spelling, how] of gatherings) {
    const before = new RegExp(`^${count}(.+?)${spelling}$`).exec(text)
    const after = new RegExp(`^${spelling}of${count}(.+)$`).exec(text)
    const found = before ?? after
    if (found === null) continue
    const kind = gather(found[1]!, found[2]!, how, terms)
    if (kind !== undefined) return kind
  }
  return undefined
}

function readTogether(text: string, terms: Terms): StitchKind | undefined {
  const inside = new RegExp(`^(.+?)${count}${together}$`).exec(text)
  if (inside !== null) {
    const kind = gather(inside[2]!, inside[1]!, "together", terms)
    if (kind !== undefined) return kind
  }
  const before = new RegExp(`^${count}(.+?)${together}$`).exec(text)
  return before === null ? undefined : gather(before[1]!, before[2]!, "together", terms)
}

/** One leg cannot be gathered, so a count below 2 is no name. */
function gather(
  legsText: string,
  basicText: string,
  how: Gathering,
  terms: Terms,
): StitchKind | undefined {
  const legs = numberWords[legsText] ?? Number(legsText)
  // Puffs and clusters may hold post stitches ("3 FPdc cluster"); the mark stands inside then.
  const post = /^(fp|bp|frontpost|backpost)(.+)$/.exec(basicText)
  const basic = readBasic(post === null ? basicText : post[2]!, terms)
  if (basic === undefined || !(legs >= 2 && legs <= mostLegs)) return undefined
  const gathered = { how, legs }
  if (post === null) return { basic, gathered }
  return { basic, post: post[1]!.startsWith("f") ? "front" : "back", gathered }
}

/** A known spelling, or its plural. */
function readBasic(text: string, terms: Terms): BasicStitch | undefined {
  const words = stitchWords[terms]
  return (
    words.get(text) ??
    (text.endsWith("es") ? words.get(text.slice(0, -2)) : undefined) ??
    (text.endsWith("s") ? words.get(text.slice(0, -1)) : undefined)
  )
}
