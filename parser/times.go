package parser

import (
	"regexp"
	"slices"
)

// Hours and years are numbers of no piece and no gear: "3 of us till 4 pm",
// "the new guy is 19 years old". Gear that is told to be so old has no figure.

// lastHour is the last that a clock shows.
const lastHour = 24

// timeOfDay is an hour with its minutes: no tackle has so many parts.
var timeOfDay = regexp.MustCompile(`^(?:[01]?[0-9]|2[0-3]):[0-5][0-9]$`)

// ofClock says whether what is asked about can only be a time of day.
func ofClock(a *Ask) bool { return a.Kind == OddNumber && timeOfDay.MatchString(a.Words) }

// times takes out the hours and the years.
func (rd *reading) times() {
	for i := 0; i < len(rd.elems); i++ {
		from := i
		if rd.at(i - 1).marked(markClockBefore) {
			from--
		}
		switch {
		case from < i && rd.cued(rd.elems[from], cueBackIn) && rd.elems[i].fig.minutes() && rd.endsBreath(i+1):
			rd.pass(from, i+1) // "le seguimos en 30"
			i = from
		case !rd.elems[i].fig.hour():
		case rd.at(i + 1).marked(markClock):
			rd.pass(from, i+2)
			i = from
		case from < i && rd.endsBreath(i+1):
			rd.pass(from, i+1)
			i = from
		}
	}
	for i := 0; i < len(rd.elems); i++ {
		fig := rd.elems[i].fig
		if rd.cold(i) {
			i = rd.passCold(i)
			continue
		}
		if fig == nil || fig.dim != dimCount || fig.unit != nil {
			continue
		}
		if rd.termAt(i + 1).foreign {
			rd.pass(i, i+2)
			i--
			continue
		}
		if !rd.at(i + 1).marked(markAge) {
			continue
		}
		var told []element
		if next := rd.at(i + 2); rd.ofGear(i-1) || next.part() != "" || next.marked(markGear) {
			told = []element{{start: rd.elems[i].start, end: rd.elems[i+1].end, term: &term{note: noteWorn}}}
		}
		rd.pass(i, i+2, told...)
	}
}

// cold says whether the number at i is how warm it is outside: "minus 10 celsius".
func (rd *reading) cold(i int) bool {
	fig := rd.elems[i].fig
	return fig != nil && (fig.dim == dimCount && fig.unit == nil || fig.dim == dimAngle) && rd.termAt(i+1).foreign && rd.cued(rd.at(i+1), cueWarmth)
}

// passCold passes over it with the "minus" before it, and returns what stands before.
func (rd *reading) passCold(i int) int {
	from := i
	if rd.termAt(i-1).turning == TurnsSum {
		from--
	}
	rd.pass(from, i+2)
	return from - 1
}

// pass takes elements out, with something else in their place or nothing. Their
// words are said back.
func (rd *reading) pass(from, to int, instead ...element) {
	start, end := rd.elems[from].start, rd.elems[to-1].end
	words := rd.text[start:end]
	rd.passed = append(rd.passed, Said[string]{Value: words, Words: words, Start: start, End: end})
	rd.elems = slices.Replace(rd.elems, from, to, instead...)
}

// noteWorn is the note of gear that no figure holds for.
const noteWorn = "worn"

// hour says whether a number can be one of the clock.
func (f *figure) hour() bool {
	return f != nil && f.dim == dimCount && f.unit == nil && f.low >= 0 && f.high <= lastHour
}

// cueBackIn stands before in how many minutes somebody goes on: "back in 30".
const cueBackIn cue = "back-in"

// minutes says whether a number can be those until somebody goes on.
func (f *figure) minutes() bool {
	const most = 60
	return f != nil && f.dim == dimCount && f.unit == nil && f.low > 0 && f.high <= most
}

// endsBreath says whether nothing goes on at an element that could be what a
// number before it counts.
func (rd *reading) endsBreath(i int) bool {
	e := rd.at(i)
	return i >= len(rd.elems) || e.pause > 0 || e.marked(markAnd)
}

// ofGear says whether what is told up to an element is of gear: "cuerda de 12
// años", "rope 16,000 lb break, 10 years old".
func (rd *reading) ofGear(i int) bool {
	for ; i >= 0 && rd.at(i).pause < 4; i-- {
		switch e := rd.at(i); {
		case e.part() != "", e.marked(markGear), e.strength() != "":
			return true
		case e.piece(), e.plays(People), e.plays(Weight), e.marked(markPerson):
			return false
		}
	}
	return false
}
