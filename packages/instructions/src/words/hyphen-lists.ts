// Lists glued with hyphens: "sc-5dc-sc", "(2 dc-ch 2-2 dc)", "cluster-ch 3-cluster" are lists as with commas.

import type { Token } from "./tokens.ts"

type IsName = (text: string) => boolean

/** The tokens with such lists in brackets, a comma for every hyphen that only parts their items. */
export function withHyphenLists(tokens: readonly Token[], isName: IsName): readonly Token[] {
  if (!tokens.some(({ text, spaced }) => text === "-" && !spaced)) return tokens
  const kept = [...tokens]
  const parts: number[] = []
  for (let i = 1; i < kept.length - 1; i++) {
    const dash = kept[i]!
    if (dash.text !== "-" || dash.spaced || kept[i + 1]!.spaced) continue
    if (!endsItem(kept, i - 1, isName) || !beginsItem(kept, i + 1, isName)) continue
    kept[i] = { ...dash, text: "," }
    parts.push(i)
  }
  return parts.length === 0 ? tokens : inBrackets(kept, parts)
}

/** Each run of glued items set in brackets, unless it stands in some already. */
function inBrackets(tokens: readonly Token[], parts: readonly number[]): Token[] {
  const found: Token[] = []
  let copied = 0
  for (let k = 0; k < parts.length; ) {
    let last = k
    while (last + 1 < parts.length && parts[last + 1]! - parts[last]! <= longestItem + 1) last += 1
    const from = startOfItem(tokens, parts[k]! - 1)
    const to = endOfItem(tokens, parts[last]! + 1)
    const bracketed = /^[([{]$/.test(tokens[from - 1]?.text ?? "")
    found.push(...tokens.slice(copied, from))
    const at = tokens[from]!.start
    if (!bracketed) found.push({ ...tokens[parts[k]!]!, text: "(", start: at, end: at })
    found.push(...tokens.slice(from, to + 1))
    const end = tokens[to]!.end
    if (!bracketed) found.push({ ...tokens[parts[k]!]!, text: ")", start: end, end })
    copied = to + 1
    k = last + 1
  }
  return [...found, ...tokens.slice(copied)]
}

/** "starting cluster", "5 dc", "ch 3": the first word of the item that ends here. */
function startOfItem(tokens: readonly Token[], end: number): number {
  const from = isChain(tokens[end - 1]) ? end - 1 : end
  const before = tokens[from - 1]
  const leads = before?.type === "number" || /^(?:beg|beginning|starting)$/.test(before?.text ?? "")
  return leads ? from - 1 : from
}

/** The last word of the item that begins here. */
function endOfItem(tokens: readonly Token[], at: number): number {
  const counted = tokens[at]!.type === "number" && tokens[at + 1]?.type === "word"
  return counted || isChain(tokens[at]) ? at + 1 : at
}

/** Words of one item: "ch 3", "5 dc". */
const longestItem = 2

const gathered =
  /^(?:cl|cls|cluster|clusters|pc|pop|popcorn|popcorns|puff|puffs|bobble|bobbles|tog|inc|dec)$/
const isChain = (token: Token | undefined) => /^(?:ch|chain)$/.test(token?.text ?? "")

/** A stitch, or a chain with its figure where a list has already begun. */
function endsItem(tokens: readonly Token[], at: number, isName: IsName): boolean {
  const token = tokens[at]!
  if (token.type === "number")
    return isChain(tokens[at - 1]) && /^[-,]$/.test(tokens[at - 2]?.text ?? "")
  return token.type === "word" && isName(token.text) && !nameParts.test(token.text)
}

/** Words that begin the name of a stitch: "half-double". */
const nameParts =
  /^(?:single|double|half|treble|triple|extended|ext|foundation|front|back|fp|bp|slip|sl)$/

function beginsItem(tokens: readonly Token[], at: number, isName: IsName): boolean {
  const token = tokens[at]!
  const before = tokens[at - 2]!
  if (isChain(token)) return tokens[at + 1]?.type === "number"
  if (token.type === "number")
    return tokens[at + 1]?.type === "word" && isName(tokens[at + 1]!.text)
  if (token.type !== "word" || !isName(token.text) || token.text === before.text) return false
  // "dc-cluster", "puff-st" are names.
  return !gathered.test(token.text) || before.type === "number" || gathered.test(before.text)
}
