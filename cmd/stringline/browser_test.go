package main

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// browserNames are what a browser that chromedp can drive is called.
var browserNames = []string{"headless-shell", "chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"}

// openBrowser starts a browser for a test, or skips the test where there is none.
// STRINGLINE_BROWSER=required makes its absence a failure: .ci/run sets it.
// STRINGLINE_BROWSER=none skips it, and so does the race detector, which has
// nothing to find in another process.
func openBrowser(t *testing.T) context.Context {
	t.Helper()
	if underRace || os.Getenv("STRINGLINE_BROWSER") == "none" {
		t.Skip("no browser is wanted here")
	}
	found := ""
	for _, name := range browserNames {
		if path, err := exec.LookPath(name); err == nil && found == "" {
			found = path
		}
	}
	if found == "" {
		if os.Getenv("STRINGLINE_BROWSER") == "required" {
			t.Fatalf("no browser is installed: one of %s is needed", strings.Join(browserNames, ", "))
		}
		t.Skip("no browser is installed")
	}
	// In a container there is no sandbox for root, and little shared memory. The
	// pages are our own.
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(found), chromedp.NoSandbox, chromedp.Flag("disable-dev-shm-usage", true))
	all, stopAll := chromedp.NewExecAllocator(t.Context(), options...)
	t.Cleanup(stopAll)
	ctx, stop := chromedp.NewContext(all)
	t.Cleanup(stop)
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("starting %s: %v", found, err)
	}
	return ctx
}

// overheard notes what a page says and asks for.
type overheard struct {
	mutex    sync.Mutex
	said     []string
	requests []string
}

func (w *overheard) note(event any) {
	w.mutex.Lock()
	defer w.mutex.Unlock()
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		w.requests = append(w.requests, e.Request.URL)
	case *runtime.EventExceptionThrown:
		w.said = append(w.said, e.ExceptionDetails.Text)
	case *runtime.EventConsoleAPICalled:
		w.said = append(w.said, fmt.Sprintf("console: %v", e.Args))
	case *log.EventEntryAdded:
		w.said = append(w.said, e.Entry.Text)
	}
}

// opened is one sheet in a browser.
type opened struct {
	t    *testing.T
	ctx  context.Context
	file string
	name string
}

// ask evaluates JavaScript in the page and reads its result. The page itself has
// no script and forbids any: this comes through the browser's back door.
func ask[T any](o *opened, script string) T {
	o.t.Helper()
	found, err := chromedp.Run(o.ctx, chromedp.Evaluate[T](script))
	if err != nil {
		o.t.Fatalf("%s: %v", o.name, err)
	}
	return found
}

func (o *opened) do(steps ...chromedp.Action[chromedp.Void]) {
	o.t.Helper()
	if err := chromedp.Do(o.ctx, steps...); err != nil {
		o.t.Fatalf("%s: %v", o.name, err)
	}
}

// media sets what the page takes itself to be shown on: print, or with a color
// scheme; nothing for a plain screen.
func (o *opened) media(media, scheme string) {
	o.t.Helper()
	p := emulation.SetEmulatedMediaParams{Media: media}
	if scheme != "" {
		p.Features = []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: scheme}}
	}
	o.do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, emulation.SetEmulatedMedia, p)
		return err
	}))
}

// TestSheetInBrowser reads the sheet of every example in a browser: on a
// telephone, on a screen, in the dark and on paper. STRINGLINE_SHOTS names a
// folder to put pictures in, for people to look at.
func TestSheetInBrowser(t *testing.T) {
	browser := openBrowser(t)
	designs, err := filepath.Glob("../../examples/*/*.design.hcl")
	if err != nil || len(designs) < 6 {
		t.Fatalf("only %d examples found: %v", len(designs), err)
	}
	for _, design := range designs {
		name := strings.TrimSuffix(filepath.Base(design), ".design.hcl")
		if testing.Short() && strings.Contains(name, "broken") {
			continue
		}
		t.Run(name, func(t *testing.T) {
			file := filepath.Join(t.TempDir(), name+".html")
			s, _, said := testStreams(nil)
			if code := run(t.Context(), []string{"sheet", design, "-o", file}, s); code > 1 {
				t.Fatalf("exit status %d: %s", code, said)
			}
			var w overheard
			ctx, stop := chromedp.NewContext(browser, chromedp.WithListener(w.note))
			defer stop()
			if err := chromedp.Do(ctx); err != nil {
				t.Fatal(err)
			}
			ctx, cancel := context.WithTimeout(ctx, 2*time.Minute)
			defer cancel()
			address := (&url.URL{Scheme: "file", Path: filepath.ToSlash(file)}).String()
			o := &opened{t: t, ctx: ctx, file: design, name: name}
			o.do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
				_, first := cdp.Call(ctx, t, network.Enable, network.EnableParams{})
				_, second := cdp.Call(ctx, t, log.Enable, cdp.Empty{})
				return errors.Join(first, second)
			}), chromedp.EmulateViewport(360, 780), chromedp.Navigate(address))

			o.fits(360)
			o.shows()
			o.shot("telephone", 360)
			o.contrast("light")
			o.do(chromedp.EmulateViewport(1200, 900))
			o.fits(1200)
			o.shows()
			o.curves()
			o.shot("screen", 1200)
			o.media("", "dark")
			o.contrast("dark")
			o.shot("dark", 1200)
			o.media("", "light")
			o.structure()
			o.engine()
			o.paper()

			w.mutex.Lock()
			defer w.mutex.Unlock()
			if len(w.said) > 0 {
				t.Errorf("the page says: %q", w.said)
			}
			for _, asked := range w.requests {
				if asked != address && !strings.HasPrefix(asked, address+"#") {
					t.Errorf("the page asks for %s", asked)
				}
			}
			if len(w.requests) == 0 {
				t.Error("no request was seen, not even that for the page: nothing is proven")
			}
		})
	}
}

