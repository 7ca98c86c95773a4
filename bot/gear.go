package bot

import (
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/calc/unit"
	"heft/parser"
)

// workGear answers what gear may be loaded with, which piece of it is the
// weakest, and how much of that a load takes up.
func (a *answer) workGear() error {
	q := a.question
	if q.GearWanted() {
		return a.workNeeded()
	}
	factor := factorOf(q)
	all, err := a.rated(factor)
	if err != nil {
		return err
	}
	weakest, line, err := weakestOf(all)
	if err != nil {
		return err
	}
	o := &gearObject{Working: float64(all[weakest].limit), Weakest: partNames[all[weakest].part]}
	a.figures = func(all *object) { all.Gear = o }
	loaded := len(q.MissingPiece()) == 0
	if loaded {
		if err := a.hang(all); err != nil {
			return err
		}
		o.Used = all[weakest].used()
	}
	a.status = Answered
	if len(all) == 1 {
		a.lines = slices.Concat([]string{a.oneRated(all[0], loaded)}, a.lines)
	} else {
		o.Line = float64(line)
		a.lines = slices.Concat([]string{a.weakestHead(all[weakest], line, loaded)}, a.eachRated(all, o, loaded), a.lines)
	}
	if len(all) > 1 {
		a.overGear(all)
	} else if all[0].used() > 1 {
		a.problems = append(a.problems, a.voice.say("A smaller piece, or stronger gear."))
	}
	if q.Noted(parser.MostWanted) && q.Pieceless() {
		a.lines = append(a.lines, a.voice.say("So no piece over %s by its heavy end, lowered steady. Snubbed or dropped: far less.", a.voice.atMost(line.Held())))
	}
	a.tellUnrated()
	a.tellGearAssumed(all, weakest, factor)
	a.tellFactor(all)
	a.cautions = append(a.cautions, a.voice.word("A marked working load that is lower goes first, and so does any weaker link: block, sling, connector, drum."))
	return nil
}

// onBlock says whether the load told is that of a block, and no piece's.
func (a *answer) onBlock() bool {
	return a.question.Intent == parser.AskGear && slices.Contains(a.question.Notes, parser.NoteOnBlock)
}

// gearObject is gear as scripts read it: the weakest piece of it, and with
// several of them each.
type gearObject struct {
	Working float64       `json:"working_load_n,omitempty"`
	Used    float64       `json:"used_fraction,omitempty"`
	Weakest string        `json:"weakest,omitempty"`
	Line    float64       `json:"line_n,omitempty"` // tension of the line that takes the weakest to its working load
	Items   []ratedObject `json:"items,omitempty"`
}

type ratedObject struct {
	Part    string  `json:"part"`
	Working float64 `json:"working_load_n,omitempty"`
	Needed  float64 `json:"needed_break_n,omitempty"` // where it is asked how strong it must be
	Load    float64 `json:"load_n,omitempty"`
	Used    float64 `json:"used_fraction,omitempty"`
}

// weakestOf finds the piece of gear that is the first at its working load.
func weakestOf(all []rated) (weakest int, line unit.Force, err error) {
	links := make([]gear.Link, len(all))
	for i, r := range all {
		links[i] = gear.Link{Part: r.part, Working: r.limit, Carries: r.carries}
	}
	c, err := gear.Weakest(links)
	return c.Weakest, c.Line, err
}

// hang puts the piece on the line, hanging still on one part of it.
func (a *answer) hang(all []rated) error {
	res, err := a.weighed()
	if err != nil {
		return err
	}
	a.result = &res
	for i := range all {
		if a.onBlock() {
			all[i].carries = 1 // of what the block sees, which no leg of the rope is more than
		}
		all[i].load = res.Weight.High.Weight() * unit.Force(all[i].carries)
		if _, err := gear.Used(all[i].load, all[i].limit); err != nil {
			return err
		}
	}
	a.tellWeight()
	return nil
}

