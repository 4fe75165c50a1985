import { ask } from './commands/ask.ts';
import { check } from './commands/check.ts';
import { date } from './commands/date.ts';
import { find } from './commands/find.ts';
import { palette } from './commands/palette.ts';
import type { Command } from './commands/command.ts';

const COMMANDS: Readonly<Record<string, Command>> = { check, ask, palette, find, date };

const USAGE = `Usage:
  tenterground check    FOLDER [--json]
  tenterground ask      FOLDER (--colour C | --dye ID) --region R --when D
                        [--fibre F] [--wearer W] [--dyed-here] [--tolerance N] [--json]
  tenterground find     FOLDER WORDS… | --dye ID [--json]
  tenterground date     "WORDS" [--json]

check    what is wrong in the notes: file, line, and what to write instead; exit 1 on any error
ask      is this colour, or this dyestuff, plausible there and then?
find     every note that names a dyestuff under any of its names, or that holds the words
date     how a date is read

A colour is a hex or CSS colour, L,a,b, a colour-word of the notes, a recipe or a trial. Exit 2: something asked for is not known.`;

// A reader such as `head` may close the pipe before everything is written.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
  process.exit(0);
});

const [name, ...args] = process.argv.slice(2);
const command = name === undefined ? undefined : COMMANDS[name];

if (name === '--help' || name === '-h' || name === 'help') console.log(USAGE);
else if (command) process.exitCode = await command(args);
else {
  if (name !== undefined) console.error(`There is no command "${name}". Known: ${Object.keys(COMMANDS).join(', ')}.\n`);
  console.error(USAGE);
  process.exitCode = 2;
}
