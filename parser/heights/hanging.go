package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How a load hangs that swings or is pulled aside: how far below its block, and
// how far over it shall go. Elsewhere the same words are numbers of the
// surroundings, or in doubt.

// longestHung is the longest rope that is taken for the line a load hangs on, in
// metres: a longer one is rather the whole rope, and would make every pull
// aside too small.
const longestHung = 20

// Hanging finds both.
func Hanging(rd *reading.Reading) {
	if !Swung(rd) {
		return
	}
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" {
			continue
		}
		switch next := rd.TermAt(i + 1); {
		case next.BelowBlock && rd.TermAt(rd.Back(i-1)).Hung:
			rd.Elems[i].Fig.Told = parser.LineOut
			rd.Elems[i+1].Term = &scan.Term{}
		case rd.At(i+1).Plays(parser.RopeLength) && rd.TermAt(i+2).BelowBlock && rd.Elems[i].Fig.High <= longestHung:
			rd.Elems[i].Fig.Told = parser.LineOut // "on 40 ft of rope under the block"
			rd.Elems[i+1].Term, rd.Elems[i+2].Term = &scan.Term{}, &scan.Term{}
		case hungBelow(rd, i), pieceBelow(rd, i):
			rd.Elems[i].Fig.Told = parser.LineOut
			rd.Elems[i+1].Term = &scan.Term{}
		case hungUnder(rd, i):
			rd.Elems[i-1].Term = &scan.Term{} // no bound
		case next.OffPlumb && cutBefore(rd, i):
			rd.Elems[i].Fig.Told = parser.Sideways
			rd.Elems[i+1].Term = &scan.Term{}
		case next.AboveLoad && (gear.Part(rd.At(rd.Back(i-1))) == lexicon.PartBlock || gear.BlockBefore(rd, i)):
			rd.Elems[i].Fig.Told = parser.LineOut // "la polea está 10 m más arriba"
			rd.Elems[i+1].Term = &scan.Term{}
		case rd.TermAt(rd.Back(i-1)).Hangs && rd.AnyAt(rd.Is(ToTheSide)) && !goesOn(rd, i+1):
			rd.Elems[i].Fig.Told = parser.LineOut // "3 m de lado, cuelga 10 m"
		case tuggedSo(rd, i):
			rd.Elems[i].Fig.Told = parser.Sideways
		case gotOver(rd, i):
			rd.Elems[i].Fig.Told = parser.Sideways
			rd.Elems[rd.Back(i-1)].Term = &scan.Term{} // no bound
		case movedOver(rd, i):
			rd.Elems[i].Fig.Told = parser.Sideways
			rd.Elems[i+1].Term = &scan.Term{}
		case reading.RolesOf(rd.TermAt(rd.Back(i-1)), parser.Sideways) != nil && rd.Cued(rd.At(i+1), lexicon.CueOut) && !rd.At(i+2).Marked(lexicon.MarkRelation):
			rd.Elems[i].Fig.Told = parser.Sideways // "starts 14 ft out"
			rd.Elems[i+1].Term = &scan.Term{}
		case rd.At(i+1).Plays(parser.Sideways) && rd.At(i+1).Marked(lexicon.MarkPlace):
			rd.Elems[i].Fig.Told = parser.Sideways // "2 m de lado"
		case pieceAt(rd, i) && blockUpAt(rd) >= 0: // how high it hangs, see PieceUp
		case rd.TermAt(rd.Back(i-1)).Hung && rd.EndsBreath(i+1):
			hangsSoFar(rd, i)
		default:
			hangsElse(rd, i)
		}
	}
}

// hangsSoFar asks about "the log hangs 6 m": it could be so long, or so far below
// its block.
func hangsSoFar(rd *reading.Reading, i int) {
	fig := rd.Elems[i].Fig
	a := fig.Ask(parser.TwoReadings, rd.Text)
	a.Fields = []parser.Field{parser.Length, parser.LineOut}
	a.Choices = []parser.Choice{{Field: parser.Length}, {Field: parser.LineOut}}
	rd.Asks = append(rd.Asks, a)
	fig.Elsewhere = true
}

// Swung says whether the message speaks of a swing, a tag line, or how far a
// load is to the side.
func Swung(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		if gear.Far(rd, i) && (rd.TermAt(i+1).BelowBlock && rd.TermAt(rd.Back(i-1)).Hung || movedOver(rd, i)) {
			return true
		}
		return e.Plays(parser.Sideways) || gear.Beside(rd, i, parser.LineOut) || e.Term != nil && (e.Term.OffPlumb || e.Term.Intent == parser.AskBalance || e.Term.Intent == parser.AskSwing)
	})
}

