// Runs the command as a process of its own, as a user would.

import { spawnSync } from "node:child_process"
import { resolve } from "node:path"

export const root = resolve(import.meta.dirname, "../..")

export interface Ran {
  readonly status: number | null
  readonly out: string
  readonly err: string
  readonly seconds: number
}

/** A hang is a failure, not a wait: longer than any command may take. */
const patienceMs = 180_000

/** Runs a TypeScript file of the checkout with Node. */
export function runScript(script: string, args: readonly string[], cwd = root): Ran {
  const start = performance.now()
  const ran = spawnSync(
    process.execPath,
    ["--conditions=source", "--import", import.meta.resolve("tsx"), resolve(root, script), ...args],
    {
      cwd,
      encoding: "utf8",
      timeout: patienceMs,
      maxBuffer: 256 * 1024 * 1024,
      env: { ...process.env, INIT_CWD: cwd, NODE_ENV: "test" },
    },
  )
  return {
    status: ran.status,
    out: ran.stdout,
    err: ran.stderr,
    seconds: (performance.now() - start) / 1000,
  }
}

export function roundwright(args: readonly string[], cwd = root): Ran {
  return runScript("packages/cli/src/main.ts", args, cwd)
}
