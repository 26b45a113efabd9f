// What a command is working at, on a terminal: one line on the error stream, taken away again before anything is printed.

const clearLine = "\r\u001b[2K"

/** Shows a line while work goes on; an empty text takes it away. Nothing is written where no person watches. */
export function showProgress(text: string): void {
  if (process.stderr.isTTY) process.stderr.write(`${clearLine}${text}`)
}
