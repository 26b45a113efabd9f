// `pnpm notices`: writes packages/notebook/licences.txt, the notices of everything that the script of a live page is put
// together from. A test holds the file to what is bundled.

import { writeFileSync } from "node:fs"
import { licencesFile, licencesOfScript } from "../test/support/licences.ts"

writeFileSync(licencesFile, await licencesOfScript())
