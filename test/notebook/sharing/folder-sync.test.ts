import { mkdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import type { FolderPort } from '../../../web/domain/folder-port.ts';
import { chosenText, conflictsOf } from '../../../web/domain/merge/note-merge.ts';
import { failed } from '../../../web/domain/result.ts';
import { Keeper } from '../../../web/notebook/keeper.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { withEntry } from '../../../web/notebook/pot-entry.ts';
import { remarksFile } from '../../../web/notebook/remarks.ts';
import { FolderSync } from '../../../web/notebook/sharing/folder-sync.ts';
import type { Meeting } from '../../../web/notebook/sharing/meeting.ts';
import { SeenFiles } from '../../../web/notebook/sharing/seen-files.ts';
import { MemoryDisk, MemoryStore } from '../../../web/store/memory-store.ts';
import { countingSurroundings } from '../../contract/note-store.ts';
import { aFolder } from '../../helpers/a-folder.ts';
import { diskFolder } from '../../helpers/disk-folder.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const textOf = (file: Uint8Array | undefined): string | undefined => file && new TextDecoder().decode(file);
const NOTE = '---\nkind: dyestuff\ntitle: Weld\nlatin: Reseda luteola\n---\nYellow.\n\nSown in spring.\n';

class Linked {
  readonly disk = new MemoryDisk();
  readonly keeper: Keeper;
  readonly seen: SeenFiles;
  readonly sync: FolderSync;
  readonly root: string;
  #ticks = 0;

  constructor(root: string, folder: FolderPort = diskFolder(root)) {
    this.root = root;
    this.keeper = new Keeper(new MemoryStore(this.disk, countingSurroundings()), new LocalEngine());
    this.seen = new SeenFiles(this.keeper.store);
    this.sync = new FolderSync(this.keeper, folder, this.seen);
  }

  async there(path: string): Promise<string | undefined> {
    return readFile(join(this.root, path), 'utf8').catch(() => undefined);
  }

  /** Writes in the folder, as another program would, at another time than before. */
  async editThere(path: string, content: string): Promise<void> {
    await mkdir(dirname(join(this.root, path)), { recursive: true });
    await writeFile(join(this.root, path), content);
    const time = new Date(Date.now() + (this.#ticks += 1) * 1000);
    await utimes(join(this.root, path), time, time);
  }

  async here(path: string): Promise<string | undefined> {
    return textOf((await this.keeper.read(path))?.bytes);
  }

  async editHere(path: string, content: string): Promise<void> {
    const version = (await this.keeper.read(path))?.version;
    const result = await this.keeper.write([{ path, bytes: bytes(content), ...(version !== undefined && { basedOn: version }) }]);
    if (!result.ok) throw new Error(result.error);
  }

  async removeHere(path: string): Promise<void> {
    const basedOn = (await this.keeper.read(path))?.version ?? 0;
    await this.keeper.write([{ path, removed: true, basedOn }]);
  }

  /** Every text a file has ever had here. */
  async history(path: string): Promise<readonly string[]> {
    const earlier = await this.keeper.history(path);
    if (!earlier.ok) throw new Error(earlier.error);
    const texts = await Promise.all(
      earlier.value.map(async ({ version }) => {
        const found = await this.keeper.store.readEarlier(path, version);
        return found.ok ? (textOf(found.value.bytes) ?? '') : '';
      }),
    );
    return [...texts, ...([(await this.here(path)) ?? []].flat() as string[])];
  }
}

async function linked(files: Readonly<Record<string, string | Uint8Array>>): Promise<Linked> {
  const folder = await aFolder(files);
  onTestFinished(folder.remove);
  return new Linked(folder.path);
}

async function onlyMeeting(pair: Linked): Promise<Meeting> {
  const { meetings } = await pair.sync.round();
  expect(meetings).toHaveLength(1);
  return meetings[0] as Meeting;
}

describe('FolderSync', () => {
  test('takes a folder in, writes what is new here out, and then does nothing', async () => {
    const pair = await linked({ 'a.md': NOTE, 'photos/b.jpg': Uint8Array.from([1, 255, 0]), '.hidden/c.md': 'x' });
    await pair.keeper.openKept();
    await pair.editHere('d.md', 'A note.\n');
    expect(await pair.sync.round()).toMatchObject({ takenIn: ['a.md', 'photos/b.jpg'], writtenOut: ['d.md'], meetings: [] });
    expect(await pair.here('a.md')).toBe(NOTE);
    expect(await pair.there('d.md')).toBe('A note.\n');
    expect(await pair.sync.round(true)).toEqual({ takenIn: [], writtenOut: [], merged: [], meetings: [], passedOver: [] });
  });

  test('a look through a large folder says how far it is, a hundred files at a time', async () => {
    const many = Object.fromEntries(Array.from({ length: 250 }, (_, at) => [`n${at}.md`, NOTE]));
    const pair = await linked(many);
    const told: { readonly done: number; readonly of: number }[] = [];
    await pair.sync.round(true, (progress) => told.push(progress));
    expect(told).toEqual([0, 100, 200, 250].map((done) => ({ done, of: 250 })));
  });

  test('the demonstration gives way to a folder with notes, and goes out into an empty one', async () => {
    const [full, empty] = [await linked({ 'a.md': NOTE }), await linked({})];
    for (const pair of [full, empty]) {
      await pair.keeper.show([{ path: 'demo.md', bytes: bytes('demo') }]);
      await pair.sync.round();
    }
    expect([await full.here('demo.md'), await full.there('demo.md'), await full.here('a.md')]).toEqual([undefined, undefined, NOTE]);
    expect([await empty.here('demo.md'), await empty.there('demo.md')]).toEqual(['demo', 'demo']);
  });

  test('a change or a removal on one side goes to the other, and the earlier text stays here', async () => {
    const pair = await linked({ 'a.md': NOTE, 'b.md': 'b', 'c.md': 'c', 'd.md': 'd' });
    await pair.sync.round();
    await pair.editHere('a.md', `${NOTE}Here.\n`);
    await pair.editThere('b.md', 'b there');
    await pair.removeHere('c.md');
    await rm(join(pair.root, 'd.md'));
    expect(await pair.sync.round()).toMatchObject({ takenIn: ['b.md', 'd.md'], writtenOut: ['a.md', 'c.md'], meetings: [] });
    expect(await pair.there('a.md')).toBe(`${NOTE}Here.\n`);
    expect(await pair.history('b.md')).toEqual(['b', 'b there']);
    expect(await pair.there('c.md')).toBeUndefined();
    expect(await pair.history('d.md')).toEqual(['d']);
  });

  test('what was written since outlives a removal on the other side', async () => {
    const pair = await linked({ 'a.md': 'a', 'b.md': 'b', 'c.md': 'c' });
    await pair.sync.round();
    await pair.removeHere('a.md');
    await pair.editThere('a.md', 'a there');
    await rm(join(pair.root, 'b.md'));
    await pair.editHere('b.md', 'b here');
    await pair.sync.round();
    expect([await pair.here('a.md'), await pair.there('b.md')]).toEqual(['a there', 'b here']);
  });

  test('a note changed in different keys on both sides is merged, with both texts among the earlier ones', async () => {
    const pair = await linked({ 'a.md': NOTE });
    await pair.sync.round();
    const [mine, theirs] = [NOTE.replace('title: Weld', 'title: Dyer’s weld'), NOTE.replace('luteola', 'luteola L.')];
    await pair.editHere('a.md', mine);
    await pair.editThere('a.md', theirs);
    expect(await pair.sync.round()).toMatchObject({ merged: ['a.md'], meetings: [] });
    const both = mine.replace('luteola', 'luteola L.');
    expect([await pair.here('a.md'), await pair.there('a.md')]).toEqual([both, both]);
    expect(await pair.history('a.md')).toEqual(expect.arrayContaining([NOTE, mine, theirs, both]));
    expect(await pair.sync.round()).toMatchObject({ takenIn: [], writtenOut: [], merged: [] });
  });

  test('the same line changed on both sides leaves both as they are until the reader decides', async () => {
    const pair = await linked({ 'a.md': NOTE });
    await pair.sync.round();
    const [mine, theirs] = [NOTE.replace('spring', 'March'), NOTE.replace('spring', 'autumn')];
    await pair.editHere('a.md', mine);
    await pair.editThere('a.md', theirs);
    const meeting = await onlyMeeting(pair);
    expect([await pair.here('a.md'), await pair.there('a.md')]).toEqual([mine, theirs]);
    expect(meeting.merge && conflictsOf(meeting.merge)).toMatchObject([{ mine: 'Sown in March.\n', theirs: 'Sown in autumn.\n' }]);
    // It is offered again at every look.
    await onlyMeeting(pair);
    const text = meeting.merge ? chosenText(meeting.merge, () => 'both') : '';
    expect(await pair.sync.settle(meeting, { is: 'text', text })).toBe('settled');
    expect([await pair.here('a.md'), await pair.there('a.md')]).toEqual([text, text]);
    expect(text).toContain('March');
    expect(text).toContain('autumn');
    expect(await pair.history('a.md')).toEqual(expect.arrayContaining([mine, theirs]));
    expect(await pair.sync.round()).toMatchObject({ takenIn: [], writtenOut: [], meetings: [] });
  });

  test('remarks made on both sides come together by themselves', async () => {
    const remark = (id: string) => ({ id, note: 'weld', text: `Remark ${id}.`, by: 'A reviewer', at: '2024-05-01T10:00:00Z' });
    const file = (...ids: readonly string[]) => textOf(remarksFile(ids.map(remark))) ?? '';
    const pair = await linked({ 'remarks.json': file('a') });
    await pair.sync.round();
    await pair.editHere('remarks.json', file('a', 'b'));
    await pair.editThere('remarks.json', file('a', 'c'));
    expect(await pair.sync.round()).toMatchObject({ merged: ['remarks.json'], meetings: [] });
    expect([await pair.here('remarks.json'), await pair.there('remarks.json')]).toEqual([file('a', 'b', 'c'), file('a', 'b', 'c')]);
  });

  test('a decision on what is no longer there is not written', async () => {
    const pair = await linked({ 'a.md': NOTE });
    await pair.sync.round();
    await pair.editHere('a.md', NOTE.replace('spring', 'March'));
    await pair.editThere('a.md', NOTE.replace('spring', 'autumn'));
    const meeting = await onlyMeeting(pair);
    await pair.editThere('a.md', NOTE.replace('spring', 'winter, under snow'));
    expect(await pair.sync.settle(meeting, { is: 'text', text: 'decided' })).toBe('changed-meanwhile');
    expect(await pair.there('a.md')).toContain('winter');
  });

  test('of a photo changed on both sides both are kept, or one, and the other stays among the earlier', async () => {
    const pair = await linked({ 'p.jpg': Uint8Array.from([1]) });
    await pair.sync.round();
    await pair.editHere('p.jpg', 'mine');
    await pair.editThere('p.jpg', 'theirs');
    const meeting = await onlyMeeting(pair);
    expect(meeting.merge).toBeUndefined();
    expect(await pair.sync.settle(meeting, { is: 'file', take: 'both' })).toBe('settled');
    await pair.sync.round();
    expect([await pair.there('p.jpg'), await pair.there('p (from the folder).jpg')]).toEqual(['mine', 'theirs']);
    await pair.editHere('p.jpg', 'mine 2');
    await pair.editThere('p.jpg', 'theirs 2');
    expect(await pair.sync.settle(await onlyMeeting(pair), { is: 'file', take: 'theirs' })).toBe('settled');
    expect(await pair.here('p.jpg')).toBe('theirs 2');
    expect(await pair.history('p.jpg')).toEqual(expect.arrayContaining(['mine 2']));
  });

  test('linking a folder that has other texts already offers them, with no common text to go by', async () => {
    const pair = await linked({ 'a.md': NOTE.replace('spring', 'autumn') });
    await pair.keeper.openKept();
    await pair.editHere('a.md', NOTE);
    const meeting = await onlyMeeting(pair);
    expect(meeting.merge && conflictsOf(meeting.merge).map(({ base }) => base)).toEqual([undefined]);
  });

  test('a change that keeps size and date is found by a thorough look', async () => {
    const pair = await linked({ 'a.md': 'aaaa' });
    await pair.editThere('a.md', 'aaaa');
    await pair.sync.round();
    const seen = pair.seen.get('a.md');
    await writeFile(join(pair.root, 'a.md'), 'bbbb');
    const time = new Date(seen?.modifiedAt ?? 0);
    await utimes(join(pair.root, 'a.md'), time, time);
    await pair.sync.round(true);
    expect(await pair.here('a.md')).toBe('bbbb');
  });

  test('a folder that is emptied all at once empties nothing here', async () => {
    const pair = await linked({ 'a.md': NOTE });
    await pair.sync.round();
    await rm(join(pair.root, 'a.md'));
    expect(await pair.sync.round()).toMatchObject({ failure: 'emptied', takenIn: [] });
    expect(await pair.here('a.md')).toBe(NOTE);
  });

  test('permission taken back stops the look and nothing else', async () => {
    const folder = await aFolder({ 'a.md': NOTE });
    onTestFinished(folder.remove);
    const real = diskFolder(folder.path);
    let isAllowed = true;
    const guarded: FolderPort = { ...real, list: () => (isAllowed ? real.list() : Promise.resolve(failed('no-permission'))) };
    const pair = new Linked(folder.path, guarded);
    await pair.sync.round();
    isAllowed = false;
    await pair.editHere('a.md', 'written meanwhile');
    expect((await pair.sync.round()).failure).toBe('no-permission');
    expect(await pair.here('a.md')).toBe('written meanwhile');
    isAllowed = true;
    expect((await pair.sync.round()).writtenOut).toEqual(['a.md']);
  });

  test.each(['written', 'removed'] as const)(
    'a file that another program changes after it was looked at, before it is %s: what that program wrote stays, and the next look sees to it',
    async (done) => {
      const folder = await aFolder({ 'a.md': NOTE });
      onTestFinished(folder.remove);
      const real = diskFolder(folder.path);
      let onceRead: (() => Promise<void>) | undefined;
      const read: FolderPort['read'] = async (path) => {
        const found = await real.read(path);
        const then = onceRead;
        onceRead = undefined;
        await then?.();
        return found;
      };
      const pair = new Linked(folder.path, { ...real, read });
      await pair.sync.round();
      const [mine, theirs] = [NOTE.replace('spring', 'March'), NOTE.replace('spring', 'autumn')];
      await (done === 'written' ? pair.editHere('a.md', mine) : pair.removeHere('a.md'));
      onceRead = () => pair.editThere('a.md', theirs);
      expect(await pair.sync.round()).toMatchObject({ takenIn: [], writtenOut: [], meetings: [] });
      expect(onceRead).toBeUndefined();
      expect(await pair.there('a.md')).toBe(theirs);
      const next = await pair.sync.round();
      if (done === 'written') expect(next.meetings).toMatchObject([{ path: 'a.md', theirs: bytes(theirs) }]);
      else expect([next.takenIn, await pair.here('a.md')]).toEqual([['a.md'], theirs]);
    },
  );

  test('the log of a pot leaves the phone through the folder, and another notebook linked with it has every line', async () => {
    const pot = '---\nkind: trial\ntitle: Pot 26-001\nrecipe: weld-wool\ndate: 2026-06-01\nlog: []\n---\n';
    const phone = await linked({});
    const desk = new Linked(phone.root);
    await phone.keeper.openKept();
    await phone.editHere('trials/26-001.md', pot);
    await phone.sync.round();
    await desk.sync.round();
    for (const [clock, entry] of [
      ['10:00', { is: 'in' }],
      ['10:20', { is: 'temperature', celsius: 80 }],
      ['11:00', { is: 'deviation', text: 'The gas went out.' }],
    ] as const) {
      const at = { day: '2026-06-01', clock };
      const written = withEntry('trials/26-001.md', (await phone.here('trials/26-001.md')) ?? '', entry, at, at);
      if (written.is !== 'text') throw new Error(written.problem);
      await phone.editHere('trials/26-001.md', written.text);
    }
    expect((await phone.sync.round()).writtenOut).toEqual(['trials/26-001.md']);
    expect((await desk.sync.round()).takenIn).toEqual(['trials/26-001.md']);
    const text = await desk.here('trials/26-001.md');
    expect(text).toBe(await phone.here('trials/26-001.md'));
    expect(text).toMatch(/10:00 in[^]*10:20 80 °C[^]*11:00 [^]*The gas went out\./);
  });

  test('the next start knows which side changed', async () => {
    const pair = await linked({ 'a.md': NOTE });
    await pair.sync.round();
    await pair.editThere('a.md', `${NOTE}There.\n`);
    const keeper = new Keeper(new MemoryStore(pair.disk, countingSurroundings()), new LocalEngine());
    await keeper.openKept();
    const seen = new SeenFiles(keeper.store);
    await seen.load();
    expect(await new FolderSync(keeper, diskFolder(pair.root), seen).round()).toMatchObject({ takenIn: ['a.md'], meetings: [] });
  });
});
