package sun

import (
	"math"
	"time"
)

// Day is one day's sun at a place.
type Day struct {
	Noon      time.Time     // the sun on the meridian
	Rise, Set time.Time     // zero where the sun does not cross the horizon
	Up        time.Duration // from rise to set; 24 hours or 0 where it does not
}

// DayOf gives sunrise, noon and sunset of a calendar day in local mean time, in
// UTC: to some 20 s at middle latitudes over an open horizon at sea level. The
// upper rim and 34 minutes of arc of refraction count, as in almanacs. Near the
// poles, on days when the sun barely crosses the horizon, minutes are possible.
func DayOf(year int, month time.Month, day int, s Site) Day {
	midnight := time.Date(year, month, day, 0, 0, 0, 0, time.UTC)
	mean := daysOf(midnight) + 0.5 - s.Longitude/360 // when the mean sun is on the meridian
	noon := mean
	for range 3 {
		noon = mean - solar(noon).ahead/360
	}
	d := Day{Noon: timeOf(noon)}
	sinLatitude, cosLatitude := math.Sincos(s.Latitude * degree)
	// cross finds when the sun passes the horizon before (-1) or after (1) noon.
	cross := func(side float64) (at float64, always, never bool) {
		at = noon
		for range 6 {
			e := solar(at)
			sinDeclination, cosDeclination := math.Sincos(e.declination * degree)
			needed, reach := math.Sin(risen*degree)-sinLatitude*sinDeclination, cosLatitude*cosDeclination
			switch {
			case needed >= reach:
				return 0, false, true
			case needed <= -reach:
				return 0, true, false
			}
			at = mean + (side*math.Acos(needed/reach)/degree-e.ahead)/360
		}
		return at, false, false
	}
	rise, always, never := cross(-1)
	set, alsoAlways, alsoNever := cross(1)
	switch {
	case never || alsoNever:
	case always || alsoAlways:
		d.Up = 24 * time.Hour
	default:
		d.Rise, d.Set = timeOf(rise), timeOf(set)
		d.Up = d.Set.Sub(d.Rise)
	}
	return d
}

func timeOf(days float64) time.Time {
	return time.Unix(946728000, 0).UTC().Add(time.Duration(days * secondsADay * float64(time.Second))).Round(time.Millisecond)
}
