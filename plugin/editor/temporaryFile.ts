/** A file that is there only while something needs it. */
import type { HostFile } from './hostApi.ts';

let count = 0;

/** A text that the host hands over only through a file in its temporary folder: lets `write` write it, reads it, deletes it. */
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
    file.source = path;
    file.remove();
  }
}
