// Long tubes, each checked in a process of its own: how long the verdict by growth takes, and then the whole check with what
// to change; the most memory the process took, node and compiler of the sources included.

import { execFileSync } from "node:child_process"
import { join } from "node:path"

/** Asked of the verdict by growth of the longest of them: ms, and MB of the process. */
const asked = { ms: 2000, mb: 300 }

export function benchTubes(write: (line: string) => void): void {
  for (const rounds of [200, 1000, 5000])
    for (const around of [6, 60]) {
      const { growthMs, spentMs, growthMb, wholeMs } = checkTube(rounds, around)
      write(
        `tube of ${rounds} rounds of ${around}: by growth ${growthMs} ms (asked ${asked.ms}; the processor spent ${spentMs}), ${growthMb} MB (asked ${asked.mb}); with what to change ${wholeMs} ms more`,
      )
    }
}

function checkTube(rounds: number, around: number): Record<string, number> {
  const script = join(import.meta.dirname, "bench-tube.ts")
  const args = ["--conditions=source", "--import", "tsx", script, String(rounds), String(around)]
  return JSON.parse(execFileSync(process.execPath, args, { encoding: "utf8" }))
}
