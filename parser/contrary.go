package parser

// Crews deny how a piece could be as well as tell how it is: "dead ash, dont gimme the
// green weight". What is denied so says nothing more.

// contraryEnd finds the end of what the denial at i denies, where that is nothing but
// a condition and the message tells the other; 0 elsewhere.
func (rd *reading) contraryEnd(i int) int {
	k := i + 1
	for k-i <= few && rd.at(k).pause == 0 && (rd.at(k).polite() || rd.at(k).marked(markArticle|markPronoun|markIs)) && rd.termAt(k).condition == "" {
		k++
	}
	c := rd.termAt(k).condition
	if c == "" || rd.termAt(k).tree != nil {
		return 0
	}
	same := func(n int) bool { return n != k && rd.termAt(n).condition == c }
	other := func(n int) bool { return rd.termAt(n).condition != "" && rd.termAt(n).condition != c }
	if rd.anyAt(same) || !rd.anyAt(other) {
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
