// The parts of the drawing libraries that charts need, and no others.

export { Error as errorsOnly, loader, parse, View } from "vega"
export { expressionInterpreter } from "vega-interpreter"
export { compile } from "vega-lite"
