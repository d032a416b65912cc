import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { EarthTest, TestTable } from '../earth-scene';
import type { Change, Refusal } from '../scene';
import { say } from '../words';
import './earth-blank';
import './new-test';

/** Tests of one kind as they stand in the house file, each with what it comes to, and a row for one more. */
export function testList(test: EarthTest, table: TestTable, refusal: Refusal | null, settled: boolean, change: (change: Change) => void): TemplateResult {
  return html`
    <section class="tests" aria-labelledby="tests-${test}" data-tests=${test}>
      <h2 id="tests-${test}">${say(`web.earth.${test}s`)}</h2>
      ${table.rows.length === 0 ? html`<p class="none">${say(`web.earth.${test}s-none`)}</p>` : nothing}
      <ol>
        ${repeat(
          table.rows,
          (_, index) => index,
          (row, index) => html`<li class=${row.counts ? 'counts' : 'left-out'} data-test="${test}.${index}">
            <h3>${row.title}</h3>
            <b class="reads">${row.reads}</b>
            <button
              type="button"
              class="remove"
              aria-label=${say('web.earth.remove-which', { test: row.title })}
              @click=${() => change({ kind: 'remove-test', test, index, blank: `${test}.${index}` })}
            >
              ${say('web.earth.remove')}
            </button>
            <div class="blanks">
              ${row.blanks.map((card) => html`<earth-blank .card=${card} .refusal=${refusal} .settled=${settled} .of=${row.title}></earth-blank>`)}
            </div>
            <p class="notes">${row.notes.join(' · ')}</p>
          </li>`,
        )}
      </ol>
      <new-test .test=${test} .cards=${table.new} .refusal=${refusal} .settled=${settled}></new-test>
    </section>
  `;
}
