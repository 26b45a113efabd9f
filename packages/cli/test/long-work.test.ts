// Long work in the terminal: what is being worked at is told, the verdict stands before the search for what to change
// begins, and the search says where it did not look.

import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, it } from "vitest"
import { run } from "../src/index.ts"

const tube = [
  "Terms: US",
  "Rnd 1: 6 sc in magic ring. (6 sc)",
  "Rnd 2: 2 sc in each st around. (12 sc)",
  "Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)",
  "Rnds 4-200: sc in each st around.",
].join("\n")

it("is told while it lasts, the verdict first", async () => {
  const cwd = mkdtempSync(join(tmpdir(), "roundwright-long-"))
  const name = "tu\u001bbe.txt"
  writeFileSync(join(cwd, name), tube)
  const heard: string[] = []
  const status = await run(["check", name, "--quick"], {
    cwd,
    out: (text) => heard.push(text.trim()),
    err: (text) => heard.push(`told as a fault: ${text}`),
    progress: (text) => heard.push(text === "" ? "(taken away)" : text),
  })
  expect(status).toBe(1)
  const [working, gone, verdict, looking, goneAgain, rest, ...more] = heard
  expect(working).toBe("Working tu\\u001bbe.txt stitch by stitch ...")
  expect([gone, goneAgain, more]).toEqual(["(taken away)", "(taken away)", []])
  expect(verdict).toMatch(/^Cups from round \d+\./)
  expect(looking).toBe("Looking for what to change; Ctrl-C breaks that off ...")
  expect(rest?.replace(/\s+/g, " ")).toContain("The piece is large: what to change was looked for")
})
