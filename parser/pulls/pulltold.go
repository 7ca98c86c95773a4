package pulls

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// What a winch or the hands pull with is told as a pull, "200 lb of pull on a
// 3:1", or of the winch itself. It is the load only where it names the piece.

// PullsTold finds the masses and forces that are what a lift is pulled with.
func PullsTold(rd *reading.Reading) {
	for i := range rd.Elems {
		if gear.Heavy(rd, i) && PullInTalk(rd, i) {
			rd.Elems[i].Fig.Told = parser.WinchPull
			continue
		}
		if !gear.Heavy(rd, i) || rd.Elems[i].Fig.Told != "" || rd.At(i+1).Piece() {
			continue
		}
		if itsPull(rd, i) {
			rd.Elems[i].Fig.Told = parser.WinchPull
			ownsBehind(rd, i)
			continue
		}
		if liftedByWinch(rd, i) || pulledLoad(rd, i) {
			rd.Elems[i].Fig.Told = parser.Weight
			continue
		}
		if pullBehind(rd, i) || pullLeads(rd, i) || turning.Lifting(rd) && (winchOf(rd, i) || capstanLifts(rd, i)) {
			rd.Elems[i].Fig.Told = parser.WinchPull
			ownsBehind(rd, i)
		}
	}
}

// ownsBehind keeps the winch of which the number at i is told from taking another that
// stands before it: "limb 280 kg, winch thats rated 1 tonne".
func ownsBehind(rd *reading.Reading, i int) {
	k := i - 1
	for k >= 0 && rd.Elems[k].Fig == nil && !rd.Elems[k].Plays(parser.WinchPull) {
		k--
	}
	if k < 0 || rd.Elems[k].Fig != nil {
		return
	}
	rd.Alter(k, func(t *scan.Term) {
		roles := slices.Clone(t.Roles)
		for n := range roles {
			if roles[n].Field == parser.WinchPull {
				roles[n].Side = lexicon.After
			}
		}
		t.Roles = roles
	})
}

// liftedByWinch reads "un tronco de 900 lb con el winch": what stands right behind the
// piece is not what the winch pulls.
func liftedByWinch(rd *reading.Reading, i int) bool {
	before := rd.Past(rd.Back(i-1), -1, lexicon.MarkMade|lexicon.MarkIs)
	winch := rd.At(rd.Past(i+2, +1, lexicon.MarkArticle))
	return before < i-1 && rd.At(before).Piece() && rd.At(i+1).Pause == 0 && rd.At(i+1).Marked(lexicon.MarkWhere|lexicon.MarkIn) && winch.Plays(parser.WinchPull)
}

// pullBehind reads "the winch has 1000 lb of pull", "winch does 1000 lb pull" and
// "200 lb of pull on a 3:1". What people pull may be that of each or of all.
func pullBehind(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkMade)
	sure := rd.Cued(rd.At(j), lexicon.CueOfPull) || j > i+1 && rd.Cued(rd.At(j), lexicon.CuePull)
	if !sure && !rd.Cued(rd.At(j), lexicon.CuePull) {
		return false
	}
	next := rd.At(j + 1)
	ends := rd.EndsBreath(j+1) || next.Marked(lexicon.MarkWhere|lexicon.MarkAt) || next.Fig != nil && next.Fig.Dim == parser.DimRatio ||
		rd.TermAt(j+1).Note == parser.MostWanted || rd.TermAt(j+1).Intent == parser.AskLift
	if rd.At(rd.Back(i - 1)).Plays(parser.WinchPull) {
		return ends
	}
	others := rd.AnyAt(func(k int) bool { return k != i && gear.Heavy(rd, k) }) || mostAsked(rd)
	return ends && ownPull(rd) && (sure || others)
}

// pullLeads reads "pulling 200 lb on a 3:1, what's the most i can lift": of a
// load that is asked for nobody tells the weight.
func pullLeads(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(rd.Back(i-1)), lexicon.CuePulling) && ownPull(rd) && (mostAsked(rd) || loadBeside(rd, i))
}

// ownPull says whether the message tells of a lift alone, and counts nobody who
// pulls.
func ownPull(rd *reading.Reading) bool {
	return turning.Lifting(rd) && !peopleCounted(rd) && !otherPull(rd)
}

// peopleCounted says whether people who pull are told of: "pulling 200 lb" counts
// nobody by itself.
func peopleCounted(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		fig := rd.At(i - 1).Fig
		return rd.Elems[i].Plays(parser.People) && (!rd.Cued(rd.Elems[i], lexicon.CuePulling) || fig != nil && fig.Dim == parser.DimCount)
	})
}

