// Rounds that a text tells without a number, as those after the last: "Next round:", "Last row:", "Next 4 rounds",
// "Edging: sc in each st around", "Repeat last round twice more", "Repeat Rnd 3 for Rnds 5 and 6".

import { countOf, type RoundLabel } from "./labels.ts"

/** A round without a number of its own, and how many rounds it is. */
export interface Sequel {
  readonly label: RoundLabel
  readonly rounds: number
  /** The last of them, where that is what is said. */
  readonly until?: number
  /** Nothing but the numbers of the rounds that follow it can tell whether these are counted. */
  readonly word: "next" | "edging" | "again"
}

const opening = String.raw`(?:^|\n)[ \t>•*#-]{0,12}`
const afterSentence = String.raw`[.!)\]]["']?[ \t]{1,4}`
const roundWord = "(?:rounds?|rnds?|rds?|rows?)"

/** "Next round:", "Final rnd -", "Last row.", "Next 4 Rounds." */
const following = new RegExp(
  String.raw`(?:${opening}|${afterSentence})(?:(?:the[ \t])?(?:next|following|last|final)[ \t]{1,3}(?:(\w{1,6})[ \t]{1,3})?${roundWord})(?![a-z])[ \t]{0,3}(?:\([^()\n]{1,40}\)[ \t]{0,3})?([:.,\-]|(?=\n|$))`,
  "gi",
)
/** "Edging:", "Picot border -", "Finishing rnd:", on a line of its own or before its work. */
const edging = new RegExp(
  String.raw`${opening}((?:(?:[\p{L}]{2,12}[ \t])?(?:edging|edge|border|trim)|finishing)(?:[ \t](?:rounds?|rnd|row))?)[ \t]{0,3}[:\-][ \t]{0,4}`,
  "giu",
)
/** "Repeat last round twice more.", "Rep Rnds 3 and 4 once", "Repeat Round 7 for Rounds 8 and 9". */
const again = new RegExp(
  String.raw`(?:${opening}|${afterSentence})(rep(?:eat)?[ \t]{1,3}(?:(?:the[ \t]|this[ \t])?(?:last|previous|this|that|\d{1,2}(?:st|nd|rd|th))?[ \t]{0,3}${roundWord}\.?[ \t]{0,3}(\d{1,3})?(?:[ \t]{0,3}(?:-|to|and|&)[ \t]{0,3}(\d{1,3}))?))(?:[ \t,]{1,3}(?:for[ \t]{1,3}${roundWord}[ \t]{0,3}(\d{1,3})(?:[ \t]{0,3}(?:-|to|and|&|through)[ \t]{0,3}(\d{1,3}))?|(once|twice|(\w{1,6})[ \t](?:more[ \t])?times?)(?:[ \t]more)?))?[ \t]{0,3}(?=[.;,(\n]|$)`,
  "gi",
)

/** "Continue in this way until you have ten rounds", "Cont as established through Rnd 12", "Continue so for 4 more rnds". */
const onward = new RegExp(
  String.raw`(?:${opening}|${afterSentence})(?:\w{2,9},[ \t])?((?:continue|cont|carry on|keep|proceed)\b[^.;\n]{3,70}?)(?:(?:until|till)\b[^.;\n\d]{0,24}?\b(\w{1,8})[ \t]${roundWord}|(?:through|until|to|till)[ \t](?:the[ \t])?(?:${roundWord}[ \t])?(\d{1,3})(?:(?:st|nd|rd|th)[ \t]${roundWord})?(?<=${roundWord}[ \t]\d{1,3}|${roundWord})|for[ \t](\w{1,8})[ \t]more[ \t]${roundWord})(?![a-z])`,
  "gi",
)

/** Most rounds that a sentence can mean. */
const mostRounds = 60
/** How far a round's work may stand behind its name. */
const workWithin = 200

