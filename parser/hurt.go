package parser

import "strings"

// That somebody is hurt is told by what was done and to what part of them: "caught
// his arm", "my hand is stuck". Wood and rope are caught and stuck as well, so
// neither word stops by itself.

// hurt says whether the word at i tells of harm to somebody or to a part of them.
func (rd *reading) hurt(i int) bool {
	t := rd.termAt(i)
	return (t.harms || t.mayHarm && !rd.overCut(i)) && (rd.harmed(i, -1) || rd.harmed(i, +1))
}

// overCut reads "the block's 12 ft over his head, right over the cut": where the
// cut is in the wood.
func (rd *reading) overCut(i int) bool {
	j := rd.past(i-1, -1, markArticle)
	noun := j < i-1 || strings.HasPrefix(rd.word(rd.elems[i]), "the ")
	return noun && (rd.at(j).marked(markRelation) || rd.termAt(j).nears)
}

// harmed looks for whom the word at i harms, up to five words on one side of it.
func (rd *reading) harmed(i, step int) bool {
	t, beside := rd.termAt(i), true
	for k := i + step; k != i+6*step; k += step {
		if rd.at(max(k, k-step)).pause > 0 {
			return false
		}
		if (t.harms || beside) && rd.ofBody(k) || t.maims && beside && rd.wounded(k) {
			return true
		}
		beside = beside && rd.leadsTo(k)
	}
	return false
}

// ofBody says whether the element at i is a part of somebody's body.
func (rd *reading) ofBody(i int) bool {
	t := rd.termAt(i)
	return t.body || t.bodyOf && (rd.termAt(i-1).whose || rd.person(i-1))
}

// wounded says whether the element at i is somebody, and not what is theirs:
// "the neighbor's roof".
func (rd *reading) wounded(i int) bool {
	owns := rd.at(i+1).marked(markPlace|markObstacle) || rd.at(i+1).piece()
	return (rd.person(i) || rd.at(i).marked(markPerson)) && !owns
}

// leadsTo says whether the element at i may stand between a blow and whom it
// struck: "landed right on the".
func (rd *reading) leadsTo(i int) bool {
	return rd.at(i).marked(markArticle|markIs|markAt|markIn|markWhere|markRelation|markAdverb|markAdjective|markMade) || rd.at(i).polite() || rd.person(i) && rd.ofBody(i+1)
}
