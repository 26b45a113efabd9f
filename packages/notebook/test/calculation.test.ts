import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { computeNotebook } from "../src/index.ts"
import { cell, checkCounts, layOutCounts } from "./made.ts"

const disc = cell("pattern name=disc", "6 12 18")
const compute = (markdown: string) =>
  computeNotebook(markdown, { check: checkCounts, layOut: layOutCounts })

async function worth(expression: string, before = ""): Promise<string> {
  const { values } = await compute(`${before}\n\n\`= ${expression}\``)
  return values[0]?.value ?? `failed: ${values[0]?.problem?.code}`
}

describe("values", () => {
  it.each([
    ["1 + 2 * 3", "7"],
    // Polygon rule 2 k tan(pi / k); a square needs 8 (elementary: a square's perimeter over its inradius).
    ["2 * 4 * tan(pi / 4)", "8"],
    ["2 * 6 * tan(pi / 6)", "6.928"],
    ["-1/3", "\u22120.3333"],
    ["12345.678", "12346"],
    ["2^80", "1.209 \u00d7 10^24"],
    ["3 cm + 4 mm", "3.4\u00a0cm"],
    ["34 mm to cm", "3.4\u00a0cm"],
    ["1 inch to mm", "25.4\u00a0mm"],
    ["8.087 mm", "8.1\u00a0mm"],
    ["0.0123 mm", "0.0123\u00a0mm"],
    ["3 mm * 4 mm", "12\u00a0mm\u00b2"],
    ["30 mm / 1 cm", "3"],
    ["sin(30 deg)", "0.5"],
    ["(pi / 2) * 1 rad to deg", "90\u00b0"],
    ["round(2.345, 1)", "2.3"],
    ["floor(7.9 mm)", "7\u00a0mm"],
    ["min(3, 1, 2)", "1"],
    ["max(3 mm, 1 cm)", "1\u00a0cm"],
    ["percent(0.183)", "18\u00a0%"],
    ["2 > 1 ? 10 : 20", "10"],
    ['2 < 1 ? "more" : "less"', "less"],
    ["2 >= 2", "yes"],
    ["mod(20, 6)", "failed: bad-expression"],
    ["20 mod 6", "2"],
    ["sqrt(16 mm^2)", "4\u00a0mm"],
  ])("%s is %s", async (expression, value) => {
    expect(await worth(expression)).toBe(value)
  })

  it.each([
    ["disc.rounds", "3"],
    ["rounds", "3"],
    ["disc.stitches_2", "12"],
    ["stitches_last", "18"],
    ["disc.edge_3", "90\u00a0mm"],
    ["disc.radius_last", "15\u00a0mm"],
    ["disc.verdict", "lies flat"],
    // 6 stitches as wide as high on 2 pi: 6 / 6.2832 = 0.9549 by hand.
    ["disc.fullness_2", "0.9549"],
    ["curvature_2", "16.2\u00b0"],
    ["2 * pi * disc.depth_1", "31.4\u00a0mm"],
    ["disc.remedy_1_fullness", "1.01"],
    ["disc.remedies", "1"],
    ["disc.sc_width", "5\u00a0mm"],
    ["disc.flat_most", "1.13"],
    ["disc.from_round", "failed: unknown-name"],
    ["disc.edge_9", "failed: unknown-name"],
  ])("of a pattern: %s is %s", async (expression, value) => {
    expect(await worth(expression, disc)).toBe(value)
  })

  it("need the pattern's name when there are several", async () => {
    const two = disc + cell("pattern name=other", "6 12")
    const { values } = await compute(`${two}\n\`= other.rounds\` \`= rounds\``)
    expect(values[0]?.value).toBe("2")
    expect(values[1]?.problem?.hint).toBe("Say of which pattern: disc.rounds, other.rounds.")
  })

  it("tell which names there are", async () => {
    const { values } = await compute(`${disc}\n\`= disc.edge_9\``)
    expect(values[0]?.problem?.hint).toContain("edge_1, edge_2, edge_3")
  })

  it("carry their place", async () => {
    const { problems } = await compute("one\ntwo `= nope` three")
    expect(problems[0]).toMatchObject({ line: 2, column: 5, length: 8 })
  })

  it("leave other inline code alone", async () => {
    expect((await compute("`=` `a = 3` `== 2`")).values).toEqual([])
  })
})

