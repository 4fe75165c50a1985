/** The command line's first word decides what is done; without one it says how it is used. */
const USAGE = `Usage: tenterground check|ask|palette|find|date|scale …`;

console.error(USAGE);
process.exitCode = 2;
