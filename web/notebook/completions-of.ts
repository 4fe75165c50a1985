import type { FieldView } from './views/form-view.ts';
import type { Completion, WritingChoices } from './views/writing-choices.ts';

/** What a field may be completed to in this notebook. */
export function completionsOf({ is, key, kinds }: FieldView, choices: WritingChoices): readonly Completion[] {
  switch (is) {
    case 'citation':
      return choices.sources;
    case 'date':
      return choices.names.period ?? [];
    case 'text':
      return key === 'tags' ? choices.tags : key === 'file' || key === 'photo' ? choices.files : [];
    case 'reference': {
      const names = kinds.flatMap((kind) => choices.names[kind] ?? []);
      // Where a cloth is meant, an undyed colour serves as well as a recipe.
      return kinds.includes('recipe') && kinds.includes('fibre') ? [...names, ...choices.undyed] : names;
    }
    default:
      return [];
  }
}
