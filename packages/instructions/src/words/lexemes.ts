// The words of a round as the grammar meets them: each token with its classes, phrases joined to one,
// fillers left out. Places are those of the text, so that everything can still be pointed at.

import { withHyphenLists } from "./hyphen-lists.ts"
import {
  type LexicalClass,
  lexicon,
  meaningfulWordCost,
  phraseWords,
  skipCosts,
  unknownWordCost,
} from "./lexicon.ts"
import { nearestWord } from "./nearest-word.ts"
import { gluedWords, isSplitWord } from "./parted-words.ts"
import {
  closeOf,
  halfDouble,
  isBasicName,
  isOtherTerm,
  isParted,
  markCosts,
  misscanned,
  numberCost,
  partedName,
  postFirst,
} from "./spellings.ts"
import type { Token } from "./tokens.ts"

export interface Lexeme extends Token {
  /** A new line of the text begins with it. */
  readonly newLine?: true
  readonly classes: ReadonlySet<LexicalClass>
  /** Cost of passing over it. */
  readonly skipCost: number
  /** A word that neither the lexicon nor the pattern knows: nothing may step over it in silence. */
  readonly unknown?: true
  /** Set when it was taken for the word it is a slip of. */
  readonly slipOf?: string
}

interface Phrase {
  readonly words: readonly string[]
  readonly text: string
}

const none: ReadonlySet<LexicalClass> = new Set()

const classesOf = new Map<string, Set<LexicalClass>>()

const phrasesFrom = new Map<string, Phrase[]>()

const fillers = new Set<string>()

for (const entry of lexicon)
  for (const written of entry.words.split("|")) {
    const words = written.split(" ").filter((word) => word !== "")
    const text = words.join(" ")
    let classes = classesOf.get(text)
    if (!classes) {
      classes = new Set()
      classesOf.set(text, classes)
      if (words.length > 1) {
        const list = phrasesFrom.get(words[0]!) ?? []
        list.push({ words, text })
        list.sort((a, b) => b.words.length - a.words.length)
        phrasesFrom.set(words[0]!, list)
      }
    }
    classes.add(entry.class)
    if (entry.class === "filler" && words.length === 1) fillers.add(text)
  }

/** Single words of the lexicon, for slips of the pen. */
const singleWords = [...classesOf.keys()].filter(
  (text) => !text.includes(" ") && text.length >= 4 && !fillers.has(text),
)

const isKnown = (text: string) => classesOf.has(text)

/** @param isName tells that a word names a stitch or a group of the pattern's own, and is no slip */
export function lexemesOf(scanned: readonly Token[], isName: (text: string) => boolean): Lexeme[] {
  const tokens = withoutSlips(withHyphenLists(scanned, isName), isName).map((token) => {
    const meant =
      token.type === "word" && !isName(token.text)
        ? (misscanned[token.text] ?? postFirst(token.text))
        : undefined
    return meant === undefined ? token : { ...token, text: meant }
  })
  const lexemes: Lexeme[] = []
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i]!
    const half = halfDouble(tokens, i)
    if (half !== null) {
      lexemes.push({
        ...token,
        type: "word",
        text: "hdc",
        value: Number.NaN,
        end: tokens[half]!.end,
        classes: none,
        skipCost: meaningfulWordCost,
      })
      i = half + 1
      continue
    }
    const named =
      token.type === "word" || (token.type === "ordinal" && phraseAt(tokens, i) !== null)
    if (!named && token.text !== "=" && token.text !== "&" && token.text !== "+") {
      lexemes.push({
        ...token,
        classes: none,
        skipCost: markCosts[token.text] ?? numberCost(token),
      })
      i += 1
      continue
    }
    const parted = partedName(tokens, i, isName)
    if (parted) {
      lexemes.push({
        ...token,
        text: parted.text,
        end: tokens[parted.last]!.end,
        classes: none,
        skipCost: meaningfulWordCost,
      })
      i = parted.last + 1
      continue
    }
    // "TR-3": three of them, as "CH-3".
    const dash = tokens[i + 1]
    if (
      dash?.text === "-" &&
      !dash.spaced &&
      tokens[i + 2]?.type === "number" &&
      !tokens[i + 2]!.spaced &&
      tokens[i + 3]?.text !== "-" &&
      isBasicName(token.text)
    ) {
      lexemes.push(single(token, isName))
      i += 2
      continue
    }
    // "SCx6": six of them.
    const stem = token.text.slice(0, -1)
    if (
      token.text.endsWith("x") &&
      tokens[i + 1]?.type === "number" &&
      !tokens[i + 1]!.spaced &&
      isName(stem)
    ) {
      lexemes.push(single({ ...token, text: stem }, isName))
      i += 1
      continue
    }
    // "Join C3 in any sp", "finish off C1": a colour by its number.
    const colour = tokens[i + 1]
    if (
      token.text === "c" &&
      colour?.type === "number" &&
      !colour.spaced &&
      /^(?:join|attach|off|with|using|to|in|drop|cut|change|add)$/.test(tokens[i - 1]?.text ?? "")
    ) {
      lexemes.push(known({ ...token, text: "color", end: colour.end }, "color"))
      i += 2
      continue
    }
    // "to to first sc": a word set twice.
    if (
      token.type === "word" &&
      tokens[i + 1]?.text === token.text &&
      token.text.length > 1 &&
      !isName(token.text)
    ) {
      i += 1
      continue
    }
    const phrase = phraseAt(tokens, i)
    if (phrase && !(phrase.words.length === 1 && fillers.has(phrase.text))) {
      const last = tokens[phrase.last]!
      lexemes.push(known({ ...token, text: phrase.text, end: last.end }, phrase.text))
      i = phrase.last + 1
      continue
    }
    if (!fillers.has(token.text) || isName(token.text)) lexemes.push(single(token, isName))
    i += 1
  }
  return withoutNames(lexemes, isName)
}

