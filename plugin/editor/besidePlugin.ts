/** Small texts kept beside the plugin, so that they go when the plugin goes. */
import type { Host } from './hostApi.ts';

/** What was kept under a name; empty when nothing was. */
export function readBeside({ file, engine }: Host, name: string): string {
  file.source = plainPath(engine.resolvedUrl(name));
  return file.exists() ? file.read() : '';
}

/** Keeps a text under a name. A folder that cannot be written to keeps what it had. */
export function keepBeside({ file, engine }: Host, name: string, text: string): void {
  file.source = plainPath(engine.resolvedUrl(name));
  file.write(text);
}

/** The host's file object wants plain paths: `file:///C:/x` is `C:/x`, `file:///x` is `/x`. */
export function plainPath(url: unknown): string {
  return decodeURIComponent(String(url)).replace(/^file:\/\/(?:\/(?=[A-Za-z]:))?/, '');
}
