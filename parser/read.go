package parser

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// longest is the longest text that is read as a question.
const longest = 1200

// Reader reads messages. It is safe for use by many goroutines.
type Reader struct {
	lex   *lexicon
	names map[string]string // what to call a tree, by scientific name
}

// New returns a reader that knows its own word file and the trees given: a
// common and a scientific name each. It fails only where its word file or
// table of names is malformed.
func New(known []Species) (*Reader, error) {
	lex, err := newLexicon(known)
	if err != nil {
		return nil, err
	}
	r := &Reader{lex: lex, names: make(map[string]string)}
	for _, s := range known {
		r.names[s.Scientific] = s.Name
	}
	return r, nil
}

// Read reads one message. The error is an *Ask: what must be asked back, or
// the reason not to read on. The question then holds what could be placed
// all the same, so that an answer to the ask can complete it.
func (r *Reader) Read(text string) (Question, error) { return r.ReadAfter(text, Question{}) }

// ReadAfter reads a message of a conversation that stands at a question. Only
// what a swing may strike is read by it, "what about 15 ft away", and a word
// that is the whole message.
func (r *Reader) ReadAfter(text string, before Question) (Question, error) {
	if len(text) > longest {
		return Question{}, &Ask{Kind: TooMuch}
	}
	text = valid(text)
	in, language := r.lex.tongueOf(text)
	in = r.lex.inTonnes(text, in)
	rd, err := r.placed(text, in, language, before)
	if err != nil {
		return Question{}, err
	}
	if a := rd.stop(); a != nil {
		return Question{Intent: rd.stopIntent(a), Language: rd.language}, a
	}
	rd.small()
	if rd.roster() || rd.asksWho() && !rd.asksKept() {
		return rd.notKept(), nil
	}
	if q, err, ok := r.tellsJob(text, in, language); ok {
		return q, err
	}
	if q, ok := rd.asksUs(); ok {
		return q, nil
	}
	if q, a, ok := r.readList(rd); a != nil {
		return q, a
	} else if ok {
		return q, nil
	}
	again := func(text string) (*reading, Question, error) { return r.anew(text, in, language, before) }
	q, err := r.question(rd)
	return r.withoutTalk(rd, q, err, false, again)
}

// placed is a message with its numbers claimed, before anything is asked of it.
func (r *Reader) placed(text string, in *tongue, language string, before Question) (*reading, error) {
	tree, err := parse(text, in)
	if err != nil {
		return &reading{text: text, in: in}, &Ask{Kind: Nonsense, Words: text, End: len(text)}
	}
	rd := r.elements(text, in, tree, before.Intent == "")
	rd.language = language
	if before.Pieceless() {
		rd.whole() // behind a limb, "log" makes it one
	}
	rd.claims()
	rd.obstacles(before)
	return rd, nil
}

// anew reads a text that was read before, with something taken out of it.
func (r *Reader) anew(text string, in *tongue, language string, before Question) (*reading, Question, error) {
	rd, err := r.placed(text, in, language, before)
	if err != nil {
		return rd, Question{}, err
	}
	rd.small()
	q, err := r.question(rd)
	return rd, q, err
}

// valid puts a question mark for every byte that is part of no character, so
// that places in the text stay what they are.
func valid(text string) string {
	if utf8.ValidString(text) {
		return text
	}
	var b strings.Builder
	for i, r := range text {
		if _, n := utf8.DecodeRuneInString(text[i:]); r == utf8.RuneError && n == 1 {
			r = '?'
		}
		b.WriteRune(r)
	}
	return b.String()
}

// stop finds the words that end all arithmetic: somebody hurt, a power line,
// unsound wood, a way of rigging that no method here holds for.
func (rd *reading) stop() *Ask {
	for _, k := range halting {
		for _, e := range rd.stops {
			if e.term.stop == k {
				a := askAt(k, rd.text, e.start, e.end-e.start)
				a.Danger = e.term.danger
				a.NearPower = k == Emergency && rd.powered()
				return a
			}
		}
		for i, e := range rd.elems {
			if k == PowerLine && rd.overhead(i) {
				return askAt(k, rd.text, e.start, e.end-e.start)
			}
		}
	}
	return nil
}

