// Files as a user has them: nothing of theirs is lost, nothing endless is read, and what cannot be written is told.

import { execFileSync, spawn, spawnSync } from "node:child_process"
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { basename, join, resolve } from "node:path"
import { beforeEach, describe, expect, it } from "vitest"
import { root, roundwright, runScript } from "../support/command.ts"

const pattern = "Terms: US\nHook: 4 mm\n\nRnd 1: 6 sc in magic ring. (6 sc)\n"
const fence = "```"
const notebook = `# Small\n\n${fence}pattern name=small\n${pattern}${fence}\n`

let folder = ""
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-files-"))
  writeFileSync(join(folder, "small.md"), notebook)
  writeFileSync(join(folder, "small.txt"), pattern)
})

const at = (name: string) => join(folder, name)
const report = (...args: string[]) => roundwright(["report", ...args, "--plain"], folder)

/** The command in a shell, to set limits and redirect. @param line what stands around "$@" */
function inShell(line: string, args: readonly string[]) {
  const node = [process.execPath, "--conditions=source", "--import", import.meta.resolve("tsx")]
  const main = resolve(root, "packages/cli/src/main.ts")
  return spawnSync("bash", ["-c", line, "bash", ...node, main, ...args], {
    cwd: folder,
    encoding: "utf8",
    env: { ...process.env, INIT_CWD: folder, NODE_ENV: "test" },
  })
}

describe("a page that somebody changed", () => {
  it("is left alone: the new one takes another name, which is told and then kept to", () => {
    expect(report("small.md").out).toContain("written to small.html")
    const untouched = readFileSync(at("small.html"), "utf8")
    expect(report("small.md").out).toContain("written to small.html")
    const mine = untouched.replace("</main>", "<p>Mine.</p></main>")
    writeFileSync(at("small.html"), mine)
    for (let turn = 0; turn < 2; turn += 1) {
      const { out, status } = report("small.md")
      expect(status).not.toBe(2)
      expect(out).toMatch(/small\.html was changed .*left alone/)
      expect(out).toContain("written to small-2.html")
      expect(readFileSync(at("small.html"), "utf8")).toBe(mine)
    }
    expect(readFileSync(at("small-2.html"), "utf8")).toBe(untouched)
    expect(readdirSync(folder).sort()).toEqual([
      "small-2.html",
      "small.html",
      "small.md",
      "small.txt",
    ])
  })

  it("or that a browser saved, or an earlier version wrote, has no seal and is left alone too", () => {
    report("small.md")
    const seal = /<meta name="roundwright-seal"[^>]*>/
    const saved = readFileSync(at("small.html"), "utf8").replace(seal, "")
    writeFileSync(at("small.html"), saved)
    expect(report("small.md").out).toMatch(/may hold changes of yours.*\n.*small-2\.html/)
    expect(readFileSync(at("small.html"), "utf8")).toBe(saved)
  })

  it("is never replaced by a second `new`", () => {
    roundwright(["new"], folder)
    const made = readFileSync(at("my-motif.html"), "utf8")
    writeFileSync(at("my-motif.html"), `${made}<!-- mine -->`)
    expect(roundwright(["new"], folder).out).toContain("written to my-motif-2.html")
    expect(readFileSync(at("my-motif.html"), "utf8")).toBe(`${made}<!-- mine -->`)
  })
})

describe("pages of the same name", () => {
  it("made from different folders do not meet", () => {
    for (const part of ["a", "b"]) {
      mkdirSync(at(part))
      writeFileSync(at(`${part}/coaster.md`), notebook.replace("Small", `Of ${part}`))
    }
    for (let turn = 0; turn < 2; turn += 1) {
      expect(report("a/coaster.md").out).toContain("written to coaster.html")
      expect(report("b/coaster.md").out).toMatch(/made from something else.*\n.*coaster-2\.html/)
    }
    expect(readFileSync(at("coaster.html"), "utf8")).toContain("Of a")
    expect(readFileSync(at("coaster-2.html"), "utf8")).toContain("Of b")
  })

  it("of `start` neither, and what is written for one of them is written anew for it", () => {
    const name = `coaster-${basename(folder)}`
    const pages = resolve(root, "reports/out")
    const written = () => readdirSync(pages).filter((file) => file.startsWith(name))
    for (const part of ["a", "b"]) {
      mkdirSync(at(part))
      writeFileSync(at(`${part}/${name}.txt`), pattern)
    }
    try {
      for (const part of ["a", "b", "b"])
        runScript("scripts/start.ts", [`${part}/${name}.txt`], folder)
      expect(written().sort()).toEqual([`${name}-2.html`, `${name}.html`])
    } finally {
      for (const file of written()) rmSync(join(pages, file))
    }
  })
})