/**
 * "(*)" for the mark, "t-ch" for the turning chain, "1 2 sc" where a scan has parted the figures of 12, "15 t in
 * ring" for trebles: what is put together before phrases are looked for.
 */
function withoutSlips(tokens: readonly Token[], isName: (text: string) => boolean): Token[] {
  const kept: Token[] = []
  for (let i = 0; i < tokens.length; i++) {
    const [a, b, c] = [tokens[i]!, tokens[i + 1], tokens[i + 2]]
    if (i === 0 && /^[([]$/.test(a.text) && b?.text === "ch" && c && /^[)\]]$/.test(c.text)) {
      kept.push({ ...b, start: a.start, end: c.end })
      i += 2
    } else if (/^[([]$/.test(a.text) && b?.text === "*" && c && /^[)\]]$/.test(c.text)) {
      kept.push({ ...b, start: a.start, end: c.end })
      i += 2
    } else if (a.text === "pop" && /^corns?$/.test(b?.text ?? "")) {
      kept.push({ ...a, text: a.text + b!.text, end: b!.end })
      i += 1
    } else if (isSplitWord(a, b, isName, isKnown)) {
      kept.push({ ...a, text: a.text + b!.text, end: b!.end })
      i += 1
    } else if (a.text === "(" && namesSize(tokens, i)) {
      // "next (ch-7) loop": the bracket only sets the size off.
      const close = closeOf(tokens, i)
      kept.push(...tokens.slice(i + 1, close))
      i = close
    } else if (a.text === "(" && isOtherTerm(tokens, i, isName)) i = closeOf(tokens, i)
    else if (a.text === "tch" || (a.text === "t" && b?.text === "-" && c?.text === "ch")) {
      const end = a.text === "tch" ? a.end : c!.end
      kept.push(
        { ...a, type: "word", text: "turning", end },
        { ...a, type: "word", text: "ch", start: end, end },
      )
      if (a.text === "t") i += 2
    } else if (a.type === "number" && b && /^(?:[shd]|hd)?[ct]r?tog$/.test(b.text)) {
      // "2trtog": so many legs closed together.
      kept.push({
        ...b,
        text: b.text.replace("tog", `${a.value}tog`),
        start: a.start,
        spaced: a.spaced,
      })
      i += 1
    } else if (
      !/^(?:cluster|group|shell|petal|popcorn|puff|picot)s?$/.test(tokens[i + 3]?.text ?? "") &&
      isParted(kept[kept.length - 1], a, b, c, isName)
    ) {
      kept.push({
        ...a,
        text: `${a.value}${b!.value}`,
        value: 10 * a.value + b!.value,
        end: b!.end,
      })
      i += 1
    } else if (
      a.text === "t" &&
      a.type === "word" &&
      (b?.text === "into" || (kept[kept.length - 1]?.type === "number" && b?.text === "in"))
    )
      kept.push({ ...a, text: "tr" })
    else kept.push(...(gluedWords(a, isName, isKnown) ?? [a]))
  }
  return kept
}

