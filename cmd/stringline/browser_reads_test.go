package main

import (
	"context"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/chromedp/chromedp"
)

// drawnCurve is a curve as a picture holds it: numbers beside the path, the path,
// and how values lie on the paper.
type drawnCurve struct {
	Diagram, Curve, X, Y, D                string
	XEnd, YEnd, Left, Right, Bottom, Upper float64
}

// curves reads the curves of every controller input back from the pictures and
// holds them to the facts: open circuit, short circuit and the maximum.
func (o *opened) curves() {
	o.t.Helper()
	drawn := ask[[]drawnCurve](o, `[...document.querySelectorAll("svg.plot [data-panel] path[data-curve]")].filter(p => p.dataset.x).map(p => {
		const at = p.closest("[data-panel]").dataset;
		return {Diagram: p.closest("svg").dataset.diagram + " " + at.panel, Curve: p.dataset.curve, X: p.dataset.x, Y: p.dataset.y, D: p.getAttribute("d"),
			XEnd: +at.xEnd, YEnd: +at.yEnd, Left: +at.left, Right: +at.right, Bottom: +at.bottom, Upper: +at.top};
	})`)
	found := map[string][2][]float64{}
	for _, c := range drawn {
		x, y := numbersOf(o.t.Fatalf, c.X), numbersOf(o.t.Fatalf, c.Y)
		found[c.Diagram+" "+c.Curve] = [2][]float64{x, y}
		points := regexp.MustCompile(`[ML]([-0-9.]+) ([-0-9.]+)`).FindAllStringSubmatch(c.D, -1)
		if len(points) != len(x) || len(x) != len(y) {
			o.t.Errorf("%s %s: %d points drawn, %d and %d numbers", c.Diagram, c.Curve, len(points), len(x), len(y))
			continue
		}
		for n, p := range points {
			atX, atY := numbersOf(o.t.Fatalf, p[1])[0], numbersOf(o.t.Fatalf, p[2])[0]
			wantX, wantY := c.Left+x[n]/c.XEnd*(c.Right-c.Left), c.Bottom-y[n]/c.YEnd*(c.Bottom-c.Upper)
			if math.Abs(atX-wantX) > 0.01 || math.Abs(atY-wantY) > 0.01 {
				o.t.Errorf("%s %s: point %d is drawn at %v, %v; its numbers belong at %v, %v", c.Diagram, c.Curve, n, atX, atY, wantX, wantY)
			}
		}
	}
	for id, facts := range subjectsOf(o.t, factsOf(o.t, o.file), "pv_inputs") {
		value := func(name string) float64 {
			v, ok := leafOf(o.t, facts, name).Value.(float64)
			if !ok {
				o.t.Fatalf("%s.%s is not known in this example", id, name)
			}
			return v
		}
		name := "iv." + strings.TrimPrefix(id, "pv_input.")
		for curve, most := range map[string][2]string{"cold": {"mpp_cold", "vmp_cold"}, "standard": {"mpp_stc", "vmp_stc"}, "hot": {"mpp_hot", "vmp_hot"}} {
			current, power := found[name+" current "+curve], found[name+" power "+curve]
			if len(current[0]) == 0 || len(power[0]) == 0 {
				o.t.Errorf("%s has no %s curve", name, curve)
				continue
			}
			last, best := len(current[0])-1, slices.Index(power[1], slices.Max(power[1]))
			if current[0][0] != 0 || current[1][last] != 0 {
				o.t.Errorf("%s, %s: from %v V to %v A, want the axes", name, curve, current[0][0], current[1][last])
			}
			if !close9(power[1][best], value(most[0])) || !close9(power[0][best], value(most[1])) {
				o.t.Errorf("%s, %s: maximum of %v W at %v V, the facts are %v W at %v V", name, curve, power[1][best], power[0][best], value(most[0]), value(most[1]))
			}
			if product := current[0][best] * current[1][best]; math.Abs(product/power[1][best]-1) > 1e-6 {
				o.t.Errorf("%s, %s: %v V x %v A at the maximum, want %v W", name, curve, current[0][best], current[1][best], power[1][best])
			}
			if curve != "standard" {
				continue
			}
			// The model gives a data sheet's own points back within 0.1 %; strings of
			// unlike voltage meet a little below the higher one.
			if got, want := current[1][0], value("isc_stc"); math.Abs(got/want-1) > 1e-3 {
				o.t.Errorf("%s: short circuit at %v A, the fact is %v A", name, got, want)
			}
			if got, want := current[0][last], value("voc_stc"); got > want*1.001 || got < want*0.98 {
				o.t.Errorf("%s: open circuit at %v V, the fact is %v V", name, got, want)
			}
		}
	}
}

