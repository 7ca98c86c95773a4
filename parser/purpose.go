package parser

// "So it doesn't hit the fence" says why something is asked, and turns nothing
// round. What it names is no question of its own, unless it is how blocks meet.

// purpose takes the doubt from the words at i where no number stands in what
// they lead to, up to the next pause.
func (rd *reading) purpose(i int) {
	end := i + 1
	for ; end < len(rd.elems) && rd.elems[end].pause == 0 && !rd.elems[end].marked(markAnd); end++ {
		if e := rd.elems[end]; e.fig != nil || e.cross || e.piece() {
			return
		}
		if rd.purposeEnds(end) {
			end++
			break
		}
	}
	for k := i + 1; k < end; k++ {
		if t := rd.termAt(k); t.stop == "" && t.ask == "" && t.intent != AskRaise {
			rd.alter(k, func(t *term) { *t = term{} })
		}
	}
	rd.alter(i, func(t *term) { *t = term{purpose: true} }) // what it is told of ends there
}

// purposeEnds says whether what shall not be hit is named at i and words that
// lead to a number of their own begin behind it: "para que no toque el tejado lo
// tengo que desplazar 2 m".
func (rd *reading) purposeEnds(i int) bool {
	next := rd.at(i + 1)
	return rd.elems[i].marked(markPlace|markObstacle) && next.looks(after) && !next.looks(before) && !next.marked(markIs|markAt|markWhere|markRelation)
}
