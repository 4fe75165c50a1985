import { ask } from './commands/ask.ts';
import { check } from './commands/check.ts';
import { date } from './commands/date.ts';
import { find } from './commands/find.ts';
import { list } from './commands/list.ts';
import { palette } from './commands/palette.ts';
import { publish } from './commands/publish.ts';
import { scale } from './commands/scale.ts';
import type { Command } from './commands/command.ts';

const COMMANDS: Readonly<Record<string, Command>> = { check, ask, palette, find, date, scale, list, publish };

const USAGE = `Usage:
  tenterground check    FOLDER [--json]
  tenterground ask      FOLDER (--colour C | --dye ID) --region R --when D
                        [--fibre F] [--wearer W] [--dyed-here]
                        [--tolerance N] [--json]
  tenterground palette  FOLDER --region R --when D [--fibre F] [--wearer W]
                        [--dyed-here] [--json]
  tenterground find     FOLDER WORDS… | --dye ID [--json]
  tenterground date     "WORDS" [--json]
  tenterground scale    FOLDER RECIPE --fibre-mass 250g [--json]
  tenterground list     FOLDER [--whole] [--private]
  tenterground publish  FOLDER OUT --display ID [--preview]

check    what is wrong in the notes: file, line, and what to write instead
ask      is this colour, or this dyestuff, plausible there and then?
palette  every colour the notes can stand behind there and then
find     notes that name a dyestuff by any of its names, or that hold the words
date     how a date is read
scale    a recipe worked out for a mass of fibre
list     the files of a notebook as JSON, to publish it for review
publish  a display as a folder of pages that open from disk, without a network

A colour is a hex or CSS colour, L,a,b, a colour-word of the notes, a recipe
or a trial. A date is EDTF, or as people write ("c. 1370", "late 9th century"),
or a period of the notes. Region, fibre, wearer and dye are ids, titles or
names.

Exit 0: done. Exit 1: check found an error. Exit 2: something is not understood.`;

// A reader such as `head` may close the pipe before everything is written.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
  process.exit(0);
});

const [name, ...args] = process.argv.slice(2);
const command = name !== undefined && Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
const asksForHelp = name === 'help' || process.argv.slice(2).some((arg) => arg === '--help' || arg === '-h');

if (asksForHelp) console.log(USAGE);
else if (command) process.exitCode = await command(args);
else {
  if (name !== undefined) console.error(`There is no command "${name}". Known: ${Object.keys(COMMANDS).join(', ')}.\n`);
  console.error(USAGE);
  process.exitCode = 2;
}
