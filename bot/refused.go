package bot

import (
	"cmp"
	"slices"

	"heft/parser"
)

// What was refused in a talk holds on: "4 guys, is that enough", behind the pull that
// brings a tree over, is about that pull, and no piece on a rope. And nobody gets figures
// behind a stop without being told of it again.

// holdsOn are the refusals that a follow-up is refused by again: no more that is told of
// the same thing gives it a figure.
var holdsOn = map[parser.Kind]bool{
	parser.Felling: true, parser.SpanLine: true, parser.Machine: true, parser.NoMethod: true,
	parser.Emergency: true, parser.PowerLine: true, parser.Rider: true, parser.Unsound: true,
}

// besides are those that say nothing of the piece that the talk was about before: a
// follow-up is about that piece again.
var besides = map[parser.Kind]bool{
	parser.Machine: true, parser.NoMethod: true, parser.Emergency: true, parser.PowerLine: true,
}

// mended are the stops that can be put right: an answer behind them says that it holds only
// then.
var mended = map[parser.Kind]bool{
	parser.Below: true, parser.Runaway: true, parser.Storm: true, parser.Damaged: true,
	parser.Personal: true, parser.Stuck: true, parser.Never: true,
	parser.Emergency: true, parser.PowerLine: true, parser.Rider: true, parser.Unsound: true,
}

// refusing is the talk behind a refusal: it stands where it stood.
func (t Turn) refusing(ask *parser.Ask) Turn {
	if other := besides[ask.Kind] && t.refused != nil && !besides[t.refused.Kind]; holdsOn[ask.Kind] && !other {
		t.refused = ask // what a machine lifts takes no rot away
	}
	if again := t.stopped != nil && t.stopped.Kind == ask.Kind; mended[ask.Kind] && !again {
		t.stopped = ask // the first words of it say best what is to be put right
	}
	return t
}

// behind is a talk that goes on from another: what was refused there holds until a piece
// is told, what was stopped for while messages lean.
func (t Turn) behind(before Turn, leaned, piece bool) Turn {
	if t.refused = before.refused; piece {
		t.refused = nil
	}
	if leaned {
		t.stopped = before.stopped
	}
	t.gear = cmp.Or(t.gearSpoken(), before.gear)
	return t
}

// refusesAgain says whether a message belongs to what was refused: it leans on it, and is
// no question by itself.
func (t Turn) refusesAgain(q parser.Question, ask *parser.Ask, job Job) bool {
	switch {
	case t.refused == nil || !holdsOn[t.refused.Kind] || besides[t.refused.Kind] && t.known:
		return false
	case q.Explain != "" && !tellsPiece(q) && ask == nil:
		return true // there is no figure to be shown
	case methods[q.Intent] == nil || ask != nil && ask.Final() || slices.Contains(q.Notes, noteNewTree):
		return false
	case ask != nil && t.refused.Kind == parser.Unsound:
		return q.Species == nil && ask.Kind != parser.WhichTree // pieces of a weight come off that tree
	case ask != nil:
		return !tellsPiece(q) && ask.Kind != parser.WhichTree
	}
	whole, _ := job.besides(t).over(q)
	if q.Asks && q.Intent == parser.AskWeight && tellsPiece(q) {
		return false // what a piece weighs, of which something is missing
	}
	return len(whole.Missing()) > 0 || q.FollowUp && len(whole.MissingPiece()) > 0
}

// callsWiresDead says whether a message behind a power line only says that something is
// dead: the wires, for all that anybody can tell from here, and who rigs by that dies.
func (t Turn) callsWiresDead(q parser.Question, ask *parser.Ask) bool {
	wires := t.stopped != nil && t.stopped.Kind == parser.PowerLine
	dead := q.Condition != nil && q.Condition.Value == parser.Dead
	return wires && dead && (ask == nil || !ask.Final()) && q.Species == nil && q.Shape == nil && len(q.Quantities) == 0
}

// refuseAgain refuses a message with what was refused before.
func (a *answer) refuseAgain(refused *parser.Ask, text string) {
	a.stop(refused)
	again := a.voice.say("%s I take for part of that: no figures. Is it another job? Then type it whole.", quote(text))
	a.lines = slices.Insert(a.lines, 1, again)
}

// afterStop reminds of a stop that came before an answer.
func (a *answer) afterStop(stopped *parser.Ask) {
	if stopped != nil && a.status == Answered {
		a.problems = slices.Insert(a.problems, 0, a.voice.stoppedFor(stopped))
	}
}

// stillStopped reminds of a stop that came before where something else is asked or refused
// now: nobody takes it for put right because of that.
func (a *answer) stillStopped(stopped *parser.Ask) {
	if stopped != nil {
		a.lines = slices.Insert(a.lines, 1, a.voice.stoppedFor(stopped))
	}
}

// stoppedFor says what was stopped for.
func (s speaker) stoppedFor(stopped *parser.Ask) string {
	return s.say("%s: I stopped for that before. Figures hold only once it is put right.", capital(trimQuote(stopped.Words)))
}
