/**
 * How many signs a run passes over: those its patterns go across, and those it copies out of a text.
 *
 * A measure of work that is the same on every machine: what reads a text again for every word of it shows, what is merely
 * slow today does not. Going back within one pattern is not seen; a pattern that goes back without end never ends.
 */
export function signsPassed(run: () => void): number {
  let signs = 0;
  const { exec } = RegExp.prototype;
  const { slice } = String.prototype;
  RegExp.prototype.exec = function counted(this: RegExp, text: string) {
    const from = this.global || this.sticky ? this.lastIndex : 0;
    const match = exec.call(this, text);
    signs += match ? match.index + match[0].length - from : Math.max(0, text.length - from);
    return match;
  };
  String.prototype.slice = function counted(this: string, ...ends) {
    const part = slice.apply(this, ends);
    signs += part.length;
    return part;
  };
  try {
    run();
  } finally {
    RegExp.prototype.exec = exec;
    String.prototype.slice = slice;
  }
  return signs;
}