// otherPull says whether the message tells of what is pulled besides a lift: a
// tag line, a limb that is stood up, a rope that turns at a block.
func otherPull(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool {
		switch rd.TermAt(i).Intent {
		case parser.AskBalance, parser.AskSwing, parser.AskDrop, parser.AskRaise, parser.AskBlockLoad, parser.AskLower:
			return true
		}
		return parser.Redirecting(rd.TermAt(i).Block)
	})
}

// mostAsked says whether it is asked how much can be lifted.
func mostAsked(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == parser.MostWanted })
}

// winchOf reads "the winch will only pull 500 kg", "capstan winch rated 1 tonne"
// and "the capstan can pull 1000 lb" beside the load. "Will the winch pull 500
// kg" asks, and a capstan by itself has a strength as well.
func winchOf(rd *reading.Reading, i int) bool {
	k, pulls := i-1, false
	told := rd.At(k).Marked(lexicon.MarkIs | lexicon.MarkMade) // "…with the winch, it's 900 lb"
	for ; (rd.At(k).Term != nil || told && rd.At(k).Pause > 0 && rd.At(k).Fig == nil) && !rd.At(k).Plays(parser.WinchPull) && !rd.TermAt(k).Hauls; k-- {
		t := rd.TermAt(k)
		if t.Tree != nil || t.Shape != "" || t.Stop != "" || t.Ask != "" || !bounded(t) {
			return false
		}
		if t.Intent != "" {
			if t.Intent != parser.AskLift || !t.Besides {
				return false
			}
			pulls = true
		}
	}
	winch := rd.At(k).Plays(parser.WinchPull) && k < i-1 || rd.TermAt(k).Hauls && (pulls || gear.AsksFor(rd, parser.AskLift) || Picks(rd))
	asked := rd.Cued(rd.At(rd.Past(k-1, -1, lexicon.MarkArticle)), lexicon.CueAsking) && (pulls || rd.At(k).Plays(parser.WinchPull))
	return winch && !asked && loadBeside(rd, i)
}

// bounded says whether all that the words do to a number is to make it a bound: "max".
func bounded(t *scan.Term) bool {
	for _, r := range t.Roles {
		if r.Field != parser.Limit {
			return false
		}
	}
	return true
}

// loadBeside says whether another mass is told as that of the load, or its tree
// and its sizes are.
func loadBeside(rd *reading.Reading, but int) bool {
	const near = 4
	lengths, tree := 0, false
	for i, e := range rd.Elems {
		tree = tree || rd.TermAt(i).Tree != nil
		if e.Fig != nil && e.Fig.Dim == parser.DimLength {
			lengths++
		}
	}
	return tree && lengths > 1 || rd.AnyAt(func(i int) bool {
		before := rd.Past(rd.Back(i-1), -1, lexicon.MarkMade|lexicon.MarkIs)
		for k := before; i-k <= near && (rd.At(k).Pause == 2 || rd.At(k).Polite() || rd.TermAt(k).Note == "about"); k-- {
			before = k - 1 // "lift a limb, reckon 280 kg"
		}
		load := rd.At(i+1).Piece() || rd.At(i+1).Plays(parser.ButtDiameter) || rd.At(before).Piece() || rd.TermAt(before).Unnamed || rd.At(before).Plays(parser.Weight) || rd.TermAt(before).Intent == parser.AskLift
		return i != but && gear.Heavy(rd, i) && load
	})
}

// capstanLifts reads "capstan de 1000 libras, 4 a 1, ¿cuánto levanta?" and "how many
// parts for 1800 lb with a 1000 lb capstan": what lifts is no drum, and its one
// figure what it pulls.
func capstanLifts(rd *reading.Reading, i int) bool {
	before := rd.Past(rd.Back(i-1), -1, lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkRating)
	capstan := rd.TermAt(i+1).Hauls || rd.TermAt(before).Hauls
	s, _ := gear.StrengthBeside(rd, i-1, i+1)
	others := 0
	for k := range rd.Elems {
		if k != i && gear.Heavy(rd, k) {
			others++
		}
	}
	return capstan && s == "" && !otherPull(rd) && (others == 0 && mostAsked(rd) || others == 1)
}

// Picks says whether a capstan is told of and a load is what is picked: "pick a 1,900
// lb log with the capstan". By itself the verb says much else.
func Picks(rd *reading.Reading) bool {
	capstan := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Hauls })
	return capstan && !rd.Worded(parser.Wraps) && rd.AnyAt(func(i int) bool {
		return rd.TermAt(i).Intent == parser.AskLift && gear.Heavy(rd, rd.Past(i+1, +1, lexicon.MarkArticle))
	})
}
