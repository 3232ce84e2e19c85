package diagram

// grounding is the chain of what is bonded to ground. It is drawn once for the
// whole system, apart from the circuits: the design says which pole is grounded,
// not where.
func (r *reader) grounding() *chain {
	const id = "grounding"
	dc := r.text(id + ".dc")
	pole := map[string]string{
		"negative": "DC negative grounded", "positive": "DC positive grounded", "floating": "DC floating, no pole grounded", "_____": "DC grounded at _____ pole",
	}[dc]
	electrode := &item{id: id, kind: "grounding", symbol: earth, heading: id, says: pole, lines: []string{
		pole + ", " + many(r.text(id+".dc_bonds"), "bond"),
		"ground-fault protection: " + r.text(id+".ground_fault_protection"),
		"AC neutral bonds: " + r.text(id+".neutral_bonds")}}
	frames := &item{of: id, kind: "equipment_ground", symbol: protectiveEarth, heading: "equipment ground",
		says: "equipment ground", lines: []string{"panel frames and cases bonded: " + r.text(id+".frames_bonded")}}
	c := &chain{items: []*item{electrode, frames}}
	if fitted, known := r.yes(id + ".surge_protection"); !known || fitted {
		c.items = append(c.items, &item{of: id, kind: "surge_protection", symbol: arrester, heading: "surge protective device",
			says: "surge protection", lines: []string{"fitted: " + r.text(id+".surge_protection")}})
	} else {
		electrode.lines = append(electrode.lines, "surge protection: no")
	}
	return c
}
