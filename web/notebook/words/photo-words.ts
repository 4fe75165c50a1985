import type { PhotoFileNotes } from '../../domain/colour/photo-file-notes.ts';
import type { PatchProblem } from '../../domain/colour/photo-patch.ts';
import type { PhotoProblem } from '../../domain/colour/photo-sample.ts';

const PATCH_WORDS = {
  'patch-empty': 'No pixels lie there. Choose a larger area.',
  'patch-clipped': 'Too bright: the camera lost colour there. Choose another area, or take the photo again, darker.',
  'patch-dark': 'Too dark: camera noise outweighs colour there. Choose another area, or take the photo again, lighter.',
} satisfies Record<PatchProblem, string>;

const PHOTO_WORDS = {
  'reference-impossible':
    'The reference cannot be right: white must be lighter than grey in every channel, and the patches of a chart must differ. Choose the areas again.',
  'chart-too-small': 'A chart needs six patches of known colour at least.',
  'spaces-differ': 'The areas come from different photos. Choose them again on one.',
} satisfies Record<PhotoProblem, string>;

/** Why an area of a photo is refused; `area` such as "the cloth". */
export const patchProblemWords = (problem: PatchProblem, area: string): string =>
  `${area.charAt(0).toUpperCase()}${area.slice(1)}: ${PATCH_WORDS[problem].charAt(0).toLowerCase()}${PATCH_WORDS[problem].slice(1)}`;

/** Why a photo cannot be corrected. */
export const photoProblemWords = (problem: PhotoProblem): string => PHOTO_WORDS[problem];

/** What the photo's file says about its colours. */
export function photoFileWords({ space, exifSpace, whiteBalance }: PhotoFileNotes): string {
  const profile = space === 'display-p3' ? 'Display P3' : space === 'srgb' ? 'sRGB' : exifSpace === 'srgb' ? 'sRGB' : undefined;
  const white =
    whiteBalance === undefined
      ? 'white balance not stated'
      : `white balance ${whiteBalance === 'auto' ? 'set by the camera' : 'set by hand'}`;
  return `Its file says: ${profile ?? 'colour space not stated, taken as sRGB'}; ${white}.`;
}
