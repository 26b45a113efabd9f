// The multiple of a written repeat: how many stitches of the row below it uses up, by adding up its words: "sk 3, 6 dc in next st" uses
// 4. Chains use none, "2tog" two, brackets into one place one, "in each of next 3 sts" three.

import { RoundwrightError } from "@roundwright/numerics"

export interface WrittenRepeat {
  readonly uses: number
  readonly makes: number
  /** What each part of the words uses. */
  readonly parts: readonly {
    readonly words: string
    readonly uses: number
    readonly makes: number
  }[]
  readonly text: string
}

const numberWords: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
}

const stitchWord =
  /^(?:sc|hdc|dc|tr|dtr|trtr|sl|ss|htr|edc|esc|bpdc|fpdc|bpsc|fpsc|single|double|half|treble|shell|fan|v-?st|cl|cluster|puff|popcorn|bobble|picot|sts?|stitch(?:es)?)s?$/i

/** @param plus stitches beside the repeats @param many repeats in the row @throws RoundwrightError `bad-row` */
export function usesOfRepeat(
  text: string,
  plus: number | null = null,
  many: number | null = null,
): WrittenRepeat {
  const words = withoutMarks(text)
  if (words.length > mostLetters)
    throw new RoundwrightError("bad-row", "That is more than one repeat has.")
  const parts = partsOf(words).map((part) => {
    const own = usesOf(part)
    if (own === null)
      throw new RoundwrightError("bad-row", `What "${part.slice(0, 50)}" uses is not clear.`, {
        hint: "Tell what lies between the asterisks, parted by commas: 'sk 3, 6 dc in next st'.",
      })
    return { words: part, ...own }
  })
  const uses = parts.reduce((sum, one) => sum + one.uses, 0)
  const makes = parts.reduce((sum, one) => sum + one.makes, 0)
  if (uses < 1)
    throw new RoundwrightError("bad-row", "These words use no stitch of the row below.", {
      hint: "Tell what lies between the asterisks, such as: 'sk 3, 6 dc in next st'.",
    })
  const sums = parts.filter((one) => one.uses > 0).map((one) => `${one.words}: ${one.uses}`)
  const less = `Where a corner or an end takes the last stitch, the stitches between are that less 1: ${multiples(uses, -1)}.`
  const beside =
    plus === null
      ? `Without any beside the repeats: ${multiples(uses, 0)}. ${less}`
      : `With ${plus} beside the repeats: ${multiples(uses, plus)}.`
  const all =
    many === null
      ? ""
      : ` ${many} repeats use ${many * uses + (plus ?? 0)}${plus === null ? "" : ` with the ${plus} beside them`} and make ${many * makes}.`
  return {
    uses,
    makes,
    parts,
    text: `One repeat uses ${uses} (${sums.join("; ")}) and makes ${makes}: a multiple of ${uses}, not of what is skipped or made.${all} ${beside} A count that is 1 or 2 off is eased by passing over one more or one fewer in the last gaps.`,
  }
}

const mostLetters = 300

function multiples(of: number, plus: number): string {
  const told = [1, 2, 3, 10, 20, 30].map((many) => many * of + plus)
  return `${told.slice(0, 3).join(", ")}, ... ${told.slice(3).join(", ")}`
}

function withoutMarks(text: string): string {
  const from = text.indexOf("*")
  const inner = from < 0 ? text : text.slice(from + 1)
  const end = inner.search(/\*|;\s{0,5}rep|\brepeat\b|\brep\b/i)
  return (end < 0 ? inner : inner.slice(0, end)).trim()
}

/** At commas and semicolons outside brackets. */
function partsOf(text: string): string[] {
  const parts: string[] = []
  let depth = 0
  let part = ""
  for (const sign of text) {
    if ("([{".includes(sign)) depth += 1
    if (")]}".includes(sign)) depth -= 1
    if (depth === 0 && (sign === "," || sign === ";")) {
      parts.push(part)
      part = ""
    } else part += sign
  }
  return [...parts, part].map((one) => one.trim()).filter((one) => one !== "")
}

