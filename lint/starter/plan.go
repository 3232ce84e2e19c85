package starter

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// plan is everything that the templates show.
type plan struct {
	Name, Place, Code, Standard                             string
	Latitude, Longitude, Elevation, Coldest, Hottest        string
	Tilt, Azimuth, Mounting                                 string
	BankColdest, BankHottest, Run                           string
	V                                                       int // nominal voltage of the bank
	Lithium, Plan, AC, DC, StringFuse                       bool
	Series, Batteries, BankPoles                            int
	PanelSeries, PanelParallel                              int
	Charge, ChargeFuse, MainFuse, MainSwitch, EachFuse      int // A
	ArrayDevice, PVShortCircuit, PVPower                    int
	Inverter, InverterSurge, InverterIdle                   int // W
	InverterFuse, InverterSwitch, LightFuse                 int
	ChargeLeast, ArrayLeast, InverterCurrent, InverterLeast string
	LowVoltage, InverterCutoff, Absorption, Float           string
	InverterHours, ACPower, ACHours, ACSurge                string
	DCPower, DCHours                                        string
	BankWords, MainWords, DesignFile, HooksPath             string
	MainRun, ChargeRun, StringRun, ArrayRun                 run
	InverterRun, LightRun                                   run
	Fuses                                                   []int
	Cables                                                  []cable
}

// run is one cable run of the design.
type run struct {
	What                              string // for declared
	Cable                             cable
	Length, Ambient, Method, Terminal string
	AboveRoof, Connector, Grounding   string
	Indoors, Boat                     bool
	Asked                             bool // its length was asked for
}

// cable is one invented cable part.
type cable struct {
	Part, Size, Strand, Insulation string
	Tinned                         bool
	Ampacity                       int
}

// scaled is a voltage of a 12 V system at this bank's voltage.
func (p *plan) scaled(volts float64) string { return number(volts*float64(p.V)/12) + " V" }

func number(x float64) string { return strconv.FormatFloat(math.Round(x*100)/100, 'f', -1, 64) }

// numbers are the answers that sizes follow from.
type numbers struct{ panels, batteries, dc, ac, surge, run float64 }

func newPlan(a Answers) (*plan, error) {
	p := &plan{
		Name: a["title"], Place: a["place"], Code: a["code"], Standard: a["standard"],
		Latitude: a["latitude"], Longitude: a["longitude"], Elevation: a["elevation"], Coldest: a["coldest"], Hottest: a["hottest"],
		Tilt: a["tilt"], Azimuth: a["azimuth"], Run: a["run"], BankColdest: a["bank-coldest"], BankHottest: a["bank-hottest"],
		Lithium: a["chemistry"] == "lifepo4", Plan: a["plan"] == "yes",
		ACPower: a["ac-power"], ACHours: a["ac-hours"], ACSurge: a["ac-surge"], InverterHours: a["ac-hours"], DCPower: a["dc-power"], DCHours: a["dc-hours"],
	}
	if p.Code == "none" {
		p.Code = ""
	}
	n, err := a.numbers()
	if err != nil {
		return nil, err
	}
	if p.V, err = strconv.Atoi(strings.TrimSuffix(a["bank-voltage"], " V")); err != nil || !slices.Contains([]int{12, 24, 48}, p.V) {
		return nil, fmt.Errorf("bank-voltage: expected 12 V, 24 V or 48 V, found %q", a["bank-voltage"])
	}
	p.AC, p.DC = n.ac > 0, n.dc > 0
	p.Mounting = map[string]string{"building": "roof_standoff", "vehicle": "roof_standoff", "boat": "roof_standoff"}[p.Place]
	if p.Mounting == "" {
		p.Mounting = "open_rack"
	}
	p.BankPoles = 1
	for _, step := range []func(numbers) error{p.panels, p.bank, p.inverter, p.lights, p.main} {
		if err := step(n); err != nil {
			return nil, err
		}
	}
	return p, nil
}

