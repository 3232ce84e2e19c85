package facts

import (
	"bytes"
	"fmt"
	"math"
	"sync"
	"time"
	"unicode/utf8"

	"stringline/lint/physics/sun"
	"stringline/lint/physics/weather"
	"stringline/schema/design"
	"stringline/schema/source"
)

// Weathers keeps what the designs of a workshop share of weather: files, each read
// once, clear skies over a site, and the light in a plane. It is safe for
// concurrent use. The zero value is ready.
type Weathers struct {
	mutex sync.Mutex
	files map[*byte]*weatherFile // by the text's first byte: the text itself is shared
	clear map[clearSite]*weather.Year
	light map[litPlane][]float64
}

// clearSite is what a clear sky hangs on.
type clearSite struct {
	at  sun.Site
	air weather.Seasons
}

// litPlane is what the light in a plane hangs on.
type litPlane struct {
	year   *weather.Year
	at     sun.Site
	albedo float64
	plane  sun.Plane
}

// mostShared bounds how many skies and planes are kept: some 70 kB each.
const mostShared = 64

// clearYear gives the clear sky over a site.
func (all *Weathers) clearYear(site clearSite) (*weather.Year, error) {
	all.mutex.Lock()
	year := all.clear[site]
	all.mutex.Unlock()
	if year != nil {
		return year, nil
	}
	year, err := weather.ClearSky{
		Latitude: site.at.Latitude, Longitude: site.at.Longitude, Elevation: site.at.Elevation,
		Zone: weather.ZoneOf(site.at.Longitude), Turbidity: sun.LinkeTurbidity, Step: time.Hour, Air: site.air.Through(time.Hour),
	}.Year()
	if err != nil {
		return nil, err
	}
	all.mutex.Lock()
	defer all.mutex.Unlock()
	if all.clear == nil || len(all.clear) >= mostShared {
		all.clear = map[clearSite]*weather.Year{}
	}
	all.clear[site] = year
	return year, nil
}

// onPlanes gives the light in planes, as [weather.Year.OnPlanes]. It is shared and
// must not be changed.
func (all *Weathers) onPlanes(year *weather.Year, at sun.Site, albedo float64, planes []sun.Plane) ([][]float64, error) {
	found := make([][]float64, len(planes))
	var lacking []sun.Plane
	all.mutex.Lock()
	for n, p := range planes {
		if found[n] = all.light[litPlane{year, at, albedo, p}]; found[n] == nil {
			lacking = append(lacking, p)
		}
	}
	all.mutex.Unlock()
	if len(lacking) == 0 {
		return found, nil
	}
	made, err := year.OnPlanes(at, albedo, lacking...)
	if err != nil {
		return nil, err
	}
	all.mutex.Lock()
	defer all.mutex.Unlock()
	if all.light == nil || len(all.light)+len(made) > mostShared {
		all.light = map[litPlane][]float64{}
	}
	for n := range found {
		if found[n] == nil {
			found[n], made = made[0], made[1:]
			all.light[litPlane{year, at, albedo, planes[n]}] = found[n]
		}
	}
	return found, nil
}

// weatherFile is one EPW file: its header, and its year once that is wanted.
type weatherFile struct {
	text []byte

	header         sync.Once
	head           *weather.Year
	headerProblems []weather.Problem

	whole    sync.Once
	year     *weather.Year
	problems []weather.Problem
}

func (all *Weathers) of(file *design.Weather) *weatherFile {
	if file == nil {
		return nil
	}
	if len(file.Text) == 0 {
		return &weatherFile{}
	}
	all.mutex.Lock()
	defer all.mutex.Unlock()
	if all.files == nil {
		all.files = map[*byte]*weatherFile{}
	}
	f := all.files[&file.Text[0]]
	if f == nil {
		f = &weatherFile{text: file.Text}
		all.files[&file.Text[0]] = f
	}
	return f
}

// readHeader gives the header alone; nil where it cannot be read.
func (f *weatherFile) readHeader() (*weather.Year, []weather.Problem) {
	f.header.Do(func() { f.head, f.headerProblems = weather.ReadHeader(f.text) })
	return f.head, f.headerProblems
}

// read gives the year with its hours; nil where not even the header can be read.
func (f *weatherFile) read() (*weather.Year, []weather.Problem) {
	f.whole.Do(func() { f.year, f.problems = weather.Read(f.text) })
	return f.year, f.problems
}

