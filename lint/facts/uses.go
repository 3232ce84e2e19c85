package facts

import "slices"

// uses tells each data sheet what uses it, once everything is there.
func (b *builder) uses() {
	for s := range all[*String](b, "strings") {
		for _, p := range s.panels {
			p.panel.strings = append(p.panel.strings, s)
		}
	}
	for c := range all[*Charger](b, "chargers") {
		c.controller.chargers = append(c.controller.chargers, c)
	}
	for bank := range all[*Bank](b, "banks") {
		bank.battery.banks = append(bank.battery.banks, bank)
	}
	for o := range all[*Output](b, "ac_outputs") {
		o.inverter.outputs = append(o.inverter.outputs, o)
	}
	for p := range all[*Supply](b, "supplies") {
		p.converter.supplies = append(p.converter.supplies, p)
	}
}

// settleUses tells data sheets of a block that was left out: it may have used
// any of them.
func (b *builder) settleUses(l loss) {
	switch l.kind {
	case "array":
		for p := range all[*Panel](b, "panels") {
			p.lost = add(p.lost, l.id)
		}
	case "charger":
		for c := range all[*Controller](b, "controllers") {
			c.lost = add(c.lost, l.id)
		}
	case "bank":
		for battery := range all[*Battery](b, "batteries") {
			battery.lost = add(battery.lost, l.id)
		}
	case "ac_output":
		for i := range all[*Inverter](b, "inverters") {
			i.lost = add(i.lost, l.id)
		}
	case "supply":
		for c := range all[*Converter](b, "converters") {
			c.lost = add(c.lost, l.id)
		}
	}
}

// of counts how many of a panel stand in series in a string.
func (s *String) of(p *Panel) float64 {
	i := slices.IndexFunc(s.panels, func(o panelsOf) bool { return o.panel == p })
	if i < 0 {
		return 0
	}
	return s.panels[i].count
}
