package parser

// What a lift has to pull with, told beside other numbers.

// powers reads the blocks and the winch of a lift.
func (rd *reading) powers() {
	rd.straightLift()
	rd.liftedMass()
	rd.blockCounts()
	rd.eachLegRoved()
	rd.pullsTold()
	rd.winchLifts()
}

// blockCounts passes over how many blocks there are, and says so: what counts
// is the parts of line, "4 parts of line and 4 blocks". More blocks than parts
// take friction that the parts do not tell of, and stay in doubt.
func (rd *reading) blockCounts() {
	if !rd.lifting() {
		return
	}
	parts := 0.0
	for i, e := range rd.elems {
		if e.fig != nil && (e.fig.dim == dimRatio || e.fig.dim == dimCount && rd.at(i+1).plays(Parts)) {
			parts = max(parts, e.fig.low)
		}
	}
	for i := 0; i < len(rd.elems); i++ {
		if n := rd.sheavesCounted(i); n > 0 && (parts == 0 || n <= parts) {
			rd.pass(i, i+2)
			i--
		}
	}
}

// sheavesCounted is how many sheaves the number at i counts, 0 where it counts none:
// "with 3 blocks", "got two double blocks".
func (rd *reading) sheavesCounted(i int) float64 {
	fig, next := rd.elems[i].fig, rd.termAt(i+1)
	if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.low != fig.high {
		return 0
	}
	led := i == 0 || rd.at(i-1).pause > 0 || rd.at(i-1).marked(markWhere|markIn|markAnd|markMade) || rd.cued(rd.at(i-1), cueOwns)
	switch {
	case !led:
		return 0
	case next.paired:
		return 2 * fig.high
	case next.blocks || next.block == AnyBlock:
		return fig.high
	}
	return 0
}

// eachLegRoved reads "winche de 400 kg y 3 ramales" as parts of line: what a
// winch pulls on is no sling.
func (rd *reading) eachLegRoved() {
	winch := rd.anyAt(func(i int) bool { return rd.elems[i].plays(WinchPull) })
	if !winch || rd.slingNamed() || rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil && rd.elems[i].fig.dim == dimAngle }) {
		return
	}
	for i, e := range rd.elems {
		fig := rd.at(i - 1).fig
		if e.term == nil || !e.term.roved || fig == nil || fig.dim != dimCount || fig.unit != nil {
			continue
		}
		fig.dim, fig.told = dimRatio, Parts
		rd.elems[i].term = &term{}
	}
}

// winchLifts asks about the one mass of "the winch lifts 900 lb on 2 parts" and
// of "3 guys pulling 200 lb, how much can we lift": it could be the pull or the
// load.
func (rd *reading) winchLifts() {
	at := -1
	for i, e := range rd.elems {
		if e.fig != nil && (e.fig.dim == dimMass || e.fig.dim == dimForce) {
			if at >= 0 {
				return
			}
			at = i
		}
	}
	if at < 1 || rd.elems[at].fig.told != "" || rd.at(at+1).piece() {
		return
	}
	winch := rd.termAt(at-1).intent == AskLift && rd.at(at-2).plays(WinchPull)
	if !winch && !(rd.cued(rd.at(rd.back(at-1)), cuePulling) && rd.mostAsked()) {
		return
	}
	fig := rd.elems[at].fig
	if winch && fig.dim == dimForce {
		fig.told = WinchPull // nobody weighs wood in kilonewtons
		return
	}
	a := fig.ask(TwoReadings, rd.text)
	a.Fields = []Field{Weight, WinchPull}
	a.Choices = []Choice{{Field: Weight}, {Field: WinchPull}}
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
}
