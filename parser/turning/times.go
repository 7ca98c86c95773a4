package turning

import (
	"regexp"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Hours and years are numbers of no piece and no gear: "3 of us till 4 pm",
// "the new guy is 19 years old". Gear that is told to be so old has no figure.

// lastHour is the last that a clock shows.
const lastHour = 24

// timeOfDay is an hour with its minutes: no tackle has so many parts.
var timeOfDay = regexp.MustCompile(`^(?:[01]?[0-9]|2[0-3]):[0-5][0-9]$`)

// ofClock says whether what is asked about can only be a time of day.
func ofClock(a *parser.Ask) bool { return a.Kind == parser.OddNumber && timeOfDay.MatchString(a.Words) }

// Times takes out the hours and the years.
func Times(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		from := i
		if rd.At(i - 1).Marked(lexicon.MarkClockBefore) {
			from--
		}
		switch {
		case from < i && rd.Cued(rd.Elems[from], lexicon.CueBackIn) && minutes(rd.Elems[i].Fig) && rd.EndsBreath(i+1):
			rd.Pass(from, i+1) // "le seguimos en 30"
			i = from
		case !hour(rd.Elems[i].Fig):
		case rd.At(i + 1).Marked(lexicon.MarkClock):
			rd.Pass(from, i+2)
			i = from
		case from < i && (rd.EndsBreath(i+1) || rd.Cued(rd.At(i+1), lexicon.CueClause)):
			rd.Pass(from, i+1) // "booked till 2 so i need to know"
			i = from
		}
	}
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		if cold(rd, i) {
			i = passCold(rd, i)
			continue
		}
		if hot(rd, i) {
			rd.Pass(i, i+1)
			i--
			continue
		}
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil {
			continue
		}
		if rd.TermAt(i+1).Foreign || inMinutes(rd, i) {
			rd.Pass(i, i+2)
			i--
			continue
		}
		if !rd.At(i + 1).Marked(lexicon.MarkAge) {
			continue
		}
		var told []reading.Element
		if next := rd.At(i + 2); ofGear(rd, i-1) || gear.Part(next) != "" || next.Marked(lexicon.MarkGear) {
			told = []reading.Element{{Start: rd.Elems[i].Start, End: rd.Elems[i+1].End, Term: &scan.Term{Note: stops.NoteWorn}}}
		}
		rd.Pass(i, i+2, told...)
	}
}

// inMinutes reads "got 5 min" and "back in 10 min", where "min" may be the least as well:
// behind what somebody has, or "in", a small number of nothing else ends what is said.
func inMinutes(rd *reading.Reading, i int) bool {
	before := rd.At(rd.Past(i-1, -1, lexicon.MarkArticle))
	led := rd.Cued(before, lexicon.CueOwns) || before.Marked(lexicon.MarkIn) || rd.Cued(before, lexicon.CueBackIn)
	return minutes(rd.Elems[i].Fig) && led && rd.Cued(rd.At(i+1), lexicon.CueMinute) && rd.EndsBreath(i+2)
}

// cold says whether the number at i is how warm it is outside: "minus 10 celsius".
func cold(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig != nil && (fig.Dim == parser.DimCount && fig.Unit == nil || fig.Dim == parser.DimAngle) && rd.TermAt(i+1).Foreign && rd.Cued(rd.At(i+1), lexicon.CueWarmth)
}

// hot says whether the number at i, in degrees, is how hot it is: "its 96 degrees out",
// which begins a message and ends with where, or what begins with that it is of the day:
// "estamos a 38 grados".
func hot(rd *reading.Reading, i int) bool {
	const least, most, leastCelsius, mostCelsius = 80, 120, 33, 44 // no angle that is commonly told
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimAngle || fig.Low != fig.High {
		return false
	}
	warm := fig.Low >= least && fig.Low <= most || fig.Low >= leastCelsius && fig.Low <= mostCelsius
	if rd.Cued(rd.At(rd.Past(i-1, -1, lexicon.MarkAt|lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkArticle)), lexicon.CueHeatOf) {
		return warm && rd.EndsBreath(i+1)
	}
	return i > 0 && begins(rd, i-1) && fig.Low != 90 && warm && fig.Low >= least && rd.Cued(rd.At(i-1), lexicon.CueWas) && rd.Cued(rd.At(i+1), lexicon.CueOutdoors) && (rd.EndsBreath(i+2) || rd.At(i+2).Marked(lexicon.MarkAnd))
}

// passCold passes over it with the "minus" before it, and returns what stands before.
func passCold(rd *reading.Reading, i int) int {
	from := i
	if rd.TermAt(i-1).Turning == parser.TurnsSum {
		from--
	}
	rd.Pass(from, i+2)
	return from - 1
}

// hour says whether a number can be one of the clock.
func hour(f *reading.Figure) bool {
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low >= 0 && f.High <= lastHour
}

// minutes says whether a number can be those until somebody goes on.
func minutes(f *reading.Figure) bool {
	const most = 60
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low > 0 && f.High <= most
}

// ofGear says whether what is told up to an element is of gear: "cuerda de 12
// años", "rope 16,000 lb break, 10 years old".
func ofGear(rd *reading.Reading, i int) bool {
	for ; i >= 0 && rd.At(i).Pause < 4; i-- {
		switch e := rd.At(i); {
		case gear.Part(e) != "", e.Marked(lexicon.MarkGear), gear.Strength(e) != "":
			return true
		case e.Piece(), e.Plays(parser.People), e.Plays(parser.Weight), e.Marked(lexicon.MarkPerson):
			return false
		}
	}
	return false
}
