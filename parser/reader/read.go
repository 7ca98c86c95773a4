package reader

import (
	"slices"
	"strings"
	"unicode/utf8"

	"heft/parser"
	"heft/parser/asking"
	"heft/parser/gear"
	"heft/parser/heights"
	"heft/parser/lexicon"
	"heft/parser/lines"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/sizes"
	"heft/parser/stops"
	"heft/parser/talk"
	"heft/parser/turning"
)

// longest is the longest text that is read as a question.
const longest = 1200

// Reader reads messages. It is safe for use by many goroutines.
type Reader struct {
	lex   *lexicon.Lexicon
	names map[string]string // what to call a tree, by scientific name
}

// New returns a reader that knows its own word file and the trees given: a
// common and a scientific name each. It fails only where its word file or
// table of names is malformed.
func New(known []parser.Species) (*Reader, error) {
	lex, err := lexicon.NewLexicon(known)
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
func (r *Reader) Read(text string) (parser.Question, error) {
	return r.ReadAfter(text, parser.Question{})
}

// ReadAfter reads a message of a conversation that stands at a question: by it, what leans
// on that, "what about 15 ft away", and a word that is the whole message.
func (r *Reader) ReadAfter(text string, before parser.Question) (parser.Question, error) {
	if len(text) > longest {
		return parser.Question{}, &parser.Ask{Kind: parser.TooMuch}
	}
	text = valid(text)
	in, language := r.lex.TongueAfter(text, before.Language)
	in = sizes.InTonnes(r.lex, text, in)
	rd, err := r.placed(text, in, language, before)
	if err != nil {
		return parser.Question{}, err
	}
	if a := stop(rd); a != nil {
		return parser.Question{Intent: stopIntent(rd, a), Language: rd.Language}, a
	}
	q, a, told := talk.Told(rd)
	if by, ok := talk.WrapsBy(rd, before); ok && (!told || q.Topic == parser.TopicWrapsOff) {
		return by, nil
	}
	switch {
	case a != nil:
		return q, a
	case told:
		return q, nil
	}
	if q, ok := talk.OfPlan(rd, before); ok {
		return q, nil
	}
	turning.Finished(rd)
	turning.Small(rd)
	if talk.Roster(rd) || talk.AsksWho(rd) && !talk.AsksKept(rd) && !talk.AsksJob(rd) {
		return talk.NotKept(rd), nil
	}
	if talk.LimitAhead(rd) {
		return talk.NotYet(rd), nil
	}
	if q, err, ok := r.tellsJob(rd, text, in, language); ok {
		return q, err
	}
	if q, ok := talk.AsksUs(rd); ok {
		return q, nil
	}
	if q, ok := r.woods(rd); ok {
		return q, nil
	}
	if q, a, ok := r.readList(rd); a != nil {
		return q, a
	} else if ok {
		return q, nil
	}
	if q, a, ok := r.fallsAgainst(rd); a != nil {
		return reading.OrAsk(q, []*parser.Ask{a})
	} else if ok {
		return q, nil
	}
	if q, a, ok := r.inRow(rd); ok {
		return reading.OrAsk(q, []*parser.Ask{a})
	}
	if q, ok := r.eitherTackle(rd); ok {
		return q, nil
	}
	again := func(text string) (*reading.Reading, parser.Question, error) {
		return r.anew(text, in, language, before)
	}
	q, err = r.question(rd)
	return r.withoutTalk(rd, q, err, false, again)
}

// placed is a message with its numbers claimed, before anything is asked of it.
func (r *Reader) placed(text string, in *scan.Tongue, language string, before parser.Question) (*reading.Reading, error) {
	tree, err := scan.Parse(text, in)
	if err != nil {
		return &reading.Reading{Text: text, In: in}, &parser.Ask{Kind: parser.Nonsense, Words: text, End: len(text)}
	}
	rd := r.elements(text, in, tree, before)
	rd.Language = language
	if before.Pieceless() {
		senses.Whole(rd) // behind a limb, "log" makes it one
	}
	senses.EndInTalk(rd, before)
	senses.EndsInTalk(rd, before)
	heights.TagAsked(rd)
	heights.PieceUp(rd, before)
	heights.RaisedBlock(rd, before)
	claims(rd)
	lines.AtHand(rd, before)
	obstacles(rd, before)
	return rd, nil
}

// anew reads a text that was read before, with something taken out of it.
func (r *Reader) anew(text string, in *scan.Tongue, language string, before parser.Question) (*reading.Reading, parser.Question, error) {
	rd, err := r.placed(text, in, language, before)
	if err != nil {
		return rd, parser.Question{}, err
	}
	turning.Small(rd)
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
func stop(rd *reading.Reading) *parser.Ask {
	for _, k := range parser.Halting {
		for _, e := range rd.Stops {
			if e.Term.Stop == k {
				a := reading.AskAt(k, rd.Text, e.Start, e.End-e.Start)
				a.Danger = e.Term.Danger
				a.NearPower = k == parser.Emergency && powered(rd)
				return a
			}
		}
		for i, e := range rd.Elems {
			if k == parser.PowerLine && gear.Overhead(rd, i) {
				return reading.AskAt(k, rd.Text, e.Start, e.End-e.Start)
			}
		}
	}
	return nil
}

// powered says whether a power line is told of as well.
func powered(rd *reading.Reading) bool {
	line := func(e reading.Element) bool { return e.Term != nil && e.Term.Stop == parser.PowerLine }
	return slices.ContainsFunc(rd.Stops, line) || rd.AnyAt(rd.Is(gear.Overhead))
}

func stopIntent(rd *reading.Reading, a *parser.Ask) parser.Intent {
	if a.Kind == parser.Emergency {
		return parser.AskEmergency
	}
	return intentOf(rd, parser.Question{})
}

func (r *Reader) question(rd *reading.Reading) (parser.Question, error) {
	q := parser.Question{
		Language: rd.Language, SaysUnits: turning.SaysUnits(rd), Clear: rd.Has(lexicon.MarkClear) && !talk.AsksToForget(r.lex.Job.Forget, rd), Explain: talk.Explain(rd),
		Fixes: rd.Fixes, Passed: rd.Passed, NotSo: rd.NotSo, Guessed: rd.Guessed, FollowUp: rd.Has(lexicon.MarkFollow) || len(rd.Guessed) > 0, Bare: rd.Bare(), BareAt: rd.Has(lexicon.MarkAt), PutsRight: putsRight(rd), Amends: rd.PutRight, Stated: talk.Stated(rd), Points: talk.PointsTo(rd), Next: ofNext(rd), CutUp: talk.CutUp(rd), Units: turning.Units(rd), Notes: heights.Notes(rd),
	}
	asks := slices.Concat(rd.Asks, asking.WordAsks(rd), asking.ThickTwice(rd))
	asking.MeasuredUnknown(rd, asks)
	shapeAsk := fillShape(rd, &q)
	if q.Explain != "" && !rd.First && !rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil || rd.TermAt(i).Tree != nil }) {
		q.Shape, shapeAsk = nil, nil // "por qué tanto si el tronco pesa poco" asks of the last answer
	}
	treeAsk := r.fillSpecies(rd, &q)
	numberAsks, boundAsk := fillQuantities(rd, &q)
	q.Intent = intentOf(rd, q)
	if a := stops.FellingHinge(rd, q); a != nil {
		return parser.Question{Intent: parser.AskNotch, Language: q.Language, Units: q.Units}, a
	}
	talk.MostAsked(rd, &q)
	cutFalls(rd, &q)
	if turning.AsksHow(rd, q) {
		q.Topic, q.Intent = senses.KindAsked(rd, q.Intent), parser.AskHelp
	}
	ofGear(rd, &q)
	numberAsks = asking.IdleLength(rd, &q, numberAsks)
	riseOnly(rd, &q)
	heights.TillLevel(rd, &q)
	pulls.OnAnchor(rd, &q)
	q.PlacesOnly()
	q.UnderSettled()
	turning.Leafed(rd, &q)
	q.KeepUnder()
	heights.HungOnRope(rd, &q)
	if a := stops.DeadAnchor(rd, q); a != nil {
		return parser.Question{Intent: parser.AskAnchor, Language: q.Language, Units: q.Units}, a
	}
	treeAsk = r.anyOfThem(rd, &q, treeAsk)
	if treeAsk != nil && treeAsk.Kind == parser.WhichTree && (q.OnlyBalance() || q.OnlyPlaces() || q.Intent == parser.AskNotch || q.Intent == parser.AskLog || q.Intent == parser.AskRope) {
		treeAsk = nil // wherever it balances or is tied, the tree has no part in it, nor in a rope or who asked
	}
	asks = append(asks, meaningAsks(rd, &q)...)
	numberAsks = append(numberAsks, gear.ObstacleOnly(rd, &q)...)
	numberAsks = append(numberAsks, snubOrRun(rd, &q)...)
	asked, _, _ := senses.Intents(rd)
	q.Asks = len(asked) > 0
	q.Hello = q.Intent == parser.AskHelp && !turning.WantsHelp(rd)
	talk.TellsFacts(rd, &q, slices.Concat(asks, numberAsks, []*parser.Ask{boundAsk, shapeAsk, treeAsk}))
	if turning.Nonsense(rd, q, asks) {
		if turning.Acknowledges(rd) && !talk.Queries(rd) {
			q.Intent, q.Hello = parser.AskHelp, true
			return q, nil
		}
		return q, &parser.Ask{Kind: parser.Nonsense, Words: rd.Text, End: len(rd.Text)}
	}
	if boundAsk != nil {
		asks = append(asks, boundAsk)
	}
	if two := twoPieces(rd, numberAsks); two != nil && len(asks) == 0 {
		return parser.Question{Intent: q.Intent, Language: q.Language, Units: q.Units}, two
	}
	describe(rd, asks)
	for _, a := range numberAsks {
		a.Away = asking.Away(rd, a)
	}
	slices.SortStableFunc(asks, gravest)
	return reading.OrAsk(q, append(append(asks, numberAsks...), shapeAsk, treeAsk))
}

