import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { BACKUP_DAYS_CHOICES, type BackupDue } from '../../notebook/backup.ts';
import { backupWords } from '../../notebook/words/backup-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { BackupDaysEvent } from './take-out-events.ts';
import './tg-take-out.ts';

/**
 * @summary One calm line: what changed since the last export, the export itself, and when to be reminded.
 * @event {BackupDaysEvent} tg-backup-days - The reader wants to be reminded after other days, or never.
 */
@customElement('tg-backup')
export class TgBackup extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--tg-space-4);
        align-items: center;
      }
      p {
        margin: 0;
      }
      label {
        display: inline-flex;
        gap: var(--tg-space-2);
        align-items: center;
      }
      select {
        min-block-size: var(--tg-touch);
        font: inherit;
        color: inherit;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  /** What waits; nothing is shown without it. */
  @property({ attribute: false }) due?: BackupDue;

  override render() {
    if (!this.due) return nothing;
    const { days } = this.due;
    return html`<div>
      <p>${backupWords(this.due)}</p>
      <tg-take-out></tg-take-out>
      <label>
        Say so
        <select @change=${(event: Event) => this.dispatchEvent(new BackupDaysEvent(Number((event.target as HTMLSelectElement).value)))}>
          ${BACKUP_DAYS_CHOICES.map(
            (choice) =>
              html`<option value=${choice} ?selected=${choice === days}>${choice === 0 ? 'never' : `after ${choice} days`}</option>`,
          )}
        </select>
      </label>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-backup': TgBackup;
  }
}
