import type { StoreFailure } from '../domain/ports.ts';
import { failed, ok, type Result } from '../domain/result.ts';
import type { TakenOut, TakeOut } from '../elements/take-out/take-out-events.ts';
import type { Keeper } from '../notebook/keeper.ts';

/** Packs what the reader wants a copy of. `day` (`YYYY-MM-DD`) tells one copy from the next. */
export async function takeOut(keeper: Keeper, wanted: TakeOut, day: string): Promise<Result<TakenOut, StoreFailure | 'missing'>> {
  if (wanted.what === 'file') {
    const found = await keeper.read(wanted.path);
    if (!found) return failed('missing');
    return ok({ name: wanted.path.slice(wanted.path.lastIndexOf('/') + 1), file: new Blob([found.bytes as Uint8Array<ArrayBuffer>]) });
  }
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for await (const piece of keeper.export('notebook')) {
    if (!piece.ok) return piece;
    pieces.push(piece.value as Uint8Array<ArrayBuffer>);
  }
  return ok({ name: `tenterground-${day}.zip`, file: new Blob(pieces, { type: 'application/zip' }) });
}
