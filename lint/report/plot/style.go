package plot

// Colors defines the custom properties that pictures and the sheet share, for
// light and for dark. Red, amber and blue mean what safety signs mean by them
// (ISO 3864, from memory): stop, take care, do this. Each stands out from the
// paper by 4.5 to 1 or more (WCAG 2.2, 1.4.3).
const Colors = `:root{color-scheme:light dark;--ink:#1a1c1e;--paper:#fff;--faint:#5c6166;--stop:#b00020;--fix:#8a4b00;--supply:#0b57a4}
@media (prefers-color-scheme:dark){:root{--ink:#e8e6e3;--paper:#15181b;--faint:#a3a9af;--stop:#ff8f88;--fix:#f2b45a;--supply:#8dbcff}}
@media print{:root{color-scheme:light;--ink:#000;--paper:#fff;--faint:#444;--stop:#b00020;--fix:#8a4b00;--supply:#0b57a4}}
`

// Style is what a page with pictures needs besides [Colors].
//
// Each color stands twice: readers of SVG that know no custom properties take
// the first.
const Style = `svg.plot{font-family:system-ui,"Liberation Sans",Arial,sans-serif;font-size:11px;fill:#1a1c1e;fill:var(--ink,#1a1c1e)}
svg.plot .line,svg.plot .axis,svg.plot .limit,svg.plot .mark,svg.plot .lead{fill:none;stroke:#1a1c1e;stroke:var(--ink,#1a1c1e)}
svg.plot .line{stroke-width:1.7;stroke-linejoin:round}
svg.plot .dash{stroke-dasharray:8 3}
svg.plot .dots{stroke-dasharray:1.6 2.6}
svg.plot .chain{stroke-dasharray:9 3 2 3}
svg.plot .axis{stroke-width:1}
svg.plot .grid{fill:none;stroke:#5c6166;stroke:var(--faint,#5c6166);stroke-width:.4}
svg.plot .lead{stroke-width:.6}
svg.plot .limit{stroke-width:2.6}
svg.plot .bound{stroke-width:1.2}
svg.plot .mark{stroke-width:1.5;fill:#fff;fill:var(--paper,#fff)}
svg.plot .minor{fill:#5c6166;fill:var(--faint,#5c6166)}
svg.plot .halo{stroke:#fff;stroke:var(--paper,#fff);stroke-width:3;paint-order:stroke;stroke-linejoin:round}
svg.plot .head{font-weight:600}
svg.plot .past{stroke:#b00020;stroke:var(--stop,#b00020)}
svg.plot .pastwords{fill:#b00020;fill:var(--stop,#b00020);font-weight:600}
svg.plot .supply{fill:#0b57a4;fill:var(--supply,#0b57a4)}
svg.plot .bar{fill:#5c6166;fill:var(--faint,#5c6166);fill-opacity:.28;stroke:#1a1c1e;stroke:var(--ink,#1a1c1e);stroke-width:.8}
svg.plot .hatch{fill:none;stroke:#1a1c1e;stroke:var(--ink,#1a1c1e);stroke-width:.8}
svg.plot .under{fill:#5c6166;fill:var(--faint,#5c6166);fill-opacity:.16}
svg.plot .ground{fill:#fff;fill:var(--paper,#fff)}
`
