package heights

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// Turns finds the numbers that say how far the rope turns. Once one is found,
// others of a list need no word of their own: "turns 180 at the top block, 20
// at the redirect".
func Turns(rd *reading.Reading) {
	found := false
	for i, e := range rd.Elems {
		if fig := e.Fig; fig != nil && fig.Dim == parser.DimCount && rd.At(i+1).Marked(lexicon.MarkDeflects) && blockRight(rd, i) != "" {
			fig.Elsewhere = true // "half a turn at the top block" is no wrap on the drum
		}
		if !angular(rd, i) {
			continue
		}
		word := turnWord(rd, i)
		if word < 0 && !rightAngle(rd, i) {
			continue
		}
		found = true
		e.Fig.Told, e.Fig.At = parser.Turn, turnedAt(rd, i, word)
		if word >= 0 {
			rd.Elems[word].Term = &scan.Term{Marks: lexicon.MarkDeflects} // "turns" are no wraps here
		}
	}
	for i, e := range rd.Elems {
		if !found || !angular(rd, i) || e.Fig.Told != "" {
			continue
		}
		if at := listedAt(rd, i); at != "" {
			e.Fig.Told, e.Fig.At = parser.Turn, at
		}
	}
}

// WordedTurns reads a turn that is told without a number, "the rope comes
// straight back out on itself", of a block that is named. Beside an angle the
// words could say another thing of the same rope, and are asked about. In what
// is lowered or lifted they only say how the rope runs.
func WordedTurns(rd *reading.Reading) {
	worked := gear.AsksFor(rd, parser.AskLower) || gear.AsksFor(rd, parser.AskRope) || gear.AsksFor(rd, parser.AskLift) || gear.AsksFor(rd, parser.AskRaise)
	block := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Block != "" })
	for i, e := range rd.Elems {
		if e.Term != nil && e.Term.Square && turning.Redirected(rd) {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Turned = "", 90 })
			e = rd.Elems[i]
		}
		if e.Term == nil || e.Term.Turned == 0 || worked && !turning.Redirected(rd) || squared(rd, i) {
			continue
		}
		if !block || rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimAngle }) {
			rd.Alter(i, func(t *scan.Term) { t.Ask = parser.Twist })
			continue
		}
		f := &reading.Figure{Low: e.Term.Turned, High: e.Term.Turned, Unit: scan.Degree, Dim: parser.DimAngle, Told: parser.Turn, At: LastBlock(rd, i), Start: e.Start, End: e.End}
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: f}
	}
}

// squared passes over "square" beside the 90° that it says again.
func squared(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Square {
		return false
	}
	right := func(k int) bool {
		fig := rd.Elems[k].Fig
		return fig != nil && fig.Low == 90 && fig.High == 90 && (fig.Dim == parser.DimAngle || fig.Dim == parser.DimCount && fig.Unit == nil)
	}
	k := slices.IndexFunc(rd.Elems, func(e reading.Element) bool { return e.Fig != nil && e.Fig.Told == parser.Turn })
	for n := range rd.Elems {
		if right(n) {
			k = n
			if f := rd.Elems[n].Fig; f.Told == "" {
				f.Dim, f.Unit, f.Told, f.At = parser.DimAngle, scan.Degree, parser.Turn, LastBlock(rd, n)
			}
		}
	}
	return k >= 0
}

// LastBlock is the block that was named last before i, or the only one.
func LastBlock(rd *reading.Reading, i int) string {
	for j := i - 1; j >= 0; j-- {
		if b := rd.TermAt(j).Block; b != "" {
			return b
		}
	}
	return onlyBlock(rd)
}

// angular says whether a number can be an angle; one without a unit can, unless
// the word behind it counts something: "2 people".
func angular(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Pair || fig.Falling {
		return false
	}
	for _, r := range rd.TermAt(i + 1).Roles {
		if fig.Dim == parser.DimCount && lexicon.Counted[r.Field] && r.Side&lexicon.Before != 0 || parser.DimensionOf[r.Field] == parser.DimAngle {
			return false
		}
	}
	return fig.Dim == parser.DimAngle || fig.Dim == parser.DimCount && fig.Unit == nil
}