// oneRated is the first line about one piece of gear.
func (a *answer) oneRated(r rated, loaded bool) string {
	v := a.voice
	name := capital(a.partName(r.part))
	if x, ok := a.question.Get(parser.RopeDiameter); ok && r.part == gear.Rope {
		name = v.say("%s %s", name, quote(x.Words)) // its label goes by strength; the thickness is only said back
	}
	how := strings.Join(r.words, ", ")
	switch {
	case loaded && r.used() > 1:
		return v.say("%s OVER: %s puts %s on it, plan on %s (%s).", name, a.piece(), v.heavy(r.load.Held()), v.pullHad(r.limit), how)
	case loaded:
		return v.say("%s: plan on %s (%s), %s takes %s of that.", name, v.pullHad(r.limit), how, a.piece(), percent(r.used()))
	}
	return v.say("%s: plan on %s (%s).", name, v.pullHad(r.limit), how)
}

// weakestHead is the first line about several pieces of gear.
func (a *answer) weakestHead(r rated, line unit.Force, loaded bool) string {
	v := a.voice
	name := a.partName(r.part)
	switch {
	case loaded && r.used() > 1:
		return v.say("Weakest: the %s, OVER: it sees %s of %s working load (%s).", name, v.heavy(r.load.Held()), v.pullHad(r.limit), percent(r.used()))
	case loaded:
		return v.say("Weakest: the %s, it sees %s of %s working load (%s).", name, v.heavy(r.load.Held()), v.pullHad(r.limit), percent(r.used()))
	}
	return v.say("Weakest: the %s, full when the line pulls %s.", name, v.pullHad(line))
}

// eachRated says a line for each piece of gear.
func (a *answer) eachRated(all []rated, o *gearObject, loaded bool) []string {
	v := a.voice
	var out []string
	for _, r := range all {
		item := ratedObject{Part: partNames[r.part], Working: float64(r.limit)}
		name, how := capital(a.partName(r.part)), strings.Join(r.words, ", ")
		switch {
		case loaded:
			item.Load, item.Used = float64(r.load), r.used()
			out = append(out, v.say("%s: sees %s of %s (%s), %s.", name, v.heavy(r.load.Held()), v.pullHad(r.limit), percent(r.used()), how))
		case r.carries != 1:
			out = append(out, v.say("%s: plan on %s, %s; sees %s times the line.", name, v.pullHad(r.limit), how, trimmed(r.carries, 2)))
		default:
			out = append(out, v.say("%s: plan on %s, %s.", name, v.pullHad(r.limit), how))
		}
		o.Items = append(o.Items, item)
	}
	return out
}

// tellGearAssumed says what the figures rest on, and what would move them
// most.
func (a *answer) tellGearAssumed(all []rated, weakest int, factor float64) {
	v := a.voice
	for _, r := range all {
		if len(r.assumed) > 0 {
			a.lines = append(a.lines, v.say("%s.", capital(strings.Join(r.assumed, "; "))))
		}
	}
	if byBreak(a.question) && factor != gear.Rigging {
		if lesser, err := a.rated(gear.Rigging); err == nil && limits.Above(lesser[weakest].limit, all[weakest].limit) {
			a.lines = append(a.lines, v.say("At 5:1, the least for rigging, not %s:1: the %s may carry %s. Loads of a tree are not accurately known.",
				trimmed(factor, 1), a.partName(all[weakest].part), v.pullHad(lesser[weakest].limit)))
		}
	}
	if a.linePeak() {
		a.lines = append(a.lines, v.say("Taken as the pull in the line, from wherever it was had: I have not checked it."))
	}
	if a.onBlock() {
		a.lines = append(a.lines, v.say("Taken as all that the block sees: the sling and the shackle that hold it see the same."))
	} else if r := all[weakest]; a.holdsBlock() && r.carries != 1 && len(all) == 1 {
		a.lines = append(a.lines, v.say("It holds the block, so it sees %s times what hangs on the rope.", trimmed(r.carries, 2)))
	} else if r.part == gear.Sling || r.part == gear.Connector {
		if r.carries == 1 && len(all) == 1 {
			a.lines = append(a.lines, v.say("With the piece hanging in it. Where it holds the block it sees about twice the line."))
		}
	}
	a.lines = append(a.lines, v.say("Assumed: new, dry, its label read, no edge, no heat, the load at rest. Used, old or without a label: no figure holds, ask."))
}

// byBreak says whether any strength was told as what it breaks at.
func byBreak(q parser.Question) bool {
	return slices.ContainsFunc(kit, func(k kitPart) bool { return q.Has(k.breaks) })
}

// percent says a share, rounded up.
func percent(share float64) string { return trimmed(100*share+0.499, 0) + "%" }
