package parser

// What a lift has to pull with, told beside other numbers.

// powers reads the blocks and the winch of a lift.
func (rd *reading) powers() {
	rd.straightLift()
	rd.blockCounts()
	rd.eachLegRoved()
	rd.pullsTold()
	rd.winchLifts()
}

// blockCounts passes over how many blocks there are, and says so: what counts
// is the parts of line, "4 parts of line and 4 blocks". More blocks than parts
// take friction that the parts do not tell of, and stay in doubt.
func (rd *reading) blockCounts() {
	if !rd.asksFor(AskLift) {
		return
	}
	parts := 0.0
	for i, e := range rd.elems {
		if e.fig != nil && (e.fig.dim == dimRatio || e.fig.dim == dimCount && rd.at(i+1).plays(Parts)) {
			parts = max(parts, e.fig.low)
		}
	}
	for i := 0; i < len(rd.elems); i++ {
		fig := rd.elems[i].fig
		counted := fig != nil && fig.dim == dimCount && fig.unit == nil && fig.low == fig.high && rd.at(i-1).marked(markWhere|markIn|markAnd|markMade)
		if next := rd.termAt(i + 1); counted && (next.blocks || next.block == AnyBlock) && (parts == 0 || fig.high <= parts) {
			rd.pass(i, i+2)
			i--
		}
	}
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

// winchLifts asks about the one mass of "the winch lifts 900 lb on 2 parts":
// it could be the winch's pull or the load.
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
	if at < 2 || rd.termAt(at-1).intent != AskLift || !rd.at(at-2).plays(WinchPull) || rd.at(at+1).piece() {
		return
	}
	fig := rd.elems[at].fig
	a := fig.ask(TwoReadings, rd.text)
	a.Fields = []Field{Weight, WinchPull}
	a.Choices = []Choice{{Field: Weight}, {Field: WinchPull}}
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
}
