// Writing pages: whole or not at all, and never over anything a person made. A page of ours that nobody has touched is
// written anew; beside one that somebody changed, or that was made from something else, the new one takes another name.

import { randomBytes } from "node:crypto"
import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fchmodSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs"
import { dirname, extname, relative, resolve, sep } from "node:path"
import { fileWords } from "./file-words.ts"
import { sealOf, sealPage, sourceId } from "./page-seal.ts"
import { readText } from "./read-file.ts"

export interface Placed {
  /** As the user would name it. */
  readonly file: string
  /** Set where the name that was wanted is taken: why, in words. */
  readonly told: string | null
  /** True where an untouched page of ours stands there. */
  readonly replaces: boolean
}

/** Names tried beside the one that was wanted. */
const mostNames = 100

/**
 * Where a page goes.
 * @param source tells what it is made from: only a page made from the same is replaced
 */
export function placePage(
  cwd: string,
  file: string,
  source: string,
): Placed | { readonly fault: string } {
  if (file.trim() === "") return { fault: fileWords.noPageName }
  let told: string | null = null
  for (let number = 1; number <= mostNames; number += 1) {
    const name = number === 1 ? file : numbered(file, number)
    if (!existsSync(resolve(cwd, name))) return { file: name, told, replaces: false }
    const existing = readText(cwd, name)
    if ("fault" in existing) return existing
    const seal = sealOf(existing.text)
    if (seal === "foreign") {
      if (number === 1) return { fault: fileWords.noPage(file) }
      continue
    }
    if (typeof seal === "object" && seal.id === sourceId(source))
      return { file: name, told, replaces: true }
    told ??=
      seal === "changed"
        ? fileWords.changed(file)
        : seal === "unsealed"
          ? fileWords.unsealed(file)
          : fileWords.ofAnother(file)
  }
  return { fault: fileWords.unplaced(file) }
}

/** `page.html` -> `page-2.html`. */
function numbered(file: string, number: number): string {
  const ending = extname(file)
  return `${file.slice(0, file.length - ending.length)}-${number}${ending}`
}

/** Names a source as it stands to the folder of its page, so that it is the same one wherever both are moved. */
export function madeFrom(cwd: string, source: string, page: string): string {
  const way = relative(dirname(resolve(cwd, page)), resolve(cwd, source))
  return way.split(sep).join("/")
}

/** Writes a page where it can go. */
export function writePage(
  cwd: string,
  file: string,
  html: string,
  source: string,
  /** Left after somebody else took the free name meanwhile. */
  tries = 3,
): Placed | { readonly fault: string } {
  const placed = placePage(cwd, file, source)
  if ("fault" in placed) return placed
  try {
    const path = resolve(cwd, placed.file)
    mkdirSync(dirname(path), { recursive: true })
    writeWhole(path, sealPage(html, source), placed.replaces)
    return placed
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === "EEXIST" && tries > 1) return writePage(cwd, file, html, source, tries - 1)
    return { fault: fileWords.unwritten(placed.file, code) }
  }
}

/** Into a file beside it first: a full disk or a broken run leaves what was there, and no half of the new. */
function writeWhole(path: string, text: string, replaces: boolean): void {
  const target = replaces ? realpathSync(path) : path
  if (replaces) accessSync(target, constants.W_OK)
  const beside = `${target}.${randomBytes(6).toString("hex")}.tmp`
  try {
    const file = openSync(beside, "wx")
    try {
      if (replaces) fchmodSync(file, statSync(target).mode)
      writeFileSync(file, text)
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
    if (replaces) renameSync(beside, target)
    else putInPlace(beside, target)
  } finally {
    rmSync(beside, { force: true })
  }
}

/** Under a name that was free a moment ago: a link fails where it no longer is; some disks know none. */
function putInPlace(beside: string, target: string): void {
  try {
    linkSync(beside, target)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST" || existsSync(target)) throw error
    renameSync(beside, target)
  }
}
