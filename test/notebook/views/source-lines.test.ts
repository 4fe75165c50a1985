import { describe, expect, test } from 'vitest';
import { answerView } from '../../../web/notebook/views/answer-view.ts';
import { aDyestuff, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const row = (source: string) => `region: england, when: 1300–1400, status: imported, known-by: trade, source: "${source}"`;

describe('sources of an answer', () => {
  const notebook = aNotebook({
    ...aWorld,
    'dyestuffs/madder.md': aDyestuff('Madder', row('cardon-2007, p. 3'), row('lost-1999'), row('cardon-2007, p. 9')),
    'bibliography.json': JSON.stringify([
      {
        id: 'cardon-2007',
        type: 'book',
        title: 'Natural Dyes',
        author: [{ family: 'Cardon', given: 'Dominique' }],
        issued: { 'date-parts': [[2007]] },
        publisher: 'Archetype.',
      },
      { id: 'unused-2000', title: 'Nobody asks' },
    ]),
  });

  test('stand in full, each once, in the order of the claims; a key nobody has an entry for says so', () => {
    const result = answerView(notebook, { dye: 'madder', region: 'england', when: '1350' });
    const sources = 'answer' in result ? result.answer.sources : [];
    expect(sources.map(({ key }) => key)).toEqual(['cardon-2007', 'lost-1999']);
    expect(sources[0]?.text).toBe('Cardon 2007, Natural Dyes. Archetype');
    expect(sources[1]?.text).toContain('not in the bibliography');
  });
});
