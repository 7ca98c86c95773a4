package bot

import (
	"cmp"
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/parser"
)

// Turn is what a conversation has established so far.
type Turn struct {
	question parser.Question
	known    bool           // question holds something
	pending  *parser.Ask    // what was asked back and not yet answered
	which    *parser.Ask    // of the trees that share the piece's name; nil where it was told
	open     []string       // messages and words that were not understood, and are in no figure
	refused  *parser.Ask    // what was refused, until another piece is told
	stopped  *parser.Ask    // what was stopped for, until a message stands alone
	told     []parser.Field // by the last message
	choices  []Choice       // its choices, in the order they were shown
	before   *Turn          // what a choice is read against; there where choices are
	language string         // that was last spoken
	tree     tally          // the pieces so far
	cutTo    string         // how long the last answer said that a piece may be; "" where it said nothing of it
	parted   parted         // what the last answers cut into parts of one length
	wraps    float64        // that the last answer stands at, told or to start with; 0 where it has none
	gear     gear.Part      // whose strength was last told or asked about; "" for none
	ofJob    *parser.Ask    // which tree the job's is, where it was asked by the last message
}

// leans says whether a message is to be read together with what was said
// before: it asks for that, or answers an ask-back, or is no question by
// itself and with what its channel's job adds. One with a word that must be asked about first stands alone.
func (t Turn) leans(q parser.Question, ask *parser.Ask, job Job) bool {
	whole, _ := job.besides(t).over(q)
	lacks := len(whole.Missing()) > 0 || whole.OfPlaces() && (t.pending != nil || len(t.question.MissingPiece()) == 0)
	switch {
	case !t.known || q.Intent == parser.AskHelp || q.Intent == parser.AskLog:
		return false
	case q.Intent == parser.AskTree && q.Pieceless():
		return t.onlyPayload(q) // else of all the pieces, not of the last
	case t.answersGear(q), t.weighs(q, whole), t.swingsPast(q), t.tiesSwung(q), t.fills(q), t.goesOnLifting(q), t.otherTackle(q, ask), t.turnsThere(q):
		return true
	case q.FollowUp || t.pending != nil && lacks && !(ofWords(t.pending) && tellsPiece(q)):
		return true
	}
	return lacks && (ask == nil || t.fillsInDoubt(q, ask) || ofTape[ask.Kind] || ask.Kind == parser.FromWhere || ask.Kind == parser.WhichTree && q.Shape == nil && len(q.Quantities) == 0 || t.tellsBesides(q, ask))
}

// tellsBesides says whether a message of a talk tells something for sure beside a number
// that only lacks its unit: "hanging 40 ft under the block, weighs 280". That holds,
// whatever the number is.
func (t Turn) tellsBesides(q parser.Question, ask *parser.Ask) bool {
	sure := func(x parser.Quantity) bool { return !slices.Contains(ask.Fields, x.Field) }
	return t.known && ask != nil && ask.Kind == parser.NoUnit && !tellsAnew(q) && slices.ContainsFunc(q.Quantities, sure)
}

// swingsPast says whether a message tells only where a thing stands that the piece of
// before may swing into.
func (t Turn) swingsPast(q parser.Question) bool {
	other := func(x parser.Quantity) bool { return !slices.Contains(ofObstacle, x.Field) }
	return t.question.Intent == parser.AskSwing && q.Obstacle != nil && !tellsPiece(q) && !slices.ContainsFunc(q.Quantities, other)
}

// tiesSwung says whether a message only tells how long the piece of a swing is, and where
// it is tied.
func (t Turn) tiesSwung(q parser.Question) bool {
	tells := q.Has(parser.Tie, parser.TieAlong) && q.Species == nil && q.Shape == nil && !q.Has(acrossFields...) && !q.Has(parser.Weight)
	return t.question.Intent == parser.AskSwing && q.Intent == parser.AskBalance && !q.Asks && tells
}

// ofJob are the facts of the job rather than of a piece: they hold for the
// next piece too, until they are told anew.
var ofJob = []parser.Field{parser.Limit, parser.RopeLength}

// carry adds the job's facts to a question that stands alone, as far as its
// answer takes them into account.
func (t Turn) carry(q parser.Question) (parser.Question, []string) {
	var kept []string
	said := q
	q.Quantities = slices.Clone(q.Quantities)
	for _, x := range t.question.Quantities {
		job := slices.Contains(ofJob, x.Field) || slices.Contains(gearFacts, x.Field)
		if job && usedBy(q.Intent, x.Field) && !tells(said, x.Field) {
			q.Quantities = append(q.Quantities, x)
			kept = append(kept, string(x.Field))
			if slices.Contains(gearFacts, x.Field) {
				q.Notes = withGearNotes(q.Notes, t.question.Notes)
			}
		}
	}
	slices.Sort(kept)
	return q, kept
}

