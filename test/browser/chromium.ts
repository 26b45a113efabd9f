// Which Chromium the browser tests and the bench use: the one that CHROMIUM names, or one installed, or the one that the
// package @sparticuz/chromium carries. `CHROMIUM=carried` forces the last, so that a run can prove that it needs nothing.

import { execFile } from "node:child_process"
import { accessSync, constants, existsSync, readFileSync, statSync } from "node:fs"
import { mkdir, mkdtemp, rename, rm, writeFile } from "node:fs/promises"
import { createRequire } from "node:module"
import { delimiter, dirname, join, resolve } from "node:path"
import { promisify } from "node:util"

const run = promisify(execFile)

export interface Chromium {
  readonly executablePath: string
  /** Beside playwright's own arguments, which hold for a whole run. */
  readonly args: readonly string[]
  readonly env: Readonly<Record<string, string>>
  /** How it was come by, in words. */
  readonly origin: string
}

const installedNames = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"]

/** @throws Error when CHROMIUM names no program, or nothing here runs the carried one */
export async function chooseChromium(
  environment: Readonly<Record<string, string | undefined>> = process.env,
): Promise<Chromium> {
  // Within a container the sandbox of Chromium cannot be had; the pages are ours, and offline.
  const plain = { args: ["--no-sandbox"], env: {} }
  const named = environment.CHROMIUM
  if (named === "carried") return carriedChromium()
  if (named) {
    if (!isProgram(named))
      throw new Error(`CHROMIUM names ${named}, which is no program here; or say CHROMIUM=carried.`)
    return { ...plain, executablePath: named, origin: `named by CHROMIUM: ${named}` }
  }
  for (const folder of (environment.PATH ?? "").split(delimiter).filter((part) => part !== ""))
    for (const name of installedNames) {
      const executablePath = join(folder, name)
      if (isProgram(executablePath))
        return { ...plain, executablePath, origin: `installed: ${executablePath}` }
    }
  return carriedChromium()
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return statSync(path).isFile()
  } catch {
    return false
  }
}

/**
 * The carried one, unpacked once beside the installed packages. The package's own arguments are left aside: as one
 * process without a zygote it dies with its first context, and without web security it would prove nothing of the policy.
 */
async function carriedChromium(): Promise<Chromium> {
  if (process.platform !== "linux" || process.arch !== "x64")
    throw new Error(
      `The carried Chromium runs on Linux x64, not on ${process.platform} ${process.arch}: install one, or name it in CHROMIUM.`,
    )
  // Its entry is build/cjs/index.cjs.
  const root = resolve(createRequire(import.meta.url).resolve("@sparticuz/chromium"), "../../..")
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"))
  const cache = resolve(import.meta.dirname, "../../node_modules/.cache")
  const folder = join(cache, `chromium-${version}`)
  if (!existsSync(folder)) await unpackInto(folder)
  const executablePath = join(folder, "chromium")
  const missing = await missingLibraries(executablePath)
  const env = {
    ...(missing ? { LD_LIBRARY_PATH: join(folder, "al2023", "lib") } : {}),
    ...(existsSync("/etc/fonts/fonts.conf") ? {} : { FONTCONFIG_FILE: join(folder, "fonts.conf") }),
  }
  return {
    executablePath,
    // Letters are as wide as their outlines say, whatever the machine hints.
    args: ["--no-sandbox", "--font-render-hinting=none"],
    env,
    origin: `carried by @sparticuz/chromium ${version}`,
  }
}

/** Whole or not at all: several test files may come here at once, and a half-written program is none. */
async function unpackInto(folder: string): Promise<void> {
  await mkdir(dirname(folder), { recursive: true })
  const own = await mkdtemp(`${folder}-`)
  // The package unpacks into the folder for temporary files, and its libraries only where it takes itself to need them.
  const env = { ...process.env, TMPDIR: own, AWS_EXECUTION_ENV: "AWS_Lambda_nodejs20.x" }
  const unpack = `import("@sparticuz/chromium").then(({ default: c }) => c.executablePath())`
  await run(process.execPath, ["--input-type=module", "-e", unpack], {
    cwd: import.meta.dirname,
    env,
  })
  await writeFile(
    join(own, "fonts.conf"),
    `<?xml version="1.0"?>\n<fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/fonts-cache</cachedir></fontconfig>\n`,
  )
  try {
    await rename(own, folder)
  } catch (error) {
    await rm(own, { recursive: true, force: true })
    if (!existsSync(folder)) throw error
  }
}

/** True where the system lacks a library that the program asks for. */
async function missingLibraries(program: string): Promise<boolean> {
  try {
    return (await run("ldd", [program])).stdout.includes("not found")
  } catch {
    return true
  }
}
