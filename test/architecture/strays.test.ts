import { describe, expect, test } from 'vitest';
import { filesBelow, ROOT } from './web-files.ts';
import type { ProjectFile } from './web-files.ts';

const escaped = ROOT.replace(/[/\\]$/, '').replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');

/** A folder of one machine, as a build may leave it in an asset: this checkout's own, or somebody's home. */
const MACHINE_PATH = new RegExp(`(?:${escaped}|file://|(?<![\\w.-])/(?:home|Users|root)/|[A-Z]:\\\\+Users\\\\)[\\w./\\\\-]*`, 'g');

/** Names of vocabularies, never fetched; and addresses a reader may follow by hand. */
const NOT_REQUESTED = [
  /^https?:\/\/www\.w3\.org\//,
  /^http:\/\/www\.cidoc-crm\.org\/cidoc-crm\//,
  /^http:\/\/purl\.org\/dc\/terms\//,
  /^https:\/\/doi\.org\/?/,
];
const ADDRESS = /https?:\/\/[\w.-]+[^\s"'`)<>\\]*/g;

const machinePaths = ({ path, text }: ProjectFile): readonly string[] =>
  [...text.matchAll(MACHINE_PATH)].map(([found]) => `${path}: ${found}`);

/** A library's licence notice names its home; it has to stay and asks nobody for anything. */
const LICENCE_NOTICE = /\/\*(?:(?!\*\/)[\s\S]){0,4000}?(?:@license|License|Copyright|MIT)(?:(?!\*\/)[\s\S]){0,4000}?\*\//g;

const foreignAddresses = ({ path, text }: ProjectFile): readonly string[] =>
  [...text.replace(LICENCE_NOTICE, '').matchAll(ADDRESS)]
    .map(([found]) => found)
    .filter((found) => !NOT_REQUESTED.some((known) => known.test(found)))
    .map((found) => `${path}: ${found}`);

// The demonstration's bibliography holds its sources' addresses as text; it is data, not an asset the page loads from there.
const site = filesBelow('dist/site', /\.(?:html|js|css|svg|webmanifest)$/);
const commandLine = filesBelow('dist/cli', /\.mjs$/);

describe('built assets', () => {
  test.skipIf(site.length === 0)('name no machine path', () => {
    expect([...site, ...commandLine].flatMap(machinePaths)).toEqual([]);
  });

  test.skipIf(site.length === 0)('name no address off the origin', () => {
    expect(site.flatMap(foreignAddresses)).toEqual([]);
  });
});

describe('what counts as a stray', () => {
  const asset = (text: string): ProjectFile => ({ path: 'a.js', text });

  test('a path of one machine', () => {
    expect(machinePaths(asset(`"/home/anna/x.ts" file:///srv/x "${ROOT}web/x.ts"`))).toHaveLength(3);
    expect(machinePaths(asset('"/assets/home/x.js"'))).toEqual([]);
  });

  test('an address elsewhere, but not the name of a vocabulary', () => {
    expect(foreignAddresses(asset('@import url(https://fonts.example/x.css)'))).toEqual(['a.js: https://fonts.example/x.css']);
    expect(foreignAddresses(asset('xmlns="http://www.w3.org/2000/svg"'))).toEqual([]);
  });
});