function usesOf(part: string): { readonly uses: number; readonly makes: number } | null {
  const plain = part.toLowerCase().replace(/^(?:and|then|work)\s/, "")
  const bracket = /^([([{])([^)\]}]{1,200})[)\]}]\s{0,5}(.{0,80})$/.exec(plain)
  if (bracket) {
    const inner = partsOf(bracket[2]!)
    const times = /^(?:x\s{0,5})?(\w{1,8})\s{1,5}times?\b|^(twice)\b/.exec(bracket[3]!)
    const many = times ? (times[2] ? 2 : numberOf(times[1]!)) : null
    const made = inner.reduce((sum, one) => sum + madeIn(one), 0)
    if (many !== null) {
      const once = inner.map(usesOf)
      if (once.some((one) => one === null)) return null
      return {
        uses: many * once.reduce((sum, one) => sum + one!.uses, 0),
        makes: many * once.reduce((sum, one) => sum + one!.makes, 0),
      }
    }
    return { uses: placesIn(bracket[3]!) ?? 1, makes: made * (placesIn(bracket[3]!) ?? 1) }
  }
  if (/^(?:ch|chain)\b/.test(plain) || /^\w{1,5} ch\b/.test(plain)) return { uses: 0, makes: 0 }
  if (/^(?:turn|join)\b/.test(plain)) return { uses: 0, makes: 0 }
  const skip = /^(?:sk|skip|miss|leave|pass over)\s{1,5}(?:the\s)?(?:next\s{1,5})?(\w{1,8})?/.exec(
    plain,
  )
  if (skip) return { uses: numberOf(skip[1] ?? "") ?? 1, makes: 0 }
  const together = /(\d{1,2})\s?tog/.exec(plain)
  const places = placesIn(plain)
  if (together)
    return { uses: Number(together[1]) * (places && !/over/.test(plain) ? places : 1), makes: 1 }
  const made = madeIn(plain)
  if (made === 0) return null
  if (/\b(?:same|corner|space|sp|loop)\b/.test(plain) && places === null)
    return { uses: 0, makes: made }
  if (places === null) return { uses: made, makes: made }
  // "6 dc in next st" puts 6 into one; "dc in next 7 sts", "dc in each of next 7".
  return /^\d|^(?:one|two|three|four|five|six|seven|eight|nine|ten)\b/.test(plain)
    ? { uses: places, makes: made * places }
    : { uses: places, makes: places }
}

/** Places told by "in next 3 sts", "into the fifth st" (the next after those passed over); null where none are. */
function placesIn(words: string): number | null {
  const each =
    /\b(?:in|into|over|on)\s{1,5}(?:the\s)?(?:each\s{1,5})?(?:of\s)?(?:the\s)?(?:next|following|foll)\s{1,5}(\w{1,8})?/.exec(
      words,
    )
  if (each) return numberOf(each[1] ?? "") ?? 1
  if (
    /\b(?:in|into)\s{1,5}(?:the\s)?(?:\d{1,2}(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh)\b/.test(
      words,
    )
  )
    return 1
  return null
}

/** "7 dc" makes 7, "dc" one, "ch 3" none. */
function madeIn(words: string): number {
  const own = words.trim().split(/\s{1,5}/)
  if (/^ch(?:ain)?s?$/.test(own[0] ?? "")) return 0
  const first = numberOf(own[0] ?? "")
  const name = first === null ? own[0]! : (own[1] ?? "")
  if (/^ch/.test(name)) return 0
  return stitchWord.test(name.replace(/[^a-z-]/g, "")) || /tog/.test(name) ? (first ?? 1) : 0
}

function numberOf(word: string): number | null {
  if (/^\d{1,3}$/.test(word)) return Number(word)
  return numberWords[word] ?? null
}