// takesJob says whether a message is the job's: one that says so, unless it
// answers what was asked, or one that tells nothing else where nothing was spoken
// of before.
func (t Turn) takesJob(q parser.Question, job Job) bool {
	if q.Intent == parser.AskJob && !q.Facts || t.changesJobsTree(q, job) {
		return true
	}
	if q.Intent == parser.AskJob {
		return !slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool { return t.wants(x.Field) })
	}
	return q.Facts && !t.known || t.tellsJobsGear(q, job) || t.tellsOtherGear(q, job)
}

// tellsOtherGear says whether a message only tells another strength of gear whose strength the
// job keeps, and no piece is spoken of: "the block is 80 kN WLL, sorry" takes the place of the
// one before, for everybody. What it may carry is asked with a word that asks.
func (t Turn) tellsOtherGear(q parser.Question, job Job) bool {
	other := func(x parser.Quantity) bool {
		of := partOf(x.Field)
		kept := func(k parser.Quantity) bool { return of != "" && partOf(k.Field) == of }
		return !slices.ContainsFunc(job.facts.Quantities, kept)
	}
	return !t.known && q.Intent == parser.AskGear && !q.Asks && !q.Held && q.OfGear == "" && len(q.Quantities) > 0 && q.Species == nil && !tellsPiece(q) && !slices.ContainsFunc(q.Quantities, other)
}

// sizesOfGear are what a rope and a drum measure, which nothing else is asked by.
var sizesOfGear = []parser.Field{parser.RopeDiameter, parser.RopeLength, parser.DrumAcross}

// tellsJobsGear says whether a message tells nothing but gear, where a job is kept and no piece
// is spoken of: "the rope is half inch" goes on telling what the job has.
func (t Turn) tellsJobsGear(q parser.Question, job Job) bool {
	other := func(x parser.Quantity) bool { return !slices.Contains(sizesOfGear, x.Field) }
	return !job.empty() && !t.known && !q.Asks && !q.MostWanted() && q.Intent != parser.AskGear && len(q.Quantities) > 0 && q.Species == nil && !tellsPiece(q) && !slices.ContainsFunc(q.Quantities, other)
}

// allUsed says whether an answer takes into account all that a message tells:
// "what about 3 guys", after a lift, is about the lift.
func allUsed(in parser.Intent, now parser.Question) bool {
	return len(now.Quantities) > 0 && !slices.ContainsFunc(now.Quantities, func(x parser.Quantity) bool { return !usedBy(in, x.Field) })
}

// takesPeak are the questions that, behind a piece that falls or is held fast, are of the
// peak: figures for lowering it steady would be far too low.
var takesPeak = map[parser.Intent]bool{parser.AskBlockLoad: true, parser.AskGear: true}

// ofLiftsTop are the questions that, behind a piece that is lifted and with nothing told anew,
// are of what holds its top block: figures for lowering it know no pull.
var ofLiftsTop = map[parser.Intent]bool{parser.AskBlockLoad: true, parser.AskAnchor: true}

// asksOfRedirect says whether a message is about what a redirect carries, in a talk about how
// much rope it takes: the length of the rope would be no answer to it.
func asksOfRedirect(before, now parser.Question) bool {
	return before.Intent == parser.AskRope && now.Intent == parser.AskBlockLoad && now.Has(parser.Weight) && slices.ContainsFunc(now.Notes, parser.Redirecting)
}

// hangsInRopeTalk says whether a message only tells how far a piece hangs under its block, in
// a talk about how much rope it takes: nothing swings there.
func hangsInRopeTalk(before, now parser.Question) bool {
	return before.Intent == parser.AskRope && before.Pieceless() && now.Intent == parser.AskSwing && !now.Asks && len(now.Quantities) == 1 && now.Has(parser.LineOut)
}

// movesOn says whether a message only tells how many lift or carry a piece, in a talk about
// moving it by hand: nothing is lowered there.
func movesOn(before, now parser.Question) bool {
	return before.Noted(parser.MovedByHand) && !now.Asks && len(now.Quantities) == 1 && now.Has(parser.People)
}

