package parser

// What a winch or the hands pull with is told as a pull, "200 lb of pull on a
// 3:1", or of the winch itself. It is the load only where it names the piece.

// pullsTold finds the masses and forces that are what a lift is pulled with.
func (rd *reading) pullsTold() {
	for i := range rd.elems {
		if !rd.heavy(i) || rd.elems[i].fig.told != "" || rd.at(i+1).piece() {
			continue
		}
		if rd.pullBehind(i) || rd.pullLeads(i) || rd.lifting() && (rd.winchOf(i) || rd.capstanLifts(i)) {
			rd.elems[i].fig.told = WinchPull
		}
	}
}

// lifting says whether it is told of a lift: by the parts of line, or in so many
// words.
func (rd *reading) lifting() bool {
	return rd.asksFor(AskLift) || rd.anyAt(func(i int) bool {
		fig := rd.elems[i].fig
		return fig != nil && (fig.dim == dimRatio || fig.dim == dimCount && rd.at(i+1).plays(Parts))
	})
}

// pullBehind reads "the winch has 1000 lb of pull", "winch does 1000 lb pull" and
// "200 lb of pull on a 3:1". What people pull may be that of each or of all.
func (rd *reading) pullBehind(i int) bool {
	j := rd.past(i+1, +1, markIs|markMade)
	sure := rd.cued(rd.at(j), cueOfPull) || j > i+1 && rd.cued(rd.at(j), cuePull)
	if !sure && !rd.cued(rd.at(j), cuePull) {
		return false
	}
	next := rd.at(j + 1)
	ends := rd.endsBreath(j+1) || next.marked(markWhere|markAt) || next.fig != nil && next.fig.dim == dimRatio ||
		rd.termAt(j+1).note == mostWanted || rd.termAt(j+1).intent == AskLift
	if rd.at(rd.back(i - 1)).plays(WinchPull) {
		return ends
	}
	others := rd.anyAt(func(k int) bool { return k != i && rd.heavy(k) }) || rd.mostAsked()
	return ends && rd.ownPull() && (sure || others)
}

// pullLeads reads "pulling 200 lb on a 3:1, what's the most i can lift": of a
// load that is asked for nobody tells the weight.
func (rd *reading) pullLeads(i int) bool {
	return rd.cued(rd.at(rd.back(i-1)), cuePulling) && rd.ownPull() && (rd.mostAsked() || rd.loadBeside(i))
}

// ownPull says whether the message tells of a lift alone, and counts nobody who
// pulls.
func (rd *reading) ownPull() bool { return rd.lifting() && !rd.peopleCounted() && !rd.otherPull() }

// peopleCounted says whether people who pull are told of: "pulling 200 lb" counts
// nobody by itself.
func (rd *reading) peopleCounted() bool {
	return rd.anyAt(func(i int) bool {
		fig := rd.at(i - 1).fig
		return rd.elems[i].plays(People) && (!rd.cued(rd.elems[i], cuePulling) || fig != nil && fig.dim == dimCount)
	})
}

// otherPull says whether the message tells of what is pulled besides a lift: a
// tag line, a limb that is stood up, a rope that turns at a block.
func (rd *reading) otherPull() bool {
	return rd.anyAt(func(i int) bool {
		switch rd.termAt(i).intent {
		case AskBalance, AskSwing, AskDrop, AskRaise, AskBlockLoad, AskLower:
			return true
		}
		return Redirecting(rd.termAt(i).block)
	})
}

// mostAsked says whether it is asked how much can be lifted.
func (rd *reading) mostAsked() bool {
	return rd.anyAt(func(i int) bool { return rd.termAt(i).note == mostWanted })
}

// winchOf reads "the winch will only pull 500 kg", "capstan winch rated 1 tonne"
// and "the capstan can pull 1000 lb" beside the load. "Will the winch pull 500
// kg" asks, and a capstan by itself has a strength as well.
func (rd *reading) winchOf(i int) bool {
	k, pulls := i-1, false
	for ; rd.at(k).term != nil && !rd.at(k).plays(WinchPull) && !rd.termAt(k).hauls; k-- {
		t := rd.termAt(k)
		if t.tree != nil || t.shape != "" || t.stop != "" || t.ask != "" || !t.bounds() {
			return false
		}
		if t.intent != "" {
			if t.intent != AskLift || !t.besides {
				return false
			}
			pulls = true
		}
	}
	winch := rd.at(k).plays(WinchPull) && k < i-1 || rd.termAt(k).hauls && (pulls || rd.asksFor(AskLift) || rd.picks())
	asked := rd.cued(rd.at(rd.past(k-1, -1, markArticle)), cueAsking) && (pulls || rd.at(k).plays(WinchPull))
	return winch && !asked && rd.loadBeside(i)
}

// bounds says whether all that the words do to a number is to make it a bound: "max".
func (t *term) bounds() bool {
	for _, r := range t.roles {
		if r.field != Limit {
			return false
		}
	}
	return true
}

// loadBeside says whether another mass is told as that of the load, or its tree
// and its sizes are.
func (rd *reading) loadBeside(but int) bool {
	lengths, tree := 0, false
	for i, e := range rd.elems {
		tree = tree || rd.termAt(i).tree != nil
		if e.fig != nil && e.fig.dim == dimLength {
			lengths++
		}
	}
	return tree && lengths > 1 || rd.anyAt(func(i int) bool {
		before := rd.past(rd.back(i-1), -1, markMade|markIs)
		load := rd.at(i+1).piece() || rd.at(i+1).plays(ButtDiameter) || rd.at(before).piece() || rd.termAt(before).unnamed || rd.at(before).plays(Weight) || rd.termAt(before).intent == AskLift
		return i != but && rd.heavy(i) && load
	})
}

// capstanLifts reads "capstan de 1000 libras, 4 a 1, ¿cuánto levanta?" and "how many
// parts for 1800 lb with a 1000 lb capstan": what lifts is no drum, and its one
// figure what it pulls.
func (rd *reading) capstanLifts(i int) bool {
	before := rd.past(rd.back(i-1), -1, markMade|markIs|markRating)
	capstan := rd.termAt(i+1).hauls || rd.termAt(before).hauls
	s, _ := rd.strengthBeside(i-1, i+1)
	others := 0
	for k := range rd.elems {
		if k != i && rd.heavy(k) {
			others++
		}
	}
	return capstan && s == "" && !rd.otherPull() && (others == 0 && rd.mostAsked() || others == 1)
}
