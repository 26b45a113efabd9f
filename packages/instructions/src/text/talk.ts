// Lines and sentences between the rounds that say nothing of the work: "Photo 2: two rounds done!", "Ta-da!".


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
