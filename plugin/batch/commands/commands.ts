/** Every command, in the order in which the help lists them. A new command is a file beside this one and a line here. */
import type { Command } from 'commander';
import type { Reader } from '../../../core/index.ts';
import { annotateCommand } from './annotate.ts';
import { chartCommand } from './chart.ts';
import { checkCommand } from './check.ts';
import { clearCommand } from './clear.ts';
import { courseCommand } from './course.ts';
import { etudeCommand } from './etude.ts';
import { explainCommand } from './explain.ts';
import { installCommand } from './install.ts';
import { lessonCommand } from './lesson.ts';
import { reportCommand } from './report.ts';
import { watchCommand } from './watch.ts';

export const COMMANDS: readonly ((reader: Reader) => Command)[] = [
  annotateCommand,
  clearCommand,
  checkCommand,
  explainCommand,
  lessonCommand,
  courseCommand,
  etudeCommand,
  reportCommand,
  chartCommand,
  watchCommand,
  installCommand,
];
