package facts_test

import (
	"testing"

	"stringline/lint/facts"
	"stringline/lint/physics/panel"
	"stringline/lint/physics/sun"
	"stringline/lint/physics/weather"
)

// BenchmarkYear holds a year of a design with two unlike strings and loads, all
// its balances and unserved hours, against 8,760 exact searches of that input's
// maximum, the named baseline. The bar is a twentieth, and 8 MB.
func BenchmarkYear(b *testing.B) {
	d := load(b, yearly()).Design()
	b.Run("of a workshop", func(b *testing.B) { // the sky is that of a design before
		b.ReportAllocs()
		var weathers facts.Weathers
		for b.Loop() {
			s := facts.NewWith(d, &weathers)
			if !get(b, s, "system.unserved_hours").Known || !get(b, s, "system.worst_month_balance").Known || !get(b, s, "charger.main.clipped_energy").Known {
				b.Fatal("the year is unknown")
			}
		}
	})
	b.Run("facts", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			s := facts.New(d)
			if !get(b, s, "system.unserved_hours").Known || !get(b, s, "system.worst_month_balance").Known || !get(b, s, "charger.main.clipped_energy").Known {
				b.Fatal("the year is unknown")
			}
		}
	})
	b.Run("baseline", func(b *testing.B) {
		fit := func(sheet panel.DataSheet) panel.Model {
			f, err := panel.FitDataSheet(sheet)
			if err != nil {
				b.Fatal(err)
			}
			return f.Model
		}
		slate := fit(panel.DataSheet{Pmax: 410, Voc: 37.4, Isc: 13.9, Vmp: 31.4, Imp: 13.06, VoltageCoefficient: -0.0026, CurrentCoefficient: 0.0005, Cells: 54})
		dusk := fit(panel.DataSheet{Pmax: 380, Voc: 41, Isc: 11.4, Vmp: 34.4, Imp: 10.9, VoltageCoefficient: -0.0028, CurrentCoefficient: 0.0005, Cells: 60})
		layout, err := panel.NewLayout([]panel.StringLayout{
			{Count: 2, Panels: []panel.Panels{{Model: slate, Count: 2, Diodes: 3}}},
			{Count: 1, Panels: []panel.Panels{{Model: slate, Count: 1, Diodes: 3}, {Model: dusk, Count: 1, Diodes: 3}}},
		})
		if err != nil {
			b.Fatal(err)
		}
		seasons := weather.Seasons{Coldest: 246.15, Hottest: 302.15, Latitude: 46.52}
		year, err := weather.ClearSky{Latitude: 46.52, Longitude: 9.87, Elevation: 1840, Zone: 1, Turbidity: 3, Step: 3600e9, Air: seasons.Air}.Year()
		if err != nil {
			b.Fatal(err)
		}
		light, err := year.OnPlanes(sun.Site{Latitude: 46.52, Longitude: 9.87, Elevation: 1840}, 0.2, sun.Plane{Tilt: 45, Azimuth: 180})
		if err != nil {
			b.Fatal(err)
		}
		b.ReportAllocs()
		for b.Loop() {
			for h := range 8760 {
				g := max(100, light[0][h]) // every hour costs a search, the dark ones too
				in, err := layout.At(panel.Condition{Irradiance: g, Cell: year.Air[h] + 24*g/800})
				if err != nil {
					b.Fatal(err)
				}
				if _, err := in.Maximum(); err != nil {
					b.Fatal(err)
				}
			}
		}
	})
}
