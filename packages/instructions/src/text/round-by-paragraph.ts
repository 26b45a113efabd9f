// Rounds of a text that labels none: every paragraph of work is a round, once the one before it is closed or
// the paragraph opens a round itself. Their numbers are those of their order.

import type { Span } from "../base/tree.ts"
import type { RoundLabel } from "./labels.ts"
import { endOfLine, type SourceText } from "./source-text.ts"
import { endsPattern, looksLikeWork } from "./talk.ts"

/** Stitches are made, and not only chains or a ring. */
const makesStitches =
  /\b\d+ ?(?:s\.?c|d\.?c|h\.?d\.?c|tr|dtr|htr|inc|trebles?|(?:single|double|half|treble|triple)s?)\b|\b[hst]?[dr]?c?inc\b|\b(?:sc|dc|hdc|tr|htr|dtr|tr)-\d|\b(?:sc|dc|hdc|htr|tr|(?:single|double|treble) crochets?)\b[^.]{0,60}\b(?:in|into|around|each|next)\b|\b(?:ss|sl ?st|slip stitch)\b[^.]{0,20}\binto\b[^.]{0,20}\bnext\b/i
/** Chains, a join or new yarn: what a round begins with. */
const opens =
  /^[\s•*>.\-–]*(?:(?:now|then|next|start(?:ing)?(?: by)?|begin(?:ning)?(?: by)?|with|using|add)[\w ,]{0,24}?\b)?(?:ch\b|ch-?\d|chain\b|\d ?ch\b|join\b|attach\b|ss (?:in|into|to)\b|sl ?st (?:in|into|to)\b|slip stitch (?:in|into|to)\b|in(?:to)? (?:any|each|the)\b)/i
/** The round is closed, or goes all the way. */
const closes =
  /\b(?:join|joined|slip stitch|sl ?st|ss|close|closed)\b[^.;]{0,60}\b(?:first|1st|top|beg\w*|start\w*|initial|ring|round|join|ch|chain)\b|\b(?:fasten|finish|break|cut|tie) off\b|\bchange colou?rs?\b|\b(?:around|all the way round|to (?:the )?end)\b[^.]{0,30}[.!]?\s*$/i
/** Nothing but the ring. */
const ringOnly = /\b(?:ring|circle|magic|foundation|mr)\b/i
/** Longest paragraph that is one round. */
const longestParagraph = 900

/** Fewest items that make a list. */
const fewestItems = 3
const bullet = /^[ \t]*[-•*][ \t]+(?=[\p{L}\d(*])/u

/** The items of a list, as far as the next one; the lines of any other text. */
function paragraphs(source: SourceText): Span[] {
  const lines = source.lineStarts.map((start, i) => ({ start, end: endOfLine(source, i + 1) }))
  const items = lines.filter(({ start, end }) => bullet.test(source.plain.slice(start, end)))
  if (items.length < fewestItems) return lines
  const inList = (start: number) => start >= items[0]!.start
  return [
    ...lines.filter(({ start }) => !inList(start)),
    ...items.map((item, i) => ({ start: item.start, end: items[i + 1]?.start ?? item.end })),
  ]
}

export function roundsByParagraph(source: SourceText, clean: string): RoundLabel[] {
  const labels: RoundLabel[] = []
  let body = ""
  for (const { start, end } of paragraphs(source)) {
    const text = clean.slice(start, end).trimEnd()
    if (labels.length > 0 && endsPattern(text)) break
    if (text.length > longestParagraph) continue
    const work = looksLikeWork(text) && makesStitches.test(text)
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
    const made = makesStitches.test(body)
    if (labels.length === 0 || again || (made && (closes.test(body) || opens.test(text)))) {
      const lead = text.search(/\S/)
      const at = start + Math.max(0, lead)
      labels.push({
        from: labels.length + 1,
        to: labels.length + 1,
        row: false,
        start: at,
        end: at,
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
