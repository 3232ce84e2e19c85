package judge

// What a formula costs to evaluate is bounded for codebooks from outside: their
// formulas are evaluated in this process, where no limit of a worker holds.

// mostWork bounds the work for one codebook on one design, in steps of some ten
// nanoseconds: about a second.
const mostWork = 100_000_000

// A rule that calls fact.value pays for each call too, out of the same.

// bear takes the cost of records from what is left and voids the rule that goes
// beyond it.
func (d *decoded) bear(b *Book, name string, left *int) {
	for i := range d.records {
		r := &d.records[i]
		for _, f := range append(append([]*formula{r.is, r.when}, r.limits...), r.also...) {
			work, _ := f.work()
			*left -= work
		}
		if *left < 0 {
			d.records = nil
			d.fault = faultAt(ruleAt(b, name), "the formulas of codebook %s would take too long to evaluate", b.Name())
			return
		}
	}
}

// work gives the steps that evaluating a formula takes at most, and how many
// leaves it has: what it rests on is merged at each level, each with each.
func (f *formula) work() (steps, leaves int) {
	if f == nil {
		return 0, 0
	}
	steps = 1 + len(f.choices)
	if f.op == "leaf" {
		leaves = 1
	}
	for _, part := range f.of {
		s, l := part.work()
		steps, leaves = min(steps+s, mostWork+1), leaves+l
	}
	steps += leaves * leaves
	if f.table != nil {
		steps += len(f.table.rows) * (len(f.table.axes) + 1)
	}
	return min(steps, mostWork+1), leaves
}
