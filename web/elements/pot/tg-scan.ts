import { css, html, LitElement, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { baseStyles } from '../shared/base.styles.ts';

/** What browsers that read codes by themselves offer. */
interface CodeReader {
  detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
type CodeReaderMaker = new (options: { readonly formats: readonly string[] }) => CodeReader;

const readerMaker = (): CodeReaderMaker | undefined => (globalThis as { readonly BarcodeDetector?: CodeReaderMaker }).BarcodeDetector;

/** How often the picture is looked at. */
const LOOK_MS = 250;

/** A tag was read by the camera. */
export class ScannedEvent extends CustomEvent<{ readonly text: string }> {
  static readonly type = 'tg-scanned';
  constructor(text: string) {
    super(ScannedEvent.type, { detail: { text }, bubbles: true, composed: true });
  }
}

/**
 * @summary Reads a tag's QR with the camera, where the browser can; elsewhere nothing, and the code is typed.
 * @event {ScannedEvent} tg-scanned - A code was read.
 */
@customElement('tg-scan')
export class TgScan extends LitElement {
  static override styles = [
    baseStyles,
    css`
      button {
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-2) var(--tg-space-4);
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 2px;
        background: none;
        font: var(--tg-type-small) / 1.3 var(--tg-font-label);
        cursor: pointer;
      }
      video {
        display: block;
        inline-size: min(100%, 24rem);
        margin-block-end: var(--tg-space-2);
      }
    `,
  ];

  @state() private stream?: MediaStream;
  @state() private fault = '';
  #looking: ReturnType<typeof setInterval> | undefined;

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.#stop();
  }

  override render() {
    if (!readerMaker()) return nothing;
    if (this.stream)
      return html`<video .srcObject=${this.stream} autoplay muted playsinline aria-label="What the camera sees"></video>
        <button type="button" @click=${this.#stop}>Stop the camera</button>`;
    return html`<button type="button" @click=${this.#start}>Read a tag with the camera</button>
      ${this.fault === '' ? nothing : html`<p role="alert">${this.fault}</p>`}`;
  }

  readonly #start = async () => {
    const Maker = readerMaker();
    if (!Maker) return;
    try {
      this.stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
    } catch {
      this.fault = 'The camera was not opened. Type the code instead.';
      return;
    }
    const reader = new Maker({ formats: ['qr_code'] });
    this.#looking = setInterval(() => void this.#look(reader), LOOK_MS);
  };

  async #look(reader: CodeReader) {
    const video = this.renderRoot.querySelector('video');
    if (!video || video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA) return;
    const [found] = await reader.detect(video).catch(() => []);
    if (!found || !this.stream) return;
    this.#stop();
    this.dispatchEvent(new ScannedEvent(found.rawValue));
  }

  readonly #stop = () => {
    clearInterval(this.#looking);
    for (const track of this.stream?.getTracks() ?? []) track.stop();
    this.stream = undefined;
  };
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-scanned': ScannedEvent;
  }
  interface HTMLElementTagNameMap {
    'tg-scan': TgScan;
  }
}
