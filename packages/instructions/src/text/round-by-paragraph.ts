// Rounds of a text that labels none: every paragraph of work is a round, once the one before it is closed or
// the paragraph opens a round itself. Their numbers are those of their order.

import type { Span } from "../base/tree.ts"
import type { RoundLabel } from "./labels.ts"
import { endOfLine, type SourceText } from "./source-text.ts"
import { endsPattern, looksLikeWork } from "./talk.ts"

/** Stitches are made, and not only chains or a ring. */
const stitches =
  "(?:s\\.?c|d\\.?c|h\\.?d\\.?c|tr|dtr|htr|trebles?|(?:single|double|half|treble|triple)s?)"
const makesStitches = new RegExp(
  [
    String.raw`\b\d+ ?(?:more )?(?:${stitches}|inc)\b`,
    String.raw`\b[hst]?[dr]?c?inc\b`,
    String.raw`\b(?:sc|dc|hdc|tr|htr|dtr|trebles?)[- ]?\d`,
    String.raw`\b(?:sc|dc|hdc|htr|tr|(?:single|double|treble) crochets?)\b[^.]{0,60}\b(?:in|into|around|each|next)\b`,
    String.raw`\b(?:ss|sl ?st|slip stitch)\b[^.]{0,20}\binto\b[^.]{0,20}\bnext\b`,
    // Slip stitches round something bought.
    String.raw`\b(?:[6-9]|\d\d) (?:ss|sl ?sts?|slip stitch(?:es)?)\b[^.]{0,20}\b(?:around|in|into)\b`,
  ].join("|"),
  "i",
)
/** "sc6 in a ring (6)", "(sc3, inc)6 (30)": a round in the shortest form, its total behind it. */
const shortRound =
  /^[ \t•*.-]{0,9}[([]?(?:\d{1,2} ?)?(?:sc|dc|hdc|htr|tr|inc|dec)(?:\b| ?\d)[^.\n]{0,60}[([]\d{1,3}(?: ?sts?)?[)\]][ \t.]{0,4}$/i
/** Chains, a join or new yarn: what a round begins with. */
const opens =
  /^(?:[\s•>.\-–]|\*(?=\s))*(?:(?:now|then|next|start(?:ing)?(?: by| with)?|begin(?:ning)?(?: by)?|with|using|add|[\w ]{1,24}:)[\w ,]{0,24}?\b)?(?:ch\b|ch-?\d|chain\b|\d+ ?ch(?:ain)?s?\b|join\b|attach\b|(?:ss|sl ?st|slip st(?:itch)?) (?:in|into|to)\b|in(?:to)? (?:any|each|the)\b)/i
/** "Next round:", "Final row,", "Start the second round": said of a round that begins. */
const namesRound =
  /^[\s•*>.\-–]*(?:(?:for )?(?:(?:the )?(?:next|final|last|following|second|third|fourth|fifth|sixth|\d(?:st|nd|rd|th))) (?:colou?r )?(?:round|rnd|row)\b|(?:start|begin) the (?:next|last|final|second|third|fourth|fifth|sixth) (?:round|rnd|row)\b)/i
const nameOfRound =
  /^[\s•*>.\-–]*(?:(?:the )?(?:next|final|last|following|second|third|fourth|fifth|sixth|\d(?:st|nd|rd|th)) (?:colou?r )?(?:round|rnd|row)[ \t]?[:,.\-–]|for (?:the )?(?:next|final|last|second|third) (?:round|rnd|row),?)[ \t]*/i
/** The round is closed, or goes all the way. */
const closes =
  /\b(?:join|joined|slip st(?:itch)?|sl ?st|ss|close|closed)\b[^.;,]{0,60}\b(?:first|1st|top|beg\w*|start\w*|initial|ring|round|join|ch|chain)\b|\b(?:finish|complete|close|end)\b[^.;]{0,24}\b(?:round|rnd|row|circle)\b|\b(?:fasten|finish|break|cut|tie|bind|cast) off\b|\bchange colou?rs?\b|\bdo not join\b|\b(?:around|all the way round|to (?:the )?end|rep(?:eat)?)\b[^.]{0,30}[.!]?\s{0,9}(?:\([^()]{1,40}\)\.?)?\s{0,9}$|\(\d{1,3}(?: [a-z\d]{1,12}){0,2}\)\.?\s{0,9}$/i
/** Nothing but the ring. */
const ringOnly = /\b(?:ring|circle|magic|foundation|mr|(?:in|into) the (?:loop|circle|ring))\b/i
const beginsRing =
  /^[\s•*>.\-–]*(?:(?:start|begin|with|using|make|form|work|crochet)[\w ,]{0,24}?\b)?(?:(?:an? )?(?:magic|adjustable|sliding) (?:ring|circle|loop)|ch(?:ain)? ?-?\d+,?[\w ]{0,24}\b(?:ring|join|circle|loop))\b/i
/** Longest paragraph that is one round. */
const longestParagraph = 900

/** Fewest items that make a list. */
const fewestItems = 3
const bullet = /^[ \t]*(?:[-•*][ \t]+(?=[\p{L}\d(*[])|[-•~](?=[\p{L}\d([]))/u
/** "... join. Next round sc twice in each": a round told inside a paragraph. */
const nextRound =
  /(?<=[.!)][ \t])(?:for[ \t])?(?:the[ \t])?(?:next|final|last)[ \t](?:round|rnd|row)(?=[ \t]?[:,-]?[ \t](?:\(|\*|\d|ch|sc|dc|hdc|tr|htr|single|double|half|treble|work|make|in|into|inc|do|join|sl|ss|with|you))/gi

/** The items of a list, as far as the next one; the lines of any other text. */
function paragraphs(source: SourceText): Span[] {
  const lines = source.lineStarts.map((start, i) => ({ start, end: endOfLine(source, i + 1) }))
  const items = lines.filter(({ start, end }) => bullet.test(source.plain.slice(start, end)))
  if (items.length < fewestItems) return lines.flatMap((line) => atNextRounds(source.plain, line))
  const inList = (start: number) => start >= items[0]!.start
  return [
    ...lines.filter(({ start }) => !inList(start)),
    ...items.map((item, i) => ({ start: item.start, end: items[i + 1]?.start ?? item.end })),
  ]
}

/** A line, parted where the next round is named in it. */
function atNextRounds(plain: string, { start, end }: Span): Span[] {
  const text = plain.slice(start, end)
  const cuts = [...text.matchAll(nextRound)].map(({ index }) => start + index)
  return [start, ...cuts].map((from, i) => ({ start: from, end: cuts[i] ?? end }))
}

export function roundsByParagraph(source: SourceText, clean: string): RoundLabel[] {
  const labels: RoundLabel[] = []
  let body = ""
  for (const { start, end } of paragraphs(source)) {
    const text = clean.slice(start, end).trimEnd()
    if (labels.length > 0 && endsPattern(text)) break
    if (text.length > longestParagraph) continue
    const short = shortRound.test(text)
    const work = short || (looksLikeWork(text) && makesStitches.test(text))
    const again =
      labels.length > 0 &&
      /^[\s•*>.-]*(?:repeat|rep|work)\b[^.*]{0,20}\b(?:last|previous|this|that)\b[^.*]{0,10}\b(?:round|rnd|row)\b/i.test(
        text,
      )
    if (!work && !again) {
      // Yarn joined in a line of its own belongs to the round that follows.
      if (labels.length > 0) body += ` ${text}`
      continue
    }
    if (labels.length === 0 && ringOnly.test(text) === false && !opens.test(text)) continue
    // A ring made once more, with nothing closed since: what stood before only spoke of one.
    if (labels.length === 1 && beginsRing.test(text) && !closes.test(body)) {
      labels.pop()
      body = ""
    }
    const made = makesStitches.test(body) || shortRound.test(body)
    if (
      labels.length === 0 ||
      again ||
      (made && (closes.test(body) || short || opens.test(text) || namesRound.test(text)))
    ) {
      const lead = text.search(/\S/)
      const at = start + Math.max(0, lead)
      const named = nameOfRound.exec(text)?.[0].length ?? 0
      labels.push({
        from: labels.length + 1,
        to: labels.length + 1,
        row: false,
        start: at,
        end: Math.max(at, start + named),
        markAt: at,
        unlabelled: true,
      })
      // What is worked like another round is whole with that.
      body = again ? "1 sc, fasten off" : text
    } else body += ` ${text}`
  }
  // One paragraph of work may be anything.
  return labels.length >= 2 ? labels : []
}
