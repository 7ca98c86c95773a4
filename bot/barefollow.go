package bot

import (
	"regexp"
	"slices"
	"strings"

	"heft/calc/unit"
	"heft/parser"
)

// A short message of a talk often holds a number and no word for what it is: "and if I
// cut it at 16". It is the one thing told before, or asked for, that it can change; where
// it could be several, each is offered.

// nearBefore is how much larger or smaller than before a number may be that has no word:
// what a crew tries next is of the size of what it has.
const nearBefore = 3

// asBefore answers a follow-up with its number read as the one thing that it can change,
// and says so; false where there is none.
func (d *Desk) asBefore(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	if !ev.changesNumber(q, ask, before, text) {
		return answer{}, Turn{}, false
	}
	put := func(phrase string) string { return text[:ask.Start] + phrase + text[ask.End:] }
	read := d.thinAsRope(q, ask, ev, before)
	if read == "" && q.Points != "" {
		read = d.pointedAs(q, ask, ev, before)
	}
	if read == "" {
		read = limitAgain(ask, ev, before)
	}
	if read == "" {
		read = d.unitBefore(ask, ev, before, put)
	}
	if read == "" {
		read, put = d.putRightIn(q, ask, ev, before, put)
	}
	if read == "" {
		read = d.wantedAs(q, ask, ev, before, put)
	}
	if read == "" {
		read = d.sizedAnew(q, ask, ev, before, put)
	}
	if read == "" && q.Bare {
		if read = d.onlyChange(q, ask, ev, before, put); read == "" && q.BareAt {
			put = func(phrase string) string { return phrase } // "and at 5 ft": without its "at"
			read = d.onlyChange(q, ask, ev, before, put)
		}
	}
	if read == "" {
		return answer{}, Turn{}, false
	}
	ev.lent, ev.Text = true, put(read)
	out, turn := d.consider(ev, before)
	if read != ask.Words {
		out.lines = append(out.lines, out.voice.say("Read %s as “%s”.", quote(ask.Words), read))
	}
	return out, turn, true
}

// putRightIn is a number put right, and how it stands in its message then.
func (d *Desk) putRightIn(q parser.Question, ask *parser.Ask, ev Event, before Turn, put func(string) string) (string, func(string) string) {
	read := d.putRight(q, ask, ev, before)
	if read != "" && q.BareAt && !q.Asks && len(q.Quantities) == 0 {
		put = func(phrase string) string { return phrase } // "cut it at 6 instead of 8": without its "at"
	}
	return read, put
}

// onlyChange is a bare number as the one thing that it can change, "" where that is none, or
// one of several.
func (d *Desk) onlyChange(q parser.Question, ask *parser.Ask, ev Event, before Turn, put func(string) string) string {
	phrases := d.phrasesOf(q, ask, ev, before)
	if len(phrases) != 1 || q.BareAt && !before.plainBehindAt(phrases[0], ask) {
		return ""
	}
	now, err := before.reread(d.reader, put(phrases[0]))
	if err != nil || tellsPiece(now) != tellsPiece(d.alone(phrases[0], before)) {
		return ""
	}
	return phrases[0]
}

// thinnestPiece is thicker, in metres, than any rope and thinner than any piece.
const thinnestPiece = 0.03

// thinAsRope is a bare thickness that no piece has, in a message that tells and asks nothing
// else, as a rope's: "half inch". "" where it may be another.
func (d *Desk) thinAsRope(q parser.Question, ask *parser.Ask, ev Event, before Turn) string {
	if ask.Kind != parser.Loose || ask.Metres <= 0 || ask.Metres >= thinnestPiece || q.Asks || tellsPiece(q) || len(q.Quantities) > 0 || before.wants(parser.TipDiameter) {
		return ""
	}
	v := voiceFor(ev, before.question)
	v.language = q.Language
	phrase, _, ok := d.readAs(v, before, ask, parser.RopeDiameter)
	if !ok {
		return ""
	}
	return phrase
}

// limitAgain is a bare number that is the limit's of the talk or of its job, with the unit
// that it was told in: "keep it under the 300". "" where it is another.
func limitAgain(ask *parser.Ask, ev Event, before Turn) string {
	for _, q := range []parser.Question{before.question, ev.Job.facts} {
		limit, ok := q.Get(parser.Limit)
		if ok && ask.Kind == parser.NoUnit && typedNumber.FindString(limit.Words) == inFigures(ask) {
			return limit.Words
		}
	}
	return ""
}

// plainBehindAt says whether a number behind "at" can only be what a phrase makes of it: an
// angle, "at 90", or how thick or how high it is, where the answer does not hang on both.
func (t Turn) plainBehindAt(phrase string, ask *parser.Ask) bool {
	const shortHitch = 3.7 // m: a length that may be a height as well is asked about; common practice, no source
	if ask.Metres >= shortHitch && !t.ropeOnly() {
		return false
	}
	return strings.Contains(phrase, "°") || t.ropeOnly() || !usedBy(t.question.Intent, parser.HitchHeight)
}

