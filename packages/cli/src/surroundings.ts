// Where a command reads and writes.

export interface Surroundings {
  /** Paths the user gives are taken from here. */
  readonly cwd: string
  readonly out: (text: string) => void
  readonly err: (text: string) => void
}
