// How far out the work reaches in each direction, over one repeat: what a new round must stay outside of.

const bins = 1440

export class Frontier {
  private readonly reach: Float64Array

  constructor(
    private readonly turn: number,
    start: number,
  ) {
    this.reach = new Float64Array(bins).fill(start)
  }

  /** Farthest reach within so many mm to either side of a ray, at about this radius. */
  at(angle: number, halfMm: number, radius: number): number {
    let most = 0
    this.each(angle, halfMm / Math.max(radius, 0.5), (bin) => {
      most = Math.max(most, this.reach[bin]!)
    })
    return most
  }

  cover(angle: number, halfMm: number, radius: number): void {
    this.each(angle, halfMm / Math.max(radius, 0.5), (bin) => {
      this.reach[bin] = Math.max(this.reach[bin]!, radius)
    })
  }

  /** The edge between two neighbours is a line that nothing later dips below. */
  join(a: { angle: number; radius: number }, b: { angle: number; radius: number }): void {
    const span = b.angle - a.angle
    const step = this.turn / bins
    const count = Math.max(1, Math.ceil(Math.abs(span) / step))
    for (let k = 0; k <= count; k++) {
      const share = k / count
      const bin = Math.round((a.angle + share * span) / step)
      const at = ((bin % bins) + bins) % bins
      this.reach[at] = Math.max(this.reach[at]!, a.radius + share * (b.radius - a.radius))
    }
  }

  private each(angle: number, half: number, visit: (bin: number) => void): void {
    const step = this.turn / bins
    const from = Math.floor((angle - Math.min(half, this.turn / 2)) / step)
    const to = Math.ceil((angle + Math.min(half, this.turn / 2)) / step)
    for (let k = from; k <= to; k++) visit(((k % bins) + bins) % bins)
  }

  get most(): number {
    return this.reach.reduce((most, value) => Math.max(most, value), 0)
  }
}
