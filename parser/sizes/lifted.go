package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How high a load is brought up is no size of it: "bring the butt up 6 ft", "ten feet
// of lift". "Pick the log 2 m" could be a log of 2 m as well, and is asked about.

// Lifted takes the heights that a load is lifted by from what the piece measures.
// Where something falls as well, the height may be the fall.
func Lifted(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskDrop) {
		return
	}
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Told != "" || fig.Sure != "" || fig.Falling || fig.Pair {
			continue
		}
		rises := risesBy(rd, i)
		if bare := fig.Dim == parser.DimCount && fig.Unit == nil; rises || bare && travelAsked(rd) && raisedBare(rd, i) {
			rises = true
			LendLength(rd, i)
		}
		if rises && fig.Dim == parser.DimCount && fig.Unit == nil {
			fig.Sure = parser.Rise // its unit is asked for
		}
		if high, sure := liftedBy(rd, i); fig.Short() && high && sure && rd.AnyAt(rd.Is(gear.Heavy)) {
			fig.Told = parser.Rise // "lift it 12 in": of a load that is told, how thick it is does not matter
			upAlone(rd, i)
			overWhat(rd, i+1)
			continue
		}
		if !fig.Far() {
			continue
		}
		switch high, sure := liftedBy(rd, i); {
		case rises, rd.Cued(rd.At(i+1), lexicon.CueRise), sure:
			fig.Told = parser.Rise
			upAlone(rd, i)
			overWhat(rd, i+1)
		case high && !rd.ThicknessBeside(fig):
			fig.Elsewhere = true
		}
	}
}

// raisedBare says whether the bare number at i stands right behind a verb of lifting what
// was told of, and counts nothing: "need to lift it 8".
func raisedBare(rd *reading.Reading, i int) bool {
	next, verb := rd.At(i+1), i-1
	if rd.TermAt(verb).Note == "about" {
		verb-- // "subirla unos 6"
	}
	return rd.Cued(rd.At(verb), lexicon.CueRaises) && rd.TermAt(verb).Marks&lexicon.MarkGear == 0 && (rd.EndsBreath(i+1) || next.Marked(lexicon.MarkWhere|lexicon.MarkAt|lexicon.MarkUpward))
}

// loadRises says whether what comes up at i is the load: "it has to come up 12 ft". A
// climber and a block do too.
func loadRises(rd *reading.Reading, i int) bool {
	const words = 4 // between it and its verb
	for k := i - 1; k >= 0 && i-k <= words && rd.Elems[k].Pause == 0; k-- {
		e := rd.Elems[k]
		switch {
		case e.Piece(), rd.TermAt(k).Unnamed, rd.Cued(e, lexicon.CueLoad):
			return true
		case e.Fig != nil, gear.Part(e) != "", e.Marked(lexicon.MarkPerson | lexicon.MarkSelf), rd.TermAt(k).Someone, rd.Cued(e, lexicon.CueWho), rd.Cued(e, lexicon.CueUs):
			return false
		}
	}
	return false
}

// upAlone takes from the "up" before such a height that it tells how high something is:
// "12 ft, lift it up 6 ft".
func upAlone(rd *reading.Reading, i int) {
	if k := i - 1; rd.At(k).Marked(lexicon.MarkUpward) {
		rd.Alter(k, func(t *scan.Term) { t.Roles = nil })
	}
}

// MaybeRise says whether the number at i may be how high a load is lifted.
func MaybeRise(rd *reading.Reading, i int) bool {
	high, _ := liftedBy(rd, i)
	return high && gear.Far(rd, i)
}

// risesBy says whether the number at i is how far a load comes up, and can be nothing
// else: "it has to come up 10", "18 ft lift".
func risesBy(rd *reading.Reading, i int) bool {
	const words = 3 // between the verb and the number
	next := rd.At(i + 1)
	if next.Piece() || next.Fig != nil || next.Cross || next.Looks(lexicon.Before) && !next.Marked(lexicon.MarkUpward) {
		return false
	}
	sized := rd.At(i - 1).Fig.Short() // "limb 10 in 20 ft lift with a 2:1": how long it is
	if rd.Elems[i].Fig.Far() && !sized && rd.Cued(next, lexicon.CueLiftNoun) && liftTold(rd) && (rd.EndsBreath(i+2) || rd.At(i+2).Marked(lexicon.MarkWhere|lexicon.MarkAt) || rd.Cued(rd.At(i+2), lexicon.CueStarts)) {
		return true
	}
	for k := i - 1; k >= i-words && k >= 0; k-- {
		e := rd.Elems[k]
		if rd.Cued(e, lexicon.CueGoesUp) && rd.At(k+1).Marked(lexicon.MarkUpward) && liftTold(rd) {
			return true // "needs to go up 12"
		}
		if rd.Cued(e, lexicon.CueRises) {
			return liftTold(rd) || rd.Cued(e, lexicon.CueRaises) || loadRises(rd, k) || meetsAsked(rd)
		}
		if !e.Polite() && rd.TermAt(k).Note != "about" && !rd.Cued(e, lexicon.CueMerely) && !e.Marked(lexicon.MarkUpward|lexicon.MarkErect|lexicon.MarkBound) {
			return false
		}
	}
	return false
}

