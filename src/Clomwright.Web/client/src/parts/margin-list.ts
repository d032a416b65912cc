import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { FindingLine, Said, Standing } from '../scene';
import { say } from '../words';
import { findingLine } from './finding-line';

const groups: readonly Standing[] = ['short', 'unchecked', 'judgement', 'met'];

/** The margin list: what falls short, what is not checked, what a person has to judge; what is met is folded away. */
export class MarginList extends LitElement {
  static override properties = { scene: { attribute: false }, heading: {}, pointed: {}, open: { state: true } };

  declare scene: Said;
  declare heading: string;
  declare pointed: string | null;
  declare open: string | null;

  /** What is met, as it is on the page. */
  private met: readonly FindingLine[] = [];

  constructor() {
    super();
    this.open = null;
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private get inHand(): boolean {
    return 'inHand' in this.scene && this.scene.inHand === true;
  }

  protected override updated(): void {
    this.toggleAttribute('data-in-hand', this.inHand);
  }

  protected override render() {
    return html`
      <h2 id="findings">${this.heading}</h2>
      <p class="totals" data-totals>${this.scene.totals.line}${this.inHand ? html` <span class="of-before">${say('web.findings.in-hand')}</span>` : nothing}</p>
      ${this.diagnostics()} ${groups.map((standing) => this.group(standing))}
    `;
  }

  private diagnostics() {
    const lines = this.scene.diagnostics;
    if (lines.length === 0) return nothing;
    return html`<section class="group diagnostics">
      <h3>${say('web.findings.diagnostics', { count: lines.length })}</h3>
      <ul>
        ${lines.map((line) => html`<li class=${line.error ? 'error' : 'warning'}><span class="place">${line.path}</span> ${line.sentence}</li>`)}
      </ul>
    </section>`;
  }

  private group(standing: Standing) {
    const lines = this.scene.findings.filter((finding) => finding.standing === standing);
    if (lines.length === 0) return nothing;
    const heading = say(`web.findings.${standing}`, { count: lines.length });
    const list = html`<ul>
      ${repeat(
        standing === 'met' ? this.unfolded(lines) : lines,
        (finding) => finding.id,
        // A line that says what it said is left as it stands.
        (finding) => guard([finding, finding.id === this.open, finding.id === this.pointed], () => this.line(finding)),
      )}
    </ul>`;
    return standing === 'met'
      ? html`<details class="group met"><summary><h3>${heading}</h3></summary>${list}</details>`
      : html`<section class="group ${standing}"><h3>${heading}</h3>${list}</section>`;
  }

  /** Folded away nobody sees what is met: while something is in hand it waits as it stands, until the hand rests. */
  private unfolded(lines: readonly FindingLine[]): readonly FindingLine[] {
    const folded = this.querySelector('details.met:not([open])') !== null;
    if (!(this.inHand && folded)) this.met = lines;
    return this.met;
  }

  private line(finding: FindingLine): TemplateResult {
    const open = finding.id === this.open;
    return findingLine(finding, open, finding.id === this.pointed, {
      clicked: () => {
        this.open = open ? null : finding.id;
        this.point(finding.id, true);
      },
      entered: () => this.point(finding.id, false),
      left: () => this.point(this.open, false),
    });
  }

  private point(id: string | null, show: boolean): void {
    this.dispatchEvent(new CustomEvent('point-at', { detail: { id, show }, bubbles: true }));
  }
}

customElements.define('margin-list', MarginList);
