/** Measures speed, and prints a table with ratios taken in one run. Nothing here is a test: `npm run bench [NAME …]`. */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { checkNode, ensureBuild, installPackages, ROOT } from './setup.mjs';

checkNode();
installPackages();
await ensureBuild();

const folder = join(ROOT, 'scripts', 'bench');
const wanted = process.argv.slice(2);
const benches = readdirSync(folder).filter(
  (file) => file.endsWith('.bench.ts') && (wanted.length === 0 || wanted.some((name) => file.includes(name))),
);
let failed = 0;
for (const bench of benches) {
  const { status } = spawnSync(process.execPath, ['--expose-gc', '--import', 'tsx', join(folder, bench)], { cwd: ROOT, stdio: 'inherit' });
  if (status !== 0) failed += 1;
}
process.exitCode = failed === 0 ? 0 : 1;
