// Clauses about yarn, colour, markers and cords, which say nothing of stitches and are read over whole.

import { isColour } from "./stitch-grammar.ts"
import { stitchNamed, type Words } from "./words.ts"

/** Clauses about cords and threads laid in: "over the end of a cord bent to a circle,", "wind thread over it". */
export function acceptClauseOf(words: Words): true | null {
  const over = /^(over|around)$/.test(words.text())
  if (!over && !/^(wind|winding|lay|hold)$/.test(words.text())) {
    if (
      words.acceptAll("unless", "wanted") ||
      words.acceptAll("if", "wanted") ||
      words.acceptAll("as", "needed")
    )
      return true
    const colour = words.accept("all") && isColour(words.text())
    if (colour) words.at += 1
    return colour ? true : null
  }
  let cord = !over
  for (let ahead = 0; ahead < 16; ahead++) {
    const text = words.text(ahead)
    if (/^(cord|cords|thread|threads|wire)$/.test(text)) cord = true
    if (ahead > 0 && stitchNamed(text, words.terms)) return null
    if (text === "," || text === ";" || text === ":" || text === ".") {
      if (!cord) return null
      words.at += ahead
      return true
    }
  }
  return null
}

/** "mark first st", "place a marker in the last st", "move marker up as you go": to the end of the clause. */
function acceptMarker(words: Words): boolean {
  const verb =
    /^(?:(?:plac|putt|us|mov|mark|insert|attach)ing|place|put|use|move|mark|pm|insert|attach)$/.test(
      words.text(),
    )
  if (!verb) return false
  let marker = /^(?:mark|marking|pm)$/.test(words.text())
  for (let ahead = 1; ahead < 16; ahead++) {
    const text = words.text(ahead)
    if (/^(marker|markers|mark|pin)$/.test(text)) marker = true
    if (text === "" || text === "," || text === ";" || text === ".") {
      if (!marker) return false
      words.at += ahead
      return true
    }
  }
  return false
}

const pieces = new Set(
  "piece work motif circle square hexagon coaster it diameter crown hat disc disk doily mat base bottom".split(
    " ",
  ),
)
const measured = new Set([...pieces, "your", "the", "this"])

/** "piece should measure 1 1/2 inches", "motif measures 8 cm": to the end of the sentence. */
function acceptMeasure(words: Words): boolean {
  if (!measured.has(words.text())) return false
  return (
    words.attempt(() => {
      words.accept("your", "the", "this")
      if (!pieces.has(words.text())) return null
      words.at += 1
      for (let i = 0; i < 3 && !/^measures?$/.test(words.text()); i++) {
        if (!words.accept("should", "will", "now", "to")) return null
      }
      if (!words.accept("measure", "measures")) return null
      while (!words.done() && !/^[.;(]$/.test(words.text())) words.at += 1
      return true
    }) !== null
  )
}

const foldWords = new Set("fold bend push hold flip turn".split(" "))

/** "fold petals forward", "push the petals to the front". */
function acceptFold(words: Words): boolean {
  if (!foldWords.has(words.text())) return false
  return (
    words.attempt(() => {
      if (!words.accept("fold", "bend", "push", "hold", "flip", "turn")) return null
      words.accept("the", "all")
      if (!words.accept("petals", "petal", "leaves", "loops")) return null
      while (!words.done() && !/^[,;.(]$/.test(words.text())) words.at += 1
      return true
    }) !== null
  )
}

/** "leaving a long tail for sewing". */
function acceptTail(words: Words): boolean {
  if (!words.text().startsWith("leav")) return false
  return (
    words.attempt(() => {
      if (!words.accept("leave", "leaving")) return null
      let tail = false
      for (let i = 0; i < 10 && !/^[,;.(]?$/.test(words.text()); i++) {
        if (/^(?:tail|end|length|yarn)$/.test(words.text())) tail = true
        words.at += 1
      }
      return tail ? true : null
    }) !== null
  )
}

/** "stuff the head firmly", "sew to body", "embroider a smile", "insert the eyes": to the end of the sentence. */
function acceptSewing(words: Words): boolean {
  const verb = words.text()
  if (!/^(?:stuff|sew|sewing|embroider|block|press|steam|insert)$/.test(verb)) return false
  if (verb === "insert" && /^(?:hook|the|your)$/.test(words.text(1)) && words.text(2) !== "eyes")
    if (words.text(1) === "hook" || words.text(2) === "hook") return false
  while (!words.done() && !/^[.;([]$/.test(words.text())) words.at += 1
  return true
}

/** "using a 4 mm hook", "with a 5.5 mm (I) hook": the tool, told in passing. */
function acceptTool(words: Words): true | null {
  if (!words.accept("with", "using", "use")) return null
  words.accept("a", "an", "the", "your", "size")
  if (words.isNumber()) {
    words.at += 1
    words.accept("mm", ".")
  }
  words.attempt(() => {
    if (!words.accept("(") || words.done()) return null
    words.at += 1
    return words.accept(")") ? true : null
  })
  words.accept("mm", "size", "crochet", "steel", "smaller", "larger")
  return words.accept("hook") ? true : null
}

/** "make a slip knot", "pull the ring closed", "draw the loop up tightly". */
export function acceptHandling(words: Words): true | null {
  if (acceptSewing(words)) return true
  if (acceptMeasure(words) || acceptTail(words) || acceptFold(words)) return true
  if (acceptMarker(words) || words.attempt(() => acceptTool(words))) return true
  words.accept("make", "start", "begin")
  words.accept("with")
  words.accept("a", "the")
  if (words.accept("slip", "slipknot")) {
    if (words.tokens[words.at - 1]?.text === "slip" && !words.accept("knot")) return null
    if (words.accept("on", "onto")) {
      words.accept("your", "the", "to")
      words.accept("hook")
    }
    return true
  }
  if (!words.accept("pull", "draw", "tighten", "close")) return null
  words.accept("up", "the", "your")
  words.accept("magic", "adjustable", "center", "centre")
  if (!words.accept("ring", "loop", "circle", "tail", "end", "yarn", "hole")) return null
  while (
    words.accept(
      "up",
      "to",
      "tight",
      "tightly",
      "closed",
      "close",
      "shut",
      "and",
      "firmly",
      "the",
      "ring",
      "hole",
      "loop",
      "center",
      "centre",
    )
  );
  return true
}

/** "change to B", "changing colour", "switch to red". */
export function acceptColourChange(words: Words): true | null {
  if (words.accept("alternating", "alternate")) {
    words.accept("the", "your", "between")
    if (words.isNumber()) words.at += 1
    return words.accept("colors", "colours", "color", "colour", "yarns", "shades") ? true : null
  }
  if (!words.accept("change", "changing", "switch", "drop", "pick")) return null
  words.accept("up")
  words.accept("color", "colour", "colors", "colours", "yarn")
  if (words.accept("to")) return isColourWords(words) ? true : null
  isColourWords(words)
  return true
}

export function isColourWords(words: Words): boolean {
  const letter = words.text() === "a" && /^[,;.)]?$/.test(words.text(1))
  if (!letter) words.accept("a", "the", "new", "main", "contrasting", "contrast")
  if (words.accept("right", "wrong") && words.accept("side")) {
    words.accept("facing", "up")
    words.accept("you")
    return true
  }
  const word = words.text()
  if (isColour(word) || /^(colou?r|yarn|thread|mc|cc|[a-h])$/.test(word)) {
    words.at += 1
    words.accept("yarn", "color", "colour", "thread")
    if (/^[a-h]$/.test(words.text())) words.at += 1
    return true
  }
  return false
}
