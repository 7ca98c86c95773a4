package parser

import (
	"slices"
	"strings"
)

// Words like "is", "looks" and "with" say how something is. Of whom or what, stands
// before them: wood and gear are in a state, people and fences are not of the job.

// tellsHow says whether a word behind the element at i tells how wood or gear is: "the
// limb is …", "looks really …", "with …", "it …".
func (rd *reading) tellsHow(i int) bool {
	if rd.questions(i) {
		return false
	}
	i = rd.overTalk(i)
	switch e := rd.at(i); {
	case i < 0, e.pause > 0, rd.whoever(i), rd.cued(e, cueClause):
		return false
	case rd.cued(e, cueItIs):
		return true
	case e.marked(markAnd):
		return rd.telling(i - 1)
	case e.marked(markRelation | markWhere | markMade):
		return rd.having(i)
	case e.marked(markIs), rd.termAt(i).state, rd.cued(e, cueTurns):
		return rd.ofThings(i - 1)
	case e.marked(markPronoun):
		return rd.startsSaying(i - 1)
	}
	return false
}

// questions says whether a word behind the element at i is what is asked, "is that
// …", "will it …", and tells nothing.
func (rd *reading) questions(i int) bool {
	asks := rd.at(i-1).marked(markIs) || rd.cued(rd.at(i-1), cueAsking)
	return asks && rd.cued(rd.at(i), cueThat) && rd.startsSaying(i-2)
}

// overTalk goes back from i over what says nothing of what stands behind it.
func (rd *reading) overTalk(i int) int {
	for i >= 0 && rd.elems[i].pause == 0 && !rd.whoever(i) && !rd.cued(rd.elems[i], cueItIs) && !rd.cued(rd.elems[i], cueClause) {
		e := rd.elems[i]
		switch {
		case rd.cued(e, cueMerely):
		case e.marked(markIs | markRelation | markWhere | markAnd | markMade), rd.termAt(i).state, rd.cued(e, cueTurns):
			return i
		case !e.polite() && !e.marked(markArticle|markAdjective):
			return i
		}
		i--
	}
	return i
}

// telling says whether the element at i is already said of wood or gear, so that
// more of it follows behind an "and": "it's dead and …".
func (rd *reading) telling(i int) bool {
	return rd.at(i).marked(markAdjective) || rd.termAt(i).condition != "" || rd.termAt(i).state || rd.tellsHow(i)
}

// startsSaying says whether nothing that is done stands before i: "it …" begins what is said
// there, and "lower it …" does not.
func (rd *reading) startsSaying(i int) bool {
	i = rd.overTalk(i)
	return i < 0 || rd.at(i).pause > 0 || rd.at(i).marked(markAnd) || rd.cued(rd.at(i), cueClause)
}

// ofThings says whether what stands up to i, before "is" or "looks", is no person and
// no place: wood, gear, a number, or nothing that is named.
func (rd *reading) ofThings(i int) bool {
	for rd.at(i).marked(markIs|markAdverb) || rd.termAt(i).state || rd.at(i).polite() && rd.at(i).pause == 0 || rd.cued(rd.at(i), cueMerely) {
		switch {
		case rd.cued(rd.at(i), cueItIs), rd.ofBody(i):
			return true
		case rd.apart(i), rd.talkNamed(i - 1):
			return false
		}
		i--
	}
	return rd.ofBody(i) || !rd.apart(i) && !rd.talkNamed(i)
}

// apart says whether the element at i is a person, a place or "there", and so
// neither wood nor gear.
func (rd *reading) apart(i int) bool {
	place := rd.at(i).marked(markPlace|markObstacle) && !rd.wooden(i) && rd.at(i).part() == ""
	return place || rd.whoever(i) || rd.cued(rd.at(i), cueThere)
}

// talkNamed says whether a word of talk stands behind the article at i: "my back
// is …", "the weather looks …".
func (rd *reading) talkNamed(i int) bool {
	if !rd.at(i).marked(markArticle) || rd.at(i).marked(markIs) || i+1 >= len(rd.elems) {
		return false
	}
	from, to := rd.elems[i].end, rd.elems[i+1].start
	if slices.ContainsFunc(rd.asks, func(a *Ask) bool { return a.Start < to && a.End > from }) {
		return false
	}
	return rd.termAt(i+1).chatter || strings.TrimSpace(rd.text[from:to]) != ""
}

// having says whether the word at i, which leads to another, says what wood or gear
// has or is made of: "with …", "full of …", "a limb of …". Where it leads to a
// place, it says so of the place alone.
func (rd *reading) having(i int) bool {
	e, k := rd.at(i), rd.past(i-1, -1, markAdjective)
	of := e.marked(markIs|markMade) && !e.marked(markAt|markIn) && e.marked(markRelation|markMade)
	switch {
	case rd.cued(e, cueHaving):
		return !rd.apart(k) && !rd.cued(rd.at(i+1), cueThe)
	case of && rd.termAt(k).state:
		return rd.tellsHow(k - 1) // "has a bit of …"
	case of:
		return rd.wooden(k) || rd.rigs(k) || rd.termAt(k).unnamed || rd.at(k).fig != nil
	case e.marked(markIn) && !rd.at(i+1).marked(markArticle):
		return (rd.at(i-1).marked(markIs) || rd.termAt(i-1).state) && rd.ofThings(i-1) // "the tree is in …"
	}
	return false
}

// whoever says whether the element at i is who is spoken of, and no thing: we, the
// boss, "dave".
func (rd *reading) whoever(i int) bool {
	e, t := rd.at(i), rd.termAt(i)
	switch {
	case rd.cued(e, cuePeople):
		return true
	case e.marked(markArticle), rd.cued(e, cueItIs):
		return false
	}
	return t.human || t.someone || e.marked(markPerson) || e.plays(People) && e.looks(before)
}
