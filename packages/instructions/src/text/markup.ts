// Markdown and HTML are tolerated by blanking their marks, so that offsets stay those of the text given.

import { blankStepNumbers } from "./numbered-steps.ts"
import type { SourceText } from "./source-text.ts"

export function blankMarkup(source: SourceText): string {
  let text = source.plain
  if (/[_`\\<>|#~-]/.test(text)) {
    if (/[_`|~\\]/.test(text))
      text = text
        .replace(/^[ \t]*(?:```|~~~)[^\n\r]*$/gm, blank)
        .replace(tableRow, tableRowAsRound)
        .replace(/[_`|]/g, " ")
        .replace(/\\(?=[*_#[\](){}.-])/g, " ")
    if (/^[ \t]*[>+-]/m.test(text))
      text = text
        .replace(/^[ \t]*(?:>[ \t]?)+/gm, blank)
        .replace(/^[ \t]*\+[ \t]+(?=(?:rounds?|rnds?|rows?|r)\b|[\w ]{1,20}:)/gim, blank)
        .replace(/^[ \t]*-[ \t]+(?!\d+ ?[a-z]+(?: [a-z]+)?[.)]*[ \t]*$)/gim, blank)
        .replace(/^[ \t]*-{3,}[ \t]*$/gm, blank)
    if (text.includes("<")) text = text.replace(/<\/?[a-z][^<>\n]{0,200}>/gi, blank)
  }
  // "a) make a ring", "b) ch 3": steps of one round on lines of their own.
  // "CH (chain) 6": the short word, and what it is short for.
  text = text.replace(/(?<=\b(?:chs?|st|sp) )\((?:chains?|stitch|space)\)(?= ?\S)/gi, blank)
  // "For round 3, ...", "#3 ...": what stands round the label.
  text = text
    .replace(/^[ \t]*(?:now,? )?for (?=(?:round|rnd|row) ?\d{1,3} ?[,:])/gim, blank)
    .replace(/^#(\d{1,2}) (?=\S)/gm, (_, number: string) => ` ${number}.`)
  // "Rnd 2: Rnd 2:": a label told twice.
  text = text.replace(
    /^([ \t]*(?:round|rnd|row) ?\d{1,3}[:.]) ?(?=(?:round|rnd|row) ?\d)(?:[a-z]+ ?\d{1,3}[:.])/gim,
    (found, label: string) => label + " ".repeat(found.length - label.length),
  )
  text = blankStepNumbers(text.replace(/^[ \t]*\(?[a-h]\)[ \t]+/gm, blank))
  if (text.includes("*"))
    text = text
      .replace(
        /^[ \t]*\*[ \t]+(?=(?:\*\*)?(?:rounds?|rnds?|rds?|rows?|r|yarn|hook|gauge|terms)\b)/gim,
        blank,
      )
      .replace(
        /^([ \t]*)\*\*([^*\n\r]{1,60})\*\*/gm,
        (_, space: string, inside: string) => `${space}  ${inside}  `,
      )
      .replace(
        /^([ \t]*)\*([^*\n\r]{1,40}:)\*/gm,
        (_, space: string, inside: string) => `${space} ${inside} `,
      )
      .replace(
        /(?<=[\s([=-])\*\*([([=]?\s?\d[^*\n\r]{0,60}?(?<!\s))\*\*(?=[\s.,;)\]]|$)/gm,
        (_, inside: string) => `  ${inside}  `,
      )
      .replace(/^[ \t]*\*{3,}[ \t]*$/gm, blank)
  return text
}

/** A row of a table of rounds: "| 3 | (1 sc, inc) x 6 | 18 |". */
const tableRow = /^([ \t]*)\|([ \t]*\d{1,3}[ \t]*)\|([^\n\r]*)$/gm

/** The number becomes a label, a last cell that is only a number the total. */
function tableRowAsRound(_: string, lead: string, number: string, rest: string): string {
  const total = rest.replace(
    /\|([ \t]*\d{1,5}[ \t]*)\|([ \t]*)$/,
    (_whole, count: string, tail: string) => `(${count})${tail}`,
  )
  return `${lead} ${number}:${total}`
}

function blank(found: string): string {
  return " ".repeat(found.length)
}
