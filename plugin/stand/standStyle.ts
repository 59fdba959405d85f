/**
 * The look of the stand, beyond that of all pages: a part on its desk, written over in pencil. A page of exercises prints
 * on one sheet, A4 or US letter: its systems, `--systems` of them and together `--height` times as high as wide, become as
 * wide as they may, and lie over the 2.5 mm that are empty above each.
 */
export const STAND_STYLE = `
#stand { max-width: 84rem; margin: 0 auto; padding: 0 1.25rem; }
#stand header { padding: 1.5rem 0 0; } #stand main { margin: 0; max-width: none; padding: 1.25rem 1.5rem 2rem; background: var(--sheet); border: 1px solid var(--rule); border-bottom: 0; min-height: 60vh; }
#stand main:focus { outline: none; }
.ledge { height: 14px; margin: 0 -10px; border-radius: 2px 2px 7px 7px; background: var(--ledge); }
:root { --ledge: #3b3a38; --pencil: #55524c; } @media (prefers-color-scheme: dark) { .ladder { --mark-no: #ff8a3d; --mark-doubt: #56b4e9; } :root { --ledge: #56575c; --pencil: #b9b5ab; } }
#stand footer { margin: 0; max-width: none; padding: 1rem 0 2rem; }
.law { font-style: italic; color: var(--faint); }
#stand nav ul { gap: .25rem 1.25rem; margin: .75rem 0 0; }
#stand nav a { display: inline-block; padding: .5rem .4rem .6rem; text-decoration: none; font-size: 1.15rem; }
#stand nav a[aria-current] { border-bottom: 3px solid var(--pencil); border-radius: 0 0 60% 40% / 0 0 7px 4px; }
.fields { display: flex; flex-wrap: wrap; gap: .75rem 1.5rem; align-items: end; }
.fields label, .field { display: flex; flex-direction: column; gap: .15rem; font-size: .9rem; min-width: 0; max-width: 100%; }
.fields label.button { flex-direction: row; align-items: center; align-self: end; } .fields fieldset { display: flex; flex-wrap: wrap; gap: .25rem 1rem; border: 0; border-top: 1px solid var(--rule); padding: .35rem 0 0; margin: 0; min-width: 0; }
.fields [role=alert]:empty { position: absolute; } .fields fieldset label { flex-direction: row; align-items: baseline; gap: .35rem; }
.fields legend { font-size: .85rem; color: var(--faint); padding: 0 .5rem 0 0; }
select, input[type=number], button, .button { font: inherit; color: inherit; background: var(--desk); border: 1px solid var(--faint); border-radius: 3px; padding: .4rem .6rem; min-height: 2.5rem; max-width: 100%; }
button, .button { cursor: pointer; display: inline-flex; align-items: center; } button:hover, .button:hover { border-color: var(--ink); } button:is(:disabled, [aria-disabled=true]) { color: var(--faint); border-color: var(--rule); cursor: default; }
button[aria-pressed=true] { background: var(--ink); color: var(--sheet); }
select:focus-visible, input:focus-visible, button:focus-visible, .button:focus-within { outline: 3px solid var(--mark-doubt); outline-offset: 2px; }
.button input[type=file] { position: absolute; width: 1px; height: 1px; opacity: 0; }
.stepper { display: flex; gap: .25rem; } .buttons { margin: .75rem 0; display: flex; flex-wrap: wrap; gap: .5rem; max-width: none; } .choose { display: flex; flex-wrap: wrap; align-items: center; gap: .5rem; max-width: none; margin-bottom: 1rem; }
input[type=radio], input[type=checkbox] { width: .9rem; height: .9rem; } input[type=range] { display: block; width: calc(100% - min(9.375rem, 34%) - 1.75rem); height: 2.5rem; margin: 0 0 0 .375rem; accent-color: var(--mark-no); cursor: grab; }
.ladder-frame { max-width: 62rem; } .ladder { display: block; max-width: 100%; height: auto; }
.ladder text { fill: var(--ink); font-family: inherit; font-size: 15px; } .ladder .end { fill: var(--faint); font-style: italic; }
.ladder .rails { stroke: var(--pencil); stroke-width: 3; fill: none; } .ladder .step { stroke: var(--pencil); stroke-width: 3; }
.ladder .other text { fill: var(--faint); } .ladder .lead { stroke: var(--rule); }
.ladder .pulled .step { stroke: var(--mark-no); stroke-width: 5; } .ladder .pulled text { font-weight: bold; } .ladder .below .step { stroke: var(--mark-doubt); stroke-width: 5; } .ladder .below text { font-weight: bold; }
.ladder .wanted { stroke: var(--faint); stroke-dasharray: 2 5; }
.ladder .way { fill: none; stroke: var(--pencil); stroke-width: 1.5; stroke-dasharray: 5 5; opacity: .8; } .ladder .drawn { fill: none; stroke: var(--mark-no); stroke-width: 4; stroke-linecap: round; }
.ladder .at { stroke: var(--mark-no); stroke-width: 1.5; } .ladder .tone { fill: var(--mark-no); }
.legend { display: flex; flex-wrap: wrap; gap: .2rem 2rem; max-width: none; font-size: .95rem; } .legend .pulled { border-left: 6px solid var(--mark-no); padding-left: .5rem; } .legend .below { border-left: 6px solid var(--mark-doubt); padding-left: .5rem; }
.note-sheet h2 .verdict { font-size: 1rem; color: var(--faint); } .note-sheet h2 .impossible { color: var(--no); } .note-sheet h2 .risky { color: var(--doubt); }
.ways { border: 0; border-top: 1px solid var(--rule); margin: 1.5rem 0 0; padding: .5rem 0 0; min-width: 0; } .ways label { display: block; padding: .3rem 0; } .ways legend { font-size: 1.15rem; padding-right: .75rem; }
.paper.page { padding: 1.5rem 4%; max-width: 62rem; } .page h2 { border: 0; text-align: center; margin: 0; } .page p { text-align: center; max-width: none; margin: .1rem 0; font-size: .9rem; } .page .quiet { color: #5f5b54; } .page svg.music { margin-top: .6rem; } .page svg.music text { white-space: pre; } .page svg.music:has(.tempo) .mNum { display: none; } .page h3 { font-weight: normal; line-height: 1.35; margin: 1.25rem .3rem 0; }
@media screen and (max-width: 48rem) { .paper.page { padding: 1rem .2rem; } .page > p { padding: 0 .3rem; } }
@media screen and (max-width: 36rem) { #stand { padding: 0 .5rem; } #stand main { padding: .75rem .75rem 1.5rem; } .ledge { margin: 0 -4px; } .part-sheet .on-narrow { display: block; } }
.steps { position: sticky; top: 0; z-index: 1; display: flex; align-items: center; gap: .5rem; padding: .4rem 0; background: var(--sheet); border-bottom: 1px solid var(--rule); } .steps span { min-width: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; } .steps button { min-width: 2.75rem; min-height: 2.75rem; justify-content: center; font-size: 1.25rem; }
.part-sheet .system, .part-sheet .remark, .part-sheet [id] { scroll-margin-top: 3.75rem; } @media screen and (min-width: 60rem) { .part-sheet .system > .paper { top: 3.75rem; } }
.ring.now circle { fill: #ffe9a8; stroke-width: 36; } .remark.now { background: color-mix(in srgb, var(--mark-doubt) 14%, transparent); }
body { font-size: 1rem; }
@media screen and (min-width: 120rem) { html { font-size: 20px; } }
@media screen and (min-width: 200rem) { html { font-size: 28px; } }
@media (forced-colors: active) { .ladder .drawn, .ladder .tone { stroke: Highlight; } }
@media print { #stand header, #stand footer, .ledge, .fields, .buttons, .choose, .steps { display: none; } #stand, #stand main { padding: 0; border: 0; max-width: none; } .page svg.music { break-inside: avoid; } .paper.page { padding: 0; } .page p { margin: 0; font-size: 8.5pt; } .page svg.music { width: min(100%, (228mm + var(--systems) * 2.5mm) / var(--height)); margin: -2.5mm auto 0; } .page svg.music:first-of-type { margin-top: 0; } input[type=range] { display: none; } }
`;
