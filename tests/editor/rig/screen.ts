/** A virtual screen of its own for an editor in a window. */
import { type ChildProcess, spawn } from 'node:child_process';

/** Starts a virtual screen on a display that nobody has yet. @throws Error when it does not start */
export async function startScreen(): Promise<{ screen: ChildProcess; display: string }> {
  const screen = spawn(
    'Xvfb',
    ['-displayfd', '3', '-screen', '0', '1400x900x24', '-nolisten', 'tcp', '-noreset'],
    {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    },
  );
  const number = await new Promise<string>((resolve, reject) => {
    screen.stdio[3]!.once('data', (chunk) => resolve(String(chunk).trim()));
    screen.once('exit', () => reject(new Error('Xvfb did not start')));
  });
  return { screen, display: `:${number}` };
}

/** Ends a program at once, and waits until it has gone. */
export async function endProcess(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  await new Promise<void>((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGKILL');
  });
}
