package diagram

// Symbols after IEC 60617 (graphical symbols for diagrams), drawn from memory of
// the shapes as commonly published; the numbers are those of its parts 2 to 7 of
// 1996, from memory too. Each is drawn around the point (x, y); the conductor
// comes from above at y-reach and leaves below at y+reach.

// reach is half the height that a symbol takes with its leads.
const reach = 17.0

// symbol draws one symbol. open above or below leaves out that lead: a source
// at the head of a chain has none above, a load at its end none below.
type symbol func(p *picture, x, y float64)

// leads draws the conductor above and below a symbol of half height h.
func leads(p *picture, x, y, above, below float64) {
	if above < reach {
		p.line(x, y-reach, x, y-above)
	}
	if below < reach {
		p.line(x, y+below, x, y+reach)
	}
}

// whole is a lead that is left out: the symbol reaches the end of its cell.
const whole = reach

// conductor is a run of conductors (03-01-02): an oblique stroke, with their
// number beside it.
func conductor(p *picture, x, y float64) {
	p.line(x, y-reach, x, y+reach)
	p.line(x-5, y+4, x+5, y-4)
}

// node is a junction of conductors (03-02-01).
func node(p *picture, x, y float64) {
	p.line(x, y-reach, x, y+reach)
	p.circle(x, y, 3, solid()...)
}

// photovoltaic is a photovoltaic generator (06-18-06): a cell under light.
func photovoltaic(p *picture, x, y float64) {
	p.box(x-12, y-9, 24, 20)
	p.line(x-6, y-1, x+6, y-1)
	p.line(x-3, y+3, x+3, y+3, attribute{"stroke-width", "2.4"})
	p.line(x, y-9, x, y-1)
	p.line(x, y+3, x, y+11)
	for _, dx := range []float64{0, 5} { // two rays of light
		p.path("M" + place(x-17+dx) + " " + place(y-17) + "l6 6m0 -3.4v3.4h-3.4")
	}
	leads(p, x, y, whole, 11)
}

// fuse (07-21-01): the conductor runs through the case.
func fuse(p *picture, x, y float64) {
	p.box(x-5, y-11, 10, 22)
	p.line(x, y-reach, x, y+reach)
}

// contact draws the open blade that all switching devices share (07-02-01).
func contact(p *picture, x, y float64) {
	leads(p, x, y, 8, 8)
	p.line(x, y+8, x-8, y-8)
}

// breaker is a circuit breaker (07-13-05): a cross at the fixed contact.
func breaker(p *picture, x, y float64) {
	contact(p, x, y)
	p.path("M" + place(x-3.5) + " " + place(y-11.5) + "l7 7m0 -7l-7 7")
}

// disconnector (07-13-06) isolates without load: a bar at the fixed contact.
func disconnector(p *picture, x, y float64) {
	contact(p, x, y)
	p.line(x-5, y-8, x+5, y-8)
}

// switchDisconnector (07-13-08) isolates under load: bar and circle.
func switchDisconnector(p *picture, x, y float64) {
	contact(p, x, y)
	p.line(x-5, y-8, x+5, y-8)
	p.circle(x, y-5.5, 2.5)
}

// current is the sign of what flows on one side of a converter.
type current func(p *picture, x, y float64)

// direct is the sign of direct current (02-02-03): a line over a broken one.
func direct(p *picture, x, y float64) {
	p.line(x-4, y-1.5, x+4, y-1.5)
	p.line(x-4, y+1.5, x+4, y+1.5, attribute{"stroke-dasharray", "2 1"})
}

// alternating is the sign of alternating current (02-02-04).
func alternating(p *picture, x, y float64) {
	p.path("M" + place(x-4.5) + " " + place(y+0.5) + "q2.2 -5 4.5 0t4.5 0")
}

// convert draws a converter (06-14-02 and after): what comes in stands above
// the diagonal, what goes out below.
func convert(from, to current) symbol {
	return func(p *picture, x, y float64) {
		p.box(x-12, y-12, 24, 24)
		p.line(x-12, y+12, x+12, y-12)
		from(p, x-5, y-6)
		to(p, x+5, y+6.5)
		leads(p, x, y, 12, 12)
	}
}

// sourceOf is a converter that nothing is drawn above.
func sourceOf(to current) symbol {
	return func(p *picture, x, y float64) {
		p.box(x-12, y-12, 24, 24)
		p.line(x-12, y+12, x+12, y-12)
		to(p, x+5, y+6.5)
		leads(p, x, y, whole, 12)
	}
}

// battery (06-15-01): the long line is the positive pole.
func battery(p *picture, x, y float64) {
	for _, dy := range []float64{-7, 3} {
		p.line(x-9, y+dy, x+9, y+dy)
		p.line(x-4.5, y+dy+4, x+4.5, y+dy+4, attribute{"stroke-width", "2.4"})
	}
	p.line(x, y-3, x, y+3, attribute{"stroke-dasharray", "1.5 1.5"})
	leads(p, x, y, 7, whole)
}

// management is a battery's management system: a device (02-01-01) in the path.
func management(p *picture, x, y float64) {
	p.box(x-14, y-10, 28, 20)
	p.words("text", "BMS", append([]attribute{{"x", place(x)}, {"y", place(y + 3.2)}, {"font-size", "9"},
		{"text-anchor", "middle"}, {"stroke", "none"}}, color("fill", ink())...)...)
	leads(p, x, y, 10, 10)
}

// consumer is a load: a device (02-01-01) with the sign of its current.
func consumer(c current) symbol {
	return func(p *picture, x, y float64) {
		p.box(x-11, y-8, 22, 18)
		c(p, x, y+1)
		leads(p, x, y, 8, whole)
	}
}

// earth (02-15-01).
func earth(p *picture, x, y float64) {
	p.line(x, y-reach, x, y)
	bars(p, x, y)
}

// protectiveEarth (02-15-03): earth in a circle.
func protectiveEarth(p *picture, x, y float64) {
	p.line(x, y-8, x, y-2)
	bars(p, x, y-2)
	p.circle(x, y+1, 12)
}

func bars(p *picture, x, y float64) {
	for i, half := range []float64{8, 5, 2} {
		dy := 4 * float64(i)
		p.line(x-half, y+dy, x+half, y+dy)
	}
}

// arrester is a surge protective device (07-22-03): an arrow in a case, to earth.
func arrester(p *picture, x, y float64) {
	p.box(x-5, y-14, 10, 18)
	p.path("M" + place(x) + " " + place(y-14) + "v11m-3 -4l3 4l3 -4")
	p.line(x, y+4, x, y+8)
	bars(p, x, y+8)
}
