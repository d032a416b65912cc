import { html, nothing, type TemplateResult } from 'lit';
import type { Act } from '../line';
import type { HouseState } from '../scene';
import { say } from '../words';

/** What every page asks that changes a house. */
export interface Bench {
  readonly broken: boolean;
  act(act: Act): void;
}

/** Whether the house is saved, and taking back, putting again and saving. */
export function acts(bench: Bench, { refusal, saved, savedLine, fileDiffers, canUndo, canRedo }: HouseState): TemplateResult {
  const ofNoBlank = refusal !== null && refusal.field === null && refusal.knob === null && refusal.blank === null;
  const trouble = bench.broken ? say('web.line.lost') : ofNoBlank ? refusal.sentence : null;
  return html`
    <p class="saved ${saved ? '' : 'unsaved'} ${trouble === null ? '' : 'reason'}" role="status">${trouble ?? savedLine}</p>
    ${
      fileDiffers
        ? html`<button type="button" class="act" @click=${() => bench.act('Reload')}>${say('web.act.reload')}</button>`
        : nothing
    }
    <button type="button" class="act" ?disabled=${!canUndo} @click=${() => bench.act('Undo')}>${say('web.act.undo')}</button>
    <button type="button" class="act" ?disabled=${!canRedo} @click=${() => bench.act('Redo')}>${say('web.act.redo')}</button>
    <button type="button" class="act save" ?disabled=${saved} @click=${() => bench.act('Save')}>${say('web.act.save')}</button>
  `;
}
