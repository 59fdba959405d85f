/** Builds the page that needs no installation, `dist/bellhand.html`: script, engraver, letters and style in one file. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { PAGE_STYLE } from '../plugin/pages/style.ts';
import { textFaces } from '../plugin/pages/textFaces.ts';
import { STAND_STYLE } from '../plugin/stand/standStyle.ts';
import { licencesOf, packagesIn } from './licences.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** A page that is larger is carried nowhere. In bytes. */
const PAGE_LIMIT = 12_000_000;

/** Builds the page. @returns its path, or why there is none */
export async function buildStandPage(folder = join(ROOT, 'dist')): Promise<string> {
  if (!existsSync(join(ROOT, 'node_modules/verovio'))) return 'none, since verovio is not installed';
  const [script, worker] = await Promise.all([
    browserScript('plugin/stand/stand.tsx'),
    browserScript('plugin/stand/engraver/worker.ts'),
  ]);
  const hash = createHash('sha256').update(script.text).digest('base64');
  // Nothing may be fetched from anywhere: what is not named is forbidden.
  const policy = [
    "default-src 'none'",
    `script-src 'sha256-${hash}' 'wasm-unsafe-eval'`,
    'worker-src blob:',
    "style-src 'unsafe-inline'",
    'img-src data: blob:',
    'font-src data:',
    "connect-src 'none'",
    "form-action 'none'",
    "base-uri 'none'",
  ].join('; ');
  const page = `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="generator" content="Bellhand">
<link rel="icon" href="data:,">
<title>Bellhand</title>
<style>${textFaces()}${PAGE_STYLE}${STAND_STYLE}</style>
</head>
<body>
<svg class="outlines" aria-hidden="true" focusable="false"><defs id="outlines"></defs></svg>
<div id="stand"><noscript>This page works by its script: allow it to run.</noscript></div>
<script type="text/plain" id="engraver">${gzipSync(worker.text, { level: 9 }).toString('base64')}</script>
<script>${script.text}</script>
</body>
</html>
<!--
${inComment(licencesOf([...new Set([...script.packages, ...worker.packages, '@fontsource/tinos'])].sort()))}-->
`;
  if (page.length > PAGE_LIMIT)
    throw new Error(`the page has ${page.length} bytes, more than the ${PAGE_LIMIT} allowed`);
  const file = join(folder, 'bellhand.html');
  await writeFile(file, page);
  return file;
}

/** A comment ends where two hyphens and an angle meet. */
function inComment(text: string): string {
  return text.replace(/--/g, '- -');
}

/** A script, and the names of the packages that it carries. */
async function browserScript(entry: string): Promise<{ text: string; packages: readonly string[] }> {
  const { outputFiles, metafile } = await build({
    entryPoints: [join(ROOT, entry)],
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    loader: { '.musicxml': 'text' },
    // The engraver asks for it in Node alone.
    external: ['node:module', 'node:fs', 'node:path', 'node:crypto'],
    legalComments: 'none',
    logLevel: 'error',
    metafile: true,
    write: false,
  });
  return {
    text: outputFiles[0]!.text.replace(/<\/script/gi, '<\\/script'),
    packages: packagesIn(metafile),
  };
}
