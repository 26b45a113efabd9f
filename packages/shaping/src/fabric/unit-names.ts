// What the units of each fabric are called.

import type { FabricName } from "./fabric-of.ts"

export const unitNames: Readonly<Record<FabricName, { one: string; many: string }>> = {
  lace: { one: "loop", many: "loops" },
  mesh: { one: "space", many: "spaces" },
  groups: { one: "space", many: "spaces" },
  shells: { one: "shell", many: "shells" },
  solid: { one: "stitch", many: "stitches" },
}