func close9(a, b float64) bool { return math.Abs(a-b) <= 1e-8*math.Abs(b) }

func numbersOf(fail func(string, ...any), text string) []float64 {
	var all []float64
	for _, word := range strings.Fields(text) {
		v, err := strconv.ParseFloat(word, 64)
		if err != nil {
			fail("reading %q: %v", word, err)
		}
		all = append(all, v)
	}
	return all
}

// contrast holds every text that is seen to WCAG 2.2, 1.4.3: 4.5 to 1 against what
// it stands on, 3 to 1 for large letters. The formulas are the standard's.
func (o *opened) contrast(scheme string) {
	o.t.Helper()
	found := ask[struct {
		Seen  int
		Faint []string
	}](o, `(() => {
		const channels = text => (text.match(/[0-9.]+/g) ?? []).map(Number);
		const light = c => { const [r, g, b] = c.slice(0, 3).map(v => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
		const ground = e => {
			for (; e; e = e.parentElement) {
				const c = channels(getComputedStyle(e).backgroundColor);
				if (c.length === 3 || c[3] === 1) return c;
			}
			return [255, 255, 255];
		};
		let seen = 0;
		const faint = new Set();
		const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		for (let n; (n = walk.nextNode());) {
			const e = n.parentElement;
			if (!n.textContent.trim() || !e.checkVisibility() || e.closest(".hidden, .skip, [aria-hidden], title, desc, style, defs")) continue;
			const style = getComputedStyle(e), inside = e.closest("svg");
			const ink = channels(inside ? style.fill : style.color), paper = ground(e);
			if (ink.length < 3) continue;
			seen++;
			const [a, b] = [light(ink), light(paper)].sort((x, y) => y - x);
			const size = parseFloat(style.fontSize), large = size >= 24 || size >= 18.66 && parseInt(style.fontWeight) >= 700;
			if ((a + 0.05) / (b + 0.05) < (large ? 3 : 4.5)) faint.add(((a + 0.05) / (b + 0.05)).toFixed(2) + " " + ink + " on " + paper + ": " + n.textContent.trim().slice(0, 40));
		}
		return {Seen: seen, Faint: [...faint].slice(0, 8)};
	})()`)
	if found.Seen < 100 || len(found.Faint) > 0 {
		o.t.Errorf("%s, %d texts seen; too faint: %q", scheme, found.Seen, found.Faint)
	}
}

