package design

import (
	"fmt"
	"strconv"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

// Lists and objects of values.

// list reads quantities or numbers. The attribute's range holds for each.
func (r *valueReader) list(a *Attribute, l hcltext.Literal, v *Value) bool {
	if l.Kind != hcltext.List {
		return r.problem("value", a.Name, l, "a list in [ ]", l.Found(), "")
	}
	if len(l.Items) == 0 {
		return r.problem("value", a.Name, l, "a list", "an empty one", "leave the attribute out where nothing is known")
	}
	ok := true
	for _, item := range l.Items {
		if item.Kind == hcltext.Bad {
			ok = false
			continue
		}
		one := Value{}
		if a.Form == QuantityList {
			ok = r.quantity(a, item, &one) && ok
		} else {
			x, fine := r.number(a, item)
			one.SI, ok = x, ok && fine
		}
		v.List = append(v.List, one.SI)
	}
	if due := lengthOf[a.Name]; due > 0 && len(l.Items) != due {
		return r.problem("value", a.Name, l, fmt.Sprintf("%d values", due), strconv.Itoa(len(l.Items)), "")
	}
	return ok
}

// lengthOf holds the lists that have a fixed length.
var lengthOf = map[string]int{"between": 2, "months": 12}

func (r *valueReader) texts(a *Attribute, l hcltext.Literal, v *Value) bool {
	if l.Kind != hcltext.List {
		return r.problem("value", a.Name, l, "a list of texts in [ ]", l.Found(), "")
	}
	if a.Required && len(l.Items) == 0 {
		return r.problem("value", a.Name, l, "a list", "an empty one", "")
	}
	ok := true
	seen := make(map[string]source.Range, len(l.Items))
	for _, item := range l.Items {
		if item.Kind == hcltext.Bad {
			ok = false
			continue
		}
		t, fine := r.text(a, item)
		if !fine {
			ok = false
			continue
		}
		if first, twice := seen[t]; twice {
			ok = r.problem("duplicate", a.Name, item, "each text once", strconv.Quote(hcltext.Shorten(t))+" again", "first at "+first.String())
			continue
		}
		seen[t] = item.At
		v.Texts = append(v.Texts, t)
		v.TextsAt = append(v.TextsAt, item.At)
	}
	return ok
}

// panels reads { "slate-410" = 2 }. Names are looked up later.
func (r *valueReader) panels(a *Attribute, l hcltext.Literal, v *Value) bool {
	const due = `panels and how many of each in series, such as { "name" = 2 }`
	if l.Kind != hcltext.Object {
		return r.problem("value", a.Name, l, due, l.Found(), "")
	}
	if len(l.Pairs) == 0 {
		return r.problem("structure", a.Name, l, due, "a string without panels", "")
	}
	ok := true
	each := Attribute{Name: a.Name, Form: Count, Min: a.Min, Max: a.Max}
	for _, p := range l.Pairs {
		if p.Value.Kind == hcltext.Bad {
			ok = false
			continue
		}
		n, fine := r.count(&each, p.Value)
		if !fine {
			ok = false
			continue
		}
		v.Panels = append(v.Panels, PanelCount{Panel: p.Key, Count: int(n), At: p.KeyAt})
	}
	return ok
}