// wantedAs is the number in doubt as the one thing that was asked for, in a message that
// tells and asks nothing else: "10,400 on the bag", where the rope's strength is wanted. ""
// where it may be another.
func (d *Desk) wantedAs(q parser.Question, ask *parser.Ask, ev Event, before Turn, put func(string) string) string {
	p := before.pending
	if p == nil || p.Kind != parser.Missing || q.Asks || q.FollowUp || tellsPiece(q) || len(q.Quantities) > 0 {
		return ""
	}
	phrases := d.phrasesOf(q, ask, ev, before)
	if len(phrases) != 1 {
		return ""
	}
	now, err := before.reread(d.reader, put(phrases[0]))
	if err != nil || len(now.Quantities) != 1 || !before.wants(now.Quantities[0].Field) {
		return ""
	}
	return phrases[0]
}

// alone is what a phrase says by itself.
func (d *Desk) alone(phrase string, before Turn) parser.Question {
	q, _ := d.reader.ReadAfter(phrase, before.question)
	return q
}

// askAsBefore offers what a number of a follow-up may be, where it may be several of the
// things told before.
func (d *Desk) askAsBefore(a *answer, q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) {
	if !ev.changesNumber(q, ask, before, text) {
		return
	}
	phrases := d.phrasesOf(q, ask, ev, before)
	if len(phrases) == 0 || len(phrases) > manyChoices || !q.Bare && (len(phrases) == 1 && !before.plans(phrases[0], d) || len(q.Quantities) > 0) || q.Asks {
		return
	}
	for i, c := range a.choices {
		a.lines = slices.DeleteFunc(a.lines, func(l string) bool {
			return l == numbered(i, c.Label) || strings.HasPrefix(l, numbered(i, c.Label)+": ")
		})
	}
	a.lines[0] = a.voice.say("What is %s?", quote(ask.Words))
	a.choices = nil
	for i, p := range phrases {
		a.lines = append(a.lines, numbered(i, p))
		a.choices = append(a.choices, Choice{p, p})
	}
}

// plans says whether a talk stands at a cut plan, and a phrase tells its limit: what a crew
// tries anew there is most often that.
func (t Turn) plans(phrase string, d *Desk) bool {
	return t.question.Intent == parser.AskCutPlan && d.alone(phrase, t).Has(parser.Limit)
}

// changesNumber says whether a number in doubt may change what a talk has established:
// not in a message that tells of a piece by itself.
func (ev Event) changesNumber(q parser.Question, ask *parser.Ask, before Turn, text string) bool {
	return !ev.lent && before.known && bareNumber(ask) && ask.End <= len(text) && (q.Bare || !tellsAnew(q))
}

// bareNumber says whether an ask is about a number without a unit, or without a place.
func bareNumber(ask *parser.Ask) bool {
	return ask != nil && slices.Contains([]parser.Kind{parser.NoUnit, parser.Loose, parser.WhichAngle}, ask.Kind) && ask.Start < ask.End
}

// weighsAnew says whether a message tells nothing but another weight of what was told by
// its weight: "and if its 800 lb".
func (t Turn) weighsAnew(q parser.Question) bool {
	only := len(q.Quantities) == 1 && q.Has(parser.Weight) && q.Species == nil && q.Shape == nil && q.Intent == parser.AskWeight
	return t.known && t.question.Has(parser.Weight) && only
}

// tellsPiece says whether a message tells of a piece by itself.
func tellsPiece(q parser.Question) bool {
	return q.Species != nil || q.Shape != nil || q.Has(acrossFields...) || q.Has(parser.Length, parser.Weight)
}

// tellsAnew says whether a message tells of another piece than the talk stands at: by its
// tree, a size or its weight. "There aint no brush just log" says more of the same one.
func tellsAnew(q parser.Question) bool {
	q.Shape = nil
	return tellsPiece(q)
}

