import { html, nothing } from 'lit';
import type { ClaimLine } from '../../notebook/words/claim-line.ts';
import type { LabExplanation, LabView } from '../../notebook/views/lab-view.ts';

const list = (lines: readonly string[]) =>
  html`<ul class="lines">
    ${lines.map((line) => html`<li>${line}</li>`)}
  </ul>`;

const claim = (line: ClaimLine) =>
  html`<li>
    ${line.says}: ${line.region}, ${line.years}
    <span class="small"
      >${line.evidence} · ${line.placeRelation} · ${line.source} · <a href=${`#/notebook/${line.note}`}>note ${line.note}</a></span
    >
  </li>`;

/** The answer in large words, and the best explanation in two columns. */
export function labHead(lab: LabView) {
  const [best] = lab.explanations;
  return html`
    <section class="verdict" part="verdict" aria-live="polite">
      <h2 class="word">${lab.word}</h2>
      <p class="why">${lab.why}</p>
      ${best && best.notTold.length > 0 ? best.notTold.map((line) => html`<p class="means">${line}</p>`) : nothing}
    </section>
    ${
      best
        ? html`<div class="sides">
            <section part="for" aria-labelledby="for">
              <h3 id="for">What speaks for it</h3>
              ${list(best.speaksFor)} ${claimsOf(best)}
            </section>
            <section part="against" aria-labelledby="against">
              <h3 id="against">What speaks against it, or is missing</h3>
              ${best.against.length > 0 ? list(best.against) : html`<p>Nothing that was found or looked for speaks against it.</p>`}
              ${best.weak.length > 0 ? list(best.weak) : nothing}
            </section>
          </div>`
        : nothing
    }
    ${block('What would tell more', lab.tests)}
  `;
}

/** What follows below: the other explanations, what is set aside, mordants, remarks. */
export function labRest(lab: LabView) {
  const [, ...others] = lab.explanations;
  return html`
    ${
      others.length === 0
        ? nothing
        : html`<section class="block" part="others">
            <h3>What else would explain it</h3>
            <ol class="lines">
              ${others.map(other)}
            </ol>
            ${lab.others > 0 ? html`<p class="small">${lab.others} more ${lab.others === 1 ? 'is' : 'are'} less likely still.</p>` : nothing}
          </section>`
    }
    ${block('Set aside by place and date', lab.ruledOut)} ${block('What the elements may mean', lab.mordants)}
    ${block('How this was reckoned', lab.remarks)}
  `;
}

function other(one: LabExplanation) {
  return html`<li>
    <p class="name"><strong>${one.title}</strong> <span class="share">${one.word}, ${one.share}</span></p>
    ${one.against.map((line) => html`<p>${line}</p>`)} ${one.notTold.map((line) => html`<p class="small">${line}</p>`)}
    <details>
      <summary>What speaks for it</summary>
      ${list([...one.speaksFor, ...one.weak])} ${claimsOf(one)}
    </details>
  </li>`;
}

function claimsOf({ dyes }: LabExplanation) {
  const named = dyes.filter(({ claims, latin, generic }) => claims.length > 0 || latin !== '' || generic.length > 0);
  return html`${named.map(
    (dye) =>
      html`<div class="dye">
        <p class="small">
          <a href=${`#/dyestuffs/${dye.id}`}>${dye.title}</a>${dye.latin === '' ? nothing : html`, <i lang="la">${dye.latin}</i>`}${
            dye.generic.length > 0 ? ` · ${dye.generic.join(', ')}` : nothing
          }
        </p>
        ${
          dye.claims.length > 0
            ? html`<ul class="lines">
                ${dye.claims.map(claim)}
              </ul>`
            : nothing
        }
      </div>`,
  )}`;
}

function block(title: string, lines: readonly string[]) {
  return lines.length === 0
    ? nothing
    : html`<section class="block">
        <h3>${title}</h3>
        ${list(lines)}
      </section>`;
}
