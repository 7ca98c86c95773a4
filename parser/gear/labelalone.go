package gear

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LabelAlone asks which gear's a figure is that stands on a label, where the message names no
// gear at all: "it says 9000 on the tag". It is what no piece weighs.
func LabelAlone(rd *reading.Reading) {
	const least = 100
	ofOther := func(i int) bool {
		if rd.Elems[i].Marked(lexicon.MarkFollow) {
			return false // "same piece" tells of none
		}
		weighs := rd.Elems[i].Plays(parser.Weight) && rd.TermAt(i).Note != "about" // "says" plays it as well
		return Part(rd.Elems[i]) != "" || Strength(rd.Elems[i]) != "" || rd.Elems[i].Piece() || weighs
	}
	if rd.AnyAt(ofOther) {
		return
	}
	for i, e := range rd.Elems {
		fig := e.Fig
		if kilonewtons(rd, i) && (rd.TypedBefore(i, lexicon.CueStamped) || rd.At(i-1).Marked(lexicon.MarkArticle)) {
			asksWhichGear(rd, fig) // "it says 30 kN", "this one is a 36 kN"
			continue
		}
		if kilonewtons(rd, i) && behindThin(rd, i) {
			asksWhichGear(rd, fig)
			continue
		}
		bare := fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil
		if fig == nil || fig.Sure != "" || !bare && !Heavy(rd, i) || bare && fig.Low < least || !onLabel(rd, i) {
			continue
		}
		asksWhichGear(rd, fig)
	}
}

// behindThin says whether the figure at i stands behind how thick gear is that is not named,
// with nothing told of between: "a 19 mm one, 70 kN".
func behindThin(rd *reading.Reading, i int) bool {
	k := i - 1
	for k >= 0 && rd.Elems[k].Fig == nil {
		k--
	}
	return k >= 0 && (rd.Elems[k].Fig.Rope || thinAsGear(rd, k))
}

// asksWhichGear asks which gear's a figure is.
func asksWhichGear(rd *reading.Reading, fig *reading.Figure) {
	a := fig.Ask(parser.WhichGear, rd.Text)
	a.Fields = []parser.Field{parser.RopeWorking, parser.BlockWorking, parser.SlingWorking, parser.ConnectorWorking}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
}

// kilonewtons says whether the number at i is of the size and in the unit of what is stamped
// on gear: nobody tells so what a piece weighs, and no line is pulled as hard by hand.
func kilonewtons(rd *reading.Reading, i int) bool {
	const least = 10000 // N
	fig := rd.Elems[i].Fig
	return fig != nil && fig.Sure == "" && fig.Told == "" && fig.Dim == parser.DimForce && fig.Unit.System == parser.Metric && fig.Low >= least
}

// onLabel says whether a number is what a label says: "the tag says 9000", "9000 on the tag".
func onLabel(rd *reading.Reading, i int) bool {
	small := lexicon.MarkArticle | lexicon.MarkWhere | lexicon.MarkAt | lexicon.MarkMade | lexicon.MarkIs
	if rd.TermAt(rd.Past(i+1, 1, small)).Label || rd.TypedAfter(i, lexicon.CueOnTag) && !tagLine(rd) {
		return true
	}
	from, _ := rd.Span(rd.Elems[i].Start, func(e reading.Element) bool { return e.Pause > 0 })
	words := scan.SplitWords(rd.Text[from:rd.Elems[i].Start])
	for n := 2; n <= min(reading.LongestCue, len(words)); n++ { // "says" alone is what somebody does
		if rd.In.Cued(strings.Join(words[len(words)-n:], " "), lexicon.CueStamped) {
			return true
		}
	}
	k := i - 1
	for k >= 0 && !rd.TermAt(k).Label && between(rd, k) {
		k--
	}
	return rd.TermAt(k).Label
}

// Labelled is the gear that the mass at i is told of as what stands on its label, in whatever
// words between: "block is a 5/8, 8000 lb on the tag". It is the last that is named before,
// else the one that the message names; which of the two figures it is stays asked.
func Labelled(rd *reading.Reading, i int) scan.Part {
	fig := rd.Elems[i].Fig
	if fig.Unit == nil || fig.Dim == parser.DimCount || tagLine(rd) || !onLabel(rd, i) && !saidOfGear(rd, i) {
		return ""
	}
	for k := i - 1; k >= 0 && !Heavy(rd, k); k-- {
		if p := Part(rd.At(k)); p != "" {
			return p
		}
	}
	return PartMeant(rd)
}

// saidOfGear reads "use the slings from the truck? they say 3333 lb": a sentence of nothing
// but what it says, behind one that names gear, in a message that names no piece.
func saidOfGear(rd *reading.Reading, i int) bool {
	from, _ := rd.Span(rd.Elems[i].Start, func(e reading.Element) bool { return e.Pause > 0 })
	if !rd.CuedAs(rd.Text[from:rd.Elems[i].Start], lexicon.CueItSays) {
		return false
	}
	other := func(k int) bool { return rd.Elems[k].Piece() || rd.TermAt(k).Unnamed || k != i && Heavy(rd, k) }
	return !rd.AnyAt(other)
}

// tagLine says whether one is named: a pull on it stands on no label.
func tagLine(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.Elems[i].Marked(lexicon.MarkTug) && !rd.TermAt(i).Label })
}
