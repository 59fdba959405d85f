/** The look of the wall chart, on paper and on screens. */
import { VERDICT_INKS } from './verdicts.ts';

/** On paper everything keeps its share of the sheet, be it A4, US letter or A3. */
export const CHART_STYLE = `
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.card svg.music { overflow: visible; } .card .mNum { display: none; }
.cards { list-style: none; margin: 1rem 0 0; padding: 0; display: grid; gap: .6rem; }
.cards.large { grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr)); } .cards.small { grid-template-columns: repeat(auto-fill, minmax(5.5rem, 1fr)); }
.card { background: #fbfaf6; color: #1d1c1a; padding: .3rem .5rem .5rem; text-align: center; --no: ${VERDICT_INKS.impossible}; --doubt: ${VERDICT_INKS.risky}; --faint: #5f5b54; }
.card p { margin: 0; max-width: none; line-height: 1.15; white-space: nowrap; } .card .fingered { font-weight: bold; }
.large .fingered { font-size: 1.9rem; } .small .fingered { font-size: 1.05rem; } .large .name { font-size: 1rem; } .small .name { font-size: .8rem; }
.legend { max-width: 52rem; margin: 1rem 0; }
.tables { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 22rem), 1fr)); gap: 1rem 2rem; align-items: start; }
.tables td, .tables th { padding: .2rem .6rem .2rem 0; } .tables td:not(:last-child) { white-space: nowrap; } .way { white-space: nowrap; } small { font-size: .8em; color: var(--faint); }
@media screen and (max-width: 36rem) {
  .cards.large { grid-template-columns: repeat(auto-fill, minmax(6rem, 1fr)); } .large .fingered { font-size: 1.6rem; } .cards { gap: .4rem; } .card { padding: .2rem .2rem .4rem; }
  .tables td, .tables th { padding-right: .4rem; }
}
@media print {
  @page { size: landscape; margin: 8mm 9mm; }
  /* A millimetre on A4; on other paper all grows or shrinks with it. */
  :root { --mm: min(100vw / 279, 100vh / 194); }
  body { line-height: 1.2; } header { padding: 0; } h1 { font-size: calc(7 * var(--mm)); margin: 0; line-height: 1; }
  .front { height: calc(100vh - 8 * var(--mm)); display: flex; flex-direction: column; gap: calc(2 * var(--mm)); break-after: page; }
  .cards { gap: calc(1 * var(--mm)); margin: 0; } .cards.large, .cards.small { grid-template-columns: repeat(var(--columns), minmax(0, 1fr)); }
  .cards.large { flex: 1; min-height: 0; grid-auto-rows: minmax(0, 1fr); }
  .card { padding: 0; background: none; break-inside: avoid; display: flex; flex-direction: column; min-height: 0; } .card p { line-height: 1.05; }
  .card svg.music { flex: 1 1 0; min-height: 0; } .small .card svg.music { flex: none; }
  .card .fingered { font-size: calc(var(--size) * var(--mm)); } .card .name { font-size: calc(var(--name) * var(--mm)); }
  .beside { display: flex; justify-content: space-between; border-top: .3mm solid #000; padding-top: calc(.7 * var(--mm)); margin-top: calc(1 * var(--mm)); } .beside section { width: calc(100% * var(--share)); } .beside h2 { font-size: calc(3.6 * var(--mm)); margin: 0; border: 0; padding: 0; }
  .legend { max-width: none; font-size: calc(3.7 * var(--mm)); line-height: 1.15; margin: 0; text-wrap: pretty; }
  .back h2 { font-size: calc(5.5 * var(--mm)); margin: 0; border: 0; padding: 0; }
  .tables { margin: calc(2 * var(--mm)) 0; grid-template-columns: var(--tables); gap: 0 calc(7 * var(--mm)); line-height: 1.1; align-items: start; }
  .tables table { font-size: calc(var(--size) * var(--mm)); line-height: 1.15; } .tables tr { height: calc(var(--row) * var(--mm)); } .tables td, .tables th { padding: 0 .5em 0 0; vertical-align: middle; }
  /* On paper Firefox shrinks no drawing in a flexible box: there staves have a height that fits every horn. */
  @supports (-moz-appearance: none) { .front, .card { display: block; height: auto; } .front > * + * { margin-top: calc(2 * var(--mm)); } .cards.large { grid-auto-rows: auto; } .large svg.music { height: calc(24 * var(--mm)); } }
  footer { padding: calc(1 * var(--mm)) 0 0; font-size: calc(2.7 * var(--mm)); line-height: 1.1; } footer p { margin: 0; }
}
`;
