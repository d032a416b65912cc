// How long `clom check` takes as a whole process on every example, beside `clom --version` (the cost of starting .NET and the command
// line at all), run in turn. Build first: dotnet build src/Clomwright.Cli --configuration Release
// Usage: node benchmarks/check.mjs [runs]
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const clom = join(root, 'artifacts', 'bin', 'Clomwright.Cli', 'release', 'clom.dll');
const runs = Number(process.argv[2] ?? 7);
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

function seconds(...args) {
  const start = process.hrtime.bigint();
  const done = spawnSync('dotnet', [clom, ...args], { stdio: 'ignore' });
  if (done.error || done.status === 2) throw new Error(`clom ${args.join(' ')} answered ${done.status}`);
  return Number(process.hrtime.bigint() - start) / 1e9;
}

console.log('example                            check s   start s   ratio   (medians of ' + runs + ')');
for (const name of readdirSync(join(root, 'examples')).filter((f) => f.endsWith('.house.json'))) {
  const file = join(root, 'examples', name);
  seconds('check', file);
  const check = [], start = [];
  for (let i = 0; i < runs; i++) {
    check.push(seconds('check', file));
    start.push(seconds('--version'));
  }
  const [a, b] = [median(check), median(start)];
  console.log(`${name.padEnd(34)} ${a.toFixed(2).padStart(7)} ${b.toFixed(2).padStart(9)} ${(a / b).toFixed(1).padStart(7)}`);
}
