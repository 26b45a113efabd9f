// A table looked up by words of a text: only its own entries are found, whatever the word.

export function table<T>(entries: Readonly<Record<string, T>>): Readonly<Record<string, T>> {
  return Object.assign(Object.create(null), entries)
}
