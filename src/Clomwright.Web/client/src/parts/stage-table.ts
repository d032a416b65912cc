import { html, nothing, type TemplateResult } from 'lit';
import type { RoofScene, StageLine } from '../roof-scene';
import { say } from '../words';

/** Every state of building and loading: what it does at the crossings, on the bond beam and in the poles. */
export function stageTable(roof: RoofScene): TemplateResult | typeof nothing {
  if (roof.stages.length === 0) return nothing;
  const [first] = roof.stages;
  if (roof.stages.every((stage) => stage.crossing === null && stage.notChecked === first?.notChecked)) {
    return html`<section class="stages" aria-labelledby="stages">
      <h2 id="stages">${say('web.stage.heading')}</h2>
      <p class="none-checked"><b>${say('web.not-checked')}</b> ${first?.notChecked}</p>
    </section>`;
  }
  const inner = roof.kind === 'reciprocal' ? 'web.stage.crossing' : 'web.stage.inner';
  return html`
    <section class="stages" aria-labelledby="stages">
      <h2 id="stages">${say('web.stage.heading')}</h2>
      ${roof.governs === null ? nothing : html`<p class="governs">${roof.governs}</p>`}
      <div class="slide" tabindex="0" role="group" aria-labelledby="stages">
        <table>
          <thead>
            <tr>
              <th scope="col">${say('web.stage.state')}</th>
              <th scope="col">${say(inner)}</th>
              <th scope="col">${say('web.stage.least')}</th>
              <th scope="col">${say('web.stage.plate')}</th>
              <th scope="col">${say('web.stage.bending')}</th>
              <th scope="col">${say('web.stage.allowed')}</th>
              <th scope="col">${say('web.stage.use')}</th>
            </tr>
          </thead>
          <tbody>
            ${roof.stages.map(row)}
          </tbody>
        </table>
      </div>
    </section>
  `;
}

function row(stage: StageLine): TemplateResult {
  if (stage.crossing === null) {
    return html`<tr class="unchecked" data-stage=${stage.key}><th scope="row">${stage.name}</th><td colspan="5" class="why">${stage.notChecked}</td><td class="use">${say('web.not-checked')}</td></tr>`;
  }
  return html`
    <tr class=${stage.standing} data-stage=${stage.key}>
      <th scope="row">${stage.name}</th>
      <td>${stage.crossing}</td>
      <td class=${stage.opens ? 'opens' : ''}>${stage.least}${stage.opens ? html` <b>${say('web.stage.pulls')}</b>` : nothing}</td>
      <td>${stage.plate}</td>
      <td>${stage.bending}</td>
      <td>${stage.allowed ?? html`<span title=${stage.notChecked ?? nothing}>${say('web.not-checked')}</span>`}</td>
      <td class="use">${stage.use ?? nothing}</td>
    </tr>
  `;
}
