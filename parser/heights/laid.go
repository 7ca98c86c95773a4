package heights

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// AwayFromTree returns the words behind a number that set it off the tree:
// "from the tree", "away"; not "away from the house".
func AwayFromTree(l *lexicon.Layout, after string) string {
	if words := l.OffTheTree.FindString(after); words != "" {
		return words
	}
	words := l.OffAtAll.FindString(after)
	if l.OffElsewhere.MatchString(after[len(words):]) {
		return ""
	}
	return words
}

// thickAsDrum says whether a drum may be so thick, in metres: "rope half inch drum on the
// base" tells of the rope.
func thickAsDrum(fig *reading.Figure) bool {
	const thinnest, thickest = 0.05, 0.6
	return fig.Low >= thinnest && fig.High <= thickest
}

// NearestDrum is the least that a drum “a 6 m” stands off the tree, in metres: what
// is less may be how high on the stem it is.
const NearestDrum = 2.4

// Laid finds the numbers of the layout.
func Laid(rd *reading.Reading, l *lexicon.Layout) {
	trunk, drummed := false, false
	for _, e := range rd.Elems {
		trunk = trunk || e.Term != nil && e.Term.Note == parser.DeadEndOnTrunk
		drummed = drummed || e.Marked(lexicon.MarkStation) || gear.Part(e) == lexicon.PartDrum
	}
	if !trunk && !drummed {
		return // it speaks of neither: most messages
	}
	drumAside(rd, l)
	for i, e := range rd.Elems {
		fig := e.Fig
		if fig == nil || fig.Dim != parser.DimLength || fig.Told != "" || fig.Pair || fig.Falling {
			continue
		}
		before, after := rd.Text[:fig.Start], rd.Text[fig.End:]
		drum := l.DrumIs.MatchString(before)
		switch {
		case fig.Far() && drum && AwayFromTree(l, after) != "":
			Tell(rd, i, parser.DrumAway, AwayFromTree(l, after))
		case fig.Far() && fig.Low >= NearestDrum && l.DrumStands.MatchString(before) && rd.EndsBreath(i+1):
			fig.Told = parser.DrumAway // "el tambor está a 6 m": a drum stands on the ground
		case fig.Far() && l.ToTheDrum.MatchString(after) && ropeBefore(rd, i):
			Tell(rd, i, parser.RopeLength, l.ToTheDrum.FindString(after)) // "rope total 35 m to the drum"
		case fig.Far() && l.ToTheDrum.MatchString(after):
			Tell(rd, i, parser.DrumAway, l.ToTheDrum.FindString(after))
		case !fig.Unit.Fine:
		case l.OfDrum.MatchString(after) && thickAsDrum(fig):
			Tell(rd, i, parser.DrumAcross, l.OfDrum.FindString(after))
		case l.DrumOf.MatchString(before) && pieceNamed(rd) && !rd.ThicknessBeside(fig):
			fig.Elsewhere = true // "rama de roble, 3 vueltas en el tambor, de 14 pulgadas" without its comma
		case l.DrumOf.MatchString(before) && thickAsDrum(fig) && !rd.At(i+1).Piece():
			Tell(rd, i, parser.DrumAcross, l.IsAcross.FindString(after)) // "3 vueltas en el tambor de 8 pulgadas"
		case thickAsDrum(fig) && plainDrum(rd, l.DrumWide.FindStringIndex(before)) && !rd.At(i+1).Piece():
			Silence(rd, fig.Start-len(l.DrumWide.FindString(before)), fig.Start)
			Tell(rd, i, parser.DrumAcross, l.IsAcross.FindString(after))
		case thickAsDrum(fig) && rd.At(gear.PastIs(rd, i-1)).Marked(lexicon.MarkStation) && l.IsAcross.MatchString(after):
			Tell(rd, i, parser.DrumAcross, l.IsAcross.FindString(after))
		case trunk && l.OfTrunk.MatchString(after):
			Tell(rd, i, parser.TrunkAcross, l.OfTrunk.FindString(after))
		case trunk && l.TrunkIs.MatchString(before):
			Tell(rd, i, parser.TrunkAcross, l.IsAcross.FindString(after))
			Silence(rd, fig.Start-len(l.TrunkIs.FindString(before)), fig.Start)
		}
	}
}

// ropeBefore says whether a rope is named right before a number, but for a word
// that leads to it.
func ropeBefore(rd *reading.Reading, i int) bool {
	j := rd.Back(i - 1)
	if j == i-1 && gear.Part(rd.At(j)) != lexicon.PartRope && rd.At(j).Term != nil {
		j--
	}
	return gear.Part(rd.At(j)) == lexicon.PartRope
}

// drumAside reads "drum at the next tree", with how far that is where it is
// told right behind: "drum on the truck, 20 ft away".
func drumAside(rd *reading.Reading, l *lexicon.Layout) {
	for i, e := range rd.Elems {
		if !e.Marked(lexicon.MarkStation) {
			continue
		}
		j := i + 1
		for leadsOn(rd, j) {
			j++
		}
		if at := treeAway(rd, l, i); at > 0 {
			for k := i + 1; k < at; k++ {
				rd.Alter(k, func(t *scan.Term) { t.Roles = nil }) // "from the base of this one to"
			}
			rd.Elems[at].Term = &scan.Term{Note: parser.DrumAside}
			Tell(rd, at+1, parser.DrumAway, AwayFromTree(l, rd.Text[rd.Elems[at+1].Fig.End:]))
			continue
		}
		if j > i+1 && rd.TermAt(j).Tree != nil && onTree(rd, l, j) {
			rd.Elems[j].Term = &scan.Term{Marks: lexicon.MarkOffTree} // no piece of that tree
		}
		within := strings.HasPrefix(rd.Word(rd.At(j)), "en ") // "en otro árbol" leads by itself
		if j == i+1 && !within || !rd.At(j).Marked(lexicon.MarkOffTree) {
			continue
		}
		for k := i + 1; k < j; k++ {
			rd.Alter(k, func(t *scan.Term) { t.Roles = nil }) // "tied to" it
		}
		rd.Elems[j].Term = &scan.Term{Note: parser.DrumAside}
		k := farFrom(rd, j+1)
		if !gear.Far(rd, k) || rd.Elems[k].Fig.Told != "" {
			continue
		}
		if words := AwayFromTree(l, rd.Text[rd.Elems[k].Fig.End:]); words != "" {
			Tell(rd, k, parser.DrumAway, words)
		} else if rd.Elems[k].Fig.Low >= NearestDrum && rd.EndsBreath(k+1) {
			rd.Elems[k].Fig.Told = parser.DrumAway // "tambor en otro árbol a 8 m"
		}
	}
}

