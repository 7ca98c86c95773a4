package lines

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// What stands where the rope ends, and how long the rope is, are told in a
// question about its reach in words that elsewhere are of other things.

// treeTall passes over how tall the tree is, "tree is 70 ft tall", where the hitch
// and the rope are told and no piece: what the rope takes hangs on the hitch.
func treeTall(rd *reading.Reading) {
	if rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() }) || !rd.AnyAt(rd.Is(sizes.Hitched)) {
		return
	}
	for i := 0; i+2 < len(rd.Elems); i++ {
		j := rd.Past(i+1, +1, lexicon.MarkIs)
		fig := rd.At(j).Fig
		if !rd.Cued(rd.Elems[i], lexicon.CueTree) || fig == nil || fig.Dim != parser.DimLength && fig.Dim != parser.DimCount || fig.Short() {
			continue
		}
		switch is := j > i+1 && rd.At(j-1).Pause == 0; {
		case is && rd.At(j+1).Marked(lexicon.MarkTall):
			rd.Pass(i, j+2)
		case is && (rd.EndsBreath(j+1) || rd.At(j+1).Marked(lexicon.MarkAnd)):
			rd.Pass(i, j+1)
		}
	}
}

// doesIt reads "will 180 ft do it, hitch at 66 ft": the length of the rope, where
// a hitch is told and no piece.
func doesIt(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if !fig.Far() || fig.Told != "" || rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() }) || !rd.AnyAt(rd.Is(sizes.Hitched)) {
		return false
	}
	const marks = "¿?¡!,.;:"
	bare := func(words []string, i int) string {
		if i < 0 || i >= len(words) {
			return ""
		}
		return strings.ToLower(strings.Trim(words[i], marks))
	}
	behind, before := strings.Fields(rd.Text[fig.End:]), strings.Fields(rd.Text[:fig.Start])
	last := bare(before, len(before)-1)
	return (last == "will" || last == "would") && bare(behind, 0) == "do" && bare(behind, 1) == "it"
}

// doesRope reads "will 200 make it, 90 ft up" and "¿alcanzan 40 m, polea a 18 m?":
// the rope, where nothing else is told but how high its block is.
func doesRope(rd *reading.Reading, l *lexicon.Layout) {
	high := rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Plays(parser.HitchHeight) && (gear.Far(rd, i-1) || gear.Far(rd, i+1))
	})
	if !high || rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Piece() || Sized(rd, i) || gear.Heavy(rd, i) || rd.Elems[i].Plays(parser.People)
	}) {
		return
	}
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		bare := fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && shortestRope <= fig.Low && fig.High <= longestRope
		if !bare && !fig.Far() || fig.Told != "" || fig.Pair || !l.DoesRope.MatchString(rd.Text[:fig.Start]+lexicon.NumberHere+rd.Text[fig.End:]) {
			continue
		}
		if !lentRope(rd, i) {
			fig.Sure = parser.RopeLength // its unit is asked for
			continue
		}
		fig.Told = parser.RopeLength
		if rd.At(i + 1).Marked(lexicon.MarkFollow) {
			rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRope} })
		}
	}
}

// reaches reads "will the 200 footer make the ground" and "¿llega la de 40?" as
// questions about the rope, where a rope, a hitch or a drum is spoken of and no
// piece whose reach could be meant.
func reaches(rd *reading.Reading) {
	if pullAsked(rd) {
		return
	}
	spoken := rd.AnyAt(func(i int) bool {
		return heights.ReachAsked(rd, i) || sizes.Hitched(rd, i) || footer(rd, i) || gear.Part(rd.Elems[i]) != "" || rd.Elems[i].Marked(lexicon.MarkStation)
	})
	if !spoken || rd.AnyAt(rd.Is(Sized)) || rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskSwing || rd.Elems[i].Plays(parser.Sideways) }) {
		return
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Reaches {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Intent, t.Besides = "", parser.AskRope, true })
		}
	}
}

// madeSo takes what is right before a length for what is made so, not for a question
// whether something reaches: "hes gonna make it 7 ft instead".
func madeSo(rd *reading.Reading) {
	for i := range rd.Elems {
		if fig := rd.At(i + 1).Fig; rd.TermAt(i).Reaches && fig != nil && fig.Dim == parser.DimLength && rd.AnyAt(func(k int) bool { return rd.Elems[k].Marked(lexicon.MarkFollow) }) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
}

// pullAsked reads "¿llega?" as whether the pull is enough, where a lift is asked for
// and no length of rope is told: then it asks for nothing more.
func pullAsked(rd *reading.Reading) bool {
	rope := func(i int) bool { return rd.Elems[i].Plays(parser.RopeLength) || rd.TermAt(i).Intent == parser.AskRope }
	pulled := func(i int) bool {
		return rd.Elems[i].Plays(parser.WinchPull) || rd.Elems[i].Plays(parser.Parts) || rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimRatio
	}
	if !gear.AsksFor(rd, parser.AskLift) && !rd.AnyAt(pulled) || rd.AnyAt(rope) {
		return false
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Reaches {
			rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
		}
	}
	return true
}

// Reaching finds both where the message asks for rope, or tells how long it is.
func Reaching(rd *reading.Reading, l *lexicon.Layout) {
	treeTall(rd)
	lengthWanted(rd)
	lengthOfRope(rd)
	ropeChoice(rd)
	madeSo(rd)
	reaches(rd)
	longDoes(rd, l)
	doesRope(rd, l)
	ropesByLength(rd, l)
	ropeCut(rd, l)
	for i := range rd.Elems {
		if doesIt(rd, i) {
			rd.Elems[i].Fig.Told = parser.RopeLength
		}
	}
	DrumLeg(rd)
	if !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskRope || rd.Elems[i].Plays(parser.RopeLength) }) {
		running(rd)
		return
	}
	reachPlaces(rd, l)
	running(rd)
}

