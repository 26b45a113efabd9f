// What a page with a measured picture adds to the look of a page.

import { pictureRules } from "../picture/picture-svg.ts"

export const pictureStyle = `
${pictureRules}
.picture figure { margin: 0 0 1.2rem; }
.picture figcaption { font: 0.8rem/1.4 var(--sans); color: var(--quiet); margin: 0 0 0.4rem; }
.picture svg { display: block; width: 100%; height: auto; }
.measured .line { display: block; min-height: 1.4em; white-space: pre-wrap; }
.picture .given svg { max-height: 44rem; }
.picture .strip svg { min-width: 46rem; }
.picture .one-repeat svg { max-width: 20rem; }
.picture .strip image, .picture .one-repeat image { image-rendering: auto; }
@media (min-width: 64rem) { .picture .strip { width: 60rem; margin-left: calc((100% - 60rem) / 2); } .picture .strip .scroll { max-width: none; } }
@media print { .picture .strip svg { min-width: 0; } }
`.trim()
