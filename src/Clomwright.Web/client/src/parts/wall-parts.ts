import { html, nothing, type TemplateResult } from 'lit';
import type { HouseState, Scene } from '../scene';
import { say } from '../words';
import './house-form';

interface Chooser {
  readonly settled: boolean;
  readonly chosen: string | null;
  choose(part: string): void;
}

/** What is in the wall, by name, to be chosen from; what may be added; and all of the one that is chosen. */
export function wallParts(bench: Chooser, state: HouseState, scene: Scene): TemplateResult {
  const kinds = [
    ['opening', scene.openings],
    ['niche', scene.parts.filter((part) => part.kind === 'niche')],
    ['embed', scene.parts.filter((part) => part.kind !== 'niche')],
  ] as const;
  const card = [...scene.openings, ...scene.parts].find((part) => part.name === bench.chosen) ?? scene.openings[0];
  const form = (of: string, untitled = false) =>
    html`<house-form .house=${state.key} .of=${of} .revision=${state.revision} .settled=${bench.settled} .refusal=${state.refusal} .untitled=${untitled}></house-form>`;
  return html`
    <section class="wall-parts" aria-label=${say('web.wall.parts')}>
      ${kinds.map(
        ([kind, cards]) => html`<div class="part-row" data-kind=${kind}>
          <h2>${say(`web.wall.${kind}s`)}</h2>
          <div class="part-names">${cards.map((one) => html`<button type="button" aria-pressed=${one.name === card?.name} @click=${() => bench.choose(one.name)}>${one.name}</button>`)}</div>
          ${form(`+${kind}s`, true)}
        </div>`,
      )}
      ${
        card === undefined
          ? nothing
          : 'fields' in card
            ? html`<details class="part-chosen" data-chosen=${card.name}><summary><h3>${say('web.wall.all-of', { name: card.name })}</h3></summary>${form(card.path, true)}</details>`
            : html`<div class="part-chosen" data-chosen=${card.name}>${form(card.path)}</div>`
      }
    </section>
    <details class="more"><summary><h2>${say('web.wall.itself')}</h2></summary>${form('wall lifts finishes testPanels')}</details>
  `;
}
