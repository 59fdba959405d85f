/** The look of the pages: paper, ink, and a margin for remarks, as on a proof that comes back from reading. */
import { VERDICT_COLOURS } from '../../core/index.ts';
import { SIGN_FAMILY, TEXT_FAMILY } from './textFaces.ts';
import { VERDICT_INKS } from './verdicts.ts';

/** The page's own letters; where they are not installed, the reader's that are as wide. */
const LETTERS = `"${TEXT_FAMILY}", "${SIGN_FAMILY}", "Liberation Serif", Times, serif`;

/** A dark page takes lighter colours of the same hue as the inks, again with a contrast of 4.5 : 1 or more. */
export const PAGE_STYLE = `
:root {
  color-scheme: light dark;
  --desk: #e9e6df; --sheet: #fbfaf6; --ink: #1d1c1a; --faint: #5f5b54; --rule: #c9c4b8;
  --no: ${VERDICT_INKS.impossible}; --doubt: ${VERDICT_INKS.risky}; --mark-no: ${VERDICT_COLOURS.impossible}; --mark-doubt: ${VERDICT_COLOURS.risky};
}
@media (prefers-color-scheme: dark) {
  :root { --desk: #191a1c; --sheet: #232427; --ink: #e8e5dd; --faint: #aaa69c; --rule: #45464a; --no: #ff9a5c; --doubt: #7cc4f2; }
}
* { box-sizing: border-box; }
html { background: var(--desk); scroll-padding-top: 1rem; }
body { margin: 0; color: var(--ink); font: 16px/1.5 ${LETTERS}; overflow-wrap: break-word; }
a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: .15em; }
a:focus-visible, summary:focus-visible, [tabindex]:focus-visible { outline: 3px solid var(--mark-doubt); outline-offset: 2px; border-radius: 2px; }
.skip { position: absolute; left: -100rem; }
.skip:focus { left: 1rem; top: 1rem; background: var(--sheet); padding: .5rem 1rem; z-index: 2; }
header, main, footer { max-width: 82rem; margin: 0 auto; padding: 0 1.5rem; }
header { padding-top: 2.5rem; }
h1 { font-size: 2rem; line-height: 1.15; font-weight: normal; margin: 0 0 .4rem; letter-spacing: -.01em; }
h2 { font-size: 1.35rem; font-weight: normal; margin: 2.5rem 0 .5rem; border-bottom: 1px solid var(--rule); padding-bottom: .25rem; }
h3, h4 { font-size: 1rem; margin: 0; } h4 { font-size: inherit; }
p { margin: .4rem 0; max-width: 42rem; }
.quiet { color: var(--faint); }
nav ul { list-style: none; display: flex; flex-wrap: wrap; gap: .25rem 1.5rem; padding: 0; margin: .75rem 0 0; } nav li { min-width: 0; }
.no { color: var(--no); } .doubt { color: var(--doubt); }
.sign { display: inline-block; min-width: 1.1em; font-weight: bold; }

.paper { background: #fbfaf6; color: #1d1c1a; border-radius: 2px; box-shadow: 0 1px 3px rgb(0 0 0 / .25); }
@media (prefers-color-scheme: dark) { .paper { background: #efece4; } }
svg.music { display: block; width: 100%; height: auto; overflow: visible; text-rendering: geometricPrecision; font-family: ${LETTERS}; }
svg.music path, svg.music ellipse, svg.music polygon, svg.music polyline, svg.music rect { stroke: currentColor; }
svg.music .tempo, svg.music .reh, svg.music .ending, svg.music .fing { font-weight: bold; }
svg.music .dir, svg.music .dynam, svg.music .mNum { font-style: italic; }
svg.outlines { position: absolute; width: 0; height: 0; }

.system { display: grid; grid-template-columns: minmax(0, 1fr) 21rem; gap: 0 1.5rem; align-items: start; margin: 0 0 .75rem; }
.system.wide { grid-template-columns: minmax(0, 60rem); }
details { margin: 0 0 .75rem; } summary { cursor: pointer; padding: .25rem 0; color: var(--faint); } details[open] summary { margin-bottom: .5rem; }
.system > .paper { padding: .5rem .75rem; position: sticky; top: .5rem; }
.box { max-width: 46rem; margin: 1rem 0; padding: .6rem 1rem; background: var(--sheet); border: 1px solid var(--rule); border-left: 6px solid var(--faint); }
.box.alarm { border-left-color: var(--mark-no); } .box .lead { font-size: 1.15rem; margin: .15rem 0; } .box .place { display: block; font-size: 1rem; } .box .counts { margin: .35rem 0 .1rem; }
.entries { list-style: none; margin: .75rem 0; padding: 0; max-width: 46rem; } .entry { border-left: 3px solid var(--rule); padding: .1rem 0 .2rem .75rem; margin: 0 0 .8rem; }
.entry.no { border-color: var(--mark-no); color: inherit; } .entry.doubt { border-color: var(--mark-doubt); color: inherit; }
.entry p, .remark p { margin: .15rem 0 0; } .remedy::before { content: "→ "; } .entry details { margin: .1rem 0 0; }
.sound audio { display: block; width: min(100%, 20rem); height: 2.5rem; } .over-music { margin: 1.5rem 0 .5rem; } .on-narrow, .to-narrow, .on-paper { display: none; }
.remarks { list-style: none; margin: 0; padding: 0; font-size: .9rem; line-height: 1.4; }
.remark { border-left: 3px solid var(--rule); padding: .15rem 0 .35rem .75rem; margin: 0 0 .6rem; }
.remark.no { border-color: var(--mark-no); color: inherit; }
.remark.doubt { border-color: var(--mark-doubt); color: inherit; }
.remark:target { background: color-mix(in srgb, var(--mark-doubt) 14%, transparent); }
.ring circle { fill: #fbfaf6; stroke-width: 14; } .ring text { font: bold 270px ${LETTERS}; text-anchor: middle; stroke: none; }
.ring.no { color: ${VERDICT_INKS.impossible}; } .ring.doubt { color: ${VERDICT_INKS.risky}; } .ring.advice { color: #4d4a44; }
.ring text { fill: currentColor; } .ring circle, .ring line { stroke: currentColor; } .ring line { stroke-width: 12; stroke-dasharray: 40 40; }
.ring:target circle, .ring:focus-visible circle { fill: #ffe9a8; stroke-width: 36; } .ring:focus-visible { outline: none; }
.shade { stroke: none !important; } .shade.no { fill: #d55e00; fill-opacity: .1; } .shade.doubt { fill: #0072b2; fill-opacity: .08; } .shade.advice { fill: #777; fill-opacity: .08; }
.path { display: block; width: 100%; max-width: 19rem; height: auto; margin: .4rem 0; }
.path text { font: 13px ${LETTERS}; fill: currentColor; stroke: none; }

.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-size: .92rem; }
caption { text-align: left; color: var(--faint); padding-bottom: .5rem; }
th, td { text-align: left; vertical-align: top; padding: .3rem .8rem .3rem 0; border-bottom: 1px solid var(--rule); }
thead th { font-weight: normal; color: var(--faint); border-bottom-width: 2px; }
td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
tbody th { font-weight: bold; white-space: nowrap; }
footer { padding: 2rem 1.5rem 3rem; font-size: .85rem; color: var(--faint); }

@media screen and (max-width: 60rem) {
  .system { grid-template-columns: minmax(0, 1fr); } .system > .paper { position: static; } .remarks { margin-top: .5rem; }
  header, main, footer { padding-left: 1rem; padding-right: 1rem; }
}
@media screen and (max-width: 60rem) {
  .by-rows, .by-rows tbody, .by-rows tr, .by-rows th, .by-rows td, .by-rows caption { display: block; } .by-rows thead { position: absolute; clip-path: inset(50%); }
  .by-rows tr { padding: .5rem 0; border-bottom: 1px solid var(--rule); } .by-rows th, .by-rows td { border: 0; padding: 0; text-align: left !important; overflow-wrap: anywhere; }
  .by-rows tbody th { font-size: 1.1rem; } .by-rows td:empty { display: none; } .by-rows td::before { content: attr(data-label) ": "; color: var(--faint); }
}
@media screen and (max-width: 36rem) {
  .on-wide, .to-wide { display: none; } .on-narrow { display: block; } .to-narrow { display: inline; }
  h1 { font-size: 1.5rem; } .system > .paper { padding: .3rem .2rem; }
}
@media print {
  @page { margin: 10mm 13mm; }
  :root { color-scheme: light; --desk: #fff; --sheet: #fff; --ink: #000; --faint: #444; --rule: #999; --no: ${VERDICT_INKS.impossible}; --doubt: ${VERDICT_INKS.risky}; }
  body { font-size: 9pt; line-height: 1.3; orphans: 2; widows: 2; }
  header, main, footer { max-width: none; padding: 0; } footer { padding-top: 2mm; font-size: 7.5pt; }
  h1 { font-size: 17pt; margin: 0 0 1mm; } h2 { font-size: 12pt; margin: 3mm 0 1mm; } h3, h4 { font-size: inherit; } p { margin: 1mm 0; max-width: none; }
  nav, .skip { display: none; }
  .paper { background: none; box-shadow: none; }
  .box { max-width: none; margin: 2mm 0; padding: 1mm 3mm; border-left-width: 1.5mm; break-inside: avoid; } .box .lead { font-size: 10.5pt; }
  .entries { max-width: none; margin: 1.5mm 0; columns: 2; column-gap: 6mm; font-size: 8.5pt; line-height: 1.25; } .entry { margin: 0 0 1.8mm; padding: 0 0 0 2mm; break-inside: avoid; }
  .entry details, .sound { display: none; } .over-music { margin: 3mm 0 1mm; } details { margin: 0 0 2mm; } summary { padding: 0; break-after: avoid; }
  .system { grid-template-columns: minmax(0, 1fr); gap: 0; margin-bottom: 2.5mm; break-inside: avoid; }
  .system > .paper { padding: 0; position: static; max-width: 178mm; }
  .remarks:not(:has(> :only-child)) { columns: 3; column-gap: 4mm; } .remarks { font-size: 7.5pt; line-height: 1.2; margin: 0; } .remark { padding: 0 0 0 1.5mm; margin: 0 0 1.5mm; } .remark p, .entry p { margin: .4mm 0 0; }
  .path { max-width: 40mm; margin: .5mm 0; }
  .remark, tr, .card { break-inside: avoid; }
  h2, h3, thead, caption { break-after: avoid; }
  .scroll { overflow: visible; } table { font-size: 8pt; line-height: 1.2; } caption { padding-bottom: 1mm; } th, td { padding: .38mm 2mm .38mm 0; }
  .on-screen { display: none; } .on-paper { display: block; }
  .reading { columns: 3; column-gap: 5mm; font-size: 7.5pt; line-height: 1.2; } .reading p { margin: 0 0 1mm; break-inside: avoid; }
  a { text-decoration: none; }
}
`;
