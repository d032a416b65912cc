import { svg } from 'lit';

/** Fills that read in black and white: straw in the cob, coursed stone, end grain, and the two warnings. */
export const hatches = svg`
  <defs>
    <pattern id="straw" width="46" height="30" patternUnits="userSpaceOnUse">
      <path class="straw" d="M4 6l7 2M25 3l6-3M38 12l6 3M14 18l5-4M31 24l7-1M3 26l6 2" />
    </pattern>
    <pattern id="stone" width="44" height="20" patternUnits="userSpaceOnUse">
      <path class="stone" d="M0 .5h44M0 10.5h44M9 .5q1 5 0 10M31 .5q-1 5 0 10M20 10.5q1 5 0 10M41 10.5q-1 5 0 10" />
    </pattern>
    <pattern id="timber" width="6" height="6" patternUnits="userSpaceOnUse">
      <path class="grain" d="M-1 1l2-2M-1 7l8-8M5 7l2-2" />
    </pattern>
    <pattern id="short" width="9" height="9" patternUnits="userSpaceOnUse">
      <path class="cross" d="M0 0l9 9M9 0l-9 9" />
    </pattern>
    <pattern id="unchecked" width="9" height="9" patternUnits="userSpaceOnUse">
      <circle class="dots" cx="2.2" cy="2.2" r="1.1" /><circle class="dots" cx="6.7" cy="6.7" r="1.1" />
    </pattern>
    <pattern id="judgement" width="8" height="8" patternUnits="userSpaceOnUse">
      <path class="rules" d="M0 4h8" />
    </pattern>
  </defs>
`;
