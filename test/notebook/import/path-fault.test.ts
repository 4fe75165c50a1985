import { describe, expect, test } from 'vitest';
import { isHidden, pathFault } from '../../../web/notebook/import/path-fault.ts';

describe('pathFault', () => {
  test.each([
    ['../madder.md', 'climbs'],
    ['notes/../../madder.md', 'climbs'],
    ['notes/..', 'climbs'],
    ['/etc/passwd', 'absolute'],
    ['//server/share/a.md', 'absolute'],
    ['C:/notes/a.md', 'drive'],
    ['c:a.md', 'drive'],
    ['notes\\a.md', 'backslash'],
    ['..\\a.md', 'backslash'],
    ['a\u0000.md', 'control-character'],
    ['a\n.md', 'control-character'],
    ['a//b.md', 'odd-part'],
    ['./a.md', 'odd-part'],
    ['a/./b.md', 'odd-part'],
    ['', 'odd-part'],
    ['notes/', 'odd-part'],
    [`${'a/'.repeat(600)}b.md`, 'name-too-long'],
  ])('%j is at fault: %s', (path, fault) => {
    expect(pathFault(path)).toBe(fault);
  });

  test.each([
    'madder.md',
    'recipes/madder on alum.md',
    'a..b/c...md',
    '__proto__/constructor.md',
    'Färber/ʿuṣfur 紅花.md',
    '<img src=x onerror=alert(1)>.md',
    'xx:y.md',
  ])('%j can be written anywhere', (path) => {
    expect(pathFault(path)).toBeUndefined();
  });
});

describe('isHidden', () => {
  test.each([
    '.DS_Store',
    'a/.git/config',
    '__MACOSX/a.md',
    'photos/Thumbs.db',
    'a/desktop.ini',
    'node_modules/x/readme.md',
    '._a.md',
    'a/weld.md.crswap',
  ])('%s is passed over', (path) => expect(isHidden(path)).toBe(true));

  test.each(['a.md', 'a/b..md', 'thumbs.db.md', 'crswap', 'my__MACOSX/a.md'])('%s is not', (path) => expect(isHidden(path)).toBe(false));
});
