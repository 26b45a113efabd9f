// Whole words in a text of small letters.

export function hasWord(text: string, word: string): boolean {
  return wordAt(text, word) >= 0
}

/** Where a word stands by itself; -1 where it does not. */
export function wordAt(text: string, word: string): number {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    const before = text.charAt(at - 1)
    const after = text.charAt(at + word.length)
    if (!/[a-z]/.test(before) && !/[a-z0-9]/.test(after)) return at
  }
  return -1
}
