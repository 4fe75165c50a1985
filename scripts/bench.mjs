/** Measures speed, and prints a table with ratios taken in one run. Nothing here is a test: `npm run bench -- [NAME …] [--notes 1k,10k,100k]`. */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { checkNode, ensureBuild, giveUp, installPackages, ROOT } from './setup.mjs';

checkNode();
installPackages();
await ensureBuild();

const folder = join(ROOT, 'scripts', 'bench');
const args = process.argv.slice(2);
const options = args.findIndex((arg) => arg.startsWith('--'));
const wanted = (options < 0 ? args : args.slice(0, options)).map((name) => name.toLowerCase());
const benches = readdirSync(folder).filter(
  (file) => file.endsWith('.bench.ts') && (wanted.length === 0 || wanted.some((name) => file.includes(name))),
);
if (benches.length === 0)
  giveUp(
    `There is no bench of that name; there are: ${readdirSync(folder)
      .filter((file) => file.endsWith('.bench.ts'))
      .join(', ')}`,
  );
let failed = 0;
for (const bench of benches) {
  const { status } = spawnSync(
    process.execPath,
    ['--expose-gc', '--max-old-space-size=12000', '--import', 'tsx', join(folder, bench), ...(options < 0 ? [] : args.slice(options))],
    { cwd: ROOT, stdio: 'inherit' },
  );
  if (status !== 0) failed += 1;
}
process.exitCode = failed === 0 ? 0 : 1;
