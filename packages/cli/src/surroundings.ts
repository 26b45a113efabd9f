// Where a command reads and writes.

export interface Surroundings {
  /** Paths the user gives are taken from here. */
  readonly cwd: string
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Shows what is being worked at, on a terminal only; an empty text takes it away. Nothing is shown where it is absent. */
  readonly progress?: (text: string) => void
}
