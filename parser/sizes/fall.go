package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// fallBehind says whether the words at i say that what stands before them is the
// fall: "120 kg a metre before it catches" tells no weight of a metre.
func fallBehind(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Term != nil && e.LooksBack(parser.DropHeight)
}

// single are the units that are told without a number: "a foot".
var single = []string{"foot", "metre", "meter"}

// SingleUnits reads "a foot under the cut" as one foot.
func SingleUnits(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		a, e := rd.Elems[i-1], rd.Elems[i]
		if rd.Word(a) != "a" || !slices.Contains(single, rd.Word(e)) || !e.Marked(lexicon.MarkUnit) || rd.At(i-2).Fig != nil && !fallBehind(rd, i+1) {
			continue
		}
		u := rd.In.Units[rd.Word(e)]
		f := &reading.Figure{Low: u.Factor, High: u.Factor, Unit: u, Dim: parser.DimLength, Start: a.Start, End: e.End}
		rd.Elems = slices.Replace(rd.Elems, i-1, i+1, reading.Element{Start: a.Start, End: e.End, Fig: f})
	}
}

// RunsInstead settles "let it run instead of snubbing it" at i, and the other way
// round: the answer tells what both do.
func RunsInstead(rd *reading.Reading, i int) bool {
	held := rd.TermAt(i+1).Note == parser.Snubbed
	other := parser.Snubbed
	if held {
		other = parser.LetRun
	}
	runs := func(k int) bool {
		return rd.TermAt(k).Note == parser.LetRun || rd.At(k).Plays(parser.RunLength)
	}
	told := func(k int) bool { return rd.TermAt(k).Note == other || held && k < i && runs(k) && gear.Far(rd, k+1) }
	if !held && rd.TermAt(i+1).Note != parser.LetRun || !rd.AnyAt(told) {
		return false
	}
	rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
	if held && rd.AnyAt(func(k int) bool {
		return runs(k) && (gear.Far(rd, k+1) || gear.Far(rd, k-1))
	}) {
		rd.Alter(i+1, func(t *scan.Term) { t.Note = "" }) // "instead of snubbing it let it run 6 ft"
	}
	return true
}

// RunOrSnub reads "do i let it run or snub it" as asked of both ways to take a fall.
func RunOrSnub(rd *reading.Reading) {
	const most = 2 // elements from one to the other
	for i, e := range rd.Elems {
		if rd.TermAt(i).Note != "" || !e.LeadsTo(parser.RunLength) {
			continue
		}
		for j := i + 1; j <= i+most; j++ {
			if rd.At(j-1).Fig == nil && rd.TermAt(j).Note == parser.Snubbed {
				rd.Alter(i, func(t *scan.Term) { t.Note = parser.LetRun })
			}
		}
	}
}

// FallsSoFar claims how far a piece falls that is about to, "va a caer como 4 pies en la
// cuerda", and says whether it falls into its rope. Elsewhere it may go to a place, or on
// somebody.
func FallsSoFar(rd *reading.Reading, i int) bool {
	if !rd.Cued(rd.Elems[i], lexicon.CueWillFall) {
		return false
	}
	if rd.At(i).Pause == 0 && rd.TermAt(i+1).Intent == parser.AskDrop {
		return true
	}
	n := rd.Forth(i + 1)
	if !places.LengthAt(rd, n) || rd.Elems[n].Fig.Told != "" && rd.Elems[n].Fig.Told != parser.DropHeight {
		return false
	}
	onto := rd.At(n+1).Marked(lexicon.MarkIn|lexicon.MarkAt) && gear.Part(rd.At(rd.Past(n+2, +1, lexicon.MarkArticle))) == lexicon.PartRope
	if !rd.EndsBreath(n+1) && !onto && !fallBehind(rd, n+1) && rd.TermAt(n+1).Intent != parser.AskDrop {
		return false
	}
	rd.Elems[n].Fig.Told = parser.DropHeight
	return true
}

