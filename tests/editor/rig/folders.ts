/** Folders for what the editor reads and leaves behind. */
import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const made: string[] = [];
process.on('exit', removeFolders);

/** Deletes every folder made so far: tests ask for it, since their processes are ended without notice. */
export function removeFolders(): void {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
}

/** A new empty folder. */
export async function temporaryFolder(name: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), `bellhand-${name}-`));
  made.push(folder);
  return folder;
}
