// Entry of the `roundwright` command: hands over arguments and streams, sets the exit status.

import { showProgress } from "./progress.ts"
import { run } from "./run.ts"

// A reader that stops early (`| head`) closes the pipe: that ends the command, it is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit()
  throw error
})

process.exitCode = await run(process.argv.slice(2), {
  cwd: process.env.INIT_CWD ?? process.cwd(),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  progress: showProgress,
})
