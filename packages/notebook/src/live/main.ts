// The script of a live page. In a worker it computes; in a page it brings the page to life.

/// <reference lib="dom" />

import { serveWorker } from "./engine.ts"
import { startPage } from "./page.ts"

if (typeof document === "undefined") serveWorker()
else startPage(document.currentScript?.textContent ?? "")