// merge lays a message over what was said before. It names what it kept and
// what it changed.
func merge(before, now parser.Question) (q parser.Question, kept, changed []string) {
	if now.Intent == parser.AskWeight || hangsInRopeTalk(before, now) || movesOn(before, now) || !now.Asks && !asksOfRedirect(before, now) && (allUsed(before.Intent, now) || len(now.Quantities) == 0 && hauled[before.Intent]) {
		now.Intent = before.Intent
	}
	if before.Intent == parser.AskLift && ofLiftsTop[now.Intent] && !tellsPiece(now) && len(now.Quantities) == 0 {
		now.Intent = parser.AskLift // what holds the top block gets the pull as well
	}
	if before.Intent == parser.AskDrop && takesPeak[now.Intent] && !tellsPiece(now) {
		now.Intent = parser.AskDrop // what the block sees, and gear takes, of a piece that falls
	}
	if now.Units == "" {
		now.Units = before.Units
	}
	now.Unrated = append(slices.Clip(before.Unrated), now.Unrated...)
	note := func(had, has bool, f parser.Field) {
		switch {
		case had && has:
			changed = append(changed, string(f))
		case had:
			kept = append(kept, string(f))
		}
	}
	if weighed := now.Has(parser.Weight); !weighed {
		note(before.Species != nil, now.Species != nil && now.Species != before.Species, parser.SpeciesField)
		now.Species = cmp.Or(now.Species, before.Species)
	}
	note(before.Shape != nil, now.Shape != nil && (before.Shape == nil || now.Shape.Value != before.Shape.Value), parser.ShapeField)
	now.Shape = cmp.Or(now.Shape, before.Shape)
	note(before.Condition != nil, now.Condition != nil, parser.ConditionField)
	now.Condition = cmp.Or(now.Condition, before.Condition)
	another := anotherObstacle(before, now)
	now.Obstacle = cmp.Or(now.Obstacle, before.Obstacle)
	now.Notes = mergedNotes(withoutItsHitch(withoutCrotch(stillAsked(before, now), now), now), now.Notes)
	now = lineGoesOn(before, now)
	stays := append(stemStays(before, now), fallStays(before, now)...)
	now = settle(now) // a thickness takes its name before names are compared
	said := now       // what is kept must not replace what else is kept
	before = drumMoved(thickEnd(before, said), said)
	guesses := toldBy(said.Guessed, before)
	for _, x := range before.Quantities {
		if slices.Contains(ofRope, x.Field) && (Job{before}).otherRope(said) {
			continue // another rope is asked what it bears
		}
		told := toldOtherwise(x, before, said) || slices.Contains(guesses, x)
		stays := slices.Contains(stays, x.Field) && !said.Has(x.Field)
		if told || !stays && replaced(x.Field, said) || another && slices.Contains(ofObstacle, x.Field) {
			if told || said.Has(x.Field) {
				changed = append(changed, string(x.Field))
			}
			continue
		}
		kept = append(kept, string(x.Field))
		now.Quantities = append(now.Quantities, x)
	}
	slices.Sort(kept)
	slices.Sort(changed)
	kept, changed = slices.Compact(kept), slices.Compact(changed) // a turn is said once for every block
	return settle(now), kept, changed
}

// thickEnd takes the one thickness that a talk has told for that of the thick end, where the
// next message tells the thin one.
func thickEnd(before, now parser.Question) parser.Question {
	tip, told := now.Get(parser.TipDiameter)
	if was, one := before.Get(parser.Diameter); !told || !one || was.Low <= tip.High || now.Has(parser.Diameter, parser.ButtDiameter) || before.Has(parser.ButtDiameter) {
		return before
	}
	before.Quantities = slices.Clone(before.Quantities)
	for i := range before.Quantities {
		if before.Quantities[i].Field == parser.Diameter {
			before.Quantities[i].Field = parser.ButtDiameter
		}
	}
	return before
}

// fallStays is the weight of a piece that falls, where the next message tells its length
// for the first time: how far it falls hangs on that, and it is no other piece. Another
// length than was told weighs something else, and so may one that is tried: "what about 4 ft".
// Another weight is one of a piece as long, where its length was told beside a weight.
func fallStays(before, now parser.Question) []parser.Field {
	sizes := append(slices.Clone(acrossFields), parser.Length)
	if now.Intent == parser.AskDrop && now.Has(parser.Weight) && before.Has(parser.Weight) && !now.Has(sizes...) {
		return []parser.Field{parser.Length}
	}
	if now.Intent != parser.AskDrop || before.Intent != parser.AskDrop && now.FollowUp || before.Has(sizes...) || now.Has(acrossFields...) || now.Species != before.Species {
		return nil
	}
	return []parser.Field{parser.Weight}
}

// stemStays are the sizes of a stem that a cut plan is made for that stay where another of
// them is told: how long it is, and how thick its top where only the bottom is told anew.
func stemStays(before, now parser.Question) (stays []parser.Field) {
	if before.Intent != parser.AskCutPlan || now.Has(parser.Weight, parser.Length) {
		return nil
	}
	butt, low := now.Get(parser.ButtDiameter)
	if tip, _ := before.Get(parser.TipDiameter); low && !now.Has(parser.TipDiameter) && tip.High < butt.Low {
		stays = append(stays, parser.TipDiameter)
	}
	return append(stays, parser.Length)
}

