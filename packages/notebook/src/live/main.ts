// The script of a live page. In a worker it computes; in a page it brings the page to life.

/// <reference lib="dom" />

import { makeAnswerer } from "./answer.ts"
import { serveWorker } from "./engine.ts"
import { startPage } from "./page.ts"

if (typeof document === "undefined") serveWorker(makeAnswerer(false))
else startPage(document.currentScript?.textContent ?? "")
