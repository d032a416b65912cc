import { LitElement, html, nothing, type TemplateResult } from 'lit';
import type { FindingLine } from '../scene';

interface Hands {
  clicked(): void;
  entered(): void;
  left(): void;
}

/** One finding: what and of what, and what it says; opened, whose rule it is and what else there is to say. */
export function findingLine(finding: FindingLine, open: boolean, on: boolean, hands: Hands): TemplateResult {
  const number = html`<span class=${finding.number === null ? 'number nowhere' : 'number'} aria-hidden="true">${finding.number}</span>`;
  return html`<li class="finding ${finding.standing} ${finding.computed ? 'computed' : ''} ${on ? 'on' : ''}">
    <button type="button" aria-expanded=${open} data-finding=${finding.id} @click=${hands.clicked} @focus=${hands.entered} @pointerenter=${hands.entered} @pointerleave=${hands.left} @blur=${hands.left}>
      ${number}<span class="what"><b>${finding.subject}</b> ${finding.title}</span>
      <span class="says">${finding.sentence}</span>
    </button>
    ${
      open
        ? html`<div class="more">
            <p class="by">${finding.by}</p>
            ${finding.notes.map((note) => html`<p>${note}</p>`)}
          </div>`
        : nothing
    }
  </li>`;
}

/** Findings one below the other, each opened by itself; none has a number on a drawing. */
export class FindingLines extends LitElement {
  static override properties = { lines: { attribute: false }, open: { state: true } };

  declare lines: readonly FindingLine[];
  declare open: string | null;

  constructor() {
    super();
    this.lines = [];
    this.open = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    const none = (): void => {};
    return html`<ul>
      ${this.lines.map((finding) => findingLine(finding, finding.id === this.open, false, { clicked: () => (this.open = finding.id === this.open ? null : finding.id), entered: none, left: none }))}
    </ul>`;
  }
}

customElements.define('finding-lines', FindingLines);