export function sequelsIn(text: string): Sequel[] {
  const found: Sequel[] = []
  for (const match of text.matchAll(following)) {
    const rounds = match[1] === undefined ? 1 : countOf(match[1])
    const end = match.index + match[0].length
    if (rounds === null || !beginsWork.test(text.slice(end, end + workWithin))) continue
    // "Next round, ..." goes on as a sentence does; a mark that ends one is a label's.
    if (match[2] === "," && !/^[^.!?]{0,14}(?:next|final|last)/i.test(match[0])) continue
    found.push(sequel(text, match, end, rounds, "next"))
  }
  for (const match of text.matchAll(edging)) {
    const end = match.index + match[0].length
    const work = /^\s{0,3}[^\n]{0,200}/.exec(text.slice(end, end + workWithin))![0]
    if (!goesAround.test(work) || joinsPieces.test(work)) continue
    found.push(sequel(text, match, end, 1, "edging"))
  }
  for (const match of text.matchAll(again)) {
    const [, , from, to, as, asTo, often, times] = match
    const length = Math.max(1, Number(to ?? from) - Number(from) + 1 || 1)
    const named = as === undefined ? null : Number(asTo ?? as) - Number(as) + 1
    const count = /^twice/i.test(often ?? "") ? 2 : times === undefined ? 1 : countOf(times)
    const rounds = named ?? (count === null ? 0 : count * length)
    const start = match.index + match[0].indexOf(match[1]!)
    if (rounds < 1 || (length > 1 && named === null && often === undefined)) continue
    if (afterLabel.test(text.slice(Math.max(0, start - 24), start))) continue
    const label = { from: 0, to: 0, row: /row/i.test(match[1]!), inferred: true }
    found.push({
      label: { ...label, start, end: start, markAt: start },
      rounds: Math.min(rounds, mostRounds),
      word: "again",
    })
  }
  for (const match of text.matchAll(onward)) {
    const [, said, inAll, through, more] = match
    const until = inAll === undefined ? Number(through) : countOf(inAll)
    const rounds = more === undefined ? null : countOf(more)
    if (!(rounds ?? until)) continue
    const start = match.index + match[0].indexOf(said!)
    const label = { from: 0, to: 0, row: false, inferred: true, start, end: start, markAt: start }
    if (rounds !== null) found.push({ label, rounds: Math.min(rounds, mostRounds), word: "again" })
    else found.push({ label, rounds: 1, until: Math.min(until!, mostRounds), word: "again" })
  }
  return found.sort((a, b) => a.label.start - b.label.start)
}

function sequel(
  text: string,
  match: RegExpMatchArray,
  end: number,
  rounds: number,
  word: Sequel["word"],
): Sequel {
  const lead = /^(?:[.!)\]]["']?)?[\s>•*#-]*/.exec(match[0])![0].length
  const start = match.index! + lead
  const markAt = Math.max(start, text.slice(start, end).trimEnd().length - 1 + start)
  return {
    label: { from: 0, to: 0, row: /\brow/i.test(match[0]), inferred: true, start, end, markAt },
    rounds: Math.min(rounds, mostRounds),
    word,
  }
}

const beginsWork =
  /^[\s"'*([{]{0,6}(?:(?:with|using|in|on|into|work|working|make|change|join|attach|start|starting|begin|beginning|rep|repeat|as|same|turn|skip|miss|sl|ss|slip|ch|chain|sc|dc|hdc|htr|tr|dtr|single|double|treble|half|bp\w+|fp\w+|inc|dec)\b|ch\d|\d+ ?[a-z])/i
const goesAround =
  /\b(?:sl ?st|slip stitch|ss|sc|dc|hdc|htr|tr|single crochets?|double crochets?|ch ?\d|picots?|shells?)\b[^.\n]{0,80}\b(?:around|round|each|every|edge)\b/i
/** A border of the whole blanket, or pieces put together, is no round of the motif. */
const joinsPieces =
  /\b(?:sew|whip ?stitch|blanket|afghan|throw|squares|motifs|pieces|together|strips?)\b/i
/** Right behind a label the words are its round. */
const afterLabel =
  /(?:(?:rounds?|rnds?|rds?|rows?|r)\.?[ \t]?\d{1,3}|\d(?:st|nd|rd|th)[ \t](?:round|rnd|row))[ \t]?(?:\([^()]*\))?[\s:.)\]-]*$/i
