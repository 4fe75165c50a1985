import { html, nothing, svg } from 'lit';
import type { CurvePoint } from '../../domain/pot/step-figures.ts';

/** The temperature the steps state over the time they state: a drawing of what is written. Nothing where fewer than two points are. */
export function temperatureDrawing(curve: readonly CurvePoint[]) {
  const longest = curve.at(-1)?.minutes ?? 0;
  if (curve.length < 2 || longest <= 0) return nothing;
  const x = (minutes: number) => 30 + (minutes / longest) * 260;
  const y = (celsius: number) => 90 - celsius * 0.8;
  const points = curve.map(({ minutes, celsius }) => `${x(minutes)},${y(celsius)}`).join(' ');
  const told = curve.map(({ minutes, celsius }) => `${Math.round(celsius)} °C at ${Math.round(minutes)} min`).join(', ');
  return html`<figure style="margin:0">
    <svg viewBox="0 0 300 105" role="img" aria-label=${`Temperature: ${told}`} style="inline-size:min(100%,30rem)">
      ${[0, 50, 100].map(
        (celsius) =>
          svg`<line x1="30" x2="290" y1=${y(celsius)} y2=${y(celsius)} stroke="var(--tg-hairline)"></line><text x="0" y=${y(celsius) + 3} font-size="8" fill="currentColor">${celsius} °C</text>`,
      )}
      <polyline points=${points} fill="none" stroke="currentColor" stroke-width="1.5"></polyline>
      <text x="290" y="102" font-size="8" text-anchor="end" fill="currentColor">${Math.round(longest)} min</text>
    </svg>
    <figcaption class="quiet">As the steps state it; where they give no time, none is drawn. Not a measurement.</figcaption>
  </figure>`;
}
