package lines

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// NamedLong claims how long a rope is, told right behind its name or how thick it is: "half
// inch line 150 ft, will it lower a 12 in limb". What is told of the piece then is not so
// long. The line that a load swings on is none that is brought along.
func NamedLong(rd *reading.Reading) {
	if swingsOnIt(rd) {
		return
	}
	for i, e := range rd.Elems {
		if !gear.Far(rd, i) || e.Fig.Low < shortestHand || e.Fig.Told != "" || e.Fig.Elsewhere || e.Fig.Pair || e.Fig.Falling || !rd.EndsBreath(afterAbout(rd, behindLong(rd, i))) {
			continue
		}
		if behindName(rd, i) {
			places.Claim(rd, i, parser.RopeLength)
			forgetLong(rd, i)
			return
		}
	}
}

// longWord says whether the element at i is a word for how long something is, and no number.
func longWord(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig == nil && e.Plays(parser.Length) && rd.TermAt(i).Shape == "" && !rd.TermAt(i).Unnamed
}

// behindLong is behind the number at i and the "long" that may stand there.
func behindLong(rd *reading.Reading, i int) int {
	if longWord(rd, i+1) {
		return i + 2
	}
	return i + 1
}

// forgetLong takes their roles from the words for a length beside the number at i: it is that
// of the rope.
func forgetLong(rd *reading.Reading, i int) {
	for _, k := range []int{i + 1, rd.Back(i - 1)} {
		if longWord(rd, k) {
			rd.Alter(k, func(t *scan.Term) { t.Roles = nil })
		}
	}
}

// afterAbout passes over "or so" at i.
func afterAbout(rd *reading.Reading, i int) int {
	if rd.TermAt(i).Note == "about" {
		return i + 1
	}
	return i
}

// swingsOnIt says whether a line may be one that something swings or is steered on.
func swingsOnIt(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		return e.Plays(parser.Sideways) || e.Term != nil && (e.Term.Intent == parser.AskBalance || e.Term.Intent == parser.AskSwing)
	})
}

// behindName says whether the length at i stands right behind a rope that begins its breath,
// or that is told to be so thick: behind that, a comma may part them.
func behindName(rd *reading.Reading, i int) bool {
	k, apart := rd.Back(i-1), false
	if longWord(rd, k) {
		k = rd.Back(k - 1) // "half inch double braid, length is 50 metres"
		for rd.At(k).Pause == 0 && rd.At(k).Fig == nil && (rd.TermAt(k).Chatter || rd.At(k).Polite()) {
			k-- // "double braid, man length is 50 metres"
		}
	}
	if rd.At(k).Pause == 2 {
		k, apart = k-1, true
	}
	name := rd.At(k)
	if name.Plays(parser.RopeLength) && gear.Part(name) == "" && name.LeadsTo(parser.RopeLength) {
		return true // "not much rope out, 40 ft or so"
	}
	if name.Fig.Short() && (name.Fig.Rope || gear.OfRope(rd, k)) {
		return true // "soga de 13 mm 45 m"
	}
	named := gear.Part(name) == lexicon.PartRope && rd.Cued(name, lexicon.CueRopeName) || strings.HasPrefix(rd.TermAt(k).Note, "rope-")
	if k < 0 || !named {
		return false
	}
	before := rd.Past(k-1, -1, lexicon.MarkArticle)
	thick := rd.At(before).Fig
	return !apart && (before < 0 || rd.At(before).Pause > 0 || rd.At(before).Marked(lexicon.MarkAnd)) || thick != nil && (thick.Rope || gear.OfRope(rd, before)) && !gear.Far(rd, before)
}
