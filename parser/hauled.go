package parser

import "slices"

// Whoever says "lowering 250" tells what is lowered, and not how high: no hitch is
// told behind the verb alone, and none is that high. Its unit may still be asked for.

// hauled makes such a number what the piece weighs.
func (rd *reading) hauled() {
	for i := range rd.elems {
		if !rd.hauledBare(i) {
			continue
		}
		fig := rd.elems[i].fig
		if u := rd.loadUnit(i); u != nil && rd.massTold(i) {
			fig.lent(u)
		}
		fig.sure = Weight
		if verb := rd.back(i - 1); rd.termAt(verb).intent == AskLower {
			rd.alter(verb, func(t *term) {
				t.roles = slices.DeleteFunc(slices.Clone(t.roles), func(r role) bool { return r.field == HitchHeight })
			})
		}
	}
}

// hauledBare says whether the number at i stands right behind a verb of lowering or
// lifting, is more than any hitch is told behind one, and counts nothing.
func (rd *reading) hauledBare(i int) bool {
	fig := rd.elems[i].fig
	if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.pair || fig.falling || fig.sure != "" || fig.low < leastTold {
		return false
	}
	verb := rd.back(i - 1)
	in := rd.termAt(verb).intent
	if in != AskLower && in != AskLift || rd.endsInAt(verb) || rd.at(i-1).marked(markAt) || rd.at(verb).part() != "" || rd.at(verb).plays(Wraps) {
		return false // "lowering from 120"
	}
	next := rd.at(i + 1)
	if s, _ := rd.strengthBeside(i-1, i+1); s != "" || rd.at(i+1).looks(before) {
		return false
	}
	return rd.endsBreath(i+1) || next.marked(markWhere|markIn|markAt) || next.polite()
}
