// Prints how many tests ran and in which browser, and fails a whole run in which fewer ran than before: a test that is
// no longer found is a loss nobody sees otherwise. Raise the floor when tests are added.

import type { Reporter, TestModule } from "vitest/node"
import { chooseChromium } from "../browser/chromium.ts"

/** Tests in a whole run; a whole run below it fails. */
const fewestTests = 3350

export default class CountReporter implements Reporter {
  async onTestRunEnd(modules: readonly TestModule[]): Promise<void> {
    if (modules.some(({ moduleId }) => moduleId.includes("/test/browser/")))
      console.log(`\nbrowser: ${await browserUsed()}`)
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

/** The same choice as the tests made. */
async function browserUsed(): Promise<string> {
  try {
    return (await chooseChromium()).origin
  } catch (error) {
    return `none (${(error as Error).message})`
  }
}

/** True when no file, name or other filter was given on the command line. */
function isWholeRun(): boolean {
  return process.argv.slice(2).every((argument) => argument === "run")
}
