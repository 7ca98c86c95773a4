package talk

import (
	"regexp"
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/senses"
)

// clockTyped is a time of day anywhere in a message.
var clockTyped = regexp.MustCompile(`(?:^|[^0-9:.,])(?:[01]?[0-9]|2[0-3]):[0-5][0-9](?:[^0-9:]|$)`)

// asksRecord says whether it is asked what was answered, or who stood by it. A mass
// may tell which entry is meant, a length would be one of a piece.
func asksRecord(rd *reading.Reading) bool {
	if Typed(rd, lexicon.CueEntered) && !rd.AnyAt(rd.Is(ofPiece)) {
		return true // "did anyone log that 620 pounder"
	}
	if !questioned(rd) && !Typed(rd, lexicon.CueUtmost) || Typed(rd, lexicon.CueAhead) || rd.AnyAt(rd.Is(ofPiece)) {
		return false
	}
	asked, _, _ := senses.Intents(rd)
	of := func(in parser.Intent) bool {
		return in != parser.AskLog && in != parser.AskWeight && in != parser.AskBlockLoad
	}
	clock := clockTyped.MatchString(rd.Text)
	switch {
	case Typed(rd, lexicon.CueConfirmed) && (Typed(rd, lexicon.CueWhose) || asksPast(rd)) && !asksBut(rd, parser.AskLift):
		return true // "who signed off the 900 lb lift" lifts none
	case slices.ContainsFunc(asked, of):
		return false
	case Typed(rd, lexicon.CueConfirmed) && (Typed(rd, lexicon.CueWhose) || Typed(rd, lexicon.CueEarlier) || clock):
		return true
	case clock && Typed(rd, lexicon.CueOutcome):
		return true
	}
	tree := rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Tree != nil || rd.Elems[i].Fig != nil && !places.Bare(rd.Elems[i].Fig, 1)
	})
	return !tree && Typed(rd, lexicon.CueUtmost) && Typed(rd, lexicon.CueRecorded) && Typed(rd, lexicon.CueEarlier)
}

// ofPiece says whether a number with a unit stands at i that no entry is known by.
func ofPiece(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig != nil && (fig.Pair || fig.Unit != nil && fig.Dim != parser.DimMass)
}

// asksPast says whether a message begins as one that asks whether something is so: "was
// the 900 lb lift confirmed".
func asksPast(rd *reading.Reading) bool {
	words := plainWords(rd)
	return len(words) > 0 && rd.In.Cued(words[0], lexicon.CueAsksPast)
}

// AsksFirst says whether the first word of a message asks: "which", "is".
func AsksFirst(rd *reading.Reading) bool {
	words := plainWords(rd)
	return len(words) > 0 && (rd.In.Cued(words[0], lexicon.CueQuery) || asksPast(rd) || rd.In.Cued(words[0], lexicon.CueQueryFirst))
}

// asksLimit says whether it is asked what a piece may weigh here today, whichever figure
// somebody remembers: "is our limit still 400".
func asksLimit(rd *reading.Reading) bool {
	asks := asksPast(rd) || questioned(rd)
	other := func(i int) bool {
		e := rd.Elems[i]
		light := e.Fig != nil && e.Fig.Dim != parser.DimMass && e.Fig.Dim != parser.DimCount
		return light || rd.TermAt(i).Tree != nil || rd.TermAt(i).Shape != "" || rd.TermAt(i).Unnamed || gear.Part(e) != "" || e.Plays(parser.Parts) || e.Plays(parser.Wraps)
	}
	return asks && !rd.Changed && Typed(rd, lexicon.CueOurLimit) && !rd.AnyAt(other)
}

// wonders says whether it is asked why the last answer is what it is, and nothing names the
// record: "why so many, we did it with less last week".
func wonders(rd *reading.Reading) bool {
	return !rd.First && Explain(rd) != "" && !logNamed(rd) && !Typed(rd, lexicon.CueInLog) && !Typed(rd, lexicon.CueConfirmed)
}
