// The look of a page and of all that may stand in it.

import { editStyle } from "./edit-html.ts"
import { publishedStyle } from "./published-html.ts"
import { readingStyle } from "./reading-style.ts"
import { pageStyle } from "./style.ts"

export const wholeStyle = [pageStyle, readingStyle, editStyle, publishedStyle].join("\n")