describe("calculation cells", () => {
  const lines = async (text: string, of = "") => {
    const result = await compute(disc + cell(`calculation${of}`, text))
    const content = result.cells[1]?.content
    return { lines: content?.kind === "calculation" ? content.lines : [], ...result }
  }

  it("keep names for later lines, later cells and the prose before and after", async () => {
    const result = await compute(
      `\`= b\`\n${cell("calculation", "a = 2 # two\nb = a * 3\n\n# only a remark\na + b")}`,
    )
    expect(result.values[0]?.value).toBe("6")
    expect(result.cells[0]?.content).toMatchObject({
      lines: [
        { name: "a", source: "2", value: "2", comment: "two" },
        { name: "b", source: "a * 3", value: "6" },
        { name: null, source: "", value: null, comment: "only a remark" },
        { name: null, source: "a + b", value: "8" },
      ],
    })
  })

  it("see the figures of the pattern they are about", async () => {
    const result = await compute(
      disc + cell("pattern name=other", "6 12") + cell("calculation of=other", "rounds"),
    )
    expect(result.cells[2]?.content).toMatchObject({ lines: [{ value: "2" }] })
  })

  it("go on after a line that fails, and say why at its place", async () => {
    const { lines: done, problems } = await lines("x = 1 / 0\n  y = 3 mm + 2\nz = 4")
    expect(done.map(({ value }) => value)).toEqual([null, null, "4"])
    expect(problems.map(({ code, line, column }) => [code, line, column])).toEqual([
      ["no-value", 7, 1],
      ["bad-expression", 8, 3],
    ])
  })

  it.each(["a = 1\na = 2", "rounds = 3", "disc = 3", "pi = 3", "mm = 2"])(
    "give a name once and none that means something: %j",
    async (text) => {
      expect((await lines(text)).problems.map(({ code }) => code)).toEqual(["name-taken"])
    },
  )

  it("are bounded in lines", async () => {
    const { lines: done, problems } = await lines("1 + 1\n".repeat(500))
    expect(done).toHaveLength(60)
    expect(problems[0]).toMatchObject({ code: "too-many-lines", line: 67 })
  })
})

describe("what is not calculated", () => {
  it.each([
    "import({a: 1})",
    'evaluate("1+1")',
    'parse("1")',
    'simplify("x")',
    'createUnit("x")',
    'derivative("x", "x")',
    "config({})",
    "range(1, 1e9)",
    "ones(100000, 100000)",
    "1:1e9",
    "[1, 2, 3]",
    "{a: 1}",
    "f(x) = f(x)",
    "1; 2",
    "factorial(170)",
    "170!",
    "random()",
    "disc.constructor",
    "disc.__proto__",
    "disc.toString",
    'disc["rounds"]',
    "disc.rounds.constructor",
    "disc.rounds()",
    "constructor",
    "__proto__",
    "toString()",
    "hasOwnProperty",
    "mm.constructor",
    'cos.constructor("x")()',
    "(a) = 3",
    "disc.x = 3",
    "disc + 1",
    '"a" + "b"',
    "true + 1",
    "sqrt(-1)",
    "log(0)",
    "0 / 0",
    "1e999",
    "10^1000",
    "mm^99",
    "3 mm + 2 g",
    "3 mm to kg",
    "3 mm to 2",
    "sin()",
    "sin(1, 2)",
    "round(1, 99)",
    "i",
    "\\",
    "'",
    "1 +",
    "",
    `${"(".repeat(140)}1${")".repeat(140)}`,
    "-".repeat(290),
    "1".repeat(5000),
    `${"2^".repeat(100)}2`,
    `"${"x".repeat(250)}"`,
    "\u0000\u202e\ud800",
  ])("%j", async (expression) => {
    const { values, problems } = await compute(`${disc}\n\n\`\` = ${expression} \`\``)
    if (values.length === 0) return expect(expression).toBe("")
    // Deep parentheses may or may not overflow the parser; nothing else here has a value.
    const fails = values[0]!.value === null
    expect(fails || expression.startsWith("((")).toBe(true)
    if (fails) expect(problems[0]!.message).not.toBe("")
  })

  it("whatever is written, a value is short and finite, or a problem says why", async () => {
    const token = fc.constantFrom(
      ..."1 2.5 1e300 1e-300 + - * / ^ ( ) , . = ? : > < ! ' \" [ ] { } ; % mm deg to pi disc disc.edge_2 rounds sqrt( max( round( x # \\".split(
        " ",
      ),
    )
    await fc.assert(
      fc.asyncProperty(fc.array(token, { minLength: 1, maxLength: 14 }), async (tokens) => {
        const { cells, problems } = await compute(disc + cell("calculation", tokens.join(" ")))
        const content = cells[1]!.content
        if (content?.kind !== "calculation") throw new Error("no calculation")
        for (const line of content.lines) {
          if (line.value === null) {
            if (line.source !== "") expect(problems.length).toBeGreaterThan(0)
          } else {
            expect(line.value).not.toMatch(/NaN|Infinity|undefined|function|\[object/)
            expect(line.value.length).toBeLessThan(260)
          }
        }
      }),
      { seed: 5, numRuns: 400 },
    )
  })
})

describe("the calculator", () => {
  it("works where strings must not be evaluated as code", async () => {
    const original = globalThis.Function
    const refuse = () => {
      throw new Error("a string was evaluated as code")
    }
    globalThis.Function = new Proxy(original, { construct: refuse, apply: refuse })
    try {
      expect(await worth("2 * sin(30 deg) + max(1, 2) to mm")).toBe("failed: bad-expression")
      expect(await worth("round(2 * disc.edge_2 to cm, 1)", disc)).toBe("12\u00a0cm")
    } finally {
      globalThis.Function = original
    }
  })
})