// DropTold reads "only 6 ft, drop 3 ft, rope breaks at 9,000 lb": what stands
// between the word for a fall and the end of a breath is the fall, whatever else
// is told around it.
func DropTold(rd *reading.Reading) {
	for i := range rd.Elems {
		lead, apart := rd.At(i-1), rd.At(i-2).Pause > 0
		if apart && places.LengthAt(rd, i) && gear.Far(rd, i) && rd.At(i+1).Pause > 0 && lead.Term != nil && lead.LeadsTo(parser.DropHeight) && !lead.LeadsTo(parser.RunLength) {
			rd.Elems[i].Fig.Told = parser.DropHeight
			rd.Alter(i-1, func(t *scan.Term) { t.Roles = nil }) // it has its number
		}
		if places.LengthAt(rd, i) && gear.Far(rd, i) && fallBack(rd, i+1) && !places.LengthAt(rd, i+2) && ropeTold(rd, i-1) {
			rd.Elems[i].Fig.Told = parser.DropHeight
			rd.Alter(i+1, func(t *scan.Term) { t.Roles = nil })
		}
	}
}

// fallBack says whether the word at i may tell that the number before it is the fall.
func fallBack(rd *reading.Reading, i int) bool {
	return slices.ContainsFunc(reading.RolesOf(rd.TermAt(i), parser.DropHeight), func(r scan.Role) bool { return r.Side&lexicon.Before != 0 })
}

// WoodFell reads "the log fell 4 ft before the rope caught" as how far a piece falls.
func WoodFell(rd *reading.Reading) {
	for i := range rd.Elems {
		far := stops.FellSoFar(rd, i)
		if far < 0 {
			continue
		}
		rd.Elems[i].Term = &scan.Term{Intent: parser.AskDrop}
		rd.Elems[far].Fig.Told = parser.DropHeight
		for j := i + 1; j < len(rd.Elems) && rd.Elems[j].Pause == 0; j++ {
			if rd.TermAt(j).Harms && gear.Part(rd.At(rd.Past(j-1, -1, lexicon.MarkArticle))) == lexicon.PartRope {
				rope := rd.Past(j-1, -1, lexicon.MarkArticle)
				rd.Elems[rope].Term, rd.Elems[j].Term = &scan.Term{}, &scan.Term{} // what ends the fall
			}
		}
	}
}

// ropeTold says whether the word at i is a rope that has its number before it: "1/2 inch
// rope 5 ft drop".
func ropeTold(rd *reading.Reading, i int) bool {
	fig := rd.At(i - 1).Fig
	return gear.Part(rd.At(i)) == lexicon.PartRope && fig != nil && fig.Dim == parser.DimLength
}

// LandsLower takes "15 ft lower than the base" for no size of a piece: the way down is longer
// by it, and that is asked about.
func LandsLower(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Turning == parser.TurnsLanding && places.LengthAt(rd, i-1) && rd.Elems[i-1].Fig.Told == "" {
			rd.Elems[i-1].Fig.Elsewhere = true
		}
	}
}

// SlackFalls takes the slack before a line is stopped for how far the piece falls, where no
// other fall is told: "la para en seco, 4 pies de holgura". Where the block is below the
// cut the piece falls further, and the slack stays in doubt.
func SlackFalls(rd *reading.Reading) {
	slack := func(i int) bool { return rd.TermAt(i).Turning == parser.TurnsSlack }
	falls := func(i int) bool {
		negative := slices.ContainsFunc(scan.SplitWords(rd.Word(rd.Elems[i])), func(w string) bool { return rd.In.Cued(w, lexicon.CueNegative) })
		return negative || rd.TermAt(i).BelowCut || rd.Elems[i].Plays(parser.DropHeight)
	}
	snubs := func(i int) bool {
		return rd.TermAt(i).Note == parser.Snubbed || rd.TermAt(i).Intent == parser.AskDrop
	}
	if !rd.AnyAt(slack) || rd.AnyAt(falls) || !rd.AnyAt(snubs) {
		return
	}
	for i := range rd.Elems {
		if slack(i) && places.LengthAt(rd, i-1) && rd.Elems[i-1].Fig.Told == "" {
			rd.Elems[i-1].Fig.Told = parser.DropHeight
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
			return
		}
	}
}

