package parser

// Crews deny how a piece could be as well as tell how it is: "dead ash, dont gimme the
// green weight". What is denied so says nothing more.

// contraryEnd finds the end of what the denial at i denies, where that is nothing but a
// state and the message tells the other; 0 elsewhere.
func (rd *reading) contraryEnd(i int) int {
	k := i + 1
	for k-i <= few && rd.at(k).pause == 0 && (rd.at(k).polite() || rd.at(k).marked(markArticle|markPronoun|markIs)) && rd.stateAt(k) == "" {
		k++
	}
	c := rd.stateAt(k)
	if c == "" || rd.termAt(k).tree != nil {
		return 0
	}
	same := func(n int) bool { return n != k && rd.stateAt(n) == c }
	if rd.anyAt(same) || !rd.anyAt(func(n int) bool { return contrary[c] == rd.stateAt(n) }) {
		return 0
	}
	end := k + 1
	if rd.termAt(end).intent == AskWeight && rd.at(end+1).fig == nil {
		end++
	}
	if rd.at(end).fig != nil || rd.at(end).piece() {
		return 0
	}
	return end
}

// contrary are the states of which a thing has one or the other.
var contrary = map[string]string{string(Green): string(Dead), string(Dead): string(Green), snubbed: letRun, letRun: snubbed}

// stateAt is the state that is told at i: of the wood, or of a line that is held fast or
// let run.
func (rd *reading) stateAt(i int) string {
	switch t := rd.termAt(i); {
	case t.condition != "":
		return string(t.condition)
	case t.note == snubbed, t.note == letRun:
		return t.note
	}
	return ""
}
