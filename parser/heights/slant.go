package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How far off plumb a swing starts is told in degrees as well, "starts 45 off the
// block": a bare number that could be either is asked about, and one that is more than
// the line is long can only be degrees.

// leastSlant and mostSlant bound what a bare number of degrees off plumb can be.
const leastSlant, mostSlant = 20, 90

// slanted says whether the number at i could be degrees off plumb: it is told of what
// swings, and not of the block.
func slanted(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Pair || fig.Falling || fig.Told != "" || gear.AsksFor(rd, parser.AskRaise) || gear.BlockBefore(rd, i) {
		return false
	}
	starts := rd.At(rd.Back(i - 1)).Plays(parser.Sideways)
	if offPlumb := rd.At(i+1).Plays(parser.Sideways) && offPlumbAt(rd, i+1); offPlumb {
		return true
	}
	k := rd.Past(i+2, +1, lexicon.MarkArticle)
	ofBlock := rd.Cued(rd.At(i+1), lexicon.CueOut) && gear.Part(rd.At(k)) == lexicon.PartBlock
	return starts && (ofBlock || fig.Dim == parser.DimAngle && rd.Cued(rd.At(i+1), lexicon.CueOut))
}

// offPlumbAt says whether the words at i tell how far from plumb something is, and not
// only how far to the side.
func offPlumbAt(rd *reading.Reading, i int) bool { return TypedAt(rd, i, lexicon.CuePlumb) }

// Slants makes degrees of the number at i where they are told, or where it is more than
// the line of the swing is long: "starts 45 off the block, 20 ft of line".
func Slants(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if !slanted(rd, i) || fig.Low < leastSlant || fig.High > mostSlant {
		return false
	}
	line := shortestLine(rd)
	bare := fig.Dim == parser.DimCount && fig.Unit == nil && line > 0 && fig.Low*scan.Foot.Factor > line
	if fig.Dim != parser.DimAngle && !bare {
		return false
	}
	fig.Unit, fig.Dim, fig.Told = scan.Degree, parser.DimAngle, parser.StartAngle
	for k := i + 1; k <= i+3 && k < len(rd.Elems) && rd.Elems[k].Term != nil; k++ {
		block := gear.Part(rd.At(k)) == lexicon.PartBlock
		rd.Elems[k].Term = &scan.Term{}
		if block || k == i+1 && !rd.At(k+1).Marked(lexicon.MarkArticle) && gear.Part(rd.At(k+1)) != lexicon.PartBlock {
			break
		}
	}
	return true
}

// maybeSlants asks about a bare number that is as likely to be degrees as a length.
func maybeSlants(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if !slanted(rd, i) || fig.Low < leastSlant || fig.High > mostSlant || shortestLine(rd) > 0 {
		return false
	}
	a := fig.Ask(parser.NoUnit, rd.Text)
	a.Fields = []parser.Field{parser.StartAngle, parser.Sideways}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
	return true
}

// shortestLine is how long the line of a swing is told to be, in metres, 0 where it is
// not.
func shortestLine(rd *reading.Reading) float64 {
	for i := range rd.Elems {
		if gear.Far(rd, i) && (rd.At(i+1).Plays(parser.LineOut) || rd.At(i+1).Plays(parser.RopeLength) || rd.At(rd.Back(i-1)).Plays(parser.LineOut)) {
			return rd.Elems[i].Fig.High
		}
	}
	return 0
}

// TypedAt says whether the words of a cue begin at the element at i.
func TypedAt(rd *reading.Reading, i int, c scan.Cue) bool {
	_, to := rd.Span(rd.Elems[i].End, func(e reading.Element) bool { return e.Pause > 0 })
	return rd.Begin(c, rd.Text[rd.Elems[i].Start:max(to, rd.Elems[i].End)])
}
