/** The look of the wall chart, on paper and on screens. */
import { VERDICT_INKS } from './verdicts.ts';

/** Sizes on paper are for A4; the sheet is drawn in lines, so it can be printed on A3 as well. */
export const CHART_STYLE = `
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.card svg.music { overflow: visible; } .card .mNum { display: none; }
.cards { list-style: none; margin: 1rem 0 0; padding: 0; display: grid; gap: .6rem; }
.cards.large { grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr)); } .cards.small { grid-template-columns: repeat(auto-fill, minmax(5.5rem, 1fr)); }
.card { background: #fbfaf6; color: #1d1c1a; padding: .3rem .5rem .5rem; text-align: center; --no: ${VERDICT_INKS.impossible}; --doubt: ${VERDICT_INKS.risky}; --faint: #5f5b54; }
.card p { margin: 0; max-width: none; line-height: 1.15; white-space: nowrap; } .card .fingered { font-weight: bold; }
.large .fingered { font-size: 1.9rem; } .small .fingered { font-size: 1.05rem; } .large .name { font-size: 1rem; } .small .name { font-size: .8rem; }
.legend { max-width: none; }
.tables { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 22rem), 1fr)); gap: 1rem 2rem; align-items: start; }
.tables td, .tables th { padding: .2rem .6rem .2rem 0; } .tables td + td { overflow-wrap: anywhere; } small { font-size: .8em; color: var(--faint); }
@media print {
  @page { size: A4 landscape; margin: 8mm 9mm; }
  header { padding: 0; } h1 { font-size: 20pt; margin: 0; line-height: 1; }
  .front { height: 183mm; display: flex; flex-direction: column; justify-content: space-between; break-after: page; }
  .cards { gap: 1mm; margin: 0; } .cards.large, .cards.small { grid-template-columns: repeat(var(--columns), minmax(0, 1fr)); }
  .card { padding: 0; background: none; break-inside: avoid; }
  .card .fingered { font-size: var(--size); line-height: 1.05; } .large svg.music { max-width: 33mm; margin: 0 auto; } .large .name { font-size: 12pt; }
  .beside { display: flex; justify-content: space-between; border-top: .3mm solid #000; padding-top: 1mm; } .beside section { width: calc(100% * var(--share)); } .beside h2 { font-size: 9pt; margin: 0; border: 0; padding: 0; }
  .small .name { font-size: 8pt; }
  .legend { font-size: 10pt; line-height: 1.2; margin: 0; }
  .back h2 { font-size: 14pt; margin: 0 0 2mm; } .tables { grid-template-columns: 1fr 1.05fr .7fr; gap: 0 6mm; line-height: 1.2; }
  .tables table { font-size: 9.5pt; } .tables td, .tables th { padding: .55mm 1.5mm .55mm 0; } .tables td:not(:last-child) { white-space: nowrap; } .back .legend { margin-top: 2mm; }
  footer { padding: 1mm 0 0; font-size: 7.5pt; } footer p { margin: 0; }
}
`;
