package asking

import (
	"slices"
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// WordAsks are the known words that must be asked about.
func WordAsks(rd *reading.Reading) []*parser.Ask {
	var out []*parser.Ask
	for i, e := range rd.Elems {
		switch {
		case e.Term != nil && e.Term.Ask == parser.Girth && gear.Part(rd.At(i-1)) == lexicon.PartSling && gear.LoadWanted(rd):
			// a sling goes round the stem that holds it
		case e.Term != nil && e.Term.Ask != "":
			a := reading.AskAt(e.Term.Ask, rd.Text, e.Start, e.End-e.Start)
			if a.Turning = turning.TurnedBy(rd, i); a.Turning == parser.TurnsLength {
				a.Fields = []parser.Field{parser.Length}
			}
			out = append(out, a)
		case girth(rd, i):
			out = append(out, reading.AskAt(parser.Girth, rd.Text, e.Start, rd.Elems[i+1].End-e.Start))
		case runsOn(rd, i):
			out = append(out, reading.AskAt(parser.OddNumber, rd.Text, e.Start, rd.Elems[i+1].End-e.Start))
		case speed(rd, i):
			out = append(out, reading.AskAt(parser.OddNumber, rd.Text, e.Start, rd.Elems[rd.Past(i+1, +1, lexicon.MarkArticle)].End-e.Start))
		case twoUnits(rd, i):
			out = append(out, reading.AskAt(parser.OddNumber, rd.Text, e.Start, rd.Elems[i+1].End-e.Start))
		}
	}
	return out
}

// ThickTwice asks about a piece that is told as thick and as deep, "3 ft thick 18 in
// deep": either may be what it measures across.
func ThickTwice(rd *reading.Reading) []*parser.Ask {
	told := 0
	for i, e := range rd.Elems {
		if !e.Marked(lexicon.MarkThick) || !places.LengthAt(rd, i-1) {
			continue
		}
		if told++; told == 2 {
			a := rd.Elems[i-1].Fig.Ask(parser.TwoReadings, rd.Text)
			a.Fields = []parser.Field{parser.Diameter, parser.Length}
			return []*parser.Ask{a}
		}
	}
	return nil
}

// doubtful says whether the number must be asked about whatever its place.
func doubtful(rd *reading.Reading, i int) bool {
	return girth(rd, i) || twoUnits(rd, i) || speed(rd, i) || touched(rd, i) || runsOn(rd, i) || runsOn(rd, i-1)
}

// runsOn says whether the number is typed as words and another such stands
// right behind it: "six fifty pounds" are no two numbers.
func runsOn(rd *reading.Reading, i int) bool {
	spoken := func(e reading.Element) bool { return e.Fig != nil && scan.LetterAt(rd.Text, e.Start) }
	return spoken(rd.At(i)) && rd.At(i).Fig.Unit == nil && spoken(rd.At(i+1))
}

// touched says whether something unknown stands right beside the number:
// "14±1 in".
func touched(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.Unknown && (a.End == e.Start || a.Start == e.End) })
}

// girth reads "44 in around", and "60 in around 6 ft long" where the tape may
// have been round the stem too; "14 in, around 22 ft" is none.
func girth(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	if roundAcross(rd, i) {
		return true
	}
	return e.Fig != nil && e.Fig.Dim == parser.DimLength && rd.At(i+1).Marked(lexicon.MarkAround) && (rd.At(i+2).Fig == nil || e.Fig.Unit.Fine)
}

// roundAcross reads "a log 50 in round, 6 ft long" and "2.1 m round", which is
// hardly across.
func roundAcross(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	if fig == nil || fig.Dim != parser.DimLength || !rd.At(i+1).Marked(lexicon.MarkRound) {
		return false
	}
	return fig.Unit.Fine && twoShapes(rd, i+1) || fig.Low > reading.Roundest && !acrossElsewhere(rd, i)
}

// acrossElsewhere says whether a thickness is told besides the number at i: a "4 ft round
// of 30 inch" is 4 ft long.
func acrossElsewhere(rd *reading.Reading, i int) bool {
	return rd.AnyAt(func(k int) bool {
		fig := rd.Elems[k].Fig
		return k != i && fig != nil && fig.Dim == parser.DimLength && fig.Unit != nil && fig.Unit.Fine && !fig.Rope && fig.Low >= places.ThinnestPiece && !rd.At(k+1).Marked(lexicon.MarkThick) && !rd.At(k+1).Plays(parser.Length)
	})
}

