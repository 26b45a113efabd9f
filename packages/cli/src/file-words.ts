// What is said of files that cannot be read or written.

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EACCES: "no permission",
  EPERM: "no permission",
  ENOSPC: "no room is left on the disk",
  EDQUOT: "no room is left for you on the disk",
  EFBIG: "it would be larger than files may be here",
  EROFS: "nothing can be written there",
  ENOTDIR: "part of its name is a file and no folder",
  EISDIR: "it is a folder",
  ENAMETOOLONG: "its name is too long",
  EAGAIN: "it gives nothing to read",
  EEXIST: "something else was written there meanwhile",
}

const reason = (code: string | undefined) =>
  (code === undefined ? undefined : reasons[code]) ?? code ?? "unknown reason"

export const fileWords = {
  noName: "The name of a file is empty.",
  noPageName: "The name of the page is empty.",
  folder: (file: string) => `${file} is a folder, not a file.`,
  noPlainFile: (file: string) =>
    `${file} is no plain file but a device or a pipe, which may have no end. Save its text to a file first.`,
  tooLong: (file: string, bytes: number) =>
    `${file} is ${Math.round(bytes / 1e6)} MB long, too long for a pattern.`,
  unread: (file: string, code: string | undefined) =>
    code === "ENOENT" ? `${file}: ${reason(code)}.` : `${file} cannot be read (${reason(code)}).`,
  unwritten: (file: string, code: string | undefined) =>
    `${file} cannot be written (${reason(code)}). What stood there before stands there still.`,
  noPage: (file: string) =>
    `${file} exists and is not a page of ours: it is left alone. Name another with --out.`,
  unplaced: (file: string) =>
    `${file} and a hundred names like it are taken by pages that are not to be replaced. Name another with --out.`,
  changed: (file: string) =>
    `${file} was changed since it was written here: it is left alone, and the new page takes another name.`,
  ofAnother: (file: string) =>
    `${file} was made from something else: it is left alone, and the new page takes another name.`,
  unsealed: (file: string) =>
    `${file} may hold changes of yours: it is left alone, and the new page takes another name.`,
  outputFull: (code: string | undefined) => `The output cannot be written (${reason(code)}).`,
} as const