// turnWord returns the element that makes a number a turn: "turns 30°", "turns
// the rope by 30°", "a 30° turn"; -1 where there is none.
func turnWord(rd *reading.Reading, i int) int {
	fig := rd.Elems[i].Fig
	for j := i - 1; j >= 0 && j > i-7; j-- {
		e := rd.Elems[j]
		if e.Marked(lexicon.MarkDeflects) {
			if fig.Dim == parser.DimAngle || !e.Plays(parser.Wraps) || blockRight(rd, i) != "" || rd.TermAt(j-1).Block != "" || turning.Redirected(rd) && Degrees(fig) && j > 0 && rd.Elems[j-1].Pause == 0 {
				return j
			}
			return -1 // "turns 3"
		}
		if !passable(rd, e) {
			break
		}
	}
	if at := rd.Past(i-1, -1, lexicon.MarkArticle); ropeGoes(rd, i, at) {
		return at
	}
	j := rd.Past(i+1, +1, lexicon.MarkIs)
	if k := rd.Past(j+1, +1, lexicon.MarkIs); fig.Dim == parser.DimAngle && rd.At(j).Marked(lexicon.MarkDeflects) && (rd.At(k).Fig == nil || !angular(rd, k)) {
		return j
	}
	return turnExplained(rd, i)
}

// turnExplained is the element that says in a breath of its own what the angle before it is:
// "60 grados, o sea lo que dobla la cuerda"; -1 where none does.
func turnExplained(rd *reading.Reading, i int) int {
	j := i + 2
	if rd.Elems[i].Fig.Dim != parser.DimAngle || rd.At(j-1).Pause != 2 {
		return -1
	}
	for e := rd.At(j); e.Polite() || e.Marked(lexicon.MarkPronoun|lexicon.MarkIs|lexicon.MarkArticle) || rd.Cued(e, lexicon.CueHowMuch) || rd.Cued(e, lexicon.CueItIs); e = rd.At(j) {
		j++
	}
	if j == i+2 || !rd.At(j).Marked(lexicon.MarkDeflects) || rd.At(j+1).Fig != nil {
		return -1
	}
	return j
}

// ropeGoes reads "the line goes 90 there" and "makes a 90 there" at a redirect. What has no unit could
// be how far the rope runs, unless the words behind it name the place.
func ropeGoes(rd *reading.Reading, i, at int) bool {
	fig, course := rd.Elems[i].Fig, rd.At(at)
	if course.Term == nil || !course.Term.Course || gear.Part(rd.At(at-1)) != lexicon.PartRope || !turning.Redirected(rd) {
		return false
	}
	there := rd.Cued(rd.At(i+1), lexicon.CueThere) || blockRight(rd, i) != ""
	return fig.Dim == parser.DimAngle || there && Degrees(fig)
}

// bareRight says whether the number at i is a right angle that a rope leaves a redirect at,
// with its unit or without: "comes in and goes out at a ninety". At 90 the turn and the angle
// between the legs are the same; of no other number could it be told which it is.
func bareRight(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	angle := fig.Dim == parser.DimAngle || fig.Dim == parser.DimCount && fig.Unit == nil
	if !angle || fig.Low != 90 || fig.High != 90 || !turning.Redirected(rd) {
		return false
	}
	k := rd.Past(rd.Back(rd.Past(i-1, -1, lexicon.MarkArticle)), -1, lexicon.MarkArticle)
	for rd.At(k).Marked(lexicon.MarkAt|lexicon.MarkIs) || rd.TermAt(k).Note == "about" {
		k--
	}
	course := false
	for ; k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		e := rd.At(k)
		switch {
		case gear.Part(e) == lexicon.PartRope:
			return course
		case rd.TermAt(k).Course || rd.Cued(e, lexicon.CueAngle):
			course = true
		case !e.Marked(lexicon.MarkIn|lexicon.MarkAnd|lexicon.MarkIs) && !rd.Cued(e, lexicon.CueOut) && !e.Polite():
			return false
		}
	}
	return false
}

// Degrees says whether a bare number can be how far a rope turns at a redirect,
// and no count of wraps.
func Degrees(f *reading.Figure) bool {
	const least, most = 20, 180
	return least <= f.Low && f.High <= most
}

// RopeBeside says whether the breath of a number speaks of a rope or a block,
// and not of the piece.
func RopeBeside(rd *reading.Reading, i int) bool {
	rope := false
	for _, step := range []int{-1, +1} {
		for j := i + step; j >= 0 && j < len(rd.Elems) && rd.Elems[j].Pause == 0; j += step {
			if rd.Elems[j].Piece() {
				return false
			}
			rope = rope || gear.Part(rd.Elems[j]) == lexicon.PartRope || rd.TermAt(j).Block != ""
		}
	}
	return rope
}

