package bot

import (
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/calc/unit"
	"heft/parser"
)

// strain is the most that an answer puts on the gear.
type strain struct {
	line  unit.Force // tension of the line
	block unit.Force // on the top block, and on what holds it
}

// checked are the questions whose answers are held against the gear that the
// crew told of.
var checked = map[parser.Intent]bool{
	parser.AskLower: true, parser.AskBlockLoad: true, parser.AskRope: true, parser.AskLift: true,
	parser.AskRaise: true, parser.AskSwing: true, parser.AskDrop: true,
}

// gearFacts are the facts that the check rests on.
var gearFacts = append(slices.Clone(parser.Ratings), parser.DesignFactor, parser.Legs, parser.LegAngle, parser.ChokeAngle)

// withGearNotes adds what was said of gear that is carried on: a choked sling
// stays choked, and used gear used.
func withGearNotes(notes, before []string) []string {
	out := slices.Clone(notes)
	for _, n := range before {
		ofGear := n == wornGear || n == noteChoker || n == noteBasket || n == parser.NoteRatedBasket || n != carabinerNote && connects[n] != "" || knots[n] != gear.None
		if ofGear && !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	return out
}

// tells says whether a question tells a fact itself. Of gear, either figure of
// its label is enough: the other one is of the gear that was there before.
func tells(q parser.Question, f parser.Field) bool {
	for _, k := range kit {
		if f == k.breaks || f == k.marked {
			return q.Has(k.breaks, k.marked)
		}
	}
	return q.Has(f)
}

// usedBy says whether the answer to a question takes a fact into account.
func usedBy(in parser.Intent, f parser.Field) bool {
	return slices.Contains(ofPiece, f) || slices.Contains(uses[in], f) || (checked[in] || in == parser.AskGear) && slices.Contains(gearFacts, f)
}

// worn says whether the gear is used, old or has no label: no figure holds
// for it.
func (a *answer) worn() bool { return slices.Contains(a.question.Notes, wornGear) }

// unchecked says whether the answer left the gear out of account.
func (a *answer) unchecked() bool {
	return a.question.Intent != parser.AskGear && !a.question.LimitedByGear() && (a.strain == nil || a.worn() || !a.question.Has(parser.Ratings...))
}

// isGears says whether a fact only names gear that was checked: a rope goes by
// its label, not by its thickness.
func (a *answer) isGears(f parser.Field) bool {
	return f == parser.RopeDiameter && !a.unchecked() && a.question.Has(parser.RopeBreak, parser.RopeWorking)
}

// idleAngle says whether an angle between legs of the rope was told where no
// rope or block was: the legs of a sling are told from level.
func (a *answer) idleAngle(f parser.Field) bool {
	if q := a.question; f == parser.BlockAngle && q.Intent == parser.AskBlockLoad && slices.ContainsFunc(q.Quantities, atTop) {
		return true // how far the rope turns there is told too
	}
	return f == parser.BlockAngle && a.question.Intent == parser.AskGear &&
		!a.question.Has(parser.RopeBreak, parser.RopeWorking, parser.BlockBreak, parser.BlockWorking)
}

// tellGear holds the gear that the crew told of against the most that the
// answer puts on it.
func (a *answer) tellGear() error {
	q := a.question
	if a.strain == nil || !q.Has(parser.Ratings...) || a.worn() || a.status != Answered {
		return nil
	}
	all, err := a.rated(factorOf(q))
	if err != nil {
		return err
	}
	tightest := 0
	for i := range all {
		switch all[i].part {
		case gear.Rope, gear.Drum:
			all[i].load = a.strain.line
		default:
			all[i].load = a.strain.block
		}
		if _, err := gear.Used(all[i].load, all[i].limit); err != nil {
			return err
		}
		if all[i].used() > all[tightest].used() {
			tightest = i
		}
	}
	a.tellUse(all, tightest)
	a.tellFactor(all)
	return nil
}

// tellUse says the share of every working load that is taken up.
func (a *answer) tellUse(all []rated, tightest int) {
	v := a.voice
	o := &gearObject{Working: float64(all[tightest].limit), Used: all[tightest].used(), Weakest: partNames[all[tightest].part]}
	var others []string
	for i, r := range all {
		if len(all) > 1 {
			o.Items = append(o.Items, ratedObject{Part: partNames[r.part], Working: float64(r.limit), Load: float64(r.load), Used: r.used()})
		}
		if i != tightest {
			others = append(others, v.say("%s %s", a.partName(r.part), percent(r.used())))
		}
	}
	a.figures = alsoGear(a.figures, o)
	a.overGear(all)
	a.withinGear(all[tightest])
	r := all[tightest]
	name, how := capital(a.partName(r.part)), strings.Join(r.words, ", ")
	switch over := r.used() > 1; {
	case over:
		a.lines[0] = v.say("%s %s OVER its working load.", a.lines[0], strings.ToUpper(a.partName(r.part)))
	case len(others) > 0:
		a.lines = append(a.lines, v.say("%s: %s of %s working load (%s; %s), the tightest; %s.", name, v.heavy(r.load.Held()),
			v.pullHad(r.limit), percent(r.used()), how, v.and(others)))
	default:
		a.lines = append(a.lines, v.say("%s: %s of %s working load (%s; %s).", name, v.heavy(r.load.Held()), v.pullHad(r.limit), percent(r.used()), how))
	}
	for _, r := range all {
		if len(r.assumed) > 0 {
			a.lines = append(a.lines, v.say("%s.", capital(strings.Join(r.assumed, "; "))))
		}
	}
}

// withinGear says in the first line that the gear holds which the message tells of: that
// is what it was told for. Gear of the job is spoken of there only where it does not, and
// what catches a fall never as holding: its figures are a bound, before any knot.
func (a *answer) withinGear(tightest rated) {
	ofJob := func(k kitPart) bool {
		return k.part == tightest.part && (slices.Contains(a.ofJob, k.breaks) || slices.Contains(a.ofJob, k.marked))
	}
	if tightest.used() > 1 || a.question.Intent == parser.AskDrop || slices.ContainsFunc(kit, ofJob) {
		return
	}
	a.lines[0] = a.voice.say("%s %s at %s of its working load.", a.lines[0], capital(a.partName(tightest.part)), percent(tightest.used()))
}

// alsoGear adds the gear to what an answer already has for scripts.
func alsoGear(before func(*object), o *gearObject) func(*object) {
	return func(all *object) {
		if before != nil {
			before(all)
		}
		all.Gear = o
	}
}

// overGear names every piece of gear that is over its working load.
func (a *answer) overGear(all []rated) {
	v := a.voice
	for _, r := range all {
		if r.used() > 1 {
			a.problems = append(a.problems, v.say("OVER: the %s sees %s, its working load is %s (%s; %s). A smaller piece, or stronger gear.",
				a.partName(r.part), v.heavy(r.load.Held()), v.pullHad(r.limit), percent(r.used()), strings.Join(r.words, ", ")))
		}
	}
}