/** "(ch 7)", "(ch-7)" in front of a loop. */
function namesSize(tokens: readonly Token[], at: number): boolean {
  const close = closeOf(tokens, at)
  if (close < at + 3 || close > at + 4 || !classesOf.get(tokens[at + 1]!.text)?.has("chain"))
    return false
  return (
    tokens[close - 1]!.type === "number" &&
    classesOf.get(tokens[close + 1]?.text ?? "")?.has("space") === true
  )
}

/** "16 single crochet (sc) in ring", "3rd stitch (st) of ch": the abbreviation of the word before, in a bracket. */
function withoutNames(lexemes: readonly Lexeme[], isName: (text: string) => boolean): Lexeme[] {
  const kept: Lexeme[] = []
  for (let i = 0; i < lexemes.length; i++) {
    const comma = kept[kept.length - 1]?.text === ","
    const end = bracketedName(lexemes, i, kept[kept.length - (comma ? 2 : 1)], isName)
    if (end !== null) {
      i = end
      continue
    }
    const [open, name, close] = [lexemes[i]!, lexemes[i + 1], lexemes[i + 2]]
    const before = kept[kept.length - 1]
    const abbreviates =
      before?.type === "word" &&
      (open.text === "(" || open.text === "[") &&
      name?.type === "word" &&
      (close?.text === ")" || close?.text === "]") &&
      name.text !== before.text &&
      name.text.length < before.text.length &&
      [...name.classes].some(
        (one) =>
          before.classes.has(one) &&
          /^(?:stitch|chain|space|group|skip|repeat|round|start)$/.test(one),
      )
    if (abbreviates) i += 2
    else kept.push(open)
  }
  return kept
}

/** "slip stitch (sl st)", "double crochet (dc)": the index of the bracket's end where it holds nothing but a stitch's name. */
function bracketedName(
  lexemes: readonly Lexeme[],
  from: number,
  before: Lexeme | undefined,
  isName: (text: string) => boolean,
): number | null {
  if (!/^[([{]$/.test(lexemes[from]!.text) || before?.type !== "word") return null
  if (!isName(before.text) && !before.classes.has("stitch") && !/crochet$/.test(before.text))
    return null
  let name = ""
  for (let at = from + 1; at < from + 5; at++) {
    const word = lexemes[at]
    if (!word) return null
    if (/^[)\]}]$/.test(word.text)) return name !== "" && isName(name) ? at : null
    if (word.type !== "word") return null
    name += word.text
  }
  return null
}

function single(token: Token, isName: (text: string) => boolean): Lexeme {
  if (classesOf.has(token.text)) return known(token, token.text)
  if (isName(token.text) || token.text.length === 1)
    return { ...token, classes: none, skipCost: token.text.length === 1 ? 0.4 : meaningfulWordCost }
  const slip = nearestWord(token.text, singleWords)
  if (slip) return { ...known(token, slip), slipOf: slip }
  const stranger = phraseWords.has(token.text) ? {} : { unknown: true as const }
  return { ...token, classes: none, skipCost: unknownWordCost, ...stranger }
}

const knownCosts = new Map<string, number>()

function known(token: Token, text: string): Lexeme {
  const classes = classesOf.get(text)!
  let cost = knownCosts.get(text)
  if (cost === undefined) {
    // A word of several classes is as dear as the dearest of them that says something, talk apart.
    cost = classes.has("filler")
      ? 0
      : Math.max(...[...classes].map((name) => skipCosts[name] ?? meaningfulWordCost))
    knownCosts.set(text, cost)
  }
  return { ...token, text, classes, skipCost: cost }
}

/** The longest phrase that begins here; fillers inside it are passed over. */
function phraseAt(tokens: readonly Token[], from: number): (Phrase & { last: number }) | null {
  const phrases = phrasesFrom.get(tokens[from]!.text)
  if (!phrases) return null
  for (const phrase of phrases) {
    let at = from
    let matched = 1
    while (matched < phrase.words.length) {
      at += 1
      const token = tokens[at]
      if (!token) break
      if (token.text === phrase.words[matched]) matched += 1
      else if (token.text === "-" && !token.spaced) continue
      else if (!fillers.has(token.text) || token.type !== "word") break
    }
    if (matched === phrase.words.length) return { ...phrase, last: at }
  }
  return null
}