// passable says whether an element may stand between a turn and its number.
func passable(rd *reading.Reading, e reading.Element) bool {
	const small = lexicon.MarkIs | lexicon.MarkAt | lexicon.MarkWhere | lexicon.MarkArticle | lexicon.MarkRelation | lexicon.MarkPronoun | lexicon.MarkAdjective | lexicon.MarkAdverb | lexicon.MarkGear | lexicon.MarkLoaded
	if e.Pause > 0 {
		return rd.Text[e.Start:e.End] == ":"
	}
	return e.Term != nil && (e.Marked(small) || e.Term.Block != "" || e.Term.Note == "about")
}

// rightAngle says whether the number is 90° at a redirect, where the turn and
// the angle between the legs are the same: right beside it, or the only angle.
func rightAngle(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if bareRight(rd, i) {
		return true
	}
	beside := parser.RedirectsOn[rd.TermAt(i+1).Block] != "" || parser.RedirectsOn[rd.TermAt(gear.PastIs(rd, i-1)).Block] != ""
	alone := rd.EndsBreath(i+1) && (i == 0 || rd.Elems[i-1].Pause > 0) // "500 lb on the line, 90 degrees"
	lone := turning.Redirected(rd) && (alone || RopeBeside(rd, i)) && !gear.SlingNamed(rd) && !gear.AsksFor(rd, parser.AskRaise) && !rd.AnyAt(func(k int) bool {
		other := rd.Elems[k].Fig
		return k != i && other != nil && other.Dim == parser.DimAngle || rd.TermAt(k).Block == parser.TopBlock
	})
	return fig.Dim == parser.DimAngle && fig.Low == 90 && fig.High == 90 && (beside || lone)
}

// turnedAt names the block of a turn: "turns at the redirect 20", "turns 20 at
// the redirect", "the redirect turns it 20".
func turnedAt(rd *reading.Reading, i, word int) string {
	for j := i - 1; j > word && word >= 0; j-- {
		if b := rd.TermAt(j).Block; b != "" {
			return b
		}
	}
	if b := blockRight(rd, i); b != "" {
		return b
	}
	from := i - 1
	if word >= 0 && word < i {
		from = word - 1
	}
	for j := from; j >= 0 && j > from-6; j-- {
		if b := rd.TermAt(j).Block; b != "" {
			return b
		}
		if !passable(rd, rd.Elems[j]) {
			break
		}
	}
	if b := rd.TermAt(i + 1).Block; b != "" {
		return b
	}
	return onlyBlock(rd)
}

// onlyBlock is the block that the message names, where it names one.
func onlyBlock(rd *reading.Reading) string {
	only := ""
	for _, e := range rd.Elems {
		switch {
		case e.Term == nil || e.Term.Block == "" || e.Term.Block == only:
		case only != "":
			return ""
		default:
			only = e.Term.Block
		}
	}
	return only
}

// blockRight is the block that a number is "at".
func blockRight(rd *reading.Reading, i int) string {
	led := false
	for j := i + 1; j < i+6; j++ {
		switch e := rd.At(j); {
		case e.Term == nil:
			return ""
		case e.Term.Block != "":
			if words := scan.Fold(rd.Text[e.Start:e.End]); !led && !strings.HasPrefix(words, "at ") && !strings.HasPrefix(words, "en ") {
				return ""
			}
			return e.Term.Block
		case e.Marked(lexicon.MarkAt | lexicon.MarkWhere | lexicon.MarkRelation | lexicon.MarkDeflects):
			led = true
		case !e.Marked(lexicon.MarkArticle | lexicon.MarkAdjective | lexicon.MarkIs | lexicon.MarkPronoun | lexicon.MarkGear):
			return ""
		}
	}
	return ""
}

// listedAt is the block of a number that stands in a list of turns.
func listedAt(rd *reading.Reading, i int) string {
	if b := blockRight(rd, i); b != "" {
		return b
	}
	if !rd.At(i - 1).Marked(lexicon.MarkAt) {
		if b := rd.TermAt(gear.PastIs(rd, i-1)).Block; b != "" {
			return b
		}
	}
	if rd.Elems[i].Fig.Dim == parser.DimAngle {
		return rd.TermAt(i + 1).Block
	}
	return ""
}