// ToTheSide says whether the element at i says how far aside a number is.
func ToTheSide(rd *reading.Reading, i int) bool { return rd.Elems[i].Plays(parser.Sideways) }

// movedOver reads "pull it 6 ft over", and not "over the deck".
func movedOver(rd *reading.Reading, i int) bool {
	j := i - 1
	for rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle) || rd.At(j).Piece() || rd.TermAt(j).Unnamed || gear.Heavy(rd, j) || rd.TermAt(j).Note == "about" {
		j--
	}
	if !rd.Cued(rd.At(i+1), lexicon.CueMoved) || !rd.At(j).Marked(lexicon.MarkTug|lexicon.MarkMoving) {
		return false
	}
	after := rd.At(i + 2)
	return !after.Marked(lexicon.MarkArticle|lexicon.MarkPlace) && after.Fig == nil && !after.Piece()
}

// gotOver reads "get a 200 lb limb over about 5 ft" of a tag line: the load stands before
// the word and how far it goes behind, and no thing that it would go over.
func gotOver(rd *reading.Reading, i int) bool {
	over := rd.Back(i - 1)
	if !rd.Cued(rd.At(over), lexicon.CueMoved) || !TagsAlone(rd) {
		return false
	}
	j := over - 1
	for rd.At(j).Marked(lexicon.MarkPronoun|lexicon.MarkArticle) || rd.At(j).Piece() || rd.TermAt(j).Unnamed || gear.Heavy(rd, j) {
		j--
	}
	moves := rd.At(j).Marked(lexicon.MarkTug|lexicon.MarkMoving) || rd.Cued(rd.At(j), lexicon.CueShifts)
	after := rd.At(i + 1)
	return moves && j < over-1 && !after.Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkPlace) && !after.Piece() && len(rd.TermAt(i+1).Roles) == 0
}

// tuggedSo reads "jalarlo 7 pies" where a tag line is asked about, which moves
// nothing but sideways: not "jalar 7 pies de cuerda", nor "7 pies arriba".
func tuggedSo(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkArticle)
	for rd.At(j).Piece() || rd.TermAt(j).Unnamed || gear.Heavy(rd, j) {
		j = rd.Past(j-1, -1, lexicon.MarkArticle) // "separar la rama 2 m"
	}
	after := rd.At(i + 1)
	ends := rd.EndsBreath(i+1) || rd.Cued(after, lexicon.CueSoThat) || rd.TermAt(i+1).Purpose
	tagged := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskBalance })
	return tagged && ends && rd.At(j).Marked(lexicon.MarkTug)
}

// pieceBelow reads "180 kg, 8 m below the block" where a tag line is spoken of: the
// piece hangs on so much rope.
func pieceBelow(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkPronoun|lexicon.MarkArticle)
	of := k < 0 || rd.At(k).Pause > 0 || rd.At(k).Piece() || rd.TermAt(k).Unnamed || gear.Heavy(rd, k)
	return rd.TermAt(i+1).BelowBlock && of && tugged(rd) && rd.EndsBreath(i+2)
}

// HungOnRope takes a rope for the line that a load hangs on, where it swings or
// is pulled aside and no other line is told: "6 ft off plumb on 25 ft of rope".
// A crew's own rope, one that goes to the drum, and one too long to hang there
// are not that.
func HungOnRope(rd *reading.Reading, q *parser.Question) {
	aside := q.Intent == parser.AskSwing || q.Intent == parser.AskBalance && q.Has(parser.Sideways)
	if !aside || q.Has(parser.LineOut) || q.Has(parser.Wraps) || rd.Has(lexicon.MarkStation) {
		return
	}
	for i, x := range q.Quantities {
		if x.Field != parser.RopeLength || x.High > longestHung || owned(rd, x.Start) {
			continue
		}
		if h, ok := q.Get(parser.HitchHeight); ok && x.High >= h.Low {
			continue
		}
		q.Quantities[i].Field = parser.LineOut
	}
}

// owned says whether what is told at a place of the text is somebody's: "my 50
// ft rope".
func owned(rd *reading.Reading, start int) bool {
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Start == start {
			return rd.Cued(rd.At(i-1), lexicon.CueOwned)
		}
	}
	return false
}
