package parser

import "slices"

// Only a question about a swing asks how far off and how high a thing of the
// surroundings is. There "roof 12 ft away and 14 ft high" are two facts; in
// any other question they stay numbers of the surroundings. A distance counts
// from under the block, on the far side: told from anything else, it is asked
// about.

// obstacle is the kind of thing that an element names, "" for none.
func (e element) obstacle() Obstacle {
	switch {
	case e.marked(markPerson):
		return Person
	case e.marked(markStanding):
		return Standing
	case e.marked(markObstacle):
		return Thing
	}
	return ""
}

// obstacles claims the numbers of what a swing may strike.
func (rd *reading) obstacles(before Question) {
	if !rd.swings() && !rd.leansOn(before) {
		return
	}
	for i, e := range rd.elems {
		kind := e.obstacle()
		if kind == "" {
			continue
		}
		told := rd.told(i)
		rd.eliminate(told, kind, i)
		if len(told) == 0 && !rd.verbBefore(i) || kind == Standing && e.piece() && !rd.stands(told) && !rd.verbBefore(i) {
			continue
		}
		rd.settle(told)
		rd.struck = rd.struck || rd.verbBefore(i)
		if rd.obstacle == nil {
			rd.obstacle = said(rd, e, kind)
		}
		if e.term.shape != "" { // the trunk that is swung past is no log
			t := *e.term
			t.shape, t.roles = "", nil
			rd.elems[i].term = &t
		}
	}
	if rd.obstacle == nil && before.Obstacle != nil {
		rd.named(before)
	} else if rd.obstacle == nil {
		rd.unnamedPast()
	}
}

// unnamedPast claims how far past the block something stands that no word names, or
// none that is known: "glass is 10 ft past".
func (rd *reading) unnamedPast() {
	for i := range rd.elems {
		next := rd.at(rd.past(i+1, +1, markArticle))
		beyond := next.marked(markOutward) && next.marked(markRelation|markPlace) && !rd.cued(next, cueOut) && !rd.cued(next, cueAside)
		if fig := rd.elems[i].fig; fig.far() && fig.told == "" && fig.claimed == "" && beyond && !next.plays(Sideways) {
			rd.claim(i, ObstacleOut)
			return
		}
	}
}

// leansOn says whether the message goes on about a swing: it says so, or names
// no piece and asks for nothing by itself.
func (rd *reading) leansOn(before Question) bool {
	if before.Intent != AskSwing || rd.has(markFollow) {
		return before.Intent == AskSwing
	}
	return !slices.ContainsFunc(rd.elems, func(e element) bool { return e.piece() || e.term != nil && e.term.intent != "" })
}

// named claims the numbers of an obstacle that was named before. "14 ft high"
// may then be the block's height, unless the obstacle's is what is missing.
func (rd *reading) named(before Question) {
	missing := before.without([]Field{ObstacleOut, ObstacleHeight})
	told := rd.told(-1)
	for i := range told {
		t := &told[i]
		if t.field == "" && t.unclear == "" && len(told) == 1 && len(missing) == 1 {
			t.field = missing[0]
		}
		if len(told) == 1 && t.field == ObstacleHeight && !slices.Contains(missing, ObstacleHeight) {
			t.field = ""
		}
	}
	rd.settle(slices.DeleteFunc(told, func(t toldOf) bool { return t.field == "" && t.unclear == "" }))
}

// swings says whether the message asks about a swing and about nothing that
// goes before it.
func (rd *reading) swings() bool {
	swing := false
	for i, e := range rd.elems {
		switch {
		case e.fig != nil && (e.fig.told == Sideways || e.fig.told == BlockHeight):
			swing = true
		case e.term == nil:
		case e.term.intent == AskSwing, rd.beside(i, LineOut), rd.beside(i, Sideways), rd.beside(i, StartAngle):
			swing = true
		case e.term.besides:
		case e.term.intent == AskDrop || e.term.intent == AskBalance || e.term.intent == AskLower || e.term.intent == AskLift || e.term.intent == AskRaise:
			return false
		}
	}
	return swing
}

// beside says whether the words of a field stand right beside a number.
func (rd *reading) beside(i int, f Field) bool {
	return rd.elems[i].plays(f) && (rd.at(i-1).fig != nil || rd.at(i+1).fig != nil)
}

// verbBefore says whether the thing at i is what may be struck: "will it hit
// the chimney".
func (rd *reading) verbBefore(i int) bool {
	e := rd.at(rd.past(i-1, -1, markArticle|markAdjective))
	return e.term != nil && e.term.intent == AskSwing
}

// passes makes a question about a swing of a word that asks for one only right
// before what may be struck: "pasa" says much else.
func (rd *reading) passes(i int) {
	if rd.at(rd.past(i+1, +1, markArticle|markAdjective)).obstacle() != "" {
		rd.elems[i].term = &term{intent: AskSwing, besides: true}
	}
}

// settle marks the numbers.
func (rd *reading) settle(told []toldOf) {
	for _, t := range told {
		fig := rd.elems[t.at].fig
		fig.elsewhere, fig.claimed, fig.unclear = true, t.field, t.unclear
	}
}

// obstacleAsk asks what a number of an obstacle is.
func (f *figure) obstacleAsk(text string) *Ask {
	a := f.ask(f.unclear, text)
	a.Fields = []Field{ObstacleOut}
	if f.unclear == TwoReadings {
		a.Fields = append(a.Fields, ObstacleHeight)
		a.Choices = []Choice{{Field: ObstacleOut}, {Field: ObstacleHeight}}
	}
	return a
}

// overhead says whether the line at i is none of the crew's: "will it clear the
// lines", "line 12 ft away and 25 ft high".
func (rd *reading) overhead(i int) bool {
	if !rd.elems[i].marked(markOverhead) {
		return false
	}
	if rd.verbBefore(i) {
		return true
	}
	for _, t := range rd.told(i) {
		if t.field == ObstacleOut || t.field == ObstacleHeight {
			return !rd.at(i-1).marked(markIs|markIn) && rd.at(i-1).fig == nil // "15 ft of line"
		}
	}
	return false
}

// obstacleOnly keeps what was claimed for an obstacle where the question is
// about a swing after all, and asks about it where it is not.
func (rd *reading) obstacleOnly(q *Question) (asks []*Ask) {
	if q.Intent == AskSwing {
		q.Obstacle = rd.obstacle
		q.Notes = slices.DeleteFunc(q.Notes, func(n string) bool { return n == newTree }) // "the next tree 6 ft past the block"
		return nil
	}
	for _, e := range rd.elems {
		if e.term != nil && e.term.intent == AskSwing && e.term.besides {
			asks = append(asks, askAt(Unknown, rd.text, e.start, e.end-e.start)) // "will it clear" is not answered by the way
		}
		if e.fig != nil && (e.fig.claimed == ObstacleOut || e.fig.claimed == ObstacleHeight) {
			a := e.fig.ask(Loose, rd.text)
			a.Fields = []Field{e.fig.claimed}
			asks = append(asks, a)
		}
	}
	return asks
}

// missingObstacle lists what a swing past a thing still needs: how far it is.
// Without both heights it is taken to be as tall as the block.
func (q Question) missingObstacle() []Field {
	if q.Intent != AskSwing || q.Obstacle == nil && !q.Has(ObstacleOut, ObstacleHeight) {
		return nil
	}
	return q.without([]Field{ObstacleOut})
}
