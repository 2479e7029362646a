// How the brief looks, on screen and on paper: the workbench's inks in the light, on white, made for A4 and Letter at
// margins of 14 mm. Its file stands alone, so that the colours are written out; a test holds them to app/styles/tokens.css.
// The foot with the caution is the foot of a table, which browsers repeat on every page.

export const briefStyles = `
@page { margin: 11mm 14mm 12mm; @bottom-right { content: counter(page) ' / ' counter(pages); font: 7.5pt Helvetica, Arial, sans-serif; color: #4a5a5a; } }
.brief { box-sizing: border-box; display: table; table-layout: fixed; width: 100%; margin: 0 auto; background: #fff; color: #1b2a2e;
  font: 8.2pt/1.27 Helvetica, Arial, 'Liberation Sans', 'Open Sans', 'DejaVu Sans', sans-serif; font-variant-numeric: tabular-nums; overflow-wrap: break-word; }
.brief *, .brief *::before { box-sizing: border-box; }
.brief-pages { display: table-row-group; }
.brief-foot { display: table-footer-group; break-inside: avoid; }
.brief-foot p { margin: 0; font-size: 7pt; line-height: 1.3; color: #4a5a5a; }
.brief-foot p:first-child { margin-top: 2mm; padding-top: 1.2mm; border-top: 0.75pt solid #7a2456; color: #1b2a2e; }
.brief :is(h1, h2, h3, h4, h5) { margin: 0; font-weight: bold; line-height: 1.2; break-after: avoid; }
.brief header > :is(h1, h2, h3, h4) { font-size: 1.9em; }
.brief section > :is(h2, h3, h4, h5) { margin: 2.6mm 0 1mm; padding-bottom: 0.6mm; border-bottom: 0.75pt solid #1b2a2e; font-size: 1.24em; }
.brief p { margin: 0 0 1.2mm; }
.brief .kind { margin-bottom: 0.6mm; color: #4a5a5a; letter-spacing: 0.02em; }
.brief .facts, .brief .contact { color: #4a5a5a; }
.brief .small, .brief small { font-size: 0.93em; color: #4a5a5a; }
.brief .caution, .brief .study { margin: 1.6mm 0; padding: 1.6mm 2.4mm; border: 1pt solid #7a2456; break-inside: avoid; }
.brief .study { border-left-width: 4pt; }
.brief .standing { margin-bottom: 1.6mm; padding: 0.4mm 0 0.4mm 2.4mm; border-left: 3pt solid #7d8b83; }
.brief .standing-carriesLoad { border-color: #1b2a2e; }
.brief .standing-doNotBuild { border-color: #7a2456; }
.brief ul, .brief ol { margin: 0 0 1.2mm; padding-left: 5mm; }
.brief li { margin-bottom: 0.5mm; break-inside: avoid; }
.brief .open { columns: 3; column-gap: 6mm; }
.brief .reasons { columns: 2; column-gap: 8mm; }
.brief .values { margin: 0 0 1.2mm; columns: 2; column-gap: 8mm; }
.brief .values > div { display: grid; grid-template-columns: minmax(0, 6fr) minmax(0, 5fr); gap: 0 2mm; padding: 0.35mm 0; border-bottom: 0.5pt solid #ced5c7; break-inside: avoid; }
.brief .inputs { margin: 0 0 1.2mm; columns: 3; column-gap: 6mm; }
.brief .inputs > div { padding: 0.3mm 0; border-bottom: 0.5pt solid #ced5c7; break-inside: avoid; }
.brief .inputs :is(dt, dd) { display: inline; }
.brief dt { color: #4a5a5a; }
.brief dd { margin: 0; }
.brief .wide { overflow-x: auto; }
.brief table { width: 100%; margin: 0 0 2mm; border-collapse: collapse; }
.brief caption { padding-bottom: 0.8mm; text-align: left; font-size: 0.93em; color: #4a5a5a; break-after: avoid; }
.brief th, .brief td { padding: 0.35mm 1.6mm 0.35mm 0; border-bottom: 0.5pt solid #ced5c7; text-align: left; vertical-align: top; font-weight: normal; }
.brief thead th { border-bottom: 0.75pt solid #1b2a2e; vertical-align: bottom; font-weight: bold; }
.brief thead small { font-weight: normal; }
.brief .number { text-align: right; }
.brief tbody th { width: 31%; }
.brief tr, .brief .figure, .brief .finding { break-inside: avoid; }
.brief .figure svg { display: block; width: 100%; height: auto; }
.brief .finding { padding-left: 2.4mm; border-left: 2pt solid #7a5000; }
.brief .finding.stop { border-color: #7a2456; }
.brief .severity { margin-right: 0.6mm; padding: 0 1mm; border: 0.75pt solid; font-size: 0.89em; }
.brief .stop .severity { background: #7a2456; color: #fff; }
.brief .look .severity { color: #7a5000; }
.brief em { color: #4a5a5a; font-style: normal; }
@media screen { .brief { max-width: 225mm; padding: 14mm; font-size: 10pt; } body:has(> .brief) { margin: 0; background: #e3e8dc; } }
@media screen and (max-width: 42rem) { .brief { padding: 5mm; font-size: 10.5pt; } .brief :is(.values, .inputs, .open, .reasons) { columns: 1; } .brief .figure { overflow-x: auto; } .brief .figure svg { width: 40rem; } .brief .wide table { min-width: 34rem; } .brief caption { max-width: 80vw; } }
@media print { .brief { max-width: none; print-color-adjust: exact; } .brief .wide { overflow: visible; } body:has(> .brief) { margin: 0; } }
`.trim();
