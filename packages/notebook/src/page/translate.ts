// Markdown to the tree of a page, cleaned: raw HTML is dropped, and nothing that loads or takes input goes through.

import rehypeSanitize, { defaultSchema } from "rehype-sanitize"
import rehypeStringify from "rehype-stringify"
import remarkRehype from "remark-rehype"
import { unified } from "unified"

const schema = {
  ...defaultSchema,
  tagNames: (defaultSchema.tagNames ?? []).filter(
    (tag) => !["img", "input", "picture", "source"].includes(tag),
  ),
  attributes: {
    ...defaultSchema.attributes,
    span: [["className", "value", "failed"] as [string, ...string[]], "title"],
  },
}

export const translate = unified().use(remarkRehype).use(rehypeSanitize, schema).freeze()
export const stringify = unified().use(rehypeStringify).freeze()

export type ProseNode = Awaited<ReturnType<typeof translate.run>>["children"][number]
export type ProseElement = Extract<ProseNode, { type: "element" }>
