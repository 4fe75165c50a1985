const PHOTO_ENDING = /\.(?:jpe?g|png|webp|avif|heic|gif|tiff?|pdf)$/i;

/** Whether a file is only looked at, never reasoned with, so that its bytes may stay where they are kept. */
export const isPhotoPath = (path: string): boolean => PHOTO_ENDING.test(path);
