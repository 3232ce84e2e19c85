package weather

import (
	"math"

	"stringline/lint/physics"
	"stringline/lint/physics/sun"
)

// OnPlanes gives the light in W/m2 that falls on each of some planes at a site,
// one value a step, by the anisotropic sky of [sun.Surface.Light]. The site is the
// design's own, which may stand some way from the weather station; albedo is 0 to
// 1. The sun is gone through once, whatever the number of planes. A year whose time
// zone is unknown, or without hours, is refused.
func (y *Year) OnPlanes(site sun.Site, albedo float64, planes ...sun.Plane) ([][]float64, error) {
	const doing = "light on a plane"
	if err := site.Check(); err != nil {
		return nil, err
	}
	if err := physics.Check(doing, physics.Input{Name: "albedo", Value: albedo, Min: 0, Max: 1}); err != nil {
		return nil, err
	}
	if math.IsNaN(y.Zone) {
		return nil, physics.Refuse(doing, "the weather file does not tell its time zone")
	}
	if y.Global == nil {
		return nil, physics.Refuse(doing, "the year has no hours")
	}
	surfaces := make([]sun.Surface, len(planes))
	light := make([][]float64, len(planes))
	for k, p := range planes {
		if err := p.Check(); err != nil {
			return nil, err
		}
		surfaces[k] = p.Surface(albedo)
		light[k] = make([]float64, len(y.Global))
	}
	for i, ray := range site.Through(y.Middle(0, y.Of), y.Step, len(y.Global)) {
		sky := sun.Sky{Global: y.Global[i], Beam: y.Beam[i], Diffuse: y.Diffuse[i]}
		if sky == (sun.Sky{}) {
			continue
		}
		for k := range surfaces {
			light[k][i] = surfaces[k].Light(sky, ray).Total()
		}
	}
	return light, nil
}