// structure wants what a screen reader goes by: one language, one main part,
// headings in order, tables with captions and heads, pictures with texts, ids
// that are there once, and links that lead somewhere.
func (o *opened) structure() {
	o.t.Helper()
	wrong := ask[[]string](o, `(() => {
		const wrong = [], all = s => [...document.querySelectorAll(s)];
		const want = (ok, words) => { if (!ok) wrong.push(words); };
		want(document.documentElement.lang === "en", "no language");
		want(document.title.length > 3, "no title");
		for (const part of ["main", "header", "nav", "footer", "h1"]) want(all("body " + part).length === 1, all(part).length + " of " + part);
		let level = 0;
		for (const h of all("h1,h2,h3,h4,h5,h6")) {
			const next = +h.tagName[1];
			want(next <= level + 1, "after level " + level + ": " + h.outerHTML.slice(0, 90));
			want(h.textContent.trim(), "empty heading");
			level = next;
		}
		for (const t of all("table")) {
			want(t.caption?.textContent.trim(), "a table without caption: " + t.outerHTML.slice(0, 90));
			want(t.tHead && [...t.tHead.querySelectorAll("th")].every(h => h.scope === "col" && h.textContent.trim()), "heads of columns: " + t.caption?.textContent);
			for (const r of t.tBodies[0].rows) want(r.cells[0].tagName === "TH" && r.cells[0].scope === "row" && r.cells.length === t.tHead.rows[0].cells.length, "a row of " + t.caption?.textContent + ": " + r.textContent.slice(0, 60));
			want(t.tBodies[0].rows.length > 0, "empty table " + t.caption?.textContent);
		}
		for (const s of all("svg")) want(s.querySelector(":scope > title")?.textContent.trim() && s.querySelector(":scope > desc")?.textContent.trim() && s.getAttribute("role"), "a picture without words");
		const ids = all("[id]").map(e => e.id);
		for (const id of ids) want(ids.indexOf(id) === ids.lastIndexOf(id), "id " + id + " stands twice");
		for (const a of all("a[href]")) want(document.getElementById(a.getAttribute("href").slice(1)), "a link to nothing: " + a.getAttribute("href"));
		for (const e of all("[aria-labelledby]")) for (const id of e.getAttribute("aria-labelledby").split(" ")) want(document.getElementById(id), "labelled by nothing: " + id);
		want(all("script, link, iframe, object, embed, img, form, input, base").length === 0, "an element that has no place here");
		for (const e of all("*")) for (const a of e.attributes) want(!a.name.startsWith("on"), a.name + " of " + e.tagName);
		return [...new Set(wrong)].slice(0, 12);
	})()`)
	if len(wrong) > 0 {
		o.t.Errorf("structure: %q", wrong)
	}
}

// engine puts the page to a general checker of accessibility, where
// STRINGLINE_AXE names its script (axe.js of the package axe-core, MPL 2.0).
func (o *opened) engine() {
	file := os.Getenv("STRINGLINE_AXE")
	if file == "" {
		return
	}
	o.t.Helper()
	script, err := os.ReadFile(file)
	if err != nil {
		o.t.Fatalf("reading the checker of accessibility: %v", err)
	}
	o.do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := chromedp.Evaluate[bool](string(script)+"\n;typeof axe === 'object'")(ctx, t)
		return err
	}))
	found, err := chromedp.Run(o.ctx, chromedp.Evaluate[struct {
		Passes     int
		Violations []string
	}](`axe.run(document, {resultTypes: ["violations"]}).then(r => ({Passes: r.passes.length,
		Violations: r.violations.map(v => v.id + " (" + v.impact + "): " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 150)).join(" | "))}))`, chromedp.EvalAwaitPromise))
	if err != nil {
		o.t.Fatalf("running the checker of accessibility: %v", err)
	}
	if found.Passes == 0 || len(found.Violations) > 0 {
		o.t.Errorf("accessibility: %d rules met; broken: %s", found.Passes, strings.Join(found.Violations, "\n"))
	}
}

// pagesOf counts the pages of a PDF and those of a size, which is in points and
// right within one.
func pagesOf(pdf []byte, width, height float64) (pages, whole int) {
	pages = len(regexp.MustCompile(`/Type /Page\b[^s]`).FindAll(pdf, -1))
	for _, found := range regexp.MustCompile(`/MediaBox \[0 0 ([0-9.]+) ([0-9.]+)\]`).FindAllStringSubmatch(string(pdf), -1) {
		wide, err1 := strconv.ParseFloat(found[1], 64)
		high, err2 := strconv.ParseFloat(found[2], 64)
		if err1 == nil && err2 == nil && math.Abs(wide-width) < 1 && math.Abs(high-height) < 1 {
			whole++
		}
	}
	return pages, whole
}
