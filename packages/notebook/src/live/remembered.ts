// The latest results, by the text they were made from.

export class Remembered<T> {
  readonly #kept = new Map<string, T>()

  constructor(private readonly most: number) {}

  get(key: string, make: () => T): T {
    return this.#take(key) ?? this.#keep(key, make())
  }

  async later(key: string, make: () => Promise<T>): Promise<T> {
    return this.#take(key) ?? this.#keep(key, await make())
  }

  /** What is remembered, if anything. */
  known(key: string): T | undefined {
    return this.#take(key)
  }

  #take(key: string): T | undefined {
    const value = this.#kept.get(key)
    if (value !== undefined) this.#keep(key, value)
    return value
  }

  #keep(key: string, value: T): T {
    this.#kept.delete(key)
    this.#kept.set(key, value)
    if (this.#kept.size > this.most) this.#kept.delete(this.#kept.keys().next().value!)
    return value
  }
}