// ofGear makes a question one of gear where its strength is what the answer hangs on.
func ofGear(rd *reading.Reading, q *parser.Question) {
	if q.Intent == parser.AskBlockLoad && q.Noted(parser.MostWanted) && q.Pieceless() && q.Has(parser.Ratings...) {
		q.Intent = parser.AskGear
	}
	if q.Intent == parser.AskLower && q.MostWanted() && q.Has(parser.Ratings...) && !q.Has(parser.Wraps) {
		q.Intent = parser.AskGear // the weakest of it sets what is lowered most
	}
	if gear.BiggestAsked(rd, *q) {
		q.Intent, q.Notes = parser.AskGear, append(slices.Clip(q.Notes), parser.MostWanted)
	}
	if gear.BiggestFalls(rd, *q) {
		q.Intent = parser.AskDrop
		q.Notes = slices.DeleteFunc(q.Notes, func(n string) bool { return n == parser.CutFalls })
	}
	if gear.SizeOnly(*q) || gear.SizedOnly(rd, *q) {
		q.Intent = parser.AskGear
	}
	if gear.HoldAsked(rd, *q) {
		q.Intent = parser.AskGear
	}
	q.Unrated = gear.Unrated(rd, *q)
	q.OfGear, q.Held = gear.GearAsked(rd, *q), q.Pieceless() && gear.WhetherHolds(rd, *q)
}

