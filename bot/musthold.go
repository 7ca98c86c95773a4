package bot

import (
	"slices"

	"heft/calc/gear"
	"heft/calc/unit"
	"heft/parser"
)

// Whether a rope of a told thickness holds a load, its label says and its thickness does
// not. What the label must say is known before it is read, and said with the ask.

// mustHold says how strong the gear must be whose strength is asked for, where its load
// is told; and that how thick it is does not say that.
func (a *answer) mustHold() {
	q, v := a.question, a.voice
	if x, ok := q.Get(parser.RopeDiameter); ok && q.Intent == parser.AskDrop && slices.Contains(a.needs, parser.RopeBreak) {
		a.lines = append(a.lines, v.say("Its label tells that, %s does not.", trimQuote(x.Words)))
	}
	if q.Intent != parser.AskGear || len(a.needs) == 0 || a.worn() || a.onBlock() || a.linePeak() {
		return
	}
	f := a.needs[len(a.needs)-1]
	if x, ok := q.Get(parser.RopeDiameter); ok && f == parser.RopeBreak {
		a.lines = append(a.lines, v.say("Its label tells that, %s does not.", trimQuote(x.Words)))
	}
	if line := a.needsOf(f); line != "" {
		a.lines = append(a.lines, line)
	}
}

// needsOf is what gear must be good for to carry the piece, "" where the piece is not
// told, or none is made for it.
func (a *answer) needsOf(f parser.Field) string {
	q, v := a.question, a.voice
	if len(q.MissingPiece()) > 0 || slung(q) {
		return ""
	}
	all := []rated{{part: partOf(f), carries: 1}}
	res, err := a.weighed()
	if err != nil || a.shares(all) != nil {
		return ""
	}
	load := res.Weight.High.Weight()
	l := gear.Link{Part: all[0].part, Factor: factorOf(q), Carries: all[0].carries}
	if l.Part == gear.Rope {
		l.Knot = knotOf(q)
	}
	n, err := l.Needs(load)
	switch {
	case err != nil:
		return ""
	case l.Part == gear.Rope:
		return v.say("For %s hanging still it must break at %s or more: %s:1, %s. Snubbed or dropped: far more.",
			v.heavy(load.Held()), v.load(n.Break), trimmed(l.Factor, 1), withKnot(v, l.Knot))
	case f == parser.SlingBreak:
		return v.say("For %s hanging still it must break at %s or more: %s:1; where it holds the block, twice that. Snubbed or dropped: far more.",
			v.heavy(load.Held()), v.load(n.Break), trimmed(l.Factor, 1))
	}
	return v.say("For %s hanging still its working load must be %s or more. Snubbed or dropped: far more.", v.heavy(load.Held()), v.load(load*unit.Force(l.Carries)))
}

// slung says whether it is told how a sling is rigged, which takes of its strength.
func slung(q parser.Question) bool {
	return slices.Contains(q.Notes, noteChoker) || slices.Contains(q.Notes, noteBasket) || q.Has(parser.Legs, parser.LegAngle, parser.ChokeAngle)
}

// tellUnrated names the gear that was told of without its strength: the weakest may be
// among it.
func (a *answer) tellUnrated() {
	var left []string
	for _, f := range a.question.Unrated {
		for _, k := range kit {
			name := a.voice.word(theParts[k.part])
			if (f == k.breaks || f == k.marked) && !a.question.Has(k.breaks, k.marked) && !slices.Contains(left, name) {
				left = append(left, name)
			}
		}
	}
	if len(left) > 0 {
		a.problems = append(a.problems, a.voice.say("NOT in these figures: %s. Tell me what the label says: the weakest counts.", a.voice.and(left)))
	}
}

// theParts are the parts with their article.
var theParts = map[gear.Part]string{
	gear.Rope: "the rope", gear.Block: "the block", gear.Sling: "the sling", gear.Connector: "the shackle",
}
