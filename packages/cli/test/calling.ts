// Calls the command as a function, keeping what it prints.

import { run } from "../src/index.ts"

export interface Called {
  readonly status: number
  readonly out: string
  readonly err: string
}

export async function callIn(cwd: string, args: readonly string[]): Promise<Called> {
  let out = ""
  let err = ""
  const status = await run(args, {
    cwd,
    out: (text) => {
      out += text
    },
    err: (text) => {
      err += text
    },
  })
  return { status, out, err }
}
