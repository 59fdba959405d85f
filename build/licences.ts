/** The licences of the packages that something shipped carries in itself: whoever gets a copy gets these with it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Metafile } from 'esbuild';

const PACKAGES = fileURLToPath(new URL('../node_modules/', import.meta.url));

/** The file's last folder of packages, then the package's name, with its owner's where there is one. */
const PACKAGE_OF_FILE = /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//;

/** The names of the packages of which a bundle holds anything, sorted. @param metafile what esbuild says of the bundle */
export function packagesIn({ outputs }: Metafile): readonly string[] {
  const files = Object.values(outputs).flatMap(({ inputs }) =>
    Object.keys(inputs).filter((file) => inputs[file]!.bytesInOutput > 0),
  );
  return [...new Set(files.flatMap((file) => PACKAGE_OF_FILE.exec(file)?.[1] ?? []))].sort();
}

/**
 * One section a package: name, version, licence, who made it and where its source is, and the licence's text where the
 * package holds it.
 * @throws {Error} when a package says nothing of its licence
 */
export function licencesOf(packages: readonly string[]): string {
  return packages.map(section).join(`\n${'-'.repeat(80)}\n\n`);
}

interface Manifest {
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name: string };
  readonly repository?: string | { readonly url: string };
}

function section(name: string): string {
  const folder = join(PACKAGES, name);
  const manifest: Manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const { version, license, author, repository } = manifest;
  if (!license) throw new Error(`${name} names no licence: it cannot be shipped`);
  const by = typeof author === 'object' ? author.name : author;
  const from = typeof repository === 'object' ? repository.url : repository;
  const file = readdirSync(folder).find((entry) => /^(?:licen[cs]e|copying)\b/i.test(entry));
  const text = file ? readFileSync(join(folder, file), 'utf8') : null;
  const lines = [`${name} ${version}`, `Licence: ${license}`, by && `By: ${by}`, from && `Source: ${from}`];
  return [...lines.filter(Boolean), ...(text ? ['', text.trim()] : [])].join('\n').concat('\n');
}
