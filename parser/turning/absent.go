package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/sizes"
	"heft/parser/stops"
)

// Crews say what is not there: "no crane no lift", "we dont have a winch", "sin poleas", "no
// house under it". Where no answer takes it for granted, it is left out and said back. A drum,
// a rope and a block to lower on are taken for granted, and so is who holds the rope.

// absentEnd finds where the words end that tell of such a thing behind the denial at i, 0
// for none.
func absentEnd(rd *reading.Reading, i int) int {
	const mostLead = 3
	j := i + 1
	for j-i <= mostLead && !ofNoUse(rd, i, j) && idleAt(rd, j) {
		j++
	}
	if !ofNoUse(rd, i, j) {
		return 0
	}
	end := j + 1
	if rd.TermAt(end).Beneath && rd.At(end+1).Marked(lexicon.MarkPronoun) {
		end += 2 // "no house under it"
	}
	for end-j <= stops.Few && (idleAt(rd, end) || rd.TermAt(end).ISay && ofNoUse(rd, i, end+1)) {
		end++ // "no fence or shed"
	}
	if !rd.EndsBreath(end) && !sizes.Denial(rd, end) {
		return 0
	}
	return end
}

// idleAt says whether no more than talk stands at k: "dont have any".
func idleAt(rd *reading.Reading, k int) bool {
	e := rd.At(k)
	return k < len(rd.Elems) && e.Pause == 0 && e.Fig == nil && !e.Marked(lexicon.MarkAnd) && !sizes.Denial(rd, k) && !rd.TermAt(k).Human && smallTalk(rd, k)
}

// ofNoUse says whether the thing at j that is denied at i is one that no answer takes for
// granted.
func ofNoUse(rd *reading.Reading, i, j int) bool {
	e, t := rd.At(j), rd.TermAt(j)
	if j >= len(rd.Elems) || e.Fig != nil || rd.At(j+1).Fig != nil || t.Damaged || t.Stop != "" || t.Ask != "" {
		return false
	}
	again := rd.AnyAt(func(k int) bool { return k != j && rd.Elems[k].Fig == nil && rd.Word(rd.Elems[k]) == rd.Word(e) })
	ratio := func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimRatio }
	switch {
	case again:
		return false // "no winch here, the winch is up the road" may be told of
	case t.Machine, e.Plays(parser.WinchPull):
		return true
	case t.Intent == parser.AskLift && j == i+1:
		return rd.TermAt(i).Lacks && !rd.TermAt(i).Denies && (rd.EndsBreath(j+1) || sizes.Denial(rd, j+1)) // a machine: "no crane no lift"
	case gear.Part(e) == lexicon.PartBlock:
		return rd.AnyAt(ratio) || gear.AsksFor(rd, parser.AskLift) || rd.LiftsOn()
	}
	return e.Marked(lexicon.MarkPlace|lexicon.MarkObstacle) && gear.Part(e) == "" && !e.Marked(lexicon.MarkPerson) && !t.Human
}
