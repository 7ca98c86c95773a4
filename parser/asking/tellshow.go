package asking

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
)

// Words like "is", "looks" and "with" say how something is. Of whom or what, stands
// before them: wood and gear are in a state, people and fences are not of the job.

// tellsHow says whether a word behind the element at i tells how wood or gear is: "the
// limb is …", "looks really …", "with …", "it …".
func tellsHow(rd *reading.Reading, i int) bool {
	if questions(rd, i) {
		return false
	}
	i = overTalk(rd, i)
	switch e := rd.At(i); {
	case i < 0, e.Pause > 0, whoever(rd, i), rd.Cued(e, lexicon.CueClause):
		return false
	case rd.Cued(e, lexicon.CueItIs):
		return true
	case e.Marked(lexicon.MarkAnd):
		return telling(rd, i-1)
	case e.Marked(lexicon.MarkRelation | lexicon.MarkWhere | lexicon.MarkMade):
		return having(rd, i)
	case e.Marked(lexicon.MarkIs), rd.TermAt(i).State, rd.Cued(e, lexicon.CueTurns):
		return ofThings(rd, i-1)
	case e.Marked(lexicon.MarkPronoun):
		return startsSaying(rd, i-1)
	}
	return false
}

// questions says whether a word behind the element at i is what is asked, "is that
// …", "will it …", and tells nothing.
func questions(rd *reading.Reading, i int) bool {
	asks := rd.At(i-1).Marked(lexicon.MarkIs) || rd.Cued(rd.At(i-1), lexicon.CueAsking)
	return asks && rd.Cued(rd.At(i), lexicon.CueThat) && startsSaying(rd, i-2)
}

// overTalk goes back from i over what says nothing of what stands behind it.
func overTalk(rd *reading.Reading, i int) int {
	for i >= 0 && rd.Elems[i].Pause == 0 && !whoever(rd, i) && !rd.Cued(rd.Elems[i], lexicon.CueItIs) && !rd.Cued(rd.Elems[i], lexicon.CueClause) {
		e := rd.Elems[i]
		switch {
		case rd.Cued(e, lexicon.CueMerely):
		case e.Marked(lexicon.MarkIs | lexicon.MarkRelation | lexicon.MarkWhere | lexicon.MarkAnd | lexicon.MarkMade), rd.TermAt(i).State, rd.Cued(e, lexicon.CueTurns):
			return i
		case !e.Polite() && !e.Marked(lexicon.MarkArticle|lexicon.MarkAdjective):
			return i
		}
		i--
	}
	return i
}

// telling says whether the element at i is already said of wood or gear, so that
// more of it follows behind an "and": "it's dead and …".
func telling(rd *reading.Reading, i int) bool {
	return rd.At(i).Marked(lexicon.MarkAdjective) || rd.TermAt(i).Condition != "" || rd.TermAt(i).State || tellsHow(rd, i)
}

// startsSaying says whether nothing that is done stands before i: "it …" begins what is said
// there, and "lower it …" does not.
func startsSaying(rd *reading.Reading, i int) bool {
	i = overTalk(rd, i)
	return i < 0 || rd.At(i).Pause > 0 || rd.At(i).Marked(lexicon.MarkAnd) || rd.Cued(rd.At(i), lexicon.CueClause)
}

// ofThings says whether what stands up to i, before "is" or "looks", is no person and
// no place: wood, gear, a number, or nothing that is named.
func ofThings(rd *reading.Reading, i int) bool {
	for rd.At(i).Marked(lexicon.MarkIs|lexicon.MarkAdverb) || rd.TermAt(i).State || rd.At(i).Polite() && rd.At(i).Pause == 0 || rd.Cued(rd.At(i), lexicon.CueMerely) {
		switch {
		case rd.Cued(rd.At(i), lexicon.CueItIs), stops.OfBody(rd, i):
			return true
		case apart(rd, i), talkNamed(rd, i-1):
			return false
		}
		i--
	}
	return stops.OfBody(rd, i) || !apart(rd, i) && !talkNamed(rd, i)
}

// apart says whether the element at i is a person, a place or "there", and so
// neither wood nor gear.
func apart(rd *reading.Reading, i int) bool {
	place := rd.At(i).Marked(lexicon.MarkPlace|lexicon.MarkObstacle) && !stops.Wooden(rd, i) && gear.Part(rd.At(i)) == ""
	return place || whoever(rd, i) || rd.Cued(rd.At(i), lexicon.CueThere)
}

// talkNamed says whether a word of talk stands behind the article at i: "my back
// is …", "the weather looks …".
func talkNamed(rd *reading.Reading, i int) bool {
	if !rd.At(i).Marked(lexicon.MarkArticle) || rd.At(i).Marked(lexicon.MarkIs) || i+1 >= len(rd.Elems) {
		return false
	}
	from, to := rd.Elems[i].End, rd.Elems[i+1].Start
	if slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Start < to && a.End > from }) {
		return false
	}
	return rd.TermAt(i+1).Chatter || strings.TrimSpace(rd.Text[from:to]) != ""
}

// having says whether the word at i, which leads to another, says what wood or gear
// has or is made of: "with …", "full of …", "a limb of …". Where it leads to a
// place, it says so of the place alone.
func having(rd *reading.Reading, i int) bool {
	e, k := rd.At(i), rd.Past(i-1, -1, lexicon.MarkAdjective)
	of := e.Marked(lexicon.MarkIs|lexicon.MarkMade) && !e.Marked(lexicon.MarkAt|lexicon.MarkIn) && e.Marked(lexicon.MarkRelation|lexicon.MarkMade)
	switch {
	case rd.Cued(e, lexicon.CueHaving):
		return !apart(rd, k) && !rd.Cued(rd.At(i+1), lexicon.CueThe)
	case of && rd.TermAt(k).State:
		return tellsHow(rd, k-1) // "has a bit of …"
	case of:
		return stops.Wooden(rd, k) || stops.Rigs(rd, k) || rd.TermAt(k).Unnamed || rd.At(k).Fig != nil
	case e.Marked(lexicon.MarkIn) && !rd.At(i+1).Marked(lexicon.MarkArticle):
		return (rd.At(i-1).Marked(lexicon.MarkIs) || rd.TermAt(i-1).State) && ofThings(rd, i-1) // "the tree is in …"
	}
	return false
}

// whoever says whether the element at i is who is spoken of, and no thing: we, the
// boss, "dave".
func whoever(rd *reading.Reading, i int) bool {
	e, t := rd.At(i), rd.TermAt(i)
	switch {
	case rd.Cued(e, lexicon.CuePeople):
		return true
	case e.Marked(lexicon.MarkArticle), rd.Cued(e, lexicon.CueItIs):
		return false
	}
	return t.Human || t.Someone || e.Marked(lexicon.MarkPerson) || e.Plays(parser.People) && e.Looks(lexicon.Before)
}
