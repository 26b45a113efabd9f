// Lines that say nothing of the work ("Photo 2: two rounds done!", "Ta-da!"), and lines that do.

/** Words of the work; a line with none of them is talk. */
const wordsOfWork =
  /\*|\b(?:ch|chs|chains?|sc|dc|hdc|htr|tr|dtr|trtr|sl|ss|sts?|stitch(?:es)?|sps?|spaces?|loops?|lps?|join(?:ing)?|turn|rep|repeat|skip|sk|miss|incs?|decs?|increas\w*|decreas\w*|picots?|puffs?|popcorns?|pc|clusters?|cl|shells?|bobbles?|tufts?|fans?|ring|single|double|treble|trebles|half|corners?|fasten|work|working|magic|into|total|next|each|every|even|around|blo|flo|[fb]p\w*|mr|mc|cc|rows?|rnds?)\b/i
const endsSentence = /(?:[.!?)\]}"]|\p{Extended_Pictographic})\s*$/u
const beginsSentence = /^\s*(?:\p{Lu}|["'[(]|\p{Extended_Pictographic})/u

/** A line after the text of a round that says nothing of the work, so that the round ended before it. */
export function isTalkLine(line: string, before: string): boolean {
  if (!endsSentence.test(before) || !beginsSentence.test(line)) return false
  return /\p{L}{3}/u.test(line) && !wordsOfWork.test(line)
}

/** What stands behind a pattern on its page, where a sentence begins with it. */
const endMatter =
  /(?<=[.!?)\]][ \t\r\n]{1,4})(?:copyright\b|©|\(c\) ?\d{4}|all rights reserved|per copyright|free for (?:your )?(?:own )?personal|(?:please )?do not (?:copy|sell|resell|redistribute)|for personal use only|\d{4} [\w. ]{3,40}all rights)/i

/** Where in a round's text the page's own words begin; -1 where there are none, or work follows them. */
export function endMatterIn(text: string): number {
  const at = endMatter.exec(text)?.index ?? -1
  return at < 0 || looksLikeWork(text.slice(at)) ? -1 : at
}

const makes =
  /\b(?:\d+ ?(?:sc|dc|hdc|htr|tr|dtr|single|double|treble)s?|ch ?-?\d+|\d+ ?ch|chain \w+|(?:sc|dc|hdc|htr|tr|dtr)(?:-\d| (?:in|into|around|twice))|sl ?st|slip stitch|slip st|inc (?:in|x|around)|inc\](?= ?x)|, inc)\b/i
const places =
  /\b(?:x ?\d|in|into|next|each|same|corner|repeat|rep|around|sps?|space|loop|join|ring|stitch|skip|miss)\b|\*/i
const aboutOther =
  /^[ \t>•*-]*(?:abbreviations?|materials?|you will need|notes?|finishing|border|edging|joining|assembly|to join|to finish|gauge|copyright|©)/i

/** "Copyright 2011 ...", "Abbreviations": what stands behind the last round. */
export function endsPattern(line: string): boolean {
  return /^[ \t>•*-]*(?:copyright|©|\(c\) ?\d|all rights|abbreviations\b|please do not|filed under|posted by|share this|labels:|tags:|comments?\b|related posts?|you may also|this pattern (?:is|was|may)|pattern by|designed by)|\ball rights reserved\b|\bdo not (?:copy|sell|resell|redistribute)\b|\bcopyright (?:©|\d{4})/i.test(
    line,
  )
}

/** A paragraph that goes on with the work: stitches made, and where. */
export function looksLikeWork(line: string): boolean {
  return makes.test(line) && places.test(line) && !aboutOther.test(line)
}

/** A few words behind a label that neither make nor place anything: a name for the round. */
export function isSubtitle(words: string): boolean {
  return (
    !/[\d*([,;]|\b(?:ch|chain|sc|dc|hdc|htr|tr|sl|ss|join|turn|skip|miss|rep|repeat|in|into|each|next|every|around|with|using|from|as|same|change|attach|fasten|inc|dec|blo|flo|even|place|start)\b/i.test(
      words,
    ) && !/[.!]\s*$/.test(words)
  )
}

/** A line in which chains, stitches or joins are told. */
export function makesSomething(line: string): boolean {
  return makes.test(line) || /\b(?:join|attach|start|insert|with|using|turn)\b/i.test(line)
}
