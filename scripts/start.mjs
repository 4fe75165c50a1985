/** `npm start`: install and build what is missing, then serve the built site and say where. */
import { join } from 'node:path';
import { checkNode, ensureBuild, installPackages, ROOT } from './setup.mjs';

checkNode();
installPackages();
await ensureBuild();

const { preview } = await import('vite');
const server = await preview({
  configFile: join(ROOT, 'vite.config.ts'),
  root: join(ROOT, 'web'),
  logLevel: 'warn',
  preview: { host: '127.0.0.1', port: Number(process.env['PORT']) || 4173, strictPort: false },
});

console.log(`\nTenterground is at ${server.resolvedUrls?.local[0]}\nCtrl+C ends it.`);

for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) process.on(signal, () => process.exit(0));