describe("several writers at once", () => {
  it("leave one whole page, and nothing half-written", async () => {
    const node = [process.execPath, "--conditions=source", "--import", import.meta.resolve("tsx")]
    const main = resolve(root, "packages/cli/src/main.ts")
    const write = () =>
      new Promise<number | null>((done) => {
        const [program, ...options] = node
        const args = [...options, main, "report", "small.md", "--plain"]
        const env = { ...process.env, INIT_CWD: folder, NODE_ENV: "test" }
        spawn(program!, args, { cwd: folder, env, stdio: "ignore" }).on("close", done)
      })
    const statuses = await Promise.all([write(), write(), write()])
    expect(statuses).not.toContain(2)
    expect(readdirSync(folder).sort()).toEqual(["small.html", "small.md", "small.txt"])
    const left = readFileSync(at("small.html"), "utf8")
    expect(report("small.md").out).toContain("written to small.html")
    expect(readFileSync(at("small.html"), "utf8")).toBe(left)
  })
})

describe("a disk that is full", () => {
  it("leaves the old page whole, and no half of the new", () => {
    report("small.md")
    const good = readFileSync(at("small.html"), "utf8")
    writeFileSync(at("small.md"), `${notebook}\n${"More of it.\n\n".repeat(4000)}`)
    // No file of more than 16 kB can be written.
    const full = inShell('ulimit -f 16; trap "" XFSZ; exec "$@"', ["report", "small.md", "--plain"])
    expect(full.status).toBe(2)
    expect(full.stderr).toMatch(/small\.html cannot be written.*still/)
    expect(readFileSync(at("small.html"), "utf8")).toBe(good)
    const fresh = inShell('ulimit -f 16; trap "" XFSZ; exec "$@"', [
      ...["report", "small.md", "--plain", "--out", "fresh.html"],
    ])
    expect(fresh.status).toBe(2)
    expect(existsSync(at("fresh.html"))).toBe(false)
    expect(readdirSync(folder).filter((name) => name.endsWith(".tmp"))).toEqual([])
  })

  it("is no matter of links: a page is written anew where it stands", () => {
    report("small.md")
    const good = readFileSync(at("small.html"), "utf8")
    symlinkSync("small.html", at("by-another-name.html"))
    writeFileSync(at("small.md"), `${notebook}\nMore.\n`)
    expect(report("small.md", "--out", "by-another-name.html").status).not.toBe(2)
    expect(lstatSync(at("by-another-name.html")).isSymbolicLink()).toBe(true)
    expect(readFileSync(at("small.html"), "utf8")).not.toBe(good)
  })
})

describe("devices and pipes", () => {
  it("are refused before they are read", () => {
    execFileSync("mkfifo", [at("pipe")])
    for (const name of ["/dev/zero", "/dev/full", "pipe"]) {
      const { status, out } = roundwright(["check", name], folder)
      expect(status).toBe(2)
      expect(out.replace(/\s+/g, " ")).toContain("is no plain file but a device or a pipe")
    }
    const { status, err } = report("small.md", "--out", "/dev/full")
    expect(status).toBe(2)
    expect(err).toContain("/dev/full is no plain file")
  })
})

describe("output that cannot be written", () => {
  it("is told in a sentence, by every command", () => {
    const full = inShell('exec "$@" > /dev/full', ["check", "small.txt", "--quick"])
    expect(full.status).toBe(2)
    expect(full.stderr).toBe("The output cannot be written (no room is left on the disk).\n")
    const nobody = inShell('exec "$@" > /dev/full 2> /dev/full', ["check", "small.txt", "--quick"])
    expect(nobody.status).toBe(2)
  })
})

describe("signs in file names", () => {
  it("that would steer a terminal are shown as what they are", () => {
    const name = "\u001b[31mred\u009b2J\u202e.txt"
    writeFileSync(at(name), pattern)
    const shown = "\\u001b[31mred\\u009b2J\\u202e.txt"
    for (const args of [
      ["check", name, "no\u001bne.txt"],
      ["check", name, name, "--json"],
      ["report", name, "--out", "\u001bx/\u001by.html"],
    ]) {
      const { out, err } = roundwright(
        [...args, ...(args[0] === "check" ? ["--quick"] : [])],
        folder,
      )
      expect(out + err).not.toMatch(/[^\P{Cc}\n]|\u202e/u)
      if (args.includes("--json")) expect(JSON.parse(out.split("\n")[0]!).file).toBe(name)
      else expect(out + err).toContain(args[0] === "check" ? shown : "\\u001by.html")
    }
    const started = runScript("scripts/start.ts", ["no\u001bne.txt"], folder)
    expect(started.err).toContain("no\\u001bne.txt: there is no such file.")
  })
})