// powered says whether a power line is told of as well.
func (rd *reading) powered() bool {
	line := func(e element) bool { return e.term != nil && e.term.stop == PowerLine }
	return slices.ContainsFunc(rd.stops, line) || rd.anyAt(rd.overhead)
}

func (rd *reading) stopIntent(a *Ask) Intent {
	if a.Kind == Emergency {
		return AskEmergency
	}
	return intentOf(rd, Question{})
}

func (r *Reader) question(rd *reading) (Question, error) {
	q := Question{
		Language: rd.language, SaysUnits: rd.saysUnits(), Clear: rd.has(markClear), Explain: rd.explain(),
		Fixes: rd.fixes, Passed: rd.passed, FollowUp: rd.has(markFollow), Units: rd.units(), Notes: rd.notes(),
	}
	asks := slices.Concat(rd.asks, rd.wordAsks(), rd.thickTwice())
	shapeAsk := rd.fillShape(&q)
	treeAsk := r.fillSpecies(rd, &q)
	numberAsks, boundAsk := rd.fillQuantities(&q)
	q.Intent = intentOf(rd, q)
	if a := rd.fellingHinge(q); a != nil {
		return Question{Intent: AskNotch, Language: q.Language, Units: q.Units}, a
	}
	if rd.asksHow(q) {
		q.Topic, q.Intent = rd.kindAsked(q.Intent), AskHelp
	}
	if q.Intent == AskLower && q.MostWanted() && q.Has(Ratings...) && !q.Has(Wraps) {
		q.Intent = AskGear // the weakest of it sets what is lowered most
	}
	q.OfGear = rd.gearAsked(q)
	numberAsks = rd.idleLength(&q, numberAsks)
	q.placesOnly()
	rd.leafed(&q)
	q.keepUnder()
	rd.hungOnRope(&q)
	if d := q.Condition; q.Intent == AskAnchor && d != nil && d.Value == Dead {
		return Question{Intent: AskAnchor, Language: q.Language, Units: q.Units}, askAt(Unsound, rd.text, d.Start, d.End-d.Start)
	}
	treeAsk = r.anyOfThem(rd, &q, treeAsk)
	if treeAsk != nil && treeAsk.Kind == WhichTree && (q.onlyBalance() || q.onlyPlaces() || q.Intent == AskLog || q.Intent == AskRope) {
		treeAsk = nil // wherever it balances or is tied, the tree has no part in it, nor in a rope or who asked
	}
	asks = append(asks, rd.meaningAsks(&q)...)
	numberAsks = append(numberAsks, rd.obstacleOnly(&q)...)
	if q.noted(snubbed) && q.Has(RunLength) {
		numberAsks = append(numberAsks, rd.snubbedRun())
	}
	asked, _, _ := rd.intents()
	q.Asks = len(asked) > 0
	q.Hello = q.Intent == AskHelp && !rd.wantsHelp()
	rd.tellsFacts(&q, slices.Concat(asks, numberAsks, []*Ask{boundAsk, shapeAsk, treeAsk}))
	if rd.nonsense(q, asks) {
		if rd.acknowledges() {
			q.Intent, q.Hello = AskHelp, true
			return q, nil
		}
		return q, &Ask{Kind: Nonsense, Words: rd.text, End: len(rd.text)}
	}
	if boundAsk != nil {
		asks = append(asks, boundAsk)
	}
	if two := rd.twoPieces(numberAsks); two != nil && len(asks) == 0 {
		return Question{Intent: q.Intent, Language: q.Language, Units: q.Units}, two
	}
	for _, a := range asks {
		a.Spare, a.AsTree, a.LikeStop, a.Glued = rd.spare(a), rd.asTree(a), rd.likeStop(a), rd.glued(a)
		a.Clause = rd.turnedClause(a)
	}
	slices.SortStableFunc(asks, gravest)
	return q.orAsk(append(append(asks, numberAsks...), shapeAsk, treeAsk))
}

