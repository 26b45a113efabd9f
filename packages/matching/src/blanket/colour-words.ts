// Fills for colours by their names, so that a drawing does not show cream as red. Only plain words of colour are known; a name
// of none gets the next fill that no other has.

const words: readonly (readonly [RegExp, string])[] = [
  [/\b(?:white|snow)\b/, "#fdfdfb"],
  [/\b(?:cream|ecru|ivory|natural|vanilla|off-white)\b/, "#f4ead0"],
  [/\b(?:beige|sand|oat|linen|camel)\b/, "#dcc7a1"],
  [/\b(?:rose|pink|blush)\b/, "#e6a5b3"],
  [/\b(?:red|scarlet|cherry|brick|rust)\b/, "#c8453b"],
  [/\b(?:burgundy|wine|maroon|plum)\b/, "#7d3049"],
  [/\b(?:orange|apricot|coral|peach)\b/, "#eb9a5e"],
  [/\b(?:yellow|mustard|gold|lemon|ochre)\b/, "#e3c14b"],
  [/\b(?:olive|moss|sage)\b/, "#94a06c"],
  [/\b(?:green|emerald|leaf|forest)\b/, "#4f8a5b"],
  [/\b(?:mint|aqua|turquoise|teal|petrol)\b/, "#6fb0ab"],
  [/\b(?:navy|indigo|midnight)\b/, "#3a4a78"],
  [/\b(?:blue|denim|sky)\b/, "#7ba3cf"],
  [/\b(?:purple|violet|lilac|lavender|mauve)\b/, "#a68bbd"],
  [/\b(?:brown|chocolate|coffee|tan)\b/, "#8b6547"],
  [/\b(?:grey|gray|silver|stone)\b/, "#b4b6b8"],
  [/\b(?:black|charcoal|slate)\b/, "#5c6066"],
]

/** For names without a word of colour. They differ in lightness too. */
const others = [
  "#f3e3c3",
  "#d9826b",
  "#7fa7a0",
  "#c9b458",
  "#8a6f9e",
  "#e8b7c2",
  "#5f7f4f",
  "#b5c7dd",
]

/** One fill a name, all different as long as there are so many. */
export function fillsFor(names: readonly string[]): string[] {
  const taken = new Set<string>()
  return names.map((name, k) => {
    const said = words.find(([word]) => word.test(name.toLowerCase()))?.[1]
    const free =
      said !== undefined && !taken.has(said) ? said : others.find((fill) => !taken.has(fill))
    const fill = free ?? others[k % others.length]!
    taken.add(fill)
    return fill
  })
}

/** The fill where no colours are told. */
export const plainFill = others[0]!