// twoShapes says whether the message names another shape before the round at i.
func twoShapes(rd *reading.Reading, i int) bool {
	return slices.ContainsFunc(rd.Elems[:i], func(e reading.Element) bool {
		return e.Term != nil && e.Term.Shape != "" && !e.Marked(lexicon.MarkRound)
	})
}

// twoUnits reads "600 ft lbs".
func twoUnits(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Fig != nil && e.Fig.Unit != nil && rd.At(i+1).Marked(lexicon.MarkUnit) && !wantedIn(rd, i)
}

// wantedIn reads "horse chestnut 55 cm, kg?" and "16\" 9' lb?": the unit behind a length, with
// nothing more to follow, is what the weight is wanted in.
func wantedIn(rd *reading.Reading, i int) bool {
	e := rd.At(i + 1)
	u := rd.In.Units[scan.Fold(rd.Text[e.Start:e.End])]
	fig := rd.Elems[i].Fig
	return (fig.Short() || strings.HasSuffix(fig.Words(rd.Text), "'") || strings.HasSuffix(fig.Words(rd.Text), "′")) && u != nil && u.Dim == parser.DimMass && (i+2 >= len(rd.Elems) || rd.Elems[i+2].Pause > 2)
}

// speed reads "5 ft a second", which is no length. "turns 45 degrees, the second
// one 90" tells none.
func speed(rd *reading.Reading, i int) bool {
	return rd.At(i).Fig != nil && rd.At(i).Fig.Unit != nil && rd.Elems[i].Fig.Dim != parser.DimAngle && rd.TermAt(rd.Past(i+1, +1, lexicon.MarkArticle)).Rate
}

// BoundAsk asks about the first number that is only a bound: "over 14 in", "at
// least 22 ft". The limit of a load is one by its nature, and a taper runs
// over a length.
func BoundAsk(rd *reading.Reading, full places.Bound, limb bool) *parser.Ask {
	for i, e := range rd.Elems {
		if !e.Marked(lexicon.MarkBound) || rd.Cued(e, lexicon.CueAbove) && rd.At(i+1).Marked(lexicon.MarkAt) {
			continue // "straight above at 5 m" is where, and not how much at least
		}
		j := rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkBound|lexicon.MarkArticle)
		fig := rd.At(j).Fig
		if fig == nil || fig.Elsewhere && fig.Claimed == "" || fig.Dim == parser.DimLength && gear.Obstacle(rd.At(j+1)) != "" || full[j] == parser.Limit || full[j] == parser.Redirects || full[j] == parser.Length && rd.Has(lexicon.MarkTaper) {
			continue
		}
		if fig.Dim == parser.DimCount && fig.Unit == nil && e.Plays(parser.Limit) && !e.Plays(parser.Length) && rd.AnyAt(rd.Is(bounds.Cuts)) {
			continue // "cut lengths, max 250" is asked for its unit
		}
		if fig.Dim == parser.DimCount && fig.Unit == nil && rd.At(j+1).Plays(parser.Limit) {
			continue // "under a 300 limit" likewise
		}
		if e.Term.Intent == parser.AskCutPlan && parser.Thickness(full[j]) || full[j] == parser.PersonPull && rd.TermAt(j+1).InHand {
			continue // "max length of a 20 in log", "under 40 lb in the hand"
		}
		if full[j] == parser.BlockAngle && rd.Cued(e, lexicon.CueUpTo) && rd.Has(lexicon.MarkBridle) {
			continue // legs pull hardest where they open widest
		}
		a := reading.AskAt(parser.Twist, rd.Text, e.Start, fig.End-e.Start)
		a.Turning = parser.TurnsBound
		switch f := full[j]; f {
		case "":
		case parser.Diameter:
			a.Fields = []parser.Field{parser.AcrossField(limb)}
		default:
			a.Fields = []parser.Field{f}
		}
		return a
	}
	return nil
}

// PeakOfAnother asks about "the peak" where the answer tells what a load does
// that moves smoothly.
func PeakOfAnother(rd *reading.Reading, q parser.Question) (out []*parser.Ask) {
	if q.Intent == parser.AskDrop || q.Intent == parser.AskSwing {
		return nil
	}
	for _, e := range rd.Elems {
		if e.Term != nil && e.Term.Intent == parser.AskDrop && e.Term.Besides {
			out = append(out, reading.AskAt(parser.Unknown, rd.Text, e.Start, e.End-e.Start))
		}
	}
	return out
}

// Glued says whether a word is typed in one with more: the first part of a key
// or a link.
func Glued(rd *reading.Reading, a *parser.Ask) bool {
	const joins = "-_/@=:"
	before, after := rd.Text[:a.Start], rd.Text[a.End:]
	return before != "" && strings.ContainsRune(joins, rune(before[len(before)-1])) ||
		len(after) > 1 && strings.ContainsRune(joins, rune(after[0])) && after[1] != ' '
}

