import Database from 'libsql';
import type { NoteDocument } from '../../web/domain/note/note-document.ts';
import { SEARCH_FIELDS } from '../../web/search/search-options.ts';

/**
 * The same notes in SQLite’s FTS5, in memory: words only, accents left out, with its index of beginnings of two to four
 * letters.
 */
export class FullTextTable {
  readonly #database = new Database(':memory:');
  #best?: Database.Statement;

  constructor(documents: Iterable<NoteDocument>) {
    const columns = SEARCH_FIELDS.join(', ');
    const tokenizer = `tokenize='unicode61 remove_diacritics 2'`;
    this.#database.exec(`CREATE VIRTUAL TABLE notes USING fts5(${columns}, content='', prefix='2 3 4', ${tokenizer})`);
    const insert = this.#database.prepare(`INSERT INTO notes(${columns}) VALUES (${SEARCH_FIELDS.map(() => '?').join(', ')})`);
    this.#database.exec('BEGIN');
    for (const document of documents) insert.run(...SEARCH_FIELDS.map((field) => document[field]));
    this.#database.exec('COMMIT');
  }

  get version(): string {
    return (this.#database.prepare('SELECT sqlite_version() AS version').get() as { version: string }).version;
  }

  /** Asks for every word, the last one a beginning; gives the best twenty. */
  best(words: readonly string[]): readonly unknown[] {
    this.#best ??= this.#database.prepare('SELECT rowid FROM notes WHERE notes MATCH ? ORDER BY rank LIMIT 20');
    return this.#best.all(matchOf(words));
  }

  /** How many notes answer. */
  count(words: readonly string[]): number {
    const counted = this.#database.prepare('SELECT count(*) AS count FROM notes WHERE notes MATCH ?').get(matchOf(words));
    return (counted as { count: number }).count;
  }

  close(): void {
    this.#database.close();
  }
}

const matchOf = (words: readonly string[]): string =>
  words.map((word, at) => `"${word}"${at === words.length - 1 ? ' *' : ''}`).join(' AND ');