// orAsk is the question, or the first of what must be asked about it.
func (q Question) orAsk(asks []*Ask) (Question, error) {
	q.withoutDoubtful(asks)
	if a := firstAsk(asks...); a != nil {
		q.InDoubt = askedAbout(asks)
		return q, a
	}
	return q, nil
}

// meaningAsks are about words that the facts beside them leave in doubt.
func (rd *reading) meaningAsks(q *Question) []*Ask {
	asks := rd.peakOfAnother(*q)
	if a := rd.tieAtShare(q); a != nil {
		asks = append(asks, a)
	}
	if a := rd.alikeAsk(*q); a != nil {
		asks = append(asks, a)
	}
	if a := rd.legsAsk(*q); a != nil {
		asks = append(asks, a)
	}
	if a := rd.stubAsk(*q); a != nil {
		asks = append(asks, a)
	}
	return asks
}

// keepUnder takes a mass for the limit where it is asked how long a piece may
// be: of a piece that is still to be cut nobody knows the weight.
func (q *Question) keepUnder() {
	if q.Intent != AskCutPlan || q.Has(Limit) || !q.Has(across...) {
		return
	}
	for i, x := range q.Quantities {
		if x.Field == Weight {
			q.Quantities[i].Field = Limit
			return
		}
	}
}

// askedAbout are the fields that any of the asks is about.
func askedAbout(asks []*Ask) (out []Field) {
	for _, a := range asks {
		if a != nil {
			out = append(out, a.Fields...)
		}
	}
	return out
}

// gravest orders asks by their place in the text, but those first that put
// the whole meaning in doubt.
func gravest(a, b *Ask) int {
	if at, bt := a.Kind == Twist, b.Kind == Twist; at != bt {
		if at {
			return -1
		}
		return 1
	}
	return a.Start - b.Start
}

// withoutDoubtful takes out the quantities that any ask is about, so that no
// later message can complete the question with one of them.
func (q *Question) withoutDoubtful(asks []*Ask) {
	drop := map[Field]bool{}
	for _, f := range askedAbout(asks) {
		drop[f] = true
	}
	for _, a := range asks {
		if a != nil && (a.Kind == Girth || a.Kind == BreastHigh) {
			for _, f := range across {
				drop[f] = true
			}
		}
	}
	q.Quantities = slices.DeleteFunc(q.Quantities, func(x Quantity) bool { return drop[x.Field] })
}

func said[T any](rd *reading, e element, v T) *Said[T] {
	return &Said[T]{Value: v, Words: rd.text[e.start:e.end], Start: e.start, End: e.end}
}

// fillShape takes the shape and the condition of the piece.
func (rd *reading) fillShape(q *Question) *Ask {
	var shape, condition *Ask
	for _, e := range rd.elems {
		if e.term == nil {
			continue
		}
		if v := e.term.shape; v != "" && shape == nil {
			if q.Shape != nil && q.Shape.Value != v {
				shape = rd.clash(e, ShapeField)
			}
			q.Shape = said(rd, e, v)
		}
		if v := e.term.condition; v != "" && condition == nil {
			if q.Condition != nil && q.Condition.Value != v {
				condition = rd.clash(e, ConditionField)
			}
			q.Condition = said(rd, e, v)
		}
	}
	if shape != nil {
		q.Shape = nil
	}
	if condition != nil {
		q.Condition = nil
	}
	return firstAsk(shape, condition)
}

func (rd *reading) clash(e element, f Field) *Ask {
	a := askAt(Conflict, rd.text, e.start, e.end-e.start)
	a.Fields = []Field{f}
	return a
}

// snubbedRun asks about a line that is held fast and let run as well.
func (rd *reading) snubbedRun() *Ask {
	for _, e := range rd.elems {
		if e.term != nil && e.term.note == snubbed {
			return rd.clash(e, RunLength)
		}
	}
	return nil
}