// reachPlaces settles how far off the tree the drum stands and the piece comes down, and how
// long a rope is that is told right behind the question.
func reachPlaces(rd *reading.Reading, l *lexicon.Layout) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Told != "" {
			continue
		}
		after := rd.Text[fig.End:]
		if fig.Dim == parser.DimCount && fig.Unit == nil && heights.AwayFromTree(l, after) != "" && endStands(rd, i) {
			if !lentRope(rd, i) {
				fig.Sure, fig.Elsewhere = parser.DrumAway, false // its unit is asked for
			}
		}
		if !fig.Far() {
			continue
		}
		if away := heights.AwayFromTree(l, after); away != "" && endStands(rd, i) {
			heights.Tell(rd, i, parser.DrumAway, away)
		} else if away != "" && lands(rd, i) {
			heights.Tell(rd, i, parser.LandsOut, away)
		} else if to := otherSide(rd, i+1); to > i+1 && lands(rd, i) {
			fig.Told, fig.Elsewhere = parser.LandsOut, false
			rd.Elems = slices.Delete(rd.Elems, i+1, to)
			return
		} else if itsLength(rd, i) {
			fig.Told = parser.RopeLength
		}
	}
}

// endStands says whether a winch, or whoever has the rope in hand, stands right
// before a number: "winch 10 m from the tree", "ground man 25 ft back".
func endStands(rd *reading.Reading, i int) bool {
	const farthest = 5 // words: "ground man wants to be 25 ft back"
	for j := i - 1; j >= 0 && j >= i-farthest; j-- {
		switch e := rd.Elems[j]; {
		case e.Term == nil && rd.Text[e.Start:e.End] == "to": // "wants to be"
		case e.Term == nil:
			return false
		case e.Plays(parser.WinchPull) || e.Term.RopeEnd || rd.Cued(e, lexicon.CueMe), e.Term.Human && e.Marked(lexicon.MarkPronoun) && !e.Marked(lexicon.MarkArticle): // "with me 25 ft out"
			return true
		}
	}
	return false
}

// lands says whether it is told right before a number that a piece comes down there:
// "land the pieces 6 m out from the trunk".
func lands(rd *reading.Reading, i int) bool {
	const farthest = 5 // elements
	for j := i - 1; rd.Cued(rd.At(i-1), lexicon.CueDown) && j >= i-farthest && rd.At(j).Pause == 0; j-- {
		if rd.TermAt(j).Unnamed || rd.At(j).Piece() || rd.At(j).Marked(lexicon.MarkPronoun) {
			return true // "set the pieces down 4 m away from the stem"
		}
	}
	for j := i - 1; j >= 0 && j >= i-farthest && rd.At(j).Pause == 0 && rd.At(j).Fig == nil; j-- {
		if rd.Cued(rd.At(j), lexicon.CueLands) || rd.TermAt(j).Reaches {
			return true
		}
	}
	return false
}

// otherSide is where the words behind a landing place end that say that it is past the tree,
// "6 m the other side of the tree": from the foot it is as far as on this side.
func otherSide(rd *reading.Reading, i int) int {
	to := rd.Past(i, +1, lexicon.MarkArticle|lexicon.MarkIn)
	if !rd.At(to).Marked(lexicon.MarkOutward) || !rd.At(to).Marked(lexicon.MarkPlace) || rd.Cued(rd.At(to), lexicon.CueOut) {
		return i
	}
	to++
	if k := rd.Past(to, +1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkArticle); k > to && (rd.At(k).Marked(lexicon.MarkStanding) || rd.Cued(rd.At(k), lexicon.CueTree)) {
		to = k + 1
	}
	return to
}

// itsLength reads "is the rope long enough? its 45 m": a length that follows
// right behind the question, and is of nothing else.
func itsLength(rd *reading.Reading, i int) bool {
	j := rd.Past(rd.Back(i-1), -1, lexicon.MarkPronoun|lexicon.MarkArticle)
	if j == i-1 || rd.At(j).Pause == 0 || rd.At(i-1).Marked(lexicon.MarkAt) || !rd.EndsBreath(i+1) && !rd.At(i+1).Polite() {
		return false
	}
	for j >= 0 && rd.Elems[j].Pause > 0 {
		j--
	}
	return rd.TermAt(j).Intent == parser.AskRope && !rd.AnyAt(func(k int) bool { return k != i && gear.Beside(rd, k, parser.RopeLength) })
}