// fits wants no sideways scroll, with every part of the page unfolded.
func (o *opened) fits(width int) {
	o.t.Helper()
	found := ask[struct {
		Width int
		Past  []string
	}](o, fmt.Sprintf(`(() => {
		for (const d of document.querySelectorAll("details")) d.open = true;
		const past = [...document.querySelectorAll("body *")].filter(e => e.checkVisibility() && !e.closest("svg svg, .hidden, .skip, thead")
			&& e.getBoundingClientRect().right > %d + 0.5).slice(0, 5).map(e => e.outerHTML.slice(0, 120));
		return {Width: document.documentElement.scrollWidth, Past: past};
	})()`, width))
	if found.Width > width || len(found.Past) > 0 {
		o.t.Errorf("at %d pixels the page is %d wide; past the edge: %q", width, found.Width, found.Past)
	}
}

// drawnKinds are the collections whose members the one-line diagram draws.
var drawnKinds = []string{"strings", "arrays", "pv_inputs", "chargers", "banks", "cable_runs", "protections", "disconnects", "ac_outputs", "loads", "supplies", "charge_sources"}

// factsOf reads a design's facts document, as a script would.
func factsOf(t *testing.T, design string) map[string]json.RawMessage {
	t.Helper()
	s, out, said := testStreams(nil)
	if code := run(t.Context(), []string{"facts", design, "--as", "json"}, s); code != 0 {
		t.Fatalf("facts of %s: exit status %d: %s", design, code, said)
	}
	var doc map[string]json.RawMessage
	if err := json.Unmarshal(out.Bytes(), &doc); err != nil {
		t.Fatal(err)
	}
	return doc
}

type factLeaf struct {
	Value any
	Over  struct{ Values []float64 }
}

// subjectsOf gives a collection's members by id, each with its facts.
func subjectsOf(t *testing.T, doc map[string]json.RawMessage, collection string) map[string]map[string]json.RawMessage {
	t.Helper()
	var all []map[string]json.RawMessage
	if err := json.Unmarshal(doc[collection], &all); err != nil {
		t.Fatal(err)
	}
	byID := map[string]map[string]json.RawMessage{}
	for _, one := range all {
		var id string
		if err := json.Unmarshal(one["id"], &id); err != nil {
			t.Fatal(err)
		}
		byID[id] = one
	}
	return byID
}

func leafOf(t *testing.T, subject map[string]json.RawMessage, name string) factLeaf {
	t.Helper()
	var leaf factLeaf
	if err := json.Unmarshal(subject[name], &leaf); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return leaf
}

// shows wants every component and conductor of the design in the diagram that is
// seen, once, and each protection's rating as its fact has it.
func (o *opened) shows() {
	o.t.Helper()
	drawn := ask[[]struct{ ID, Kind, Rating, Title string }](o, `[...document.querySelectorAll(".oneline [data-id]")].filter(e => e.checkVisibility()).map(e => ({
		ID: e.dataset.id, Kind: e.dataset.kind, Rating: e.dataset.rating ?? "", Title: e.querySelector("title")?.textContent ?? ""}))`)
	count := map[string]int{}
	rating := map[string]string{}
	for _, d := range drawn {
		count[d.ID]++
		rating[d.ID] = d.Rating
		if d.Title == "" {
			o.t.Errorf("%s has no title", d.ID)
		}
	}
	doc := factsOf(o.t, o.file)
	total := 0
	for _, collection := range drawnKinds {
		for id, facts := range subjectsOf(o.t, doc, collection) {
			total++
			if count[id] != 1 {
				o.t.Errorf("%s is drawn %d times", id, count[id])
			}
			if collection != "protections" {
				continue
			}
			want, got := leafOf(o.t, facts, "rating").Value, rating[id]
			if want == nil && got != "" || want != nil && got != fmt.Sprint(want) {
				o.t.Errorf("%s is drawn with a rating of %q, its fact is %v", id, got, want)
			}
		}
	}
	if total < 5 {
		o.t.Errorf("only %d things in the design: nothing is proven", total)
	}
}

