import { html, nothing, type TemplateResult } from 'lit';
import type { TightLine } from '../roof-scene';
import type { Said } from '../scene';
import { say } from '../words';

/** What has least to spare, as bars against their limits, and beside them, as plain to see, what is not checked. */
export function tightest(roof: Said & { tightest: TightLine[] }, pointed: string | null): TemplateResult {
  const unchecked = roof.findings.filter((finding) => finding.standing === 'unchecked');
  return html`
    <section class="tightest" aria-labelledby="tightest">
      <h2 id="tightest">${say('web.roof.tightest')}</h2>
      <ol>
        ${roof.tightest.map(
          (line) => html`<li class="tight ${line.standing} ${line.id === pointed ? 'on' : ''}" data-tight=${line.id}>
            <span class="bar" aria-hidden="true"><span class="used" style="width:${(line.share * 100).toFixed(1)}%"></span></span>
            <b>${line.used}</b> <span class="what">${line.what}</span>
          </li>`,
        )}
      </ol>
      ${
        unchecked.length === 0
          ? nothing
          : html`<p class="unchecked-too">
              <b>${say('web.findings.unchecked', { count: unchecked.length })}</b>
              <span>${[...new Set(unchecked.map((finding) => finding.title))].join('; ')}</span>
            </p>`
      }
    </section>
  `;
}
