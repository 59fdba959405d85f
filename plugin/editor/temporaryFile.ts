/** A text that the host hands over only through a file. */
import type { HostFile } from './hostApi.ts';

let count = 0;

/** Lets `write` write a file, reads it and deletes it. */
export function throughTemporaryFile(
  file: HostFile,
  extension: string,
  write: (path: string) => void,
): string {
  count += 1;
  const path = `${file.tempPath()}/bellhand-${Date.now()}-${count}.${extension}`;
  file.source = path;
  try {
    write(path);
    return file.read();
  } finally {
    file.remove();
  }
}
