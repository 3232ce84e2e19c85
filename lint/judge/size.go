package judge

import "github.com/open-policy-agent/opa/v1/ast"

// tooLarge is the kind of problems for which a codebook is neither walked nor
// compiled: neither takes a deadline, and what is refused here may take for ever.
const tooLarge = "size"

// Cheap limits on what compiling a module may cost, which grows with the square
// of most of these.
const (
	mostExpressions       = 100 // in a body
	mostCalls             = 500 // in a rule, or one branch of it
	mostBranches          = 50  // of else
	mostDefinitions       = 500 // in a module
	deepestComprehensions = 6   // within one another
)

// large refuses what would take the compiler too long.
func (l *linter) large(at *ast.Location, format string, args ...any) {
	l.bad(at, "", format, args...)
	l.problems[len(l.problems)-1].Kind = tooLarge
}

// sizes holds all modules to the limits above.
func (l *loader) sizes() {
	for _, name := range sortedKeys(l.modules) {
		check := linter{module: l.modules[name]}
		check.sizes()
		l.problems = append(l.problems, check.problems...)
	}
}

// sizes holds the module to the limits above.
func (l *linter) sizes() {
	if len(l.module.Rules) > mostDefinitions {
		l.large(l.module.Rules[mostDefinitions].Loc(), "a module has more than %d definitions", mostDefinitions)
	}
	for _, r := range l.module.Rules {
		branches := 0
		for branch := r.Else; branch != nil; branch = branch.Else {
			branches++
		}
		if branches > mostBranches {
			l.large(r.Loc(), "a definition has more than %d branches of else", mostBranches)
			continue // counting the calls of each branch would itself take long
		}
		for ; r != nil; r = r.Else {
			if countCalls(r) > mostCalls {
				l.large(r.Loc(), "a definition has more than %d calls and operators", mostCalls)
			}
		}
	}
	ast.WalkBodies(l.module, func(b ast.Body) bool {
		if len(b) > mostExpressions {
			l.large(b.Loc(), "a body has more than %d expressions", mostExpressions)
		}
		return false
	})
	l.depth(l.module, 0)
}

// countCalls counts the calls in a rule's head and body, without its branches.
func countCalls(r *ast.Rule) int {
	n := 0
	count := func(node any) {
		ast.WalkTerms(node, func(t *ast.Term) bool {
			if _, ok := t.Value.(ast.Call); ok {
				n++
			}
			return false
		})
	}
	count(r.Head)
	count(r.Body)
	return n
}

// depth bounds comprehensions within one another: compiling them takes time
// that doubles with each level.
func (l *linter) depth(node any, level int) {
	if level > deepestComprehensions {
		return
	}
	v := ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.ArrayComprehension:
			l.deeper(x.Term, x.Body, level)
			return true
		case *ast.SetComprehension:
			l.deeper(x.Term, x.Body, level)
			return true
		case *ast.ObjectComprehension:
			l.deeper(x.Value, x.Body, level)
			return true
		}
		return false
	})
	v.Walk(node)
}

func (l *linter) deeper(t *ast.Term, b ast.Body, level int) {
	if level+1 > deepestComprehensions {
		l.large(t.Location, "comprehensions stand more than %d deep within one another", deepestComprehensions)
		return
	}
	l.depth(t, level+1)
	l.depth(b, level+1)
}