// Problems gives what only physics can see wrong with the files of a design: the
// lines of its weather file that cannot be read or believed. The rest of the
// design is judged all the same; sums of a year that rest on too many of them
// are unknown. It reads the whole weather file, once.
func (s *System) Problems() source.Problems {
	site, ok := s.subjects["site"][0].typed.(*Site)
	if !ok || site.file == nil {
		return nil
	}
	_, found := site.weather.read()
	var problems source.Problems
	for _, p := range found {
		at := source.Range{File: site.file.File}
		line, start := lineOf(site.file.Text, p.Line)
		at.Start.Line, at.Start.Column, at.Start.Byte = p.Line, column(line, p.Field), start
		at.End = at.Start
		problems = append(problems, source.Problem{Kind: "weather", Message: p.Message, Block: "site", At: at})
	}
	return append(problems, site.elsewhere()...)
}

// How far a weather file may be from the site that names it before it is taken for
// another place's: a station serves its region, and its mountains badly. The figures
// are the project's own, wide enough for an honest choice of station and too narrow
// for a slip.
const (
	farthestStation = 250e3  // m
	highestStation  = 1000.0 // m above or below the site
	warmestSlip     = 10.0   // K of the written coldest above the file's
)

// elsewhere gives what the site says of itself that its weather file contradicts.
func (s *Site) elsewhere() (problems source.Problems) {
	named, given := s.block.Value("weather")
	head, _ := s.weather.readHeader()
	if !given || head == nil {
		return nil
	}
	wrong := func(format string, args ...any) {
		problems = append(problems, source.Problem{Kind: "weather", Message: "weather: " + fmt.Sprintf(format, args...), Block: "site", At: named.At})
	}
	written := func(name string) (float64, bool) {
		v, ok := s.block.Value(name)
		return valueOf(v), ok && !v.Bad
	}
	latitude, there := written("latitude")
	longitude, both := written("longitude")
	if there && both && finite(head.Latitude) && finite(head.Longitude) {
		if far := apart(latitude, longitude, head.Latitude*radian, head.Longitude*radian); far > farthestStation {
			wrong("the file is of a place %.0f km from the site", far/1000)
		}
	}
	if elevation, ok := written("elevation"); ok && finite(head.Elevation) && math.Abs(elevation-head.Elevation) > highestStation {
		wrong("the file is of a place at %.0f m, the site is at %.0f m", head.Elevation, elevation)
	}
	if coldest, ok := written("coldest"); ok && head.Extremes.Known && coldest > head.Extremes.MeanMin+warmestSlip {
		wrong("coldest is written as %s; the file's extreme annual mean minimum is %s", say(coldest, "degC"), say(head.Extremes.MeanMin, "degC"))
	}
	return problems
}

func valueOf(v *design.Value) float64 {
	if v == nil {
		return 0
	}
	return v.SI
}

// apart gives the distance in m between two places on the Earth, angles in rad:
// the haversine on a sphere of 6371 km.
func apart(latitude, longitude, latitude2, longitude2 float64) float64 {
	a, b := math.Sin((latitude2-latitude)/2), math.Sin((longitude2-longitude)/2)
	return 2 * 6371e3 * math.Asin(math.Min(1, math.Sqrt(a*a+math.Cos(latitude)*math.Cos(latitude2)*b*b)))
}

// lineOf gives a line of a text, counting from 1, without its end, and the byte
// that it begins at.
func lineOf(text []byte, number int) (line []byte, start int) {
	for n := 1; ; n++ {
		line, rest, more := bytes.Cut(text, []byte("\n"))
		if n == number {
			return line, start
		}
		if !more {
			return nil, start
		}
		start += len(line) + 1
		text = rest
	}
}

// column gives where a field of a line begins, in code points from 1; fields
// count from 1, and 0 stands for the line as a whole.
func column(line []byte, field int) int {
	at := 1
	for n := 1; n < field; n++ {
		part, rest, more := bytes.Cut(line, []byte(","))
		if !more {
			return at
		}
		at += utf8.RuneCount(part) + 1
		line = rest
	}
	return at
}

// filledIn says in one clause what of a weather year was filled in.
func filledIn(y *weather.Year) string {
	if y.Repaired == 0 && y.Guessed == 0 {
		return ""
	}
	return fmt.Sprintf(", %d values of it filled in", y.Repaired+y.Guessed)
}
