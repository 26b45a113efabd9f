// Prints how many tests ran, and fails a whole run in which fewer ran than before: a test that is
// no longer found is a loss nobody sees otherwise. Raise the floor when tests are added.

import type { Reporter, TestModule } from "vitest/node"

/** Tests in a whole run; a whole run below it fails. */
const fewestTests = 1900

export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    let passed = 0
    let other = 0
    for (const module of modules)
      for (const test of module.children.allTests())
        if (test.result().state === "passed") passed += 1
        else other += 1
    const ran = passed + other
    console.log(`\n${ran} tests ran, ${passed} passed`)
    if (isWholeRun() && ran < fewestTests) {
      console.error(`A whole run has at least ${fewestTests} tests: some were not found.`)
      process.exitCode = 1
    }
  }
}

/** True when no file, name or other filter was given on the command line. */
function isWholeRun(): boolean {
  return process.argv.slice(2).every((argument) => argument === "run")
}