func (p *plan) panels(n numbers) error {
	p.PanelSeries = seriesPanels(fmt.Sprintf("%d V", p.V))
	count := int(n.panels)
	if count%p.PanelSeries != 0 {
		return fmt.Errorf("panels: %d do not make strings of %d, as %d V needs them", count, p.PanelSeries, p.V)
	}
	p.PanelParallel = count / p.PanelSeries
	power := float64(count) * panelPower
	charge, ok := ratingFor(power/float64(p.V)/1.15, 20, 30, 40, 60, 80, 100)
	if !ok {
		return fmt.Errorf("panels: %d give more than one controller of 100 A takes at %d V: at most %d, or a higher bank voltage", count, p.V, int(115*float64(p.V)/panelPower)/p.PanelSeries*p.PanelSeries)
	}
	if p.PanelParallel > 4 {
		return fmt.Errorf("panels: %d strings of %d are more than the 4 that one input takes here", p.PanelParallel, p.PanelSeries)
	}
	p.Charge = charge
	p.StringFuse = p.PanelParallel > 2
	parallel := float64(p.PanelParallel)
	p.PVShortCircuit = int(roundUp(parallel*panelShortCircuit*panelFactor, 10))
	p.PVPower = int(roundUp(1.3*float64(p.V*charge), 50))
	least := parallel * panelShortCircuit * panelFactor
	p.ArrayLeast = number(math.Round(least*10) / 10)
	var err error
	if p.ArrayDevice, err = deviceFor(least); err != nil {
		return err
	}
	hot := ""
	if p.Hottest != "" {
		// 30 K above the air: behind warm panels, in a conduit under the sun (common practice).
		hot = warmer(p.Hottest, 30)
	}
	c, err := conductorFor(25, panelBestCurrent, panelBest*float64(p.PanelSeries), 3, 0.01)
	if err != nil {
		return err
	}
	p.StringRun = p.run("string_run", c, "3 m", hot, "free_air", false)
	p.StringRun.Connector = "invented-plug"
	if p.Code == "us_2023" { // the one code that asks for it in free air
		p.StringRun.AboveRoof = "50 mm"
	}
	length := n.run
	if length == 0 {
		length = 15 // only to choose a size; the file leaves the length out
	}
	if c, err = conductorFor(p.ArrayDevice*3/2, parallel*panelBestCurrent, panelBest*float64(p.PanelSeries), length, 0.012); err != nil {
		return err
	}
	p.ArrayRun = p.run("array_run", c, p.Run, hot, "conduit", false)
	p.ArrayRun.Asked = true
	p.ArrayRun.AboveRoof = "100 mm"
	return nil
}

func (p *plan) bank(n numbers) error {
	p.Batteries = int(n.batteries)
	p.Series = 1
	most, takes := 4, 100.0
	if !p.Lithium {
		p.Series, most, takes = p.V/12, 3, 60
	}
	if p.Batteries > most {
		return fmt.Errorf("batteries: at most %d strings side by side here", most)
	}
	working := math.Max(1, float64(p.Batteries-1)) // with one string lost the others take the charge
	if float64(p.Charge) > takes*working {
		return fmt.Errorf("batteries: these panels charge with %d A, and %d strings take %.0f A, one of them lost; more batteries, fewer panels, or a higher bank voltage", p.Charge, p.Batteries, takes*working)
	}
	k := float64(p.V) / 12
	if p.Lithium {
		p.LowVoltage, p.InverterCutoff, p.Absorption, p.Float = p.scaled(11.6), p.scaled(11.8), p.scaled(14.2), p.scaled(13.5)
		p.BankWords = fmt.Sprintf("%d x %s V and 200 Ah: lithium iron phosphate.", p.Batteries, number(12.8*k))
	} else {
		p.LowVoltage, p.InverterCutoff, p.Absorption, p.Float = p.scaled(11.4), p.scaled(11.6), p.scaled(14.5), p.scaled(13.6)
		p.BankWords = fmt.Sprintf("%d in series x %d side by side, 12 V and 200 Ah each: sealed lead.", p.Series, p.Batteries)
	}
	least := longFactor * float64(p.Charge)
	p.ChargeLeast = number(least)
	device, err := deviceFor(least)
	if err != nil {
		return err
	}
	p.ChargeFuse = device
	c, err := conductorFor(device*5/4, float64(p.Charge), float64(p.V), 1.5, 0.008)
	if err != nil {
		return err
	}
	p.ChargeRun = p.run("run", c, "1.5 m", p.BankHottest, p.insideMethod(), true)
	return nil
}

