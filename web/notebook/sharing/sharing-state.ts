import type { Instant } from '../../domain/ports.ts';
import type { RoundFailure, SyncProgress, SyncRound } from './folder-sync.ts';
import type { Meeting } from './meeting.ts';

/** How the notebook stands with its folder. */
export interface LinkState {
  /** The folder's name. */
  readonly name: string;
  /** `waiting`: its reader has to allow it again. */
  readonly is: 'looking' | 'alike' | 'waiting' | 'stopped';
  readonly why?: RoundFailure;
  /** How far the look has come, while it is `looking`. */
  readonly progress?: SyncProgress;
  /** When both were last found alike. */
  readonly lookedAt?: Instant;
  /** What the last look that did anything did. */
  readonly last?: SyncRound;
}

/** All that a reader is shown of sharing. */
export interface SharingState {
  readonly link?: LinkState;
  readonly meetings: readonly Meeting[];
}
