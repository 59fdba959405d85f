/** A file that is there only while something needs it. */
import type { HostFile } from './hostApi.ts';

let count = 0;

/** Names a file in the host's temporary folder, lets `use` write and read it, and deletes it. */
export function withTemporaryFile<T>(file: HostFile, extension: string, use: (path: string) => T): T {
  count += 1;
  const path = `${file.tempPath()}/bellhand-${Date.now()}-${count}.${extension}`;
  file.source = path;
  try {
    return use(path);
  } finally {
    file.source = path;
    file.remove();
  }
}

/** A text that the host hands over only through a file: lets `write` write it, and reads it. */
export function throughTemporaryFile(
  file: HostFile,
  extension: string,
  write: (path: string) => void,
): string {
  return withTemporaryFile(file, extension, (path) => {
    write(path);
    return file.read();
  });
}
