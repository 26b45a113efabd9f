import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { examinePattern } from "../src/index.ts"

const square = (heading: string, turn = "") => `Terms: US
Yarn: DK
Hook: 4 mm
${heading}

Rnd 1: 8 sc in magic ring; join${turn}. (8 sc)
Rnd 2: *3 sc in next st, sc in next st; rep from * around; join${turn}. (16 sc)
Rnd 3: *sc in next st, 3 sc in next st, sc in next 2 sts; rep from * around; join${turn}. (24 sc)
Rnd 4: *sc in next 2 sts, 3 sc in next st, sc in next 3 sts; rep from * around; join${turn}. (32 sc)
Rnd 5: *sc in next 3 sts, 3 sc in next st, sc in next 4 sts; rep from * around; join${turn}. (40 sc)
`
const check = (heading: string, turn = "") =>
  examinePattern(square(heading, turn), { shape: "net" }).result

describe("a skew told in a heading", () => {
  it.each([7, -4])("of %d degrees is the skew of the laid-out shape", (degrees) => {
    const result = check(`Skew: ${degrees} degrees`)
    expectClose(result.laidOut!.skewDeg!, degrees, 0.1, "found by lines to 0.05 degrees")
    const notes = result.notes.join(" ")
    expect(notes).toContain(
      degrees > 0 ? "in the direction of work" : "against the direction of work",
    )
    expect(notes).toContain("Turn the work after every round: then the corners keep their place.")
    expect(notes).toMatch(
      degrees > 0
        ? /one stitch fewer before (its|the) chains/
        : /one stitch fewer after (its|the) chains/,
    )
  })

  it("asks for uneven corners the more often the more the corners turn", () => {
    const every = (heading: string) =>
      Number(/about every (\d+) rounds/.exec(check(heading).notes.join(" "))?.[1] ?? 1)
    expect(every("Skew: 3 degrees")).toBeGreaterThan(every("Skew: 12 degrees"))
  })

  it("is none by default, and is not used where the work is turned or no stitch leans so far", () => {
    expectClose(
      check("").laidOut!.skewDeg!,
      0,
      1,
      "sides of one more stitch after each corner than before",
    )
    expect(check("Skew: 7 degrees", "; turn").notes.join(" ")).toContain("the work is turned")
    expect(check("Skew: 170 degrees").notes.join(" ")).toContain("no stitch leans so far")
  })

  it("that is not understood is told with its place", () => {
    const problem = check("Skew: a lot").problems.find(({ code }) => code === "skew-not-read")
    expect(problem).toMatchObject({ severity: "note", line: 4, column: 7, length: 5 })
  })
})
