// @ts-check
/**
 * The look of every element: a table under a shop drawing. One sheet for all of them, constructed and not written into the document, so that
 * a Content Security Policy without `unsafe-inline` lets it through. The look takes the font and the colour scheme of the page around it.
 */
export const sheet = new CSSStyleSheet();

sheet.replaceSync(`
:host { display: block; container-type: inline-size; color: var(--ink); font-family: var(--axlewright-font, inherit); line-height: 1.45; text-align: start; overflow-wrap: anywhere;
    --ink: var(--axlewright-ink, light-dark(#111, #eef0f2)); --faint: var(--axlewright-faint, light-dark(#555, #b4bac1));
    --accent: var(--axlewright-accent, light-dark(#0b4a8f, #8ec5ff)); --paper: var(--axlewright-paper, light-dark(#fff, #14181c));
    --line: var(--axlewright-line, 1px); --gap: var(--axlewright-gap, .75rem); --radius: var(--axlewright-radius, 0); }
:host([hidden]), [hidden] { display: none !important; }
* { box-sizing: border-box; }
[part=element] { background: var(--paper); border: calc(2 * var(--line)) solid var(--ink); border-radius: var(--radius); padding: var(--gap); }
p, dl, ul, ol, form { margin: 0 0 var(--gap); }
ul, ol { padding-inline-start: 1.25rem; }
[part=title] { font-size: 1.15em; font-weight: 700; border-bottom: var(--line) solid var(--ink); padding-bottom: .25rem; }
.leads { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 11rem), 1fr)); gap: var(--gap); border-top: calc(2 * var(--line)) solid var(--ink); padding-top: var(--gap); }
.form, fieldset { display: flex; flex-wrap: wrap; gap: var(--gap); }
.form { column-gap: calc(2 * var(--gap)); }
fieldset { border: 0; margin: 0; padding: 0; min-width: 0; align-items: end; }
fieldset > div { flex: 1 1 11rem; max-width: 20rem; }
legend { font-weight: 700; padding: 0; float: left; width: 100%; border-bottom: var(--line) solid var(--faint); }
label { display: block; font-weight: 600; font-size: .9em; }
.entry { display: flex; gap: .25rem; }
input, select, button { font: inherit; color: inherit; background: var(--paper); border: var(--line) solid var(--ink); border-radius: var(--radius); min-height: 2.75rem; padding: .25rem .5rem; min-width: 0; }
input, select { flex: 2 1 4rem; width: 100%; }
.unit { flex: 1 0 4.25rem; width: auto; }
button { cursor: pointer; color: var(--accent); border-color: var(--accent); }
button.link { border: 0; padding: 0; min-height: 1.5rem; text-decoration: underline; text-align: start; background: none; }
a { color: var(--accent); }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
[aria-invalid] { border-width: calc(3 * var(--line)); }
.fault { margin: .25rem 0 0; border-inline-start: 6px solid var(--ink); padding-inline-start: .5rem; font-weight: 700; font-size: .9em; }
.fault.needed { border-inline-start: 2px dashed var(--ink); font-weight: 400; }
.leads > div { border-top: var(--line) solid var(--ink); padding-top: .25rem; }
dt { font-size: .9em; color: var(--faint); }
dd { margin: 0; font-weight: 700; font-size: 1.1em; font-variant-numeric: tabular-nums; }
.leads > div:first-child dd { font-size: 1.5em; color: var(--accent); }
.findings { list-style: none; padding: 0; }
.finding { border: var(--line) solid var(--ink); border-inline-start-width: 6px; padding: .5rem; margin-bottom: .5rem; }
.finding p { margin: .25rem 0 0; }
.danger, .warning { border-width: calc(2 * var(--line)); border-inline-start-width: 12px; }
.signal { text-transform: uppercase; letter-spacing: .06em; }
.danger .signal, .warning .signal { background: var(--ink); color: var(--paper); padding: .05rem .4rem; }
.action { font-weight: 600; }
.source, .claim, .cautions { color: var(--faint); font-size: .875em; }
.formula { font-family: ui-monospace, monospace; font-size: .9em; }
summary { cursor: pointer; min-height: 2.75rem; padding: .6rem 0; font-weight: 600; }
details { border-top: var(--line) solid var(--ink); }
details p { margin: 0 0 .25rem; }
li { margin-bottom: .5rem; }
.stale > :not(.status) { opacity: .6; }
.quiet { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); margin: 0; white-space: nowrap; }
.claim { margin: var(--gap) 0 0; }
@media print { form, button, .status { display: none; } [part=element] { break-inside: avoid; } }
`);
