package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Who pulls or cuts tells how far from the tree he stands: "me voy 40 ft pa atrás",
// "estoy parado a 15 ft del árbol". It is no size and no rope. Where the rope's length
// is asked and no drum is told of, his end is where the drum would be; elsewhere it is
// passed over and said back.

// TellersPlace settles such distances. What swings may come at who stands there, so
// that there it stays in doubt.
func TellersPlace(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskSwing) || gear.AsksFor(rd, parser.AskRaise) {
		for i := range rd.Elems {
			if from, _ := selfBack(rd, i); from >= 0 {
				rd.Elems[i].Fig.Elsewhere = true // in doubt, but never how long the piece is
			}
		}
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		from, to := selfBack(rd, i)
		if from < 0 {
			continue
		}
		for rd.Cued(rd.At(from-1), lexicon.CueMeBack) {
			from--
		}
		if rd.TermAt(from - 1).SelfToo {
			rd.Elems[from-1].Term = &scan.Term{} // "y yo estoy a 15 ft del árbol"
		}
		reach := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskRope }) && rd.Worded(parser.RopeLength)
		if (gear.AsksFor(rd, parser.AskRope) || reach || ropeOnly(rd)) && (!rd.Has(lexicon.MarkStation) || withDrum(rd, to)) {
			rd.Elems[i].Fig.Told = parser.DrumAway
			for k := from; k < to; k++ {
				if k != i {
					rd.Elems[k].Term = &scan.Term{}
				}
			}
			continue
		}
		rd.Pass(from, to)
		i = from
	}
}

// ropeOnly says whether the length of a rope is told and no piece: whether it reaches is
// what is asked then.
func ropeOnly(rd *reading.Reading) bool {
	return rd.Worded(parser.RopeLength) && !rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Piece() && !rd.Cued(rd.Elems[i], lexicon.CueOffTrunk) || gear.Heavy(rd, i)
	})
}

// withDrum reads "estoy a 15 ft del tronco con el tambor", of which nothing else is told.
func withDrum(rd *reading.Reading, i int) bool {
	j := rd.Past(i+1, +1, lexicon.MarkArticle)
	return rd.At(i).Marked(lexicon.MarkWhere) && rd.At(j).Marked(lexicon.MarkStation) && (rd.EndsBreath(j+1) || rd.TermAt(j+1).Chatter || rd.At(j+1).Polite())
}

// selfBack finds from where to where somebody tells how far off he stands, -1 for
// nowhere.
func selfBack(rd *reading.Reading, i int) (from, to int) {
	fig := rd.Elems[i].Fig
	if !fig.Far() {
		return -1, -1
	}
	k := wordsOf(rd, rd.Past(rd.Back(i-1), -1, lexicon.MarkAt), lexicon.CueMeBack)
	if k < 0 {
		return othersBack(rd, i)
	}
	j := i + 1
	for rd.TermAt(j).Serves || rd.At(j).Marked(lexicon.MarkArticle) && rd.At(j).Pause == 0 {
		j++
	}
	if rd.In.Cued(rd.Word(rd.At(j)), lexicon.CueBackwards) {
		return k, j + 1
	}
	if rd.Cued(rd.At(i+1), lexicon.CueOffTrunk) && rd.At(i+1).Plays(parser.Tie) {
		return k, i + 2 // "standing 20 ft from the trunk"
	}
	j = rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkArticle)
	if j > i+1 && (rd.Cued(rd.At(j), lexicon.CueWood) || rd.Cued(rd.At(j), lexicon.CueTree) || rd.TermAt(j).Shape == parser.Log) {
		return k, j + 1
	}
	return -1, -1
}

// othersBack is the same of somebody who is named: "mike stands 10 m back", "the groundie's
// stood 30 ft away". A climber is out on the wood.
func othersBack(rd *reading.Reading, i int) (from, to int) {
	behind := rd.At(i + 1)
	if !rd.In.Cued(rd.Word(behind), lexicon.CueBackwards) {
		return -1, -1
	}
	k := i - 1
	for rd.At(k).Pause == 0 && !stops.Person(rd, k) && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkAdverb|lexicon.MarkErect|lexicon.MarkAt) || rd.TermAt(k).Note == "about" || rd.At(k).Polite() || rd.TermAt(k).Stays) {
		k--
	}
	tag := rd.At(k).Marked(lexicon.MarkTug) // "the guy on the tag stands 30 ft out"
	for tag && rd.At(k).Marked(lexicon.MarkTug|lexicon.MarkIn|lexicon.MarkArticle|lexicon.MarkMade) {
		k--
	}
	if !stops.Person(rd, k) || rd.At(k).Pause > 0 || rd.Cued(rd.At(k), lexicon.CueClimber) || rd.Cued(behind, lexicon.CueOut) && !tag {
		return -1, -1
	}
	to = i + 2
	if j := rd.Past(to, +1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkArticle); j > to && (rd.Cued(rd.At(j), lexicon.CueWood) || rd.Cued(rd.At(j), lexicon.CueTree)) {
		to = j + 1
	}
	if rd.At(k - 1).Marked(lexicon.MarkArticle) {
		k--
	}
	return k, to
}
