// The notices of everything inside a page go along with it.

import { readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { licencesFile, licencesOfScript, writtenLicences } from "../../../test/support/licences.ts"
import { renderNotebook } from "../src/index.ts"

describe("the licences of what a page is put together from", () => {
  it("stand in the file beside dist, as the packages have them now (pnpm notices writes it anew)", async () => {
    expect(writtenLicences()).toBe(await licencesOfScript())
    const names = ["mathjs", "vega", "d3-", "unified", "valibot", "micromark"]
    for (const name of names) expect(readFileSync(licencesFile, "utf8")).toContain(name)
  })

  it("stand at the end of a live page, and not in one without a script, which holds nobody's code", async () => {
    const live = (await renderNotebook("# A page", { live: true })).html
    const end = live.slice(live.indexOf("<footer>"))
    expect(end).toContain("Permission is hereby granted, free of charge")
    expect(end).toContain("Copyright (c) 2026 The Roundwright authors")
    expect((await renderNotebook("# A page")).html).not.toContain("Permission is hereby granted")
  })
})
