package diagram

import "strings"

// describe tells every path in words.
func (p *plan) describe() string {
	var sentences []string
	for _, s := range p.sections {
		bus := "the busbar of " + s.of
		for _, c := range s.sources {
			sentences = append(sentences, c.source()+" to "+bus+".")
			for _, it := range c.items {
				for _, t := range it.terminals {
					sentences = append(sentences, "From the load terminals of "+it.says+t.onward()+".")
				}
			}
		}
		sentences = append(sentences, "From "+bus+s.store.onward()+".")
		for _, c := range s.fed {
			sentences = append(sentences, "From "+bus+c.onward()+".")
		}
	}
	if p.grounding != nil {
		var says []string
		for _, it := range p.grounding.items {
			says = append(says, it.says)
		}
		sentences = append(sentences, "Grounding: "+strings.Join(says, ", ")+".")
	}
	return strings.Join(sentences, " ")
}

// source tells a path toward a bank, what joins it first.
func (c *chain) source() string {
	var joined []string
	for _, from := range c.from {
		joined = append(joined, from.source())
	}
	var says []string
	if len(joined) > 0 {
		says = append(says, strings.Join(joined, "; and "))
	}
	for _, it := range c.items {
		says = append(says, it.says)
	}
	return strings.Join(says, ", ")
}

// onward tells a path away from a bank.
func (c *chain) onward() string {
	var b strings.Builder
	for _, it := range c.items {
		b.WriteString(", " + it.says)
	}
	switch len(c.to) {
	case 0:
	case 1:
		b.WriteString(c.to[0].onward())
	default:
		for i, t := range c.to {
			if i > 0 {
				b.WriteString("; and")
			}
			b.WriteString(strings.Replace(t.onward(), ", ", " ", 1))
		}
	}
	return b.String()
}