// phrasesOf are the ways to type the number in doubt that the reader takes, each as
// another of the facts before: those that were asked for, or else those of its size. Of
// the next piece either may be told.
func (d *Desk) phrasesOf(q parser.Question, ask *parser.Ask, ev Event, before Turn) (out []string) {
	v := voiceFor(ev, before.question)
	v.language = q.Language
	for _, f := range before.fieldsWanted() {
		if gearOnly(ask) && partOf(f) == "" {
			continue // what stands on a label is no weight
		}
		phrase, now, ok := d.readAs(v, before, ask, f)
		kept, lent := ev.Job.facts.Get(f)
		if ok && (!lent || near(kept, now)) {
			out = append(out, phrase) // what the job lends is not wanted: it may only be told anew
		}
	}
	if phrase, ok := d.peopleAnew(v, ev, ask, before, out); ok {
		out = append(out, phrase)
	}
	if len(out) > 0 && !q.Next {
		return out
	}
	spoken := v.metric
	for _, had := range before.question.Quantities {
		if had.Field == parser.RopeLength && q.BareAt {
			continue // "at 70 ft" is a place
		}
		for _, v.metric = range both(toldMetric(had, spoken), spoken) {
			phrase, now, ok := d.readAs(v, before, ask, had.Field)
			if ok && near(had, now) && !slices.Contains(out, phrase) {
				out = append(out, phrase)
			}
		}
	}
	v.metric = spoken
	if phrase, now, ok := d.readAs(v, before, ask, parser.People); ok && hauled[before.question.Intent] && now.High <= mostHands && !slices.Contains(out, phrase) {
		out = append(out, phrase) // who pulls may go without saying
	}
	if phrase, now, ok := d.readAs(v, before, ask, parser.Wraps); ok && before.wrapsMayBe(now, q) && !slices.Contains(out, phrase) {
		out = append(out, phrase) // and so may the wraps that the last answer starts with
	}
	if phrase, now, ok := d.readAs(v, before, ask, parser.RopeLength); ok && !q.BareAt && before.ropeMayBe(now) && !slices.Contains(out, phrase) {
		out = append(out, phrase) // and so may the rope at hand
	}
	return out
}

// toldMetric says whether a quantity was told in metric units, where its own say so.
func toldMetric(x parser.Quantity, spoken bool) bool {
	return x.System == parser.Metric || x.System == "" && spoken
}

// both are the systems that a bare number may be in: the one it was told in before, and
// the one that is spoken since. "300" after "600 lb" and "make it metric" is either.
func both(told, spoken bool) []bool {
	if told == spoken {
		return []bool{told}
	}
	return []bool{told, spoken}
}

// gearOnly says whether a number in doubt can only be a strength of gear.
func gearOnly(ask *parser.Ask) bool {
	return len(ask.Fields) > 0 && !slices.ContainsFunc(ask.Fields, func(f parser.Field) bool { return partOf(f) == "" })
}

// hauled are the questions that a number of people belongs to, told or not.
var hauled = map[parser.Intent]bool{parser.AskLift: true, parser.AskRaise: true}

// mostHands is how many people a bare number may be.
const mostHands = 12

// leastStrength is the least that gear is rated for: a smaller number is none.
const leastStrength = 1000 * unit.Newton

// mostOf is the most that a number without a word is taken for: no fall is higher, no tackle
// has more parts.
var mostOf = map[parser.Field]float64{
	parser.Length: 40, parser.DropHeight: 40, parser.RunLength: 60, parser.HitchHeight: 80, parser.BlockBelow: 10,
	parser.Parts: 12, parser.People: mostHands, parser.Wraps: 12,
}

// tooMuch says whether a number is more than it can be of its field.
func tooMuch(x parser.Quantity) bool {
	most, ok := mostOf[x.Field]
	return ok && x.Low > most
}

// readAs puts the number in doubt into the words of a field; false where they are not
// read so.
func (d *Desk) readAs(v speaker, before Turn, ask *parser.Ask, f parser.Field) (string, parser.Quantity, bool) {
	phrase := v.typedAs(f, ask)
	if phrase == "" || ask.Away && parser.DimensionOf[f] != parser.DimLength && !isAngle(f) {
		return "", parser.Quantity{}, false
	}
	q, err := d.reader.ReadAfter(phrase, before.question)
	now, ok := q.Get(f)
	if !ok && f == parser.ButtDiameter {
		now, ok = q.Get(parser.Diameter)
	}
	if partOf(f) != "" && now.Low < float64(leastStrength) || tooMuch(now) {
		return "", parser.Quantity{}, false
	}
	return phrase, now, ok && err == nil
}

// typedNumber is the number of a phrase, and typedUnit its unit where it has one.
var (
	typedNumber = regexp.MustCompile(`\d[\d,.]*`)
	typedUnit   = regexp.MustCompile(`\d[\d,.]*( ?(?:ft|in|mm|m|cm|lb|kg|kN|°))?`)
)

// typedAs is how to type a number in doubt as a field, "" where no way is known.
func (v speaker) typedAs(f parser.Field, ask *parser.Ask) string {
	number, with := trimQuote(ask.Words), typedUnit
	if ask.Kind == parser.NoUnit {
		number, with = inFigures(ask), typedNumber
	}
	if f == parser.BlockAngle {
		return v.say("%s between the legs", typedNumber.FindString(number)+"°")
	}
	typed := v.typed([]parser.Field{f})
	at := with.FindStringIndex(typed)
	if at == nil || strings.ContainsAny(number, "“”") {
		return ""
	}
	return typed[:at[0]] + number + typed[at[1]:]
}