func (p *plan) inverter(n numbers) error {
	if !p.AC {
		return nil
	}
	rating, ok := ratingFor(math.Max(n.ac*longFactor, n.surge/2), 300, 600, 1000, 1500, 2000, 3000, 4000)
	if !ok {
		return fmt.Errorf("ac-power: %.0f W, starting on %.0f W, is more than the inverters here give (4000 W, for a moment 8000 W)", n.ac, n.surge)
	}
	p.Inverter, p.InverterSurge, p.InverterIdle = rating, 2*rating, 3+rating/200
	lowest := float64(p.V) / 12 * 11.6
	current := float64(rating) / (lowest * 0.92)
	p.InverterCurrent, p.InverterLeast = number(math.Round(current*10)/10), number(math.Round(longFactor*current*10)/10)
	device, err := deviceFor(longFactor * current)
	if err != nil {
		return err
	}
	p.InverterFuse, p.InverterSwitch = device, device
	c, err := conductorFor(device*5/4, current, lowest, 1.2, 0.008)
	if err != nil {
		return err
	}
	p.InverterRun = p.run("run", c, "1.2 m", p.BankHottest, p.insideMethod(), true)
	return nil
}

func (p *plan) lights(n numbers) error {
	if !p.DC {
		return nil
	}
	current := n.dc / (float64(p.V) / 12 * 11)
	device, err := deviceFor(longFactor * current)
	if err != nil {
		return err
	}
	p.LightFuse = device
	c, err := conductorFor(device, current, float64(p.V)/12*11, 6, 0.015)
	if err != nil {
		return err
	}
	p.LightRun = p.run("run", c, "6 m", p.BankHottest, p.insideMethod(), true)
	return nil
}

// main sizes what all current passes through, and lists the parts.
func (p *plan) main(n numbers) error {
	lowest := float64(p.V) / 12 * 11
	out := n.dc/lowest + float64(p.Inverter)/(lowest*0.92)
	most := math.Max(out, float64(p.Charge))
	p.MainWords = fmt.Sprintf("at most %s A out, %d A in. 1.25 x %s A = %s A.", number(math.Round(out*10)/10), p.Charge, number(math.Round(most*10)/10), number(math.Round(longFactor*most*10)/10))
	device, err := deviceFor(longFactor * most)
	if err != nil {
		return err
	}
	p.MainFuse, p.MainSwitch, p.EachFuse = device, device, device
	c, err := conductorFor(device*5/4, most, float64(p.V), 1.2, 0.006)
	if err != nil {
		return err
	}
	p.MainRun = p.run("main_run", c, "1.2 m", p.BankHottest, p.insideMethod(), true)
	used := []int{p.MainFuse, p.ChargeFuse, p.InverterFuse, p.LightFuse}
	for _, size := range deviceSizes {
		if slices.Contains(used, size) {
			p.Fuses = append(p.Fuses, size)
		}
	}
	seen := map[string]bool{}
	for _, r := range []run{p.StringRun, p.ArrayRun, p.ChargeRun, p.MainRun, p.InverterRun, p.LightRun} {
		if r.Cable.Part != "" && !seen[r.Cable.Part] {
			seen[r.Cable.Part] = true
			p.Cables = append(p.Cables, r.Cable)
		}
	}
	return nil
}
