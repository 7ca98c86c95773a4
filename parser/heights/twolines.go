package heights

import (
	"math"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A load that hangs on two lines, or from two trees, pulls on each of them as on the
// legs of a bridle, where the angle between the lines is told: "1,000 lb hung from two
// trees, 120 degrees between the lines".

// TwoLines reads it so where nothing runs over a block or round a drum.
func TwoLines(rd *reading.Reading) {
	angle := func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && fig.Dim == parser.DimAngle && rd.At(i+1).Plays(parser.BlockAngle)
	}
	other := func(i int) bool {
		e := rd.Elems[i]
		return rd.TermAt(i).Block != "" || gear.Part(e) == lexicon.PartBlock || e.Marked(lexicon.MarkStation|lexicon.MarkDeflects) || e.Plays(parser.Wraps)
	}
	if rd.AnyAt(other) || !rd.AnyAt(rd.Is(gear.Heavy)) {
		return
	}
	bent := func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimAngle }
	if halfway := rd.Only(bent); halfway >= 0 && halfwayUp(rd, halfway) && !rd.AnyAt(angle) {
		onHalfway(rd, halfway)
		return
	}
	if !rd.AnyAt(angle) {
		return
	}
	for i := range rd.Elems {
		next, lead := rd.At(i+1), rd.At(i-1)
		if !places.Bare(rd.Elems[i].Fig, 2) || !rd.Cued(next, lexicon.CueLines) || !lead.Marked(lexicon.MarkIn|lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkWhere|lexicon.MarkBetween) && !rd.Cued(lead, lexicon.CueHangFrom) {
			continue
		}
		places.Claim(rd, i, parser.Lines)
		rd.Elems[i+1].Term = &scan.Term{Note: parser.Bridled, Marks: lexicon.MarkBridle, Intent: parser.AskBalance}
		return
	}
}

// halfwayUp says whether the number at i is 45° told of each line, "45 degrees each", or of
// both: as far from plumb as from level, so that nothing has to say which.
func halfwayUp(rd *reading.Reading, i int) bool {
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	return fig != nil && fig.Dim == parser.DimAngle && fig.Low == fig.High && math.Abs(fig.Low-halfRight) < 1e-9 &&
		(rd.TermAt(i+1).Each || fromLevel(rd, i+1) || next.Plays(parser.LegAngle) || next.Plays(parser.LimbAngle) || next.Plays(parser.StartAngle))
}

// fromLevel says whether the words at i say that an angle is seen from level.
func fromLevel(rd *reading.Reading, i int) bool {
	return rd.At(i).Marked(lexicon.MarkRelation) && rd.TermAt(i+1).Level
}

// halfRight is halfway between level and plumb, in degrees.
const halfRight = 45

// onHalfway reads a load on two lines that both stand at 45°, and takes the doubt from what
// says that it is told of each: "one from each tree", "tension per line".
func onHalfway(rd *reading.Reading, angle int) {
	at := -1
	for i := range rd.Elems {
		if places.Bare(rd.Elems[i].Fig, 2) && (rd.Cued(rd.At(i+1), lexicon.CueLines) || rd.At(i+1).Marked(lexicon.MarkTwins)) {
			at = i
		}
	}
	if at < 0 {
		return
	}
	places.Claim(rd, at, parser.Lines)
	rd.Elems[at+1].Term = &scan.Term{Note: parser.Bridled, Marks: lexicon.MarkBridle, Intent: parser.AskBalance}
	rd.Elems[angle].Fig.Told = parser.LegAngle
	for k := angle + 1; k <= angle+2; k++ {
		if fromLevel(rd, k) {
			rd.Elems[k].Term, rd.Elems[k+1].Term = &scan.Term{}, &scan.Term{}
		}
	}
	if e := rd.At(angle + 1); e.Plays(parser.LimbAngle) || e.Plays(parser.StartAngle) {
		rd.Elems[angle+1].Term = &scan.Term{}
	}
	for i := range rd.Elems {
		of := rd.At(i + 1)
		line := rd.Cued(of, lexicon.CueLines) || rd.Cued(of, lexicon.CueTree) || gear.Part(of) == lexicon.PartRope || rd.Cued(of, lexicon.CueOneLeg)
		switch {
		case !rd.TermAt(i).Each && !rd.Cued(rd.Elems[i], lexicon.CuePer):
		case line:
			rd.Elems[i].Term, rd.Elems[i+1].Term = &scan.Term{}, &scan.Term{}
			oneFrom(rd, i)
		case i == angle+1, rd.EndsBreath(i + 1):
			rd.Elems[i].Term = &scan.Term{}
		}
	}
}

// oneFrom takes the one line from each tree for no number: "one from each tree".
func oneFrom(rd *reading.Reading, each int) {
	k := rd.Past(each-1, -1, lexicon.MarkRelation|lexicon.MarkIn|lexicon.MarkAt)
	if k < each-1 && places.Bare(rd.At(k).Fig, 1) {
		rd.Elems[k] = reading.Element{Start: rd.Elems[k].Start, End: rd.Elems[k].End, Term: &scan.Term{}}
	}
}
