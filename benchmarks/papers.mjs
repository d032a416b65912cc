// How long `clom papers` takes as a whole process on every example: the site folder, the office set and the templates, as PDF and SVG.
// Beside it, run in turn: `clom --version` (the cost of starting .NET and the command line at all), and `clom papers --blank` (the same
// libraries write sheets to fill in, without a house). Processor time says more than the clock where other work runs on the machine.
// Build first: ./publish --here    Usage: node benchmarks/papers.mjs [runs]
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const clom = join(root, 'artifacts', 'clom', 'clom');
const runs = Number(process.argv[2] ?? 5);
const out = mkdtempSync(join(tmpdir(), 'clom-papers-'));
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

// The shell's own clock for what its child took: by the wall, user and system.
function seconds(...args) {
  const done = spawnSync('bash', ['-c', 'TIMEFORMAT="%R %U %S"; time "$@" >/dev/null 2>&1; exit $?', 'bash', clom, ...args], { encoding: 'utf8' });
  if (done.error || done.status === 2) throw new Error(`clom ${args.join(' ')} answered ${done.status}`);
  const [clock, user, system] = done.stderr.trim().split(/\s+/).map(Number);
  return { clock, processor: user + system };
}

console.log(`example                     papers s  processor s   least s  start s  blank s    PDF MB   (medians of ${runs}; load ${loadavg()[0].toFixed(1)})`);
for (const name of readdirSync(join(root, 'examples')).filter((f) => f.endsWith('.house.json'))) {
  const folder = join(out, name);
  const papers = ['papers', join(root, 'examples', name), '--out', folder, '--date', '2026-05-01'];
  seconds(...papers);
  const all = [], start = [], blank = [];
  for (let i = 0; i < runs; i++) {
    all.push(seconds(...papers));
    start.push(seconds('--version').clock);
    blank.push(seconds('papers', '--blank', '--out', join(out, 'blank')).clock);
  }

  const size = readdirSync(folder).filter((f) => f.endsWith('.pdf')).reduce((sum, f) => sum + statSync(join(folder, f)).size, 0) / 1e6;
  const cells = [median(all.map((r) => r.clock)), median(all.map((r) => r.processor)), Math.min(...all.map((r) => r.clock)), median(start), median(blank), size];
  console.log(name.padEnd(26) + cells.map((c, i) => c.toFixed(2).padStart([10, 13, 10, 9, 9, 10][i])).join(''));
}

rmSync(out, { recursive: true });
