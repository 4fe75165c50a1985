import type { FileStamp } from '../domain/ports.ts';

/** A file's stamp, without whatever else a record holds. */
export const stampOf = ({ path, version, byteCount, savedAt, modifiedAt }: FileStamp): FileStamp => ({
  path,
  version,
  byteCount,
  savedAt,
  modifiedAt,
});
