package lint

import (
	"fmt"
	"strings"

	"stringline/schema/source"
)

// mostLikely is how many names an error lists.
const mostLikely = 8

// likely gives what a name that nothing has may mean: the known ones that begin as
// it does, behind a codebook's name; else the nearest one; else those whose last part
// holds its last part. Of several there is no nearest.
func likely(name string, known []string) (near string, candidates []string) {
	keep := func(fits func(string) bool) {
		for _, k := range known {
			if fits(k) {
				candidates = append(candidates, k)
			}
		}
	}
	if strings.Contains(name, ".") {
		keep(func(k string) bool { return strings.HasPrefix(k, name) })
	}
	if len(candidates) == 0 {
		if near = nearestRule(name, known); near != "" {
			return near, nil
		}
	}
	const shortest = 3 // letters that tell anything
	if last := name[strings.LastIndexByte(name, '.')+1:]; len(candidates) == 0 && len(last) >= shortest {
		keep(func(k string) bool {
			_, own, rule := strings.Cut(k, ".")
			return rule && strings.Contains(own, last)
		})
	}
	if len(candidates) == 1 {
		return candidates[0], nil
	}
	return "", candidates
}

// nearestRule is source.Nearest, but of a codebook that is named rightly the rules
// alone are held against each other: its name would make any two of them alike.
func nearestRule(name string, known []string) string {
	book, rule, _ := strings.Cut(name, ".")
	var own []string
	for _, k := range known {
		if of, its, ok := strings.Cut(k, "."); ok && of == book {
			own = append(own, its)
		}
	}
	if rule == "" || len(own) == 0 {
		return source.Nearest(name, known)
	}
	if near := source.Nearest(rule, own); near != "" {
		return book + "." + near
	}
	return ""
}

// oneOf lists candidates for an error.
func oneOf(candidates []string) string {
	if more := len(candidates) - mostLikely; more > 1 {
		return fmt.Sprintf("%s or %d more", strings.Join(candidates[:mostLikely], ", "), more)
	}
	last := len(candidates) - 1
	return strings.Join(candidates[:last], ", ") + " or " + candidates[last]
}

// suggest adds to a problem about an unknown name what it may mean.
func suggest(p *source.Problem, known []string) {
	near, candidates := likely(p.Found, known)
	if p.Near = near; len(candidates) > 0 {
		p.Expected += ", such as " + oneOf(candidates)
	}
}

// meant ends a sentence about an unknown name; empty where nothing is likely.
func meant(name string, known []string) string {
	near, candidates := likely(name, known)
	switch {
	case near != "":
		return fmt.Sprintf("; did you mean %q?", near)
	case len(candidates) > 0:
		return "; did you mean " + oneOf(candidates) + "?"
	}
	return ""
}
