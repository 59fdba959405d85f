/** What ends a command or one of its files: one clear line for the user. */

/** A fault that is the user's to mend. `message` says where, what is wrong and what to do, in one line. */
export class Failure extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'Failure';
  }
}

/** How a run ended; the worst of its files counts. */
export const EXIT = { fine: 0, impossible: 1, failed: 2 } as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** The line that tells of any fault; ours are told as they are, others are named as faults of the program. */
export function faultLine(fault: unknown): string {
  if (fault instanceof Failure) return fault.message;
  const text = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
  return `a fault in bellhand itself, please report it: ${text.replace(/\s*\n\s*/g, ' | ')}`;
}

/** Says in words why the system refused a file: the code of a Node error, with what to do about it. */
export function systemReason(fault: unknown): string {
  const code = (fault as NodeJS.ErrnoException).code ?? '';
  return SYSTEM_REASONS[code] ?? `the system refuses it (${code || String(fault)})`;
}

const SYSTEM_REASONS: { readonly [code: string]: string } = {
  ENOENT: 'there is no such file: check the name and the folder',
  EACCES: 'permission is missing: change the rights of the file or its folder, or choose another place',
  EPERM:
    'the system does not permit it: change the rights of the file or its folder, or choose another place',
  EROFS: 'this disk can only be read: choose another place with -o',
  ENOSPC: 'the disk is full: make room or choose another place with -o',
  EISDIR: 'this is a folder: name a file in it',
  ENOTDIR: 'a part of the path is a file and not a folder: check the path',
  ENAMETOOLONG: 'the name is too long: choose a shorter one',
  EMFILE: 'too many files are open: lower --jobs',
  ERR_FS_FILE_TOO_LARGE: 'it is larger than any score: check where it comes from',
  ELOOP: 'its links lead in a circle: name the file itself',
};
