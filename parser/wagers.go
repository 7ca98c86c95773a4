package parser

// Two who differ in what a piece weighs want to be told: "the boss says 500, I say
// 800". Neither is what it weighs where its sizes tell that.

// wagers passes over what two or more people say that a piece weighs, where the
// sizes tell it and nothing but the weight is asked for.
func (rd *reading) wagers() {
	var from, to []int
	for i := 0; i < len(rd.elems); i++ {
		if k := rd.wagered(i); k > 0 {
			from, to = append(from, i), append(to, k+1)
			i = k
		}
	}
	if len(from) < 2 || !rd.anyAt(func(i int) bool { return rd.termAt(i).wagers }) || !rd.sizesTold() {
		return
	}
	gone := 0
	for n := range from {
		rd.pass(from[n]-gone, to[n]-gone)
		gone += to[n] - from[n]
	}
}

// sizesTold says whether the message tells a tree, a thickness and one length, and
// nothing but the weight is asked for.
func (rd *reading) sizesTold() bool {
	tree, thick, long := false, false, 0
	for i, e := range rd.elems {
		tree = tree || rd.termAt(i).tree != nil
		thick = thick || e.fig.short() && !rd.ofRope(i)
		if rd.far(i) {
			long++
		}
	}
	return tree && thick && long == 1 && !rd.anyAt(rd.besidesWeight)
}

// wagered is the number that somebody says at i that a piece weighs, 0 where none
// is: "dice que pesa como 500", "i say more than 800".
func (rd *reading) wagered(i int) int {
	const least = 20 // what is less is rather no weight
	if !rd.termAt(i).wagers && !rd.at(i).plays(Weight) {
		return 0
	}
	k := i + 1
	for n := 0; n < 4 && rd.at(k).fig == nil && !rd.at(k).plays(Limit) && (rd.at(k).marked(markBound|markIs|markPronoun|markMade|markArticle) || rd.at(k).plays(Weight) || rd.termAt(k).note == "about" || rd.at(k).polite()); n++ {
		k++
	}
	fig := rd.at(k).fig
	if fig == nil || fig.dim != dimMass && (fig.dim != dimCount || fig.unit != nil || fig.low < least) {
		return 0
	}
	return k
}