// lineGoesOn takes a load that is told anew, and nothing of a piece, for the pull in the line
// where that was told before: "what about 150 kg".
func lineGoesOn(before, now parser.Question) parser.Question {
	if !before.OnlyLine() || !now.Has(parser.Weight) || now.Species != nil || now.Shape != nil || now.Has(acrossFields...) {
		return now
	}
	now.Quantities = slices.Clone(now.Quantities)
	for i := range now.Quantities {
		now.Quantities[i].InLine = now.Quantities[i].Field == parser.Weight
	}
	return now
}

// choices are notes of which a new one takes the place of another.
var choices = [][]string{
	{"snubbed", "let-run"}, {"hang-level", "hang-butt", "hang-tip"},
	{"rope-static", "rope-low-stretch", "rope-stretchy", "rope-double-braid", "rope-three-strand", "rope-kernmantle", "rope-no-stretch"},
}

// mergedNotes keeps the notes of before: a used rope stays used.
func mergedNotes(before, now []string) []string {
	out := slices.Clone(now)
	for _, n := range before {
		if !slices.Contains(out, n) && !replacedNote(n, now) {
			out = append(out, n)
		}
	}
	return out
}

var ofObstacle = []parser.Field{parser.ObstacleOut, parser.ObstacleHeight}

// anotherObstacle says whether a message names another thing than was swung
// past before: its place is told anew.
func anotherObstacle(before, now parser.Question) bool {
	return now.Obstacle != nil && before.Obstacle != nil && !strings.EqualFold(now.Obstacle.Words, before.Obstacle.Words)
}

func replacedNote(n string, now []string) bool {
	return slices.ContainsFunc(choices, func(of []string) bool {
		return slices.Contains(of, n) && slices.ContainsFunc(now, func(m string) bool { return slices.Contains(of, m) })
	})
}

var acrossFields = []parser.Field{parser.Diameter, parser.ButtDiameter, parser.MidDiameter, parser.TipDiameter}

// reaching are the questions whose answer makes use of a weight and a length:
// neither takes the place of the other.
var reaching = map[parser.Intent]bool{parser.AskRaise: true, parser.AskSwing: true, parser.AskBalance: true}

// replaced says whether what a message says takes the place of an earlier
// quantity: a new thickness replaces all of them, and a weight the sizes.
func replaced(f parser.Field, now parser.Question) bool {
	sizes := append(slices.Clone(acrossFields), parser.Length)
	switch {
	case now.Has(f):
		return true
	case reaching[now.Intent] && f == parser.Length && now.Has(parser.Weight),
		reaching[now.Intent] && f == parser.Weight && !now.Has(acrossFields...):
		return false
	case (f == parser.Tie || f == parser.TieAlong) && now.Has(parser.Tie, parser.TieAlong):
		return true
	case f == parser.People && now.Has(parser.WinchPull) && hauled[now.Intent]:
		return true // the winch pulls in their place
	case f == parser.RunLength && slices.Contains(now.Notes, "snubbed"):
		return true
	case now.Amends && now.Has(parser.ButtDiameter) && !now.Has(parser.Weight) && (f == parser.Length || f == parser.TipDiameter):
		return false // "mistake, the butt is 24 in, not 28": the rest of it is as it was
	case slices.Contains(acrossFields, f) && now.Has(acrossFields...):
		return f == parser.Diameter || now.Has(parser.Diameter, parser.ButtDiameter) // "tip 8 in" goes with the butt of before
	case slices.Contains(acrossFields, f) && now.Noted(parser.ThickWanted):
		return true // likewise the thickness
	case f == parser.Length && now.Intent == parser.AskCutPlan && now.Has(acrossFields...):
		return true // the length is what is asked for
	case slices.Contains(sizes, f) && now.Has(parser.Weight):
		return true
	case f == parser.Weight && now.Has(sizes...):
		return true
	}
	return false
}

// settle mends what only the whole question can tell: a limb's diameter is
// that of its butt, and a hitch makes it a lowering question.
func settle(q parser.Question) parser.Question {
	limb := q.Shape != nil && q.Shape.Value == parser.Limb
	q.Quantities = slices.Clone(q.Quantities)
	for i := range q.Quantities {
		x := &q.Quantities[i]
		if x.Field == parser.Diameter && limb {
			x.Field = parser.ButtDiameter
		}
	}
	q.PlaceTie()
	if q.Intent == parser.AskWeight && q.Has(parser.HitchHeight) {
		q.Intent = parser.AskLower
	}
	return q
}
