/** Moves marks sideways, first come first placed, until none is nearer to another than a distance. */
export function spread<T extends { x: number; y: number }>(marks: readonly T[], apart: number): T[] {
  const placed: T[] = [];
  for (const mark of marks) {
    let { x } = mark;
    for (let tries = 1; placed.some((other) => Math.hypot(other.x - x, other.y - mark.y) < apart) && tries < 80; tries++) {
      x = mark.x + (tries % 2 === 1 ? 1 : -1) * Math.ceil(tries / 2) * apart;
    }
    placed.push({ ...mark, x });
  }
  return placed;
}

/** Moves labels along a line, in order, until none is nearer to the next than a distance. */
export function inLine(wanted: readonly number[], apart: number, from: number, to: number): number[] {
  const placed: number[] = [];
  for (const at of wanted) placed.push(Math.max(at, (placed.at(-1) ?? from - apart) + apart));
  for (let i = placed.length - 1, limit = to; i >= 0 && (placed[i] ?? 0) > limit; i--, limit -= apart) placed[i] = limit;
  return placed;
}