// describe says of the words that must be asked about what may be made of them.
func describe(rd *reading.Reading, asks []*parser.Ask) {
	for _, a := range asks {
		turning.OpenNumber(rd, a)
		a.OfNumber = asking.OfNumber(rd, a)
		a.Spare, a.AsTree, a.LikeStop, a.Glued = asking.Spare(rd, a), asking.AsTree(rd, a), turning.LikeStop(rd, a), asking.Glued(rd, a)
		a.OfSomebody = asking.OfSomebody(rd, a)
		a.Clause, a.Denied = turning.TurnedClause(rd, a), turning.DeniedClause(rd, a)
	}
}

// meaningAsks are about words that the facts beside them leave in doubt.
func meaningAsks(rd *reading.Reading, q *parser.Question) []*parser.Ask {
	asks := append(asking.PeakOfAnother(rd, *q), gear.TwoHitches(rd, *q)...)
	if a := heights.TieAtShare(rd, q); a != nil {
		asks = append(asks, a)
	}
	if a := senses.AlikeAsk(rd, *q); a != nil {
		asks = append(asks, a)
	}
	if a := heights.LegsAsk(rd, *q); a != nil {
		asks = append(asks, a)
	}
	if a := sizes.StubAsk(rd, *q); a != nil {
		asks = append(asks, a)
	}
	if a := sizes.FallAsk(rd, *q); a != nil {
		asks = append(asks, a)
	}
	return asks
}

// gravest orders asks by their place in the text, but those first that put
// the whole meaning in doubt.
func gravest(a, b *parser.Ask) int {
	if at, bt := a.Kind == parser.Twist, b.Kind == parser.Twist; at != bt {
		if at {
			return -1
		}
		return 1
	}
	return a.Start - b.Start
}

func said[T any](rd *reading.Reading, e reading.Element, v T) *parser.Said[T] {
	return &parser.Said[T]{Value: v, Words: rd.Text[e.Start:e.End], Start: e.Start, End: e.End}
}

// fillShape takes the shape and the condition of the piece.
func fillShape(rd *reading.Reading, q *parser.Question) *parser.Ask {
	var shape, condition *parser.Ask
	for _, e := range rd.Elems {
		if e.Term == nil {
			continue
		}
		if v := e.Term.Shape; v != "" && shape == nil {
			if q.Shape != nil && q.Shape.Value != v {
				shape = clash(rd, e, parser.ShapeField)
			}
			q.Shape = said(rd, e, v)
		}
		if v := e.Term.Condition; v != "" && condition == nil {
			if q.Condition != nil && q.Condition.Value != v {
				condition = clash(rd, e, parser.ConditionField)
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
	return reading.FirstAsk(shape, condition)
}

func clash(rd *reading.Reading, e reading.Element, f parser.Field) *parser.Ask {
	a := reading.AskAt(parser.Conflict, rd.Text, e.Start, e.End-e.Start)
	a.Fields = []parser.Field{f}
	return a
}
