// A notebook for one pattern: the text as it is, in a fence longer than any it holds, and every
// result below. What `pnpm start FILE` renders.

/** Markdown of a notebook about one pattern. The pattern's text is kept to the letter. */
export function patternNotebook(pattern: string, title: string): string {
  const fence = "`".repeat(Math.max(3, longestRun(pattern) + 1))
  const cell = (info: string, text = "") => `${fence}${info}\n${text}${fence}\n`
  const body = pattern.endsWith("\n") ? pattern : `${pattern}\n`
  return [
    `# ${title.replace(/[\\`*_[\]<>#]/g, " ").trim() || "A pattern"}`,
    "Does it lie flat, from which round is it off, and what would mend it?",
    cell("verdict of=pattern"),
    cell("problems of=pattern"),
    cell("pattern name=pattern", body),
    "## In your hand",
    "Lay the piece flat after a round near the middle, measure across it, and say so with a line such as Size: 9 cm after Rnd 3: every size below is then right to a few per cent. A swatch tells how tall your stitches are as well. What stands here goes before the pattern's own headings.",
    cell("gauge for=pattern"),
    "## Round by round",
    cell("ledger of=pattern"),
    cell("chart of=pattern name=growth"),
    cell("chart of=pattern name=fullness"),
    "## What to change",
    cell("remedies of=pattern"),
    "## Reach",
    cell("chart of=pattern name=reach"),
    "## Before it is published",
    "What an editor would mend or ask. A finding with a wording has a button that takes it over into the text.",
    cell("edit of=pattern"),
    "## The sheet",
    "What others work from, as it will print.",
    cell("sheet of=pattern"),
  ].join("\n\n")
}

function longestRun(text: string): number {
  let longest = 0
  for (const [run] of text.matchAll(/`+/g)) longest = Math.max(longest, run.length)
  return longest
}
