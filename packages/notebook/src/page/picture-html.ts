// A measured picture as HTML: the picture with its rings, the strip, one repeat, the rings as a table, what is asked,
// and the lines. Complete without a script and without a pointer.

import { readLines } from "@roundwright/picture"
import type { PictureAnswer } from "../picture/picture-answer.ts"
import { pieceSvg, repeatSvg, stripSvg } from "../picture/picture-svg.ts"
import { keepUnits, scrollBox } from "./common.ts"
import { type Child, element, type Html, trusted } from "./html.ts"

/** @param lines of the cell as written; what was found is in the answer's own */
export function pictureHtml(lines: string, answer: PictureAnswer | null): Child {
  const shown = answer?.lines ?? lines
  return [
    answer ? drawings(answer) : element("p", { class: "after" }, notHere(lines)),
    ringTable(shown),
    answer && answer.questions.length > 0
      ? element(
          "ul",
          { class: "notes asked" },
          answer.questions.map((question) => element("li", {}, keepUnits(question))),
        )
      : null,
    element(
      "pre",
      { class: "measured" },
      shown.split("\n").map((line) => element("span", { class: "line" }, line)),
    ),
  ]
}

function notHere(lines: string): string {
  const { picture } = readLines(lines)
  return picture
    ? `The picture ${picture} is not in this page; its lines tell what was measured.`
    : "No picture yet: the line Picture: names one beside the notebook."
}

function drawings(answer: PictureAnswer): Child {
  const repeat = repeatSvg(answer)
  return [
    element("figure", { class: "given" }, trusted(pieceSvg(answer))),
    captioned(
      "strip",
      "Unrolled once round, the centre below. Each counted strand has its tick and number.",
      scrollBox("The piece unrolled", trusted(stripSvg(answer))),
    ),
    repeat
      ? captioned(
          "one-repeat",
          "One repeat of each ring: the mean of all its repeats. Count posts between two spokes here.",
          trusted(repeat),
        )
      : null,
  ]
}

function captioned(look: string, words: string, drawing: Html): Html {
  return element("figure", { class: look }, element("figcaption", {}, words), drawing)
}

/** The rings as the lines tell them. */
function ringTable(lines: string): Child {
  const { rings } = readLines(lines)
  if (rings.length === 0) return null
  const head = ["Ring", "Reaches", "Repeats", "Strands", "Known by"]
  return scrollBox(
    "Rings",
    element(
      "table",
      { class: "rings" },
      element(
        "thead",
        {},
        element(
          "tr",
          {},
          head.map((title, k) => element("th", { scope: "col", class: wordy(k) }, title)),
        ),
      ),
      element(
        "tbody",
        {},
        rings.map(({ number, toMm, toShare, repeats, strands, sureness, nextBest }) =>
          element(
            "tr",
            {},
            [
              String(number),
              toMm !== null ? `${toMm} mm` : toShare !== null ? `${toShare} of 100` : "?",
              repeats === null ? "?" : String(repeats),
              repeats === null ? "?" : String(strands ?? repeats),
              repeats === null
                ? "not read"
                : sureness === null
                  ? "set by hand"
                  : `found, ${Math.round(100 * sureness)} %${nextBest === null ? "" : `; or ${nextBest}`}`,
            ].map((value, k) => element("td", { class: wordy(k) }, keepUnits(value))),
          ),
        ),
      ),
    ),
  )
}

const wordy = (column: number) => (column === 4 ? "word" : null)