// liftTold says whether a message tells of a lift, or asks about one.
func liftTold(rd *reading.Reading) bool {
	return tackleTold(rd) || gear.AsksFor(rd, parser.AskLift) || rd.Has(lexicon.MarkHoists) || rd.LiftsOn()
}

// liftedBy says whether the number at i stands behind a verb of lifting and what is
// lifted, and whether nothing else can be meant: "up" stands between, what it shall come
// clear of stands behind, or the piece is not named.
func liftedBy(rd *reading.Reading, i int) (high, sure bool) {
	const words = 6 // between the verb and the number
	clears := liftTold(rd) && clearedAt(rd, purposeAt(rd, i+1)) >= 0
	over := rd.At(i-1).Marked(lexicon.MarkUpward) && rd.Cued(rd.At(i+1), lexicon.CueOver) && obstacleAt(rd, i+2) >= 0
	if !clears && !over && tellsOn(rd, i+1) {
		return false, false // "raise it 6 ft from the butt"
	}
	up, named, the, known := rd.At(i+1).Marked(lexicon.MarkUpward), false, false, false
	for k := i - 1; k >= i-words && k >= 0; k-- {
		e := rd.Elems[k]
		if rd.Cued(e, lexicon.CueRaises) || rd.Cued(e, lexicon.CueMovesLoad) && travelAsked(rd) {
			plain := up || clears || !named || known && tackleTold(rd) && heavyTold(rd)
			return plain || the, plain && (toldLoad(rd) && (up || !named || heavyTold(rd)) || tackleTold(rd) || rd.LiftsOn() && !rd.Has(lexicon.MarkFollow)) || travelAsked(rd) && !rd.ThicknessBeside(rd.Elems[i].Fig)
		}
		if e.Fig != nil && gear.Heavy(rd, k) && (up || clears || !named || known || travelAsked(rd) || theLoad(rd, k)) {
			continue // "raising a 500 lb log 12 ft", "get the 300 lb log up 12 ft"
		}
		if e.Pause > 0 || e.Fig != nil || gear.Part(e) != "" || rd.TermAt(k).Tree != nil || (e.Plays(parser.HitchHeight) || e.Plays(parser.Length) && !rd.TermAt(k).Unnamed) && !e.Marked(lexicon.MarkUpward) {
			return false, false
		}
		up = up || e.Marked(lexicon.MarkUpward|lexicon.MarkErect)
		named = named || e.Piece()
		the = the || e.Marked(lexicon.MarkArticle)
		known = known || rd.Cued(e, lexicon.CueThe)
	}
	return false, false
}

// tellsOn says whether what stands at i, behind how high a load might be lifted, makes the
// number another: a size beside it, the piece, what it is seen from. How many parts the
// tackle has does not: "lift 800 lb up 4 ft 5:1".
func tellsOn(rd *reading.Reading, i int) bool {
	next := rd.At(i)
	if next.Fig != nil {
		return next.Fig.Dim != parser.DimRatio
	}
	upward := next.Marked(lexicon.MarkUpward)
	return next.Piece() || next.Cross || next.Looks(lexicon.Before) && !upward || next.Marked(lexicon.MarkRelation|lexicon.MarkOutward|lexicon.MarkAside) && !upward
}

// theLoad says whether the mass at i names a load that was told of: "the 300 lb log".
func theLoad(rd *reading.Reading, i int) bool { return rd.Cued(rd.At(i-1), lexicon.CueThe) }

// meetsAsked says whether it is asked if blocks meet: what comes up then is their load.
func meetsAsked(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == parser.BlocksMeet })
}

// heavyTold says whether a message tells what a load weighs.
func heavyTold(rd *reading.Reading) bool { return rd.AnyAt(rd.Is(gear.Heavy)) }

// travelAsked says whether it is asked how far a lift goes, or told how far apart its
// blocks are: nobody tells how long a piece is for that.
func travelAsked(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return rd.TermAt(i).Note == parser.TravelWanted || rd.Elems[i].Plays(parser.Apart) || fig != nil && fig.Told == parser.Apart
	})
}

// toldLoad says whether a message tells what is lifted.
func toldLoad(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return gear.Heavy(rd, i) || rd.Elems[i].Piece() })
}
