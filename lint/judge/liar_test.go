package judge_test

import (
	"context"
	"encoding/binary"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/schema/design"
)

// inProcess serves a codebook in a goroutine instead of a process, and lets a
// test put other bytes in the place of what the worker says.
type inProcess struct {
	twist func(message []byte) []byte
}

func (p inProcess) Start(ctx context.Context) (judge.Worker, error) {
	w := &goroutine{twist: p.twist, in: make(chan []byte), out: make(chan []byte), end: make(chan struct{}), done: make(chan struct{})}
	go func() {
		_ = judge.Serve(ctx, func() ([]byte, error) { // ends with the channel
			select {
			case m := <-w.in:
				return m, nil
			case <-w.end:
				return nil, errors.New("closed")
			}
		}, func(m []byte) error {
			select {
			case w.out <- slices.Clone(m):
				return nil
			case <-w.end:
				return errors.New("closed")
			}
		})
		close(w.done)
		close(w.out)
	}()
	return w, nil
}

type goroutine struct {
	twist   func([]byte) []byte
	in, out chan []byte
	end     chan struct{} // closed when nobody wants an answer any more
	done    chan struct{} // closed when it serves no more
	closed  bool
}

func (w *goroutine) Close() {
	if !w.closed {
		w.closed = true
		close(w.end)
	}
}

func (w *goroutine) Exchange(_ context.Context, request []byte, answer func([]byte) ([]byte, bool, error)) error {
	for {
		select {
		case w.in <- request:
		case <-w.done:
			return errors.New("died")
		}
		message, ok := <-w.out
		if !ok {
			return errors.New("died")
		}
		reply, over, err := answer(w.twist(message))
		if err != nil || over {
			return err
		}
		request = reply
	}
}

const apartRules = bookHead + tableData + `-- r/rule.rego --
# METADATA
# title: Spare voltage
# description: "Why it matters."
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: put it right
package codebooks.small.r

check contains {"about": b.id, "is": b.nominal, "at_most": fact.number(150, "V"), "say": "{is} of {limit}"} if some b in input.banks
-- v/rule.rego --
# METADATA
# title: By value
# description: "Why it matters."
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: put it right
package codebooks.small.v

check contains {"about": b.id, "is": fact.number(fact.value(b.nominal), "V"), "at_least": fact.number(1, "V")} if some b in input.banks
`

// judgedApart loads the codebook apart and judges the hut; what a worker says is
// twisted. It gives the load's problems, or the verdicts.
func judgedApart(t testing.TB, isolation judge.Isolation) (problems []string, found []verdict.Verdict) {
	t.Helper()
	files := folder(apartRules)
	b, wrong := judge.Load(context.Background(), judge.Source{Files: files, Show: "book", Isolation: isolation})
	for _, p := range wrong {
		problems = append(problems, p.Error())
	}
	if b == nil || len(wrong) > 0 {
		if len(wrong) == 0 {
			t.Fatal("no codebook and no problem")
		}
		return problems, nil
	}
	defer b.Close()
	d := design.Load(design.Options{Path: "hut.design.hcl", Text: []byte(hut)})
	found, err := judge.New(judge.Options{Books: []*judge.Book{b}}).Judge(context.Background(), facts.New(d))
	if err != nil {
		t.Fatal(err)
	}
	return nil, found
}

// A worker that says the truth gives what the same codebook gives in this process.
func TestApartIsTheSame(t *testing.T) {
	_, here := judgedApart(t, nil)
	problems, apart := judgedApart(t, inProcess{func(m []byte) []byte { return m }})
	if len(problems) > 0 || len(here) < 2 {
		t.Fatal(problems, lines(here))
	}
	if diff := cmp.Diff(lines(here), lines(apart)); diff != "" {
		t.Errorf("verdicts (-here +apart):\n%s", diff)
	}
}

// A file of shared/ may be named as those of rules are.
func TestApartSharedFile(t *testing.T) {
	const shared = "-- shared/rule.rego --\npackage codebooks.small.shared\n\nhalf(x) := fact.times([0.5, x])\n"
	for _, isolation := range []judge.Isolation{nil, inProcess{func(m []byte) []byte { return m }}} {
		b, problems := judge.Load(context.Background(), judge.Source{Files: folder(apartRules + shared), Show: "book", Isolation: isolation})
		if len(problems) > 0 {
			t.Errorf("apart: %v: %v", isolation != nil, problems)
			continue
		}
		b.Close()
	}
}

