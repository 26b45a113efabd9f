// "ROUND ONE:", its steps numbered 1, 2, 3 on the lines below it: the numbers are no labels and no counts.

/** A line that a round's label begins; a word for a number stands alone on it. */
const labelled =
  /^[ \t]{0,20}(?:round|rnd|row|rd)s?[ \t]{1,4}(?:\d{1,3}\b|[a-z]{2,10}(?:[- ][a-z]{2,10})?[ \t]{0,4}[:.-]?[ \t]{0,9}$)/i
const stepNumber = /^[ \t]{0,20}(\d{1,2})[.)][ \t]{1,9}(?=\S)/
/** Fewest steps that make a list. */
const fewestSteps = 2

/** The text with the numbers of such steps blanked, every offset as it was. */
export function blankStepNumbers(text: string): string {
  if (!/^[ \t]{0,20}1[.)]/m.test(text)) return text
  const lines = text.split("\n")
  for (let at = 0; at < lines.length; at++) {
    if (!labelled.test(lines[at]!.trimEnd())) continue
    const steps: number[] = []
    for (let k = at + 1; k < lines.length; k++) {
      const line = lines[k]!
      if (line.trim() === "") continue
      const number = stepNumber.exec(line)?.[1]
      if (number === undefined || Number(number) !== steps.length + 1) break
      steps.push(k)
    }
    if (steps.length < fewestSteps) continue
    for (const k of steps)
      lines[k] = lines[k]!.replace(stepNumber, (found) => " ".repeat(found.length))
  }
  return lines.join("\n")
}