// DroppedOn reads "we drop 200 kg on it from 1.5 m": how far what weighs so much falls.
func DroppedOn(rd *reading.Reading) {
	const most = 5 // words: "on it here from"
	for i := range rd.Elems {
		if !gear.Heavy(rd, i) || !rd.At(i-1).LeadsTo(parser.DropHeight) || !rd.At(i+1).Marked(lexicon.MarkIn|lexicon.MarkRelation|lexicon.MarkWhere) {
			continue
		}
		for k := i + 2; k < i+most; k++ {
			from := rd.In.Leads[rd.Word(rd.At(k-1))] && !rd.At(k-1).Marked(lexicon.MarkAt)
			if gear.Far(rd, k) && from && k > i+2 && rd.EndsBreath(k+1) {
				rd.Elems[k].Fig.Told, rd.Elems[i].Fig.Told = parser.DropHeight, parser.Weight
				rd.Alter(i-1, func(t *scan.Term) { t.Roles = nil }) // it has its number
			}
			if rd.At(k).Fig != nil || rd.At(k).Pause > 0 {
				break
			}
		}
	}
}

// Hitched says whether the element at i has words of a hitch that say nothing
// else, other than "up" and "high".
func Hitched(rd *reading.Reading, i int) bool {
	for _, r := range reading.RolesOf(rd.TermAt(i), parser.HitchHeight) {
		if !r.Soft && (gear.Far(rd, i-1) || gear.Far(rd, rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkBound))) {
			return true
		}
	}
	return false
}

// OfPlace reads "a 12 ft high fence", "a 60 ft red oak tree", "1/2 in rope".
func OfPlace(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if rd.At(i+1).Marked(lexicon.MarkTall) && !gear.ShapedFrom(rd, 0, parser.Log) || gear.Height(rd, i) {
		return true
	}
	if rd.At(i+1).Marked(lexicon.MarkFine) && fig.Far() {
		return true // "a 5 pies de la punta"
	}
	j := i + 1
	for rd.At(j).Marked(lexicon.MarkAdjective) || rd.At(j).Piece() && rd.At(j).Term.Shape == "" {
		j++
	}
	e := rd.At(j)
	switch {
	case rd.At(i+1).Plays(parser.Length) && j == i+2 && (e.Marked(lexicon.MarkPerson) || rd.TermAt(j).Human):
		return false // "18 ft long im gonna tip tie it" without the comma
	case e.Marked(lexicon.MarkPlace) && j == i+1 && !rd.At(i-1).Marked(lexicon.MarkArticle|lexicon.MarkRelation) && rd.At(rd.Past(j+1, +1, lexicon.MarkIs)).Fig.Far():
		return false // "22 ft, roof 12 ft" without the comma
	case e.Marked(lexicon.MarkPlace|lexicon.MarkPart) || gear.OfTree(rd, i, j):
		return true
	case gear.Heavy(rd, i) && gear.Part(e) == lexicon.PartBlock && below(rd.At(rd.Past(j+1, +1, lexicon.MarkIs)).Fig):
		return false // "200 lb block 2 ft under the cut" without the comma
	case e.Marked(lexicon.MarkGear):
		small := fig.Dim == parser.DimCount && fig.Low < 1 // "5/8 rope"
		return small || gear.Gearly(fig) || e.Marked(lexicon.MarkLoaded) && !e.Plays(parser.HitchHeight)
	}
	return false
}

// FallAsk is an ask about a length that may be how long the piece is or how far it falls:
// nothing else is told of it, and the words before speak of dropping. "We're dropping it on
// the block, 3 ft or so."
func FallAsk(rd *reading.Reading, q parser.Question) *parser.Ask {
	x, ok := q.Get(parser.Length)
	if !ok || len(q.Quantities) != 1 || q.Species != nil || q.Shape != nil {
		return nil
	}
	falls := false
	for i, e := range rd.Elems {
		switch {
		case e.Term != nil && e.LeadsTo(parser.DropHeight):
			falls = true
		case e.Start == x.Start && falls && gear.Far(rd, i) && !rd.At(i+1).Plays(parser.Length) && !rd.At(i-1).Plays(parser.Length):
			a := reading.AskAt(parser.Loose, rd.Text, x.Start, x.End-x.Start)
			a.Fields, a.Metres = []parser.Field{parser.DropHeight, parser.Length}, x.High
			return a
		}
	}
	return nil
}
