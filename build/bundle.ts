/**
 * Builds what runs: the command line (dist/bellhand.js with its worker) and the editor's plugin folder
 * (dist/bellhand/). Parts whose source is not there yet are left out.
 */
import { rmSync } from 'node:fs';
import { build } from 'esbuild';

rmSync('dist', { recursive: true, force: true });
await build({
  entryPoints: { bellhand: 'plugin/batch/main.ts', 'bellhand-worker': 'plugin/batch/worker.ts' },
  outdir: 'dist',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  banner: { js: '#!/usr/bin/env node' },
});
