import { drawName, drawWord } from './made-words.ts';
import type { NoteChance } from './note-chance.ts';

/** Words that a note keeps coming back to. */
const TOPIC_WORDS = 40;

/** 300 to 1500 words of Markdown: headings, paragraphs, lists, quotations, a table. */
export function madeBody(draw: NoteChance): string {
  const topic = Array.from({ length: TOPIC_WORDS }, () => drawWord(draw));
  const word = (): string => {
    const chance = draw.next();
    if (chance < 0.004) return drawName(draw);
    if (chance < 0.3) return topic[draw.below(TOPIC_WORDS)] ?? '';
    const drawn = drawWord(draw);
    return chance < 0.31 ? `*${drawn}*` : drawn;
  };
  const some = (count: number): string => Array.from({ length: count }, word).join(' ');
  const sentence = (): string => {
    const text = some(7 + draw.below(16));
    return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
  };
  const sentences = (): string => Array.from({ length: 2 + draw.below(5) }, sentence).join(' ');
  const parts: (() => string)[] = [
    sentences,
    sentences,
    sentences,
    () => `## ${some(3)}`,
    () => Array.from({ length: 3 + draw.below(4) }, () => `- ${some(6)}`).join('\n'),
    () => `> ${sentences()}`,
    () =>
      `| ${some(1)} | ${some(1)} |\n| --- | --- |\n${Array.from({ length: 3 }, () => `| ${some(2)} | ${draw.below(90)} °C |`).join('\n')}`,
  ];
  const wanted = 300 + draw.below(1201);
  const body: string[] = [];
  for (let count = 0; count < wanted; count += body.at(-1)?.split(' ').length ?? 0)
    body.push((parts[draw.below(parts.length)] ?? sentences)());
  return body.join('\n\n');
}
