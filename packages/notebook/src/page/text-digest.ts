// A short digest of words, to tell whether a text was changed: FNV-1a (Fowler, Noll, Vo) in 32 bits, from two beginnings.
// Against chance, not against intent.

const prime = 0x01000193
const beginnings = [0x811c9dc5, 0x2545f491] as const

/** 16 hexadecimal digits; runs of blanks and line breaks count as one blank, as a page shows them. */
export function textDigest(text: string): string {
  const words = text.replace(/\s+/g, " ").trim()
  return beginnings
    .map((beginning) => {
      let hash: number = beginning
      for (let at = 0; at < words.length; at += 1)
        hash = Math.imul(hash ^ words.charCodeAt(at), prime)
      return (hash >>> 0).toString(16).padStart(8, "0")
    })
    .join("")
}