// farFrom passes over what only leads from the place of a drum to how far that is: "drum on
// the next tree, that's about 20 ft away".
func farFrom(rd *reading.Reading, k int) int {
	if rd.At(k).Pause == 2 {
		k++
	}
	const small = lexicon.MarkIs | lexicon.MarkPronoun | lexicon.MarkArticle | lexicon.MarkHello | lexicon.MarkWhere | lexicon.MarkRelation
	for n := 0; n < 5 && rd.At(k).Term != nil && (lexicon.Says(rd.TermAt(k), small) || rd.At(k).Marked(lexicon.MarkAt|lexicon.MarkAnd) || rd.TermAt(k).Note == "about"); n++ {
		k++
	}
	return k
}

// treeAway finds the tree behind the drum at i that is told to be so far away, "move the drum
// to a tree 40 ft away"; 0 where none is.
func treeAway(rd *reading.Reading, l *lexicon.Layout, i int) int {
	const within = 10
	for j := i + 1; j < i+within && rd.At(j).Term != nil && rd.At(j).Pause == 0; j++ {
		if (rd.Cued(rd.At(j), lexicon.CueTree) || rd.Cued(rd.At(j), lexicon.CueTheTree)) && gear.Far(rd, j+1) && rd.Elems[j+1].Fig.Told == "" && AwayFromTree(l, rd.Text[rd.Elems[j+1].Fig.End:]) != "" {
			return j
		}
	}
	return 0
}

// onTree says whether the tree at i is what a drum stands at, and not the one that
// is cut: how far it is follows, "drum on the maple 30 ft back", or that it is
// next door.
func onTree(rd *reading.Reading, l *lexicon.Layout, i int) bool {
	for k := i + 1; k <= i+2; k++ {
		if gear.Far(rd, k) {
			return AwayFromTree(l, rd.Text[rd.Elems[k].Fig.End:]) != ""
		}
	}
	return false
}

// pieceNamed says whether the message tells of a piece and not of its weight,
// so that a thickness could be its.
func pieceNamed(rd *reading.Reading) bool {
	named := false
	for i, e := range rd.Elems {
		if gear.Heavy(rd, i) {
			return false
		}
		named = named || e.Piece()
	}
	return named
}

// leadsOn says whether a term only leads from a drum to what it stands at. What
// is asked about, or ends all, leads nowhere.
func leadsOn(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	bound := e.Marked(lexicon.MarkBound) && rd.At(i+1).Fig != nil // "over 40 ft", and not "over to the next tree"
	return e.Term != nil && e.Term.Ask == "" && e.Term.Stop == "" && e.Term.Note == "" && !bound &&
		!e.Marked(lexicon.MarkOffTree) && (!e.Piece() || e.Marked(lexicon.MarkStanding))
}

// plainDrum says whether the words of a match start with the drum itself: "3
// wraps on the drum, diameter 14 in" speaks of the wraps.
func plainDrum(rd *reading.Reading, match []int) bool {
	return match != nil && slices.ContainsFunc(rd.Elems, func(e reading.Element) bool {
		return e.Marked(lexicon.MarkStation) && e.Start <= match[0] && match[0] < e.End
	})
}

// MovingBlock counts two parts of line where a moving block is all that is said
// of them.
func MovingBlock(rd *reading.Reading) {
	at := -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig != nil && e.Fig.Dim == parser.DimRatio, e.Plays(parser.Parts):
			return
		case e.Term != nil && e.Term.Note == parser.MovingBlock:
			at = i
		}
	}
	if at < 0 || rd.LiftsOn() && rd.Before.Has(parser.Parts) {
		return // "where do i put the moving block" makes no 2:1 of a 3:1
	}
	e := rd.Elems[at]
	two := &reading.Figure{Low: 2, High: 2, Dim: parser.DimRatio, Told: parser.Parts, Start: e.Start, End: e.End}
	rd.Elems = slices.Insert(rd.Elems, at, reading.Element{Start: e.Start, End: e.End, Fig: two})
}

// Tell gives a number its place, and the words behind it no other.
func Tell(rd *reading.Reading, i int, f parser.Field, words string) {
	fig := rd.Elems[i].Fig
	fig.Told = f
	Silence(rd, fig.End, fig.End+len(words))
}

// Silence takes what the terms of a stretch would say besides: a "trunk" that
// a dead end goes round is no log.
func Silence(rd *reading.Reading, start, end int) {
	for i, e := range rd.Elems {
		if e.Term != nil && e.Term.Note == "" && start <= e.Start && e.End <= end {
			rd.Elems[i].Term = &scan.Term{Marks: e.Term.Marks & lexicon.MarkStation}
		}
	}
}
