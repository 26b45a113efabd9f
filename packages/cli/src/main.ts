// Entry of the `roundwright` command: hands over arguments and streams, sets the exit status.

import { guardOutput } from "./plain-output.ts"
import { showProgress } from "./progress.ts"
import { run } from "./run.ts"

guardOutput(process)

process.exitCode = await run(process.argv.slice(2), {
  cwd: process.env.INIT_CWD ?? process.cwd(),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  progress: showProgress,
})