// The work that a codebook may make here is one for all its rules: two that read
// values and each stay below it do not stay below it together.
func TestWorkOfAllRules(t *testing.T) {
	// 4000 leaves merged with one another are 16 million steps, here four times.
	const body = `check contains {"about": b.id, "is": fact.number(sum([v | some n in [1, 2, 3, 4]; v := fact.value(fact.plus([b.nominal | some w in [1, 2, 3, 4]; some x in ten; some y in ten; some z in ten])) + n]), "V"), "at_least": fact.number(1, "V")} if {
	some b in input.banks
	ten := [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
}`
	void := func(rules ...string) (n int) {
		archive := bookHead
		for _, name := range rules {
			archive += strings.TrimSuffix(rule(name, "banks", body), "\n") + "\n"
		}
		b := loaded(t, archive)
		vs, err := judge.New(judge.Options{Books: []*judge.Book{b}}).Judge(context.Background(), system(t, hut))
		if err != nil {
			t.Fatal(err)
		}
		for i := range vs {
			if vs[i].Outcome == verdict.Void {
				n++
				if !strings.Contains(vs[i].Message, "too long to evaluate") {
					t.Error(vs[i].Message)
				}
			}
		}
		return n
	}
	if n := void("r"); n != 0 {
		t.Errorf("one rule by itself: %d void", n)
	}
	if n := void("r", "s"); n != 1 {
		t.Errorf("two rules: %d void, want 1", n)
	}
}

// An answer of very many tiny terms is refused while it is read.
func TestCrowdedAnswer(t *testing.T) {
	const many = judge.LongestMessage/4 + 10
	n := 0
	problems, found := judgedApart(t, inProcess{func(m []byte) []byte {
		if n++; n != 2 {
			return m
		}
		// An answer for one rule, r, no fault, one record at no place: a list of nulls.
		crowd := binary.AppendUvarint([]byte{2, 1, 1, 'r', 0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 5}, many)
		return append(crowd, make([]byte, many)...)
	}})
	if len(problems) > 0 || n < 2 {
		t.Fatal(n, problems)
	}
	for i := range found {
		if v := &found[i]; v.Rule == "small.r" && (v.Outcome != verdict.Void || !strings.Contains(v.Message, "the message cannot be read")) {
			t.Errorf("%s: %s", v.Outcome, v.Message)
		}
	}
}

// Whatever a worker says in place of the truth, byte by byte: nothing panics, and
// each rule still owes a verdict on each bank and on nothing else.
func TestLyingWorker(t *testing.T) {
	sizes := []int{}
	judgedApart(t, inProcess{func(m []byte) []byte { sizes = append(sizes, len(m)); return m }})
	if len(sizes) < 4 { // loaded, records, a question for a value, records
		t.Fatalf("messages of %v bytes", sizes)
	}
	ended := 0
	for which, size := range sizes {
		for at := 0; at <= size; at += 13 {
			for _, lie := range []func([]byte) []byte{
				func(m []byte) []byte { m[min(at, len(m)-1)] ^= 0x41; return m },
				func(m []byte) []byte { return m[:min(at, len(m))] },
				func(m []byte) []byte { return append(m, m...) },
			} {
				n := 0
				problems, found := judgedApart(t, inProcess{func(m []byte) []byte {
					if n++; n == which+1 {
						return lie(m)
					}
					return m
				}})
				if len(problems) > 0 {
					ended++
					continue
				}
				owed := map[string]bool{}
				for i := range found {
					if v := &found[i]; v.Outcome == verdict.Void {
						ended++
					} else if v.About != "bank.house" && v.Outcome != verdict.DoesNotApply {
						t.Fatalf("message %d, byte %d: a verdict on %q", which, at, v.About)
					}
					owed[found[i].Rule] = true
				}
				if !owed["small.r"] || !owed["small.v"] {
					t.Fatalf("message %d, byte %d: a rule gives no verdict: %v", which, at, lines(found))
				}
			}
		}
	}
	if ended == 0 {
		t.Error("no lie was noticed")
	}
}

// FuzzWorker puts any bytes in the place of one message of a worker.
func FuzzWorker(f *testing.F) {
	f.Add(0, []byte{})
	f.Add(1, []byte("\x02\xff\xff\xff\xff"))
	f.Fuzz(func(t *testing.T, which int, message []byte) {
		n := 0
		problems, found := judgedApart(t, inProcess{func(m []byte) []byte {
			if n++; n == 1+(which&3) {
				return message
			}
			return m
		}})
		for i := range found {
			if strings.Contains(found[i].Message, "\x1b") {
				t.Errorf("an escape: %q", found[i].Message)
			}
		}
		if len(problems) == 0 && len(found) == 0 {
			t.Error("no verdict and no problem")
		}
	})
}