// AsTree says whether an unknown word stands where the tree does: the only such
// word, right before or behind "limb" or "log", in a message that names no tree.
func AsTree(rd *reading.Reading, a *parser.Ask) bool {
	if a.Kind != parser.Unknown || strings.ContainsFunc(a.Words, func(r rune) bool { return !unicode.IsLetter(r) && r != '-' && r != '\'' }) {
		return false
	}
	if slices.ContainsFunc(rd.Asks, func(other *parser.Ask) bool { return other != a && other.Kind == parser.Unknown }) {
		return false
	}
	next := len(rd.Elems)
	for i, e := range rd.Elems {
		if e.Term != nil && e.Term.Tree != nil {
			return false
		}
		if e.Start >= a.Start {
			next = min(next, i)
		}
	}
	return rd.TermAt(next).Shape != "" || rd.TermAt(rd.Past(next-1, -1, lexicon.MarkArticle|lexicon.MarkMade)).Shape != ""
}

// Girths turns the one girth of a message into the thickness that goes with it,
// where it stands right beside its word and no other thickness is told. What an
// anchor holds goes by its thinnest, which a tape round it does not tell.
func Girths(rd *reading.Reading) {
	sizes.RoundAfterAll(rd)
	sizes.TurnsAround(rd)
	sizes.BareGirth(rd)
	word, last, fig := -1, -1, -1
	for i := 0; i < len(rd.Elems); i++ {
		switch j := sizes.GirthAt(rd, i); {
		case rd.TermAt(i).Ask == parser.BreastHigh, rd.TermAt(i).Intent == parser.AskAnchor, roundAcross(rd, i):
			return
		case !sizes.GirthWord(rd, i):
		case word >= 0 && sizes.GirthAgain(rd, i):
		case word >= 0 && !sizes.PairsUp(rd, word, i, fig), j < 0 && word < 0:
			return
		case word < 0:
			word, last, fig = i, i, j
		default:
			last = i
		}
	}
	if word < 0 {
		return
	}
	sizes.NotAcross(rd, max(last, fig))
	if sizes.OtherAcross(rd, fig) {
		return
	}
	middle := false
	for i := range rd.Elems {
		if sizes.GirthWord(rd, i) {
			middle = middle || rd.TermAt(i).GirthMiddle
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
	sizes.Divide(rd, fig, middle)
}

// A number can belong to the surroundings: "30 ft from the house", "a 12 ft
// fence", "climber at 40 ft", "1/2 in rope". Such a number must never become
// a size of the piece or the height of the hitch, so it is found first, and
// asked about.

// Surroundings marks the numbers that belong to the surroundings.
func Surroundings(rd *reading.Reading) {
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil || e.Fig.Dim == parser.DimRatio || e.Fig.Told != "" || e.Fig.Sure != "":
		case e.Fig.Sideless:
			e.Fig.Elsewhere = true
		case gear.OfRope(rd, i):
			e.Fig.Rope = true
		case gear.SizedLong(rd, i):
			e.Fig.Elsewhere = e.Fig.Elsewhere || doubtful(rd, i)
		case e.Fig.Dim == parser.DimAngle:
			e.Fig.Elsewhere = rd.At(rd.Past(i-1, -1, lexicon.MarkIs)).Marked(lexicon.MarkDeflects)
		default:
			e.Fig.Elsewhere = e.Fig.Elsewhere || doubtful(rd, i) || gear.TowardsPlace(rd, i) || sizes.OfPlace(rd, i) || gear.BehindPlace(rd, i) || gear.BehindPart(rd, i) || gear.OutToo(rd, i) || turning.OfSomeone(rd, i) || fromFork(rd, i)
		}
	}
}

// fromFork says whether the number at i is how far something is from a fork, "cut 2 ft from
// the fork": the word alone tells how high a hitch is there.
func fromFork(rd *reading.Reading, i int) bool {
	fork := rd.Past(i+2, +1, lexicon.MarkArticle)
	from := rd.Cued(rd.At(i+1), lexicon.CueFrom) && rd.Elems[i].Fig.Dim == parser.DimLength
	named := places.OnlyPlays(rd.At(fork), parser.HitchHeight) && rd.At(fork).LooksBack(parser.HitchHeight) || rd.TermAt(fork).Block == parser.NaturalCrotch
	return from && rd.At(fork).Fig == nil && rd.At(fork+1).Fig == nil && named
}
