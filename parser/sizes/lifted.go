package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// How high a load is brought up is no size of it: "bring the butt up 6 ft", "ten feet
// of lift". No force comes from it, so it is passed over and said back. "Pick the log
// 2 m" could be a log of 2 m as well, and is asked about.

// Lifted takes the heights that a load is lifted by from what the piece measures.
// Where something falls as well, the height may be the fall.
func Lifted(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskDrop) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || rd.Elems[i].Fig.Sure != "" {
			continue
		}
		switch high, sure := liftedBy(rd, i); {
		case rd.Cued(rd.At(i+1), lexicon.CueRise), sure:
			rd.Pass(i, i+1)
			i--
		case high && !rd.ThicknessBeside(rd.Elems[i].Fig):
			rd.Elems[i].Fig.Elsewhere = true
		}
	}
}

// liftedBy says whether the number at i stands behind a verb of lifting and what is
// lifted, and whether nothing else can be meant: "up" stands between, or the piece is
// not named.
func liftedBy(rd *reading.Reading, i int) (high, sure bool) {
	const words = 4 // between the verb and the number
	next := rd.At(i + 1)
	if next.Piece() || next.Fig != nil || next.Cross || next.Looks(lexicon.Before) && !next.Marked(lexicon.MarkUpward) || next.Marked(lexicon.MarkRelation|lexicon.MarkOutward|lexicon.MarkAside) && !next.Marked(lexicon.MarkUpward) {
		return false, false // "raise it 6 ft from the butt"
	}
	up, named, the := next.Marked(lexicon.MarkUpward), false, false
	for k := i - 1; k >= i-words && k >= 0; k-- {
		e := rd.Elems[k]
		if rd.Cued(e, lexicon.CueRaises) {
			return up || !named || the, up || !named && toldLoad(rd)
		}
		if e.Pause > 0 || e.Fig != nil || gear.Part(e) != "" || rd.TermAt(k).Tree != nil || e.Plays(parser.HitchHeight) || e.Plays(parser.Length) {
			return false, false
		}
		up = up || e.Marked(lexicon.MarkUpward|lexicon.MarkErect)
		named = named || e.Piece()
		the = the || e.Marked(lexicon.MarkArticle)
	}
	return false, false
}

// toldLoad says whether a message tells what is lifted.
func toldLoad(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return gear.Heavy(rd, i) || rd.Elems[i].Piece() })
}
