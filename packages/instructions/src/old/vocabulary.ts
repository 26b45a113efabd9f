// Words a pattern may hold that say nothing about what is worked, and the nearest known word for a
// slip of the pen (proposed to the reader, never assumed).

const ignored = new Set(
  (
    "and then now also a an the your with yarn colour color colours colors carefully work working worked make making made do please " +
    "using use continue continuing be sure keep keeping it as so that this piece same way remaining rem by turns " +
    "fasten finish off end ends cut break weave weaving tie leave leaving long tail change changing drop pick up carry carrying " +
    "thread tight tighten tightly pull close closed closing drawn draw gently place move marker pm mm sm stitch-marker mark " +
    "here there for of is on red blue green yellow white black grey gray pink purple violet orange brown cream beige teal navy " +
    "lilac turquoise gold silver dark light drab ecru natural main contrast contrasting mc cc bo new alternating two " +
    "rs ws right side wrong facing round rnd row beg beginning start starting first only both too again total " +
    "through throughout counts next strand hook always usual needed desired optional invisible tapestry loosely firmly " +
    "evenly stretch measure slip-knot knot note nb completed complete done finished finishing if unless wanted " +
    "stuff stuffing stuffed fiberfill fibrefill polyfill filling lightly well fo"
  ).split(" "),
)

const known = (
  "round rnd row chain slip stitch skip miss single double half treble crochet triple around repeat rep from next each same first last join " +
  "turn ring magic adjustable space loop corner cluster popcorn puff bobble shell picot group back front post together " +
  "between before after times more twice once ending omitting evenly increase increasing decrease decreasing center centre " +
  "petal scallop fan dc sc hdc tr dtr trtr htr sl st ch sp lp tog sts sps fasten weave color colour count counts does not " +
  "into over through under with begin beginning every other rest until across to in of at"
).split(" ")

/** True for a word that is knowingly passed over. */
export function isIgnored(text: string): boolean {
  return ignored.has(text)
}

const knownWords = new Set(known)

/** "to keep it flat", "to lie flat": what an increase left to the maker is for. */
export function isWayToKeep(text: string): boolean {
  return /^(?:keep|stay|lie|lay|make|have)$/.test(text)
}

/** A word the grammar uses somewhere. */
export function isKnownWord(text: string): boolean {
  return knownWords.has(text)
}

/** The known word nearest to a slip, or null when none is near. */
export function nearestWord(text: string): string | null {
  if (text.length < 3 || text.length > 14) return null
  const before = nearest.get(text)
  if (before !== undefined) return before
  if (nearest.size > mostRemembered) nearest.clear()
  const found = searchNearest(text)
  nearest.set(text, found)
  return found
}

/** Slips looked up before: the same unread word comes again in round after round. */
const nearest = new Map<string, string | null>()
const mostRemembered = 2000

function searchNearest(text: string): string | null {
  const allowed = text.length <= 4 ? 1 : 2
  let best: string | null = null
  let bestDistance = allowed + 1
  for (const word of known) {
    if (Math.abs(word.length - text.length) > allowed) continue
    const distance = editDistance(text, word, bestDistance)
    if (distance < bestDistance) {
      bestDistance = distance
      best = word
    }
  }
  return best
}

/** Edits between two short words, a swap of neighbours being one; stops counting at `limit`. */
function editDistance(a: string, b: string, limit: number): number {
  let before: number[] = []
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    let least = i
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1
      let cost = Math.min(
        (previous[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (previous[j - 1] ?? 0) + change,
      )
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1)
      row.push(cost)
      if (cost < least) least = cost
    }
    if (least >= limit) return limit
    before = previous
    previous = row
  }
  return previous[b.length] ?? limit
}