// paper prints on A4 and Letter, and wants pages of just that size. What is folded
// stays off paper and says so, but for the workings of what stands against the
// design; unfolded, all of it is printed.
func (o *opened) paper() {
	o.t.Helper()
	var folded int
	for _, open := range []bool{false, true} {
		ask[bool](o, fmt.Sprintf(`(document.querySelectorAll("details").forEach(d => d.open = %v), true)`, open))
		for _, sheet := range []struct {
			name          string
			width, height float64 // inches
		}{{"A4", 210 / 25.4, 297 / 25.4}, {"Letter", 8.5, 11}} {
			pdf, err := chromedp.Run(o.ctx, chromedp.PrintToPDF(func(p *page.PrintToPDFParams) { p.PaperWidth, p.PaperHeight = sheet.width, sheet.height }))
			if err != nil {
				o.t.Fatalf("printing on %s: %v", sheet.name, err)
			}
			pages, whole := pagesOf(pdf, sheet.width*72, sheet.height*72)
			if pages < 5 || whole != pages {
				o.t.Errorf("%s: %d pages, %d of them whole", sheet.name, pages, whole)
			}
			switch {
			case sheet.name != "A4":
			case !open:
				folded = pages
			case pages <= folded:
				o.t.Errorf("%d pages unfolded, %d folded: folding leaves nothing off paper", pages, folded)
			}
			o.keep(fmt.Sprintf("%s-%v.pdf", sheet.name, open), pdf)
		}
	}
	o.media("print", "")
	shown := func(open bool) (wrong []string) {
		return ask[[]string](o, fmt.Sprintf(`(() => {
			const open = %v, wrong = [], tall = e => e.checkVisibility() && e.getBoundingClientRect().height > 5;
			for (const d of document.querySelectorAll("details.folded")) {
				d.open = open;
				const said = getComputedStyle(d.querySelector("summary"), "::after").content;
				if (!tall(d.querySelector("summary")) || open !== (said === "none")) wrong.push(d.textContent.slice(0, 60) + said);
				for (const row of d.querySelectorAll("tbody tr")) if (tall(row) !== (open || row.matches(".bears"))) wrong.push(row.textContent.slice(0, 80));
			}
			return wrong.slice(0, 5);
		})()`, open))
	}
	for _, open := range []bool{false, true} {
		if wrong := shown(open); len(wrong) > 0 {
			o.t.Errorf("unfolded %v, on paper: %q", open, wrong)
		}
	}
	against := ask[[]int](o, `[document.querySelectorAll(".finding").length, document.querySelectorAll(".finding details.again tbody tr").length, document.querySelectorAll("tr.bears[id]").length]`)
	if (against[1] > 0) != (against[2] > 0) || against[2] > against[1] {
		o.t.Errorf("%d findings with %d lines of workings, %d of them for paper", against[0], against[1], against[2])
	}
	o.media("", "")
}

// shot keeps pictures of where each part of the page begins, where they are wanted.
func (o *opened) shot(name string, width int64) {
	if os.Getenv("STRINGLINE_SHOTS") == "" {
		return
	}
	o.do(chromedp.EmulateViewport(width, 1500))
	for _, part := range ask[[]string](o, `["", ...[...document.querySelectorAll("section")].map(s => s.id)]`) {
		ask[bool](o, fmt.Sprintf(`((document.getElementById(%q) ?? document.body).scrollIntoView(), true)`, part))
		picture, err := chromedp.Run(o.ctx, chromedp.CaptureScreenshot())
		if err != nil {
			o.t.Fatal(err)
		}
		o.keep(name+"-"+part+".png", picture)
	}
}

func (o *opened) keep(name string, data []byte) {
	folder := os.Getenv("STRINGLINE_SHOTS")
	if folder == "" {
		return
	}
	if err := os.WriteFile(filepath.Join(folder, o.name+"-"+name), data, 0o644); err != nil {
		o.t.Error(err)
	}
}
