// Texts without any label: every paragraph that works a round is one, numbered in order.

import type { Span } from "../base/tree.ts"
import type { RoundLabel } from "./labels.ts"
import { endsPattern, looksLikeWork } from "./talk.ts"

interface Paragraph extends Span {
  readonly line: number
}

interface Round {
  label: RoundLabel
  line: number
  start: number
  bodyStart: number
  end: number
}

const stitches =
  /\b(?:\d+ ?)?(?:s\.? ?c|d\.? ?c|h\.? ?d\.? ?c|htr|tr|dtr|ttr|singles?|doubles?|half|trebles?|clusters?|popcorns?|puffs?|shells?)\b/i
const closes =
  /\b(?:join(?:ed|ing)?|close|closing|sl\.? ?st|slip ?st(?:itch)?|ss|slst|around|all round|to end)\b[^*]{0,90}$|[([]\s*\d+[^()[\]]{0,30}[)\]]\W*$|\d (?:sts?|stitches|petals|clusters|groups)\W*$/i
const again = /^\W*(?:repeat|rep)\s(?:the\s)?(?:last|previous)\s(?:round|rnd|row)\b/i
const nextRound =
  /^\W*(?:next|final|last|second|third)\s(?:(?:colou?r)\s)?(?:round|rnd|row)\b[ \t]*[:,.-]?/i
const bullet = /^[ \t]*[-•*–>][ \t]*(?=\S)/
const other =
  /^\W*(?:fasten|finish off|break|cut|weave|sew|block|materials?|gauge|tension|abbreviations?|hook|yarn|using (?:a|your) \d|special|notes?|sizes?|finished|you will)\b/i
/** Fewer than this make no pattern. */
const fewestRounds = 2
/** A paragraph without the words of a join is still a round where it begins as one. */
const beginsRound =
  /^\W*(?:ch(?:ain)?\s?-?\d|\d+ ?ch|chain \w+|join|attach|begin|start|with|using|sl\.? ?st|slip|ss\b|in (?:each|next|every|the|ch)|\d+ ?(?:sc|dc|hdc|tr|htr)|\*|\()/i

/** The rounds of a text in which no label was found; none where its paragraphs do not read as rounds. */
export function paragraphRounds(
  clean: string,
  prose: readonly Paragraph[],
): { rounds: Round[]; taken: Set<Paragraph> } {
  const rounds: Round[] = []
  const taken = new Set<Paragraph>()
  let done = true
  for (const part of prose) {
    const text = clean.slice(part.start, part.end)
    if (rounds.length > 0 && endsPattern(text)) break
    if (text.trim() === "" || other.test(text)) continue
    const works =
      (looksLikeWork(text) && stitches.test(text)) || again.test(text) || nextRound.test(text)
    if (!works) continue
    const last = rounds[rounds.length - 1]
    const begins =
      again.test(text) ||
      nextRound.test(text) ||
      (done && beginsRound.test(text)) ||
      bullet.test(text) ||
      (rounds.length === 0 && /\bring\b|\bcircle\b|magic/i.test(text))
    taken.add(part)
    if (begins || !last) {
      const named = nextRound.exec(text)?.[0].length
      const lead = named ?? bullet.exec(text)?.[0].length ?? text.search(/\S|$/)
      const start = part.start + (/^\s*\*/.test(text) && !named ? text.search(/\S/) : lead)
      const number = rounds.length + 1
      rounds.push({
        label: { from: number, to: number, row: false, start, end: start, markAt: start },
        line: part.line,
        start,
        bodyStart: start,
        end: part.end,
      })
    } else last.end = part.end
    done = closes.test(text) || again.test(text)
  }
  return rounds.length >= fewestRounds ? { rounds, taken } : { rounds: [], taken: new Set() }
}
